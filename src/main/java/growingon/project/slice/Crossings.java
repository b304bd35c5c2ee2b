package growingon.project.slice;

/** When the slices of a lot grow thick enough for one grade more, by one law of growth. */
abstract class Crossings {
  /** Who is told of crossings. */
  @FunctionalInterface
  interface Told {
    /** A slice has grown thick enough for one grade more. */
    void thicker(int slice);
  }

  /** No slice grows thick enough for one grade more before this growth clock; never as infinite. */
  abstract double soonest();

  /**
   * Tells which slices have grown thick enough for one grade more, one after another; each time it
   * is told once.
   *
   * @param clock growth clock now
   */
  abstract void tell(double clock, Told to);

  /** The same from now on, for a lot that goes on apart by a clock of its own. */
  abstract Crossings goingOn(GrowthClock clock);
}
