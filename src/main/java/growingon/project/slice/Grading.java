package growingon.project.slice;

import growingon.nursery.market.Grade;
import growingon.nursery.market.Quality;
import growingon.project.history.GradedPlants;
import java.util.Arrays;

/**
 * Which grades the slices of a lot are thick enough for, and which plants may be sold as what. It
 * looks at the slices only in a month in which one moves up.
 */
public final class Grading implements Crossings.Told {
  /** Training months of plants whose training neither started nor is to start by a dated step. */
  public static final int UNTRAINED = Integer.MIN_VALUE;

  /** Twelve twelfths of a year's growth may fall short of a year by this much of rounding. */
  static final double ROUNDING = 1e-12;

  private static final Quality[] ALL = Quality.values();
  private static final int QUALITIES = ALL.length;

  private final Grade[] grades;
  private final GrowthClock clock;
  private final short[] thick;
  private final double[] leftOfEach;
  private final GradeTable[] tables;
  private GradeTable table;
  private Crossings crossings;
  private double nextCrossing;
  private Streams streams;
  private long readyCells;
  private boolean graded;

  Grading(StartingTrunks start, GrowthClock clock) {
    this.grades = start.grades;
    this.tables = start.tables;
    this.clock = clock;
    this.thick = new short[start.trunks.length];
    this.leftOfEach = new double[grades.length + 1];
  }

  /** Begins a run: by what law the lot grows is not known yet. */
  void begin() {
    Arrays.fill(thick, (short) 0);
    table = tables[0];
    crossings = null;
    nextCrossing = 0;
    readyCells = 0;
    graded = false;
  }

  /** The same so far, for a lot that goes on apart with a clock and plants of its own. */
  Grading(Grading same, GrowthClock clock, Streams streams) {
    this.grades = same.grades;
    this.clock = clock;
    this.thick = same.thick.clone();
    this.leftOfEach = new double[grades.length + 1];
    this.tables = same.tables;
    this.table = same.table;
    this.crossings = same.crossings.goingOn(clock);
    this.nextCrossing = same.nextCrossing;
    this.streams = streams;
    this.readyCells = same.readyCells;
    this.graded = same.graded;
  }

  /** The plants to be graded are these, or their numbers changed otherwise than by sale. */
  void of(Streams all) {
    streams = all;
    graded = false;
  }

  /** The law that the lot starts with is known. */
  void start() {
    cross(clock.listedCrossings());
  }

  /** The lot goes on by another law: only the next crossing of each slice is known. */
  void lookAhead() {
    cross(new AwaitedCrossings(thick, clock::clockTo));
  }

  private void cross(Crossings next) {
    crossings = next;
    nextCrossing = next.soonest();
  }

  /** The trunks were measured anew. */
  void startAnew() {
    Arrays.fill(thick, (short) 0);
    lookAhead();
    graded = false;
  }

  /** Notes which slices have grown thick enough for one grade more by now; in most months none. */
  private void measure() {
    double now = clock.now() + ROUNDING;
    if (nextCrossing <= now) {
      crossings.tell(now, this);
      nextCrossing = crossings.soonest();
    }
  }

  @Override
  public void thicker(int slice) {
    int was = thick[slice]++;
    int[] sellsAs = table.sellsAs;
    if (graded && sellsAs[was] != sellsAs[was + 1]) {
      readyCells |= streams.moveUp(slice, sellsAs[was], sellsAs[was + 1]);
    }
  }

  /**
   * Grades the lot for sale: works out for every stream how many plants may be sold at each grade.
   * Where no plant moved up and training changes nothing, all is as it was; plants too little
   * trained to be sold as anything need not even be looked at.
   *
   * @param trainingMonths whole months since training started; negative where it is to start so
   *     many months from now, {@link #UNTRAINED} where it is not
   * @return the bits of {@link #cellBit} of all grades and qualities in which plants may be ready
   */
  long forSale(int trainingMonths) {
    GradeTable before = table;
    boolean holds = before.holds(trainingMonths);
    if (graded && holds && !before.anySells) {
      return readyCells;
    }
    measure();
    table = holds ? before : GradeTable.at(trainingMonths, tables);
    if (!graded || !Arrays.equals(table.sellsAs, before.sellsAs)) {
      readyCells = streams.grade(thick, table.sellsAs);
      graded = true;
    }
    return readyCells;
  }

