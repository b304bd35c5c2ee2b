package growingon.chance;

import growingon.chance.Gamble.BreakEvens;
import growingon.chance.Gamble.Swing;
import growingon.chance.luck.Assumption;
import growingon.chance.luck.FixedLuck;
import growingon.chance.luck.Keyed;
import growingon.chance.luck.KnownOtherwise;
import growingon.chance.luck.NotKnown;
import growingon.chance.luck.Spreads;
import growingon.money.Finance;
import growingon.money.GradeNumbers;
import growingon.money.Tally;
import growingon.money.bought.BoughtLot;
import growingon.nursery.Scenario;
import growingon.nursery.Settings;
import growingon.nursery.lot.Lot;
import growingon.nursery.lot.Purchase;
import growingon.nursery.lot.QualityShares;
import growingon.nursery.lot.Trunks;
import growingon.nursery.market.Demand;
import growingon.nursery.market.MarketSure;
import growingon.nursery.route.Step;
import growingon.nursery.route.When;
import growingon.nursery.species.Species;
import growingon.nursery.species.Sure;
import growingon.project.GrowthPlace;
import growingon.project.Programme;
import growingon.project.lot.Luck;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleFunction;
import java.util.function.DoubleUnaryOperator;
import java.util.function.ToDoubleFunction;
import org.hipparchus.analysis.solvers.BrentSolver;
import org.hipparchus.distribution.continuous.BetaDistribution;

/** Moves one assumption at a time about a bought lot, on the real model. */
final class Sensitivity {
  /** Standard normal score of P90. */
  private static final double P90 = Keyed.normalQuantile(0.9);

  /** Between these factors on growth one is looked for at which the lot gains nil. */
  private static final double SLOWEST = 0.25;

  private static final double FASTEST = 2.5;
  private static final int SPEEDS = 15;

  private final Scenario scenario;
  private final Settings settings;
  private final Lot lot;
  private final Species species;
  private final Spreads spreads = new Spreads();
  private final Tally with;
  private final Tally without;
  private final double line;

  Sensitivity(Scenario scenario, Lot lot) {
    this.scenario = scenario;
    this.settings = scenario.nursery().settings();
    this.lot = lot;
    this.species = scenario.nursery().speciesOf(lot);
    GradeNumbers grades = new GradeNumbers(scenario.nursery());
    Programme programme = Programme.of(scenario);
    this.with = new Tally(programme, grades);
    this.without = new Tally(programme.without(lot.name()), grades);
    this.line = gain(Luck.NONE);
  }

  private double gain(Luck luck) {
    with.runBeside(List.of(without), luck);
    return Finance.presentValue(with.gainOver(without), settings.discountRate());
  }

  private Luck by(Assumption assumption, double score) {
    return luck(assumption, score, OptionalDouble.empty());
  }

  private Luck at(Assumption assumption, double share) {
    return luck(assumption, 0, OptionalDouble.of(share));
  }

  private Luck luck(Assumption assumption, double score, OptionalDouble share) {
    int seasons = scenario.plan().seasons();
    return new FixedLuck(assumption, score, seasons, lot, share, settings, spreads);
  }

  /** Every assumption that has a spread, widest swing first. */
  List<Swing> swings() {
    List<Swing> swings = new ArrayList<>();
    addGrowth(swings);
    addLosses(swings);
    addNotKnown(swings);
    addQuality(swings);
    addMarket(swings);
    if (settings.labourSpread() > 0) {
      swings.add(around(Assumption.MINUTES, settings.labourSpread(), scoreOfMean()));
    }
    addExchange(swings);
    addFailure(swings);
    swings.sort(Comparator.comparingDouble(Swing::width).reversed());
    return List.copyOf(swings);
  }

  private void addGrowth(List<Swing> swings) {
    if (species.yearSpread() > 0) {
      swings.add(around(Assumption.GROWTH, species.yearSpread(), scoreOfMean()));
    }
    double lotSpread = Spreads.ofLots(species, settings);
    if (lotSpread > 0) {
      swings.add(around(Assumption.GROWTH_OF_LOT, lotSpread, P90));
    }
  }

  private void addLosses(List<Swing> swings) {
    if (species.lossSpread() > 0 && species.laterLoss() > 0) {
      double deviation = species.laterLoss() * species.lossSpread();
      swings.add(lost(Assumption.LOSS, species.laterLoss(), deviation, scoreOfMean()));
    }
    double first = species.firstYearLoss();
    double deviation = Spreads.consignmentDeviation(lot, first);
    if (deviation > 0) {
      swings.add(lost(Assumption.CONSIGNMENT, first, deviation, P90));
    }
  }

  /** The score of P90 for the mean of all seasons. */
  private double scoreOfMean() {
    return P90 / Math.sqrt(scenario.plan().seasons());
  }

