package growingon.review;

import growingon.review.kept.Range;
import java.util.Optional;

/**
 * A figure as planned and as it came. Of plants it has whole numbers too, from which everything
 * that is printed adds up.
 *
 * @param planned by the plan, at the end of the daybook's last month
 * @param real by the daybook; where it says nothing, by the plan's assumptions for the plants that
 *     are there
 * @param isReal whether the daybook says it; if not, a report marks {@code real} "planned"
 * @param range what the plan's draws said of it; empty if there were none, or none of this figure
 * @param wholePlanned whole plants as planned
 * @param wholeReal whole plants as it came
 * @param byDaybook the part of {@code real} that the daybook says; the rest is assumed
 * @param wholeByDaybook the same in whole plants
 */
public record Compared(
    double planned,
    double real,
    boolean isReal,
    Optional<Range> range,
    long wholePlanned,
    long wholeReal,
    double byDaybook,
    long wholeByDaybook) {
  /** A figure whose whole numbers are the next ones. */
  public Compared(double planned, double real, boolean isReal, Optional<Range> range) {
    this(planned, real, isReal, range, Math.round(planned), Math.round(real));
  }

  private Compared(
      double planned,
      double real,
      boolean isReal,
      Optional<Range> range,
      long wholePlanned,
      long wholeReal) {
    this(
        planned,
        real,
        isReal,
        range,
        wholePlanned,
        wholeReal,
        isReal ? real : 0,
        isReal ? wholeReal : 0);
  }

  /** The same figure, of which the daybook says only a part. */
  Compared partly(double said) {
    return new Compared(
        planned, real, isReal, range, wholePlanned, wholeReal, said, Math.round(said));
  }

  /** The same figure against another plan. */
  Compared against(double of, Optional<Range> likely, long wholeOf) {
    return new Compared(of, real, isReal, likely, wholeOf, wholeReal, byDaybook, wholeByDaybook);
  }

  /** What the daybook does not say, but the plan assumes for what is there. */
  public double assumed() {
    return real - byDaybook;
  }

  /** The same in whole plants. */
  public long wholeAssumed() {
    return wholeReal - wholeByDaybook;
  }

  /** The same figure of so many whole plants. */
  Compared whole(long plannedPlants, long realPlants) {
    return new Compared(planned, real, isReal, range, plannedPlants, realPlants);
  }

  /** Both together; what the draws say of two figures does not add up. */
  public Compared plus(Compared other) {
    return new Compared(
        planned + other.planned,
        real + other.real,
        isReal || other.isReal,
        Optional.empty(),
        wholePlanned + other.wholePlanned,
        wholeReal + other.wholeReal,
        byDaybook + other.byDaybook,
        wholeByDaybook + other.wholeByDaybook);
  }

  /** This less another; what the draws say of two figures does not add up. */
  public Compared less(Compared other) {
    return new Compared(
        planned - other.planned,
        real - other.real,
        isReal || other.isReal,
        Optional.empty(),
        wholePlanned - other.wholePlanned,
        wholeReal - other.wholeReal,
        byDaybook - other.byDaybook,
        wholeByDaybook - other.wholeByDaybook);
  }

  /** Real less planned. */
  public double difference() {
    return real - planned;
  }
}
