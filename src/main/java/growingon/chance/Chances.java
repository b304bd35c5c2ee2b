package growingon.chance;

import growingon.money.Accounts;
import growingon.money.GradeName;
import growingon.money.bought.BoughtLot;
import growingon.nursery.Scenario;
import growingon.nursery.place.Place;
import growingon.nursery.time.Horizon;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.IntConsumer;

/**
 * How sure a plan is: quantiles over many draws, as src/doc/model.md says under Chances. Money is
 * in plan currency; months and seasons are counted from the plan's first, 0.
 *
 * @param draws number of draws
 * @param sales money by season
 * @param units plants sold of each grade by season
 * @param stock plants standing of each grade at each season's end, kept ones apart
 * @param space square metres needed in each place by month
 * @param chanceOfOverflow chance that a place overflows, by place and month, 0 to 1
 * @param hours hours needed by month
 * @param chanceOfShortHours chance that the hours do not suffice, by month; empty if none are
 *     stated
 * @param cash cash at the end of each month
 * @param chanceBelowLowest chance that cash falls below the lowest allowed in some month; empty if
 *     none is stated
 * @param values present value of the plan in each draw, in their order, unsold plants valued
 * @param standing plants alive at the end of each season
 * @param lotResults result of each lot over the plan, by name
 * @param gambles each lot bought within the plan
 * @param luckAlone the same with growth and losses taken as known; empty where they are, or where
 *     there is too much to draw
 * @param worthMeasuring what to measure first; empty where nothing can be said of it
 */