  /** A factor around 1. */
  private Swing around(Assumption assumption, double spread, double score) {
    return swing(
        assumption,
        percent(Keyed.lognormal(spread, -score)),
        percent(Keyed.lognormal(spread, score)));
  }

  /** A share of plants lost around its mean. */
  private Swing lost(Assumption assumption, double mean, double deviation, double score) {
    return swing(
        assumption,
        percent(spreads.share(mean, deviation, -score)),
        percent(spreads.share(mean, deviation, score)));
  }

  private Swing swing(Assumption assumption, String low, String high) {
    return swing(assumption, low, high, by(assumption, -P90), by(assumption, P90));
  }

  private Swing swing(Assumption assumption, String low, String high, Luck atLow, Luck atHigh) {
    return new Swing(
        assumption, species.name(), low, high, gain(atLow), line, gain(atHigh), Optional.empty());
  }

  /** What is not known, the same in all seasons. */
  private void addNotKnown(List<Swing> swings) {
    Map<String, Double> before = new LinkedHashMap<>();
    Map<String, Double> after = new LinkedHashMap<>();
    for (GrowthPlace where : GrowthPlace.of(with.programme())) {
      double sure = species.sure().growth().getOrDefault(where.condition(), 1.0);
      if (where.species().equals(species.name()) && sure < 1) {
        before.put(where.condition(), Sure.spread(sure));
        after.put(where.condition(), Sure.spread(sureAfter(where, sure)));
      }
    }
    if (!before.isEmpty()) {
      swings.add(growthNotKnown(before, after));
    }
    if (lot.trunks() instanceof Trunks.Usual) {
      swings.add(
          swing(
              Assumption.TRUNKS_NOT_KNOWN,
              percent(NotKnown.trunksAt(-P90)),
              percent(NotKnown.trunksAt(P90))));
    }
    addLossNotKnown(swings, true);
    addLossNotKnown(swings, false);
    MarketSure market = settings.market();
    if (market.prices() < 1) {
      double factor = factor(market.prices());
      swings.add(level(Assumption.PRICES_NOT_KNOWN, factor, f -> KnownOtherwise.market(f, 1)));
    }
    if (market.demand() < 1) {
      double factor = factor(market.demand());
      swings.add(level(Assumption.DEMAND_NOT_KNOWN, factor, f -> KnownOtherwise.market(1, f)));
    }
  }

  private double sureAfter(GrowthPlace where, double sure) {
    return where.mmASeason() > 0
        ? Measured.sureAfter(
            sure,
            Measured.plants(
                Measured.variance(species, settings, where.trunkMm(), where.mmASeason())))
        : sure;
  }

  private static double factor(double sure) {
    return Math.exp(P90 * Sure.spread(sure));
  }

  private Swing level(Assumption assumption, double factor, DoubleFunction<Luck> luck) {
    return swing(
        assumption,
        percent(1 / factor),
        percent(factor),
        luck.apply(1 / factor),
        luck.apply(factor));
  }

  private Swing growthNotKnown(Map<String, Double> before, Map<String, Double> after) {
    double widest = before.values().stream().max(Double::compare).orElseThrow();
    Swing now =
        swing(
            Assumption.GROWTH_NOT_KNOWN,
            percent(Math.exp(-P90 * widest)),
            percent(Math.exp(P90 * widest)),
            speeds(before, -P90),
            speeds(before, P90));
    return now.withMeasured(
        Optional.of(new Swing.Measured(gain(speeds(after, -P90)), gain(speeds(after, P90)))));
  }

  /** Growth of the species at a score of what is not known in each condition. */
  private Luck speeds(Map<String, Double> spreads, double score) {
    Map<String, Double> factors = new LinkedHashMap<>();
    spreads.forEach((condition, spread) -> factors.put(condition, Math.exp(score * spread)));
    return KnownOtherwise.speeds(species.name(), factors);
  }

  private void addLossNotKnown(List<Swing> swings, boolean firstYear) {
    double mean = firstYear ? species.firstYearLoss() : species.laterLoss();
    double sure = firstYear ? species.sure().firstYearLoss() : species.sure().laterLoss();
    if (sure < 1 && mean > 0) {
      double low = NotKnown.lossAt(spreads, mean, sure, -P90);
      double high = NotKnown.lossAt(spreads, mean, sure, P90);
      swings.add(
          swing(
              firstYear ? Assumption.FIRST_YEAR_LOSS_NOT_KNOWN : Assumption.LATER_LOSS_NOT_KNOWN,
              percent(low),
              percent(high),
              KnownOtherwise.loss(species.name(), firstYear, low / mean),
              KnownOtherwise.loss(species.name(), firstYear, high / mean)));
    }
  }

