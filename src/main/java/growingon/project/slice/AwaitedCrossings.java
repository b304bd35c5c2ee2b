package growingon.project.slice;

import java.util.Arrays;

/**
 * Crossings of which only the next of each slice is known, for a law that a lot goes on by from
 * where it stands: most of the later ones never come.
 */
final class AwaitedCrossings extends Crossings {
  /** Slices are looked at in blocks: in most months none of a block reaches a grade. */
  private static final int BLOCK = 8;

  /** When a slice is thick enough for a grade. */
  @FunctionalInterface
  interface Law {
    /** Growth clock of it; infinite for never and for a grade that is not there. */
    double clock(int slice, int grade);
  }

  private final Law law;
  private final short[] grade;
  private final double[] clock;
  private final double[] soonest;

  /**
   * Crossings from now on.
   *
   * @param thick for each slice, the number of grades it is thick enough for
   */
  AwaitedCrossings(short[] thick, Law law) {
    this.law = law;
    this.grade = Arrays.copyOf(thick, thick.length);
    this.clock = new double[thick.length];
    for (int slice = 0; slice < clock.length; slice++) {
      clock[slice] = law.clock(slice, grade[slice]);
    }
    this.soonest = new double[(clock.length + BLOCK - 1) / BLOCK];
    for (int block = 0; block < soonest.length; block++) {
      int from = block * BLOCK;
      soonest[block] = least(clock, from, end(from));
    }
  }

  private AwaitedCrossings(AwaitedCrossings same, Law law) {
    this.law = law;
    this.grade = same.grade.clone();
    this.clock = same.clock.clone();
    this.soonest = same.soonest.clone();
  }

  @Override
  double soonest() {
    return least(soonest, 0, soonest.length);
  }

  @Override
  Crossings goingOn(GrowthClock clock) {
    return new AwaitedCrossings(this, clock::clockTo);
  }

  private int end(int from) {
    return Math.min(clock.length, from + BLOCK);
  }

  private static double least(double[] values, int from, int to) {
    double least = Double.POSITIVE_INFINITY;
    for (int i = from; i < to; i++) {
      least = values[i] < least ? values[i] : least;
    }
    return least;
  }

  @Override
  void tell(double now, Told to) {
    for (int block = 0; block < soonest.length; block++) {
      if (soonest[block] <= now) {
        soonest[block] = tellOf(block * BLOCK, now, to);
      }
    }
  }

  /** Tells the crossings of a block; gives the soonest of those that are left. */
  private double tellOf(int from, double now, Told to) {
    double[] clocks = clock;
    int end = end(from);
    double least = Double.POSITIVE_INFINITY;
    for (int slice = from; slice < end; slice++) {
      double next = clocks[slice];
      while (next <= now) {
        next = law.clock(slice, ++grade[slice]);
        clocks[slice] = next;
        to.thicker(slice);
      }
      least = next < least ? next : least;
    }
    return least;
  }
}
