package growingon.project;

/** When the slices of a lot grow thick enough for one grade more, by one law of growth. */
interface Crossings {
  /** There is none. */
  int NONE = -1;

  /**
   * The next slice that has grown thick enough for one grade more; each time it is told once.
   *
   * @param clock growth clock now
   * @return the slice, or {@link #NONE}
   */
  int next(double clock);

  /** The same from now on, for a lot that goes on apart by a clock of its own. */
  Crossings goingOn(GrowthClock clock);
}
