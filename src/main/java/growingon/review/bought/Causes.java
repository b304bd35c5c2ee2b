package growingon.review.bought;

import growingon.review.bought.CauseStep.Factor;
import growingon.review.bought.Trading.Cell;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;

/**
 * Splits the difference between a planned and a real result by cause: planned values are replaced
 * by real ones, one cause after the other in the order of {@link Cause}, and each takes what its
 * own replacement changes. Sales are plants living × share sold × money of a plant, and of the last
 * quality, growth, the grade sold and price each change a part. Factor one of the two does not have
 * (the grades of a quality that was not sold, the price of a cell) is taken from the other, so that
 * it causes nothing.
 */
record Causes(Trading planned, Trading real, GrownWorth grown) {
  /** Rounding of the reckoning, hundredths: what lies so near a whole one is a whole one. */
  private static final double ROUNDING = 1e-6;

  /**
   * Factor each cause replaces, in their order.
   *
   * @param gone plants that are not among the living, and of which no line says why
   */
  static List<CauseStep> steps(Trading planned, Trading real, GrownWorth grown, double gone) {
    return new Causes(planned, real, grown).steps(gone);
  }

  private List<CauseStep> steps(double gone) {
    List<CauseStep> steps = new ArrayList<>();
    steps.add(new CauseStep(Cause.COST, Factor.COSTS, planned.cost(), real.cost()));
    steps.add(new CauseStep(Cause.HOURS, Factor.COST_OF_HOURS, planned.hours(), real.hours()));
    double byLines = real.living() + gone;
    steps.add(new CauseStep(Cause.LOSSES, Factor.LIVING, planned.living(), byLines));
    steps.add(new CauseStep(Cause.NO_LINE, Factor.LIVING, byLines, real.living()));
    double before = money(0);
    double sorted = money(1);
    double grew = sorted + grown.more();
    double soldAs = money(2);
    double fetched = money(MIX_AND_PRICE);
    steps.add(ofAPlant(Cause.QUALITY, before, sorted));
    steps.add(ofAPlant(Cause.GROWTH, sorted, grew));
    steps.add(ofAPlant(Cause.GRADE_SOLD, grew, soldAs));
    steps.add(ofAPlant(Cause.PRICE, soldAs, fetched));
    steps.add(new CauseStep(Cause.BUYERS, Factor.SHARE_SOLD, shareSold(planned), shareSold(real)));
    return steps;
  }

  private static CauseStep ofAPlant(Cause cause, double planned, double real) {
    return new CauseStep(cause, Factor.MONEY_OF_A_PLANT, planned, real);
  }

  private static final int MIX_AND_PRICE = 3;

  /**
   * Money of a plant sold.
   *
   * @param isReal how many of quality, grade and price, in this order, are real and not planned
   */
  private double money(int isReal) {
    double sum = 0;
    for (Cell cell : Trading.cells(planned, real)) {
      Trading ofQuality = whoSells(isReal > 0 ? real : planned, Trading::sold);
      Trading ofGrade = whoSells(isReal > 1 ? real : planned, each -> each.units(cell.quality()));
      Trading ofPrice = whoSells(isReal > 2 ? real : planned, each -> each.prices(cell) ? 1 : 0);
      double share = ofQuality.qualityShare(cell.quality()) * ofGrade.gradeShare(cell);
      sum += share == 0 ? 0 : share * ofPrice.price(cell);
    }
    return sum;
  }

  /** The one wanted, or the other where it has nothing to say. */
  private Trading whoSells(Trading wanted, ToDoubleFunction<Trading> units) {
    return units.applyAsDouble(wanted) > 0 ? wanted : other(wanted);
  }

  private double shareSold(Trading wanted) {
    return (wanted.living() > 0 ? wanted : other(wanted)).shareSold();
  }

  private Trading other(Trading one) {
    return one == planned ? real : planned;
  }

  /** Parts of the steps in their order; they sum to the difference in whole hundredths. */
  static List<CausePart> parts(List<CauseStep> steps) {
    double living = of(steps, Factor.LIVING).planned();
    double sold = of(steps, Factor.SHARE_SOLD).planned();
    double each =
        steps.stream()
            .filter(step -> step.factor() == Factor.MONEY_OF_A_PLANT)
            .findFirst()
            .orElseThrow()
            .planned();
    double[] parts = new double[steps.size()];
    for (int i = 0; i < parts.length; i++) {
      CauseStep step = steps.get(i);
      switch (step.factor()) {
        case COSTS, COST_OF_HOURS -> parts[i] = -step.difference();
        case LIVING -> {
          parts[i] = step.difference() * sold * each;
          living = step.real();
        }
        case MONEY_OF_A_PLANT -> {
          parts[i] = living * sold * step.difference();
          each = step.real();
        }
        case SHARE_SOLD -> parts[i] = living * step.difference() * each;
      }
    }
    return inCents(steps, parts);
  }

  private static CauseStep of(List<CauseStep> steps, Factor what) {
    return steps.stream().filter(step -> step.factor() == what).findFirst().orElseThrow();
  }

  /** Rounds by largest remainder, so that the parts sum to the rounded whole. */
  private static List<CausePart> inCents(List<CauseStep> steps, double[] parts) {
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
    return IntStream.range(0, parts.length)
        .mapToObj(i -> new CausePart(steps.get(i).cause(), cents[i]))
        .toList();
  }
}