  /**
   * A bit for a grade and quality. On a ladder of more than 21 grades two may share a bit, so it
   * tells surely only that nothing is ready.
   */
  public static long cellBit(Quality quality, int grade) {
    return 1L << (grade * QUALITIES + quality.ordinal());
  }

  /** The bits of a grade in all qualities. */
  public static long cells(int grade) {
    long cells = 0;
    for (Quality quality : ALL) {
      cells |= cellBit(quality, grade);
    }
    return cells;
  }

  /** Notes that too few plants of a quality are ready as a grade to count, until more are. */
  void nothingReady(Quality quality, int grade) {
    readyCells &= ~cellBit(quality, grade);
  }

  /**
   * Plants of a quality that may be sold as a grade, but for deaths, once some shares of them were
   * sold one after another.
   */
  double readyAfter(Quality quality, int grade, double[] sold, int sales) {
    double ready = 0;
    for (int stream = streams.from(quality); stream < streams.until(quality); stream++) {
      double left = streams.ready(stream, grade);
      for (int i = 0; i < sales; i++) {
        left *= 1 - sold[i];
      }
      ready += left;
    }
    return ready;
  }

  /**
   * Mm above the grade's least, summed over the plants of a quality ready as it, but for deaths.
   */
  double mmAboveLeast(Quality quality, int grade) {
    double least = grades[grade].leastTrunkMm();
    double sum = 0;
    for (int stream = streams.from(quality); stream < streams.until(quality); stream++) {
      if (streams.ready(stream, grade) > 0) {
        sum += streams.mmAbove(stream, least, grade, thick, table.sellsAs, clock);
      }
    }
    return sum;
  }

  /** Sells a share of the plants of a quality that are ready as a grade, every slice alike. */
  void sell(Quality quality, int grade, double share) {
    double[] left = leftOfEach;
    int[] sellsAs = table.sellsAs;
    for (int thickFor = 0; thickFor < left.length; thickFor++) {
      left[thickFor] = sellsAs[thickFor] == grade ? 1 - share : 1;
    }
    int until = streams.until(quality);
    for (int stream = streams.from(quality); stream < until; stream++) {
      streams.sell(stream, grade, thick, left, share);
    }
    readyCells &= share == 1 ? ~cellBit(quality, grade) : -1;
  }

  /**
   * Plants standing by grade, waiting ones at the grade they have.
   *
   * @param trainingMonths whole months since training started, −1 if it has not
   * @param alive share of the plants that deaths have left
   * @param kept kept plants, but for deaths
   */
  GradedPlants standing(int trainingMonths, double alive, double kept) {
    measure();
    int[] has = GradeTable.at(trainingMonths, tables).has;
    GradedPlants standing = new GradedPlants(grades.length);
    double[] sums = new double[has.length];
    for (int stream = 0; stream < streams.size(); stream++) {
      Arrays.fill(sums, 0);
      streams.addUp(stream, thick, sums);
      for (int thickFor = 0; thickFor <= grades.length; thickFor++) {
        int grade = streams.mayGrade(stream) ? has[thickFor] : GradedPlants.NO_GRADE;
        standing.add(streams.quality(stream), grade, alive * sums[thickFor]);
      }
    }
    if (kept > 0) {
      for (short thickFor : thick) {
        standing.addKept(has[thickFor], alive * kept / thick.length);
      }
    }
    return standing;
  }

  /**
   * Share of the slices that a grade fits by now, as they would stand without sales and losses.
   *
   * @param grade index of the grade
   * @param trainingMonths whole months since training started, −1 if it has not
   */
  double shareGraded(int grade, int trainingMonths) {
    if (!GradeTable.isTrained(grades[grade], trainingMonths)) {
      return 0;
    }
    measure();
    int thickEnough = 0;
    for (short each : thick) {
      thickEnough += each > grade ? 1 : 0;
    }
    return (double) thickEnough / thick.length;
  }
}