  private void addQuality(List<Swing> swings) {
    QualityShares stated = lot.quality();
    boolean unseen = !stated.sorted() && stated.sure() < 1;
    if (unseen && stated.first() > 0 && stated.first() < 1) {
      double seen = Spreads.plantsSeen(stated.sure());
      BetaDistribution firsts =
          new BetaDistribution(seen * stated.first(), seen * (1 - stated.first()));
      double low = firsts.inverseCumulativeProbability(0.1);
      double high = firsts.inverseCumulativeProbability(0.9);
      swings.add(
          swing(
              Assumption.FIRSTS,
              percent(low),
              percent(high),
              at(Assumption.FIRSTS, low),
              at(Assumption.FIRSTS, high)));
    }
  }

  private void addMarket(List<Swing> swings) {
    addMarket(swings, Assumption.UNITS, Demand::unitsSpread);
    addMarket(swings, Assumption.PRICE, Demand::priceSpread);
  }

  private void addMarket(List<Swing> swings, Assumption of, ToDoubleFunction<Demand> spread) {
    double widest =
        scenario.nursery().demand().stream()
            .filter(row -> row.species().map(lot.species()::equals).orElse(true))
            .filter(row -> row.ladder().equals(species.ladder()))
            .mapToDouble(spread)
            .max()
            .orElse(0);
    if (widest > 0) {
      double score = P90 / Math.sqrt(scenario.plan().seasons());
      String low = percent(Keyed.lognormal(widest, -score));
      String high = percent(Keyed.lognormal(widest, score));
      swings.add(swing(of, low, high));
    }
  }

  /** A lot is paid for once, so the rate swings as that of one season. */
  private void addExchange(List<Swing> swings) {
    String currency = lot.purchase().map(Purchase::currency).orElse(settings.currency());
    if (settings.exchangeSpread() > 0 && !currency.equals(settings.currency())) {
      swings.add(
          swing(
              Assumption.EXCHANGE,
              percent(Keyed.lognormal(settings.exchangeSpread(), -P90)),
              percent(Keyed.lognormal(settings.exchangeSpread(), P90))));
    }
  }

  private void addFailure(List<Swing> swings) {
    if (lot.purchase().map(Purchase::fails).orElse(0.0) > 0) {
      swings.add(
          swing(
              Assumption.FAILURE, "it does", "it does not", at(Assumption.FAILURE, 1), Luck.NONE));
    }
  }

  private String percent(double share) {
    return settings.writing().decimals(100 * share, share < 0.1 ? 1 : 0) + " %";
  }

  BreakEvens breakEvens(BoughtLot bought) {
    OptionalDouble dead = root(share -> gain(at(Assumption.FAILURE, share)), 0, 1);
    OptionalDouble survivors =
        dead.isPresent()
            ? OptionalDouble.of(100 * (1 - dead.getAsDouble()) * expectedFirstYear())
            : OptionalDouble.empty();
    OptionalDouble firsts =
        lot.quality().sorted()
            ? OptionalDouble.empty()
            : root(share -> gain(at(Assumption.FIRSTS, share)), 0, 1);
    List<double[]> turns = turns();
    return new BreakEvens(
        survivors,
        firsts,
        bought.bargain().leastPriceShare(),
        turns.size() == 1
            ? root(this::gainAtSpeed, turns.get(0)[0], turns.get(0)[1])
            : OptionalDouble.empty(),
        turns.size() > 1);
  }

  private double gainAtSpeed(double factor) {
    Map<String, Double> speeds = new LinkedHashMap<>();
    species.growth().keySet().forEach(condition -> speeds.put(condition, factor));
    return gain(KnownOtherwise.speeds(species.name(), speeds));
  }

  /** Factors on growth, next to each other, between which the gain changes its sign. */
  private List<double[]> turns() {
    List<double[]> turns = new ArrayList<>();
    double before = SLOWEST;
    double gainBefore = gainAtSpeed(before);
    for (int step = 1; step <= SPEEDS; step++) {
      double now = SLOWEST * Math.pow(FASTEST / SLOWEST, (double) step / SPEEDS);
      double gain = gainAtSpeed(now);
      if (gain >= 0 != gainBefore >= 0) {
        turns.add(new double[] {before, now});
      }
      before = now;
      gainBefore = gain;
    }
    return turns;
  }

  /** Share expected to live through the first year and the steps on arrival and in it. */
  private double expectedFirstYear() {
    double alive = 1 - species.firstYearLoss();
    for (Step step : scenario.nursery().routeOf(lot).steps()) {
      boolean inFirstYear =
          step.when() instanceof When.Arrival
              || step.when() instanceof When.InYear inYear && inYear.year() == 0;
      alive *= inFirstYear ? 1 - step.lossShare() : 1;
    }
    return alive;
  }

  private static OptionalDouble root(DoubleUnaryOperator gain, double from, double to) {
    double low = gain.applyAsDouble(from);
    double high = gain.applyAsDouble(to);
    if (low == 0) {
      return OptionalDouble.of(from);
    }
    return low * high > 0
        ? OptionalDouble.empty()
        : OptionalDouble.of(new BrentSolver(1e-6, 1e-4).solve(60, gain::applyAsDouble, from, to));
  }
}
