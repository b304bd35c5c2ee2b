package growingon.review;

import growingon.review.Trading.Cell;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;

/**
 * Splits the difference between a planned and a real result by cause: planned values are replaced
 * by real ones, one cause after the other in the order of {@link Cause}, and each takes what its
 * own replacement changes. What one of the two does not have (the grades of a quality that was not
 * sold, the price of a cell) is taken from the other, so that it causes nothing.
 */
final class Causes {
  /** Rounding of the reckoning, hundredths: what lies so near a whole one is a whole one. */
  private static final double ROUNDING = 1e-6;

  private final Trading planned;
  private final Trading real;

  private Causes(Trading planned, Trading real) {
    this.planned = planned;
    this.real = real;
  }

  /** Parts in the order of the causes; they sum to the difference in whole hundredths. */
  static List<CausePart> of(Trading planned, Trading real) {
    return new Causes(planned, real).parts();
  }

  private List<CausePart> parts() {
    double[] parts = new double[Cause.values().length];
    parts[Cause.COST.ordinal()] = planned.cost() - real.cost();
    parts[Cause.HOURS.ordinal()] = planned.hours() - real.hours();
    double before = planned.money();
    for (int cause = Cause.LOSSES.ordinal(); cause < parts.length; cause++) {
      double after = cause == parts.length - 1 ? real.money() : money(cause);
      parts[cause] = after - before;
      before = after;
    }
    return inCents(parts);
  }

  /** Sales with the values of all causes up to one real, the others as planned. */
  private double money(int upTo) {
    double living = from(upTo, Cause.LOSSES).living();
    double shareSold = bySold(from(upTo, Cause.UNITS_SOLD), Trading::shareSold);
    double sum = 0;
    for (Cell cell : Trading.cells(planned, real)) {
      Trading ofQuality = whoSells(from(upTo, Cause.QUALITY), each -> each.sold());
      Trading ofGrade = whoSells(from(upTo, Cause.GROWTH), each -> each.units(cell.quality()));
      Trading ofPrice = whoSells(from(upTo, Cause.PRICE), each -> each.prices(cell) ? 1 : 0);
      double share = ofQuality.qualityShare(cell.quality()) * ofGrade.gradeShare(cell);
      sum += share == 0 ? 0 : share * ofPrice.price(cell);
    }
    return living * shareSold * sum;
  }

  private Trading from(int upTo, Cause cause) {
    return cause.ordinal() <= upTo ? real : planned;
  }

  /** The one asked for, or the other where it has nothing to say. */
  private Trading whoSells(Trading asked, ToDoubleFunction<Trading> units) {
    return units.applyAsDouble(asked) > 0 ? asked : other(asked);
  }

  private double bySold(Trading asked, ToDoubleFunction<Trading> share) {
    return share.applyAsDouble(asked.living() > 0 ? asked : other(asked));
  }

  private Trading other(Trading one) {
    return one == planned ? real : planned;
  }

  /** Rounds by largest remainder, so that the parts sum to the rounded whole. */
  private static List<CausePart> inCents(double[] parts) {
    double sum = 0;
    long[] cents = new long[parts.length];
    double[] remainders = new double[parts.length];
    long given = 0;
    for (int i = 0; i < parts.length; i++) {
      double exact = parts[i] * 100;
      exact = Math.abs(exact - Math.rint(exact)) < ROUNDING ? Math.rint(exact) : exact;
      sum += exact;
      cents[i] = (long) Math.floor(exact);
      remainders[i] = exact - cents[i];
      given += cents[i];
    }
    List<Integer> largestFirst =
        IntStream.range(0, parts.length)
            .boxed()
            .sorted(Comparator.comparingDouble(i -> -remainders[i]))
            .toList();
    long left = Math.round(sum) - given;
    for (int i = 0; i < left; i++) {
      cents[largestFirst.get(i)]++;
    }
    List<CausePart> list = new ArrayList<>();
    for (Cause cause : Cause.values()) {
      list.add(new CausePart(cause, cents[cause.ordinal()]));
    }
    return list;
  }
}