public record Chances(
    int draws,
    List<Quantiles> sales,
    Map<GradeName, List<Quantiles>> units,
    Map<GradeName, List<Quantiles>> stock,
    Map<String, List<Quantiles>> space,
    Map<String, double[]> chanceOfOverflow,
    List<Quantiles> hours,
    double[] chanceOfShortHours,
    List<Quantiles> cash,
    OptionalDouble chanceBelowLowest,
    double[] values,
    List<Quantiles> standing,
    Map<String, Quantiles> lotResults,
    List<Gamble> gambles,
    Optional<LuckAlone> luckAlone,
    Optional<WorthMeasuring> worthMeasuring) {
  /** Below this number of draws a report says that they are too few to tell. */
  public static final int FEW = 100;

  /** The most draws that are made with luck alone. */
  private static final int MOST_ALONE = 200;

  /** Lots times draws above which not knowing is not told apart, since it takes too long. */
  private static final int MOST_TO_TELL_APART = 400_000;

  /**
   * Draws a plan as often as it says.
   *
   * @param expected the plan's line
   * @param bought what each lot bought is worth on the plan's line
   * @param threads how many threads draw; their number changes nothing but the time
   * @param done told how many draws are done, from any thread
   */
  public static Chances draw(
      Accounts expected, List<BoughtLot> bought, int threads, IntConsumer done) {
    return draw(expected, bought, false, threads, done);
  }

  /**
   * Draws a plan as often as it says.
   *
   * @param expected the plan's line
   * @param bought what each lot bought is worth on the plan's line
   * @param worth whether luck and not knowing are told apart however long it takes
   * @param threads how many threads draw; their number changes nothing but the time
   * @param done told how many draws are done, from any thread
   */
  public static Chances draw(
      Accounts expected, List<BoughtLot> bought, boolean worth, int threads, IntConsumer done) {
    Scenario scenario = expected.projection().scenario();
    Samples samples = drawn(scenario, bought, threads, done);
    List<Gamble> gambles = new ArrayList<>();
    for (int i = 0; i < bought.size(); i++) {
      gambles.add(
          Gamble.of(
              expected,
              bought.get(i),
              samples.gainsByEnding[i],
              samples.paybacks[i],
              samples.endWorths[i]));
    }
    boolean apart = !scenario.isKnown() && (worth || isToldApart(scenario));
    return describe(
        scenario,
        samples,
        gambles,
        apart ? Optional.of(luckAlone(scenario, bought, threads)) : Optional.empty(),
        apart && scenario.plan().draws() >= FEW
            ? Optional.of(new Measuring(scenario, last(samples.cash), threads).find())
            : Optional.empty());
  }

  private static double[] last(double[][] byMonth) {
    return byMonth[byMonth.length - 1];
  }

  private static Samples drawn(
      Scenario scenario, List<BoughtLot> bought, int threads, IntConsumer done) {
    Samples samples = new Samples(scenario, bought.size(), Drawing.endings(scenario, bought));
    new Drawing(scenario, bought, samples).run(threads, done);
    return samples;
  }

  /** Whether luck alone is drawn too, to be told apart from what is not known. */
  public static boolean isToldApart(Scenario scenario) {
    long work = (long) scenario.lots().size() * scenario.plan().draws();
    return work <= MOST_TO_TELL_APART;
  }

  /** Half as many draws on the same luck. */
  private static LuckAlone luckAlone(Scenario scenario, List<BoughtLot> bought, int threads) {
    int draws = Math.min(MOST_ALONE, Math.max(1, scenario.plan().draws() / 2));
    Scenario known = scenario.known().withPlan(scenario.plan().withDraws(draws));
    return LuckAlone.of(drawn(known, bought, threads, each -> {}), draws);
  }

  private static Chances describe(
      Scenario scenario,
      Samples samples,
      List<Gamble> gambles,
      Optional<LuckAlone> luckAlone,
      Optional<WorthMeasuring> worthMeasuring) {
    Map<GradeName, List<Quantiles>> units = new LinkedHashMap<>();
    Map<GradeName, List<Quantiles>> stock = new LinkedHashMap<>();
    List<GradeName> grades = samples.grades.names();
    for (int grade = 0; grade < grades.size(); grade++) {
      units.put(grades.get(grade), Quantiles.each(samples.units[grade]));
      stock.put(grades.get(grade), Quantiles.each(samples.stock[grade]));
    }
    Map<String, List<Quantiles>> space = new LinkedHashMap<>();
    Map<String, double[]> overflow = new LinkedHashMap<>();
    int index = 0;
    for (Place place : scenario.nursery().places().values()) {
      double[][] needed = samples.space[index++];
      space.put(place.name(), Quantiles.each(needed));
      overflow.put(place.name(), overflow(place, needed, scenario.horizon()));
    }
    Map<String, Quantiles> results = new LinkedHashMap<>();
    for (int lot = 0; lot < scenario.lots().size(); lot++) {
      results.put(scenario.lots().get(lot).name(), Quantiles.of(samples.lotResults[lot]));
    }
    return new Chances(
        scenario.plan().draws(),
        Quantiles.each(samples.sales),
        units,
        stock,
        space,
        overflow,
        Quantiles.each(samples.hours),
        shortHours(scenario, samples),
        Quantiles.each(samples.cash),
        belowLowest(scenario, samples),
        samples.values,
        Quantiles.each(samples.standing),
        results,
        List.copyOf(gambles),
        luckAlone,
        worthMeasuring);
  }

  /** Chance that a place is too small, by month. */
  private static double[] overflow(Place place, double[][] needed, Horizon horizon) {
    double[] chance = new double[needed.length];
    for (int month = 0; month < chance.length; month++) {
      chance[month] = shareAbove(needed[month], place.capacityM2(horizon.month(month)) + 1e-9);
    }
    return chance;
  }

  private static double[] shortHours(Scenario scenario, Samples samples) {
    if (scenario.nursery().settings().hoursAvailable().isEmpty()) {
      return new double[0];
    }
    List<Double> available = scenario.nursery().settings().hoursAvailable().get();
    double[] chance = new double[samples.hours.length];
    for (int month = 0; month < chance.length; month++) {
      int monthOfYear = scenario.horizon().month(month).getMonthValue();
      chance[month] = shareAbove(samples.hours[month], available.get(monthOfYear - 1) + 1e-9);
    }
    return chance;
  }

  private static OptionalDouble belowLowest(Scenario scenario, Samples samples) {
    OptionalDouble lowest = scenario.nursery().settings().lowestCash();
    if (lowest.isEmpty()) {
      return OptionalDouble.empty();
    }
    int below = 0;
    for (int draw = 0; draw < scenario.plan().draws(); draw++) {
      double least = Double.POSITIVE_INFINITY;
      for (double[] month : samples.cash) {
        least = Math.min(least, month[draw]);
      }
      below += least < lowest.getAsDouble() - 1e-9 ? 1 : 0;
    }
    return OptionalDouble.of((double) below / scenario.plan().draws());
  }

  private static double shareAbove(double[] sample, double limit) {
    int above = 0;
    for (double each : sample) {
      above += each > limit ? 1 : 0;
    }
    return (double) above / sample.length;
  }
}
