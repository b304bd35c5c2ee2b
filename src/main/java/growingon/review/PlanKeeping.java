package growingon.review;

import growingon.chance.Chances;
import growingon.chance.LotDraws;
import growingon.money.Accounts;
import growingon.money.CostKind;
import growingon.money.ListPrices;
import growingon.nursery.Inputs;
import growingon.nursery.Nursery;
import growingon.nursery.Plan;
import growingon.nursery.Scenario;
import growingon.nursery.lot.Lot;
import growingon.nursery.lot.Offer;
import growingon.nursery.market.Grade;
import growingon.nursery.market.Quality;
import growingon.project.Projection;
import growingon.project.Projector;
import growingon.project.history.GradedPlants;
import growingon.project.lot.Facts;
import growingon.project.lot.LotHistory;
import growingon.review.book.LotMoney;
import growingon.review.kept.KeptBands;
import growingon.review.kept.KeptChances;
import growingon.review.kept.KeptJudged;
import growingon.review.kept.KeptJudging;
import growingon.review.kept.KeptLot;
import growingon.review.kept.KeptOffer;
import growingon.review.kept.KeptPlan;
import growingon.review.kept.KeptQuantiles;
import growingon.review.kept.KeptSale;
import growingon.review.kept.KeptSpan;
import growingon.review.kept.KeptWithin;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.IntConsumer;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;

/** Puts a plan into the form in which it is kept for a review. */
public final class PlanKeeping {
  private final Projection projection;
  private final Accounts accounts;

  private PlanKeeping(Scenario scenario) {
    this.projection = Projector.project(scenario, Facts.NONE);
    this.accounts = Accounts.of(projection);
  }

  /**
   * A plan with its draws, if it has any.
   *
   * @param inputs the plan
   * @param threads how many threads draw; their number changes nothing but the time
   * @param done told how many draws are done, from any thread
   */
  public static KeptPlan keep(Inputs inputs, int threads, IntConsumer done) {
    Scenario scenario = inputs.scenario();
    return scenario.plan().draws() == 0
        ? keepLine(inputs)
        : keep(inputs, new Drawn(scenario, threads, done));
  }

  /** Draws of a plan, and of the same with luck alone where the two can be told apart. */
  private static final class Drawn {
    final LotDraws all;
    final Optional<LotDraws> luck;

    Drawn(Scenario scenario, int threads, IntConsumer done) {
      this.all = LotDraws.draw(scenario, threads, done);
      this.luck = scenario.isKnown() ? Optional.of(all) : luckAlone(scenario, threads);
    }

    private static Optional<LotDraws> luckAlone(Scenario scenario, int threads) {
      return Chances.isToldApart(scenario)
          ? Optional.of(LotDraws.draw(scenario.known(), threads, each -> {}))
          : Optional.empty();
    }
  }

  private static KeptPlan keep(Inputs inputs, Drawn drawn) {
    List<KeptChances> chances = new ArrayList<>();
    for (int lot = 0; lot < inputs.scenario().lots().size(); lot++) {
      chances.add(chances(drawn.all.lot(lot)));
    }
    return keep(inputs, Optional.of(drawn), chances, chances(drawn.all.together()));
  }

  /** A plan's line alone. */
  public static KeptPlan keepLine(Inputs inputs) {
    List<KeptChances> none =
        inputs.scenario().lots().stream().map(lot -> KeptChances.NONE).toList();
    return keep(inputs, Optional.empty(), none, KeptChances.NONE);
  }

  private static KeptPlan keep(
      Inputs inputs, Optional<Drawn> drawn, List<KeptChances> chances, KeptChances nursery) {
    PlanKeeping keeping = new PlanKeeping(inputs.scenario());
    Plan plan = inputs.scenario().plan();
    List<KeptLot> lots = new ArrayList<>();
    for (int lot = 0; lot < chances.size(); lot++) {
      int index = lot;
      LotHistory history = keeping.projection.lots().get(lot);
      Optional<KeptJudging> judging = drawn.map(each -> keeping.judging(each, index, history));
      lots.add(keeping.lot(history, chances.get(lot), judging));
    }
    return new KeptPlan(
        plan.name(),
        plan.firstMonth().toString(),
        plan.seasons(),
        drawn.isPresent() ? plan.draws() : 0,
        plan.seed(),
        lots,
        nursery,
        drawn.map(each -> KeptBands.of(inputs.scenario())),
        inputs.offers().stream().map(offer -> offer(offer, inputs.scenario())).toList());
  }

  private static KeptChances chances(LotDraws.Figures figures) {
    return new KeptChances(
        quantiles(figures.living()),
        quantiles(figures.trunkMm()),
        quantiles(figures.unitsSold()),
        quantiles(figures.sales()),
        quantiles(figures.hours()),
        quantiles(figures.result()));
  }

  private static KeptQuantiles quantiles(List<LotDraws.Tenths> months) {
    return new KeptQuantiles(
        months.stream().map(LotDraws.Tenths::p10).toList(),
        months.stream().map(LotDraws.Tenths::p50).toList(),
        months.stream().map(LotDraws.Tenths::p90).toList());
  }

  private KeptJudging judging(Drawn drawn, int index, LotHistory history) {
    double[] died = new double[projection.horizon().months()];
    double sum = history.diedBefore();
    for (int month = 0; month < died.length; month++) {
      sum += history.died(month);
      died[month] = sum;
    }
    return new KeptJudging(
        judged(drawn.all.judged(index), hasPriceLuck(history.lot())),
        drawn.luck.map(luck -> judged(luck.judged(index), hasPriceLuck(history.lot()))),
        byMonth(month -> died[month]),
        listPrices(history.lot()),
        Optional.of(within(drawn.all.within(index))),
        drawn.luck.map(luck -> within(luck.within(index))));
  }

  private static KeptWithin within(LotDraws.Within of) {
    return new KeptWithin(of.living(), of.trunkMm(), of.unitsSold(), of.deaths(), of.price());
  }

  /** Whether the plan says how far prices spread; else every real price would be unlikely. */
  private boolean hasPriceLuck(Lot lot) {
    Nursery nursery = projection.scenario().nursery();
    return nursery.demand().stream()
        .filter(row -> row.ladder().equals(nursery.ladderOf(lot).name()))
        .anyMatch(row -> row.priceSpread() > 0);
  }

  private static KeptJudged judged(LotDraws.Judged figures, boolean hasPriceLuck) {
    return new KeptJudged(
        span(figures.deaths()),
        span(figures.trunkMm()),
        span(hasPriceLuck ? figures.price() : List.of()));
  }

  private static KeptSpan span(List<LotDraws.Span> months) {
    return new KeptSpan(
        months.stream().map(LotDraws.Span::p10).toList(),
        months.stream().map(LotDraws.Span::p90).toList(),
        months.stream().map(LotDraws.Span::outside).toList());
  }

  private Map<String, Double> listPrices(Lot lot) {
    Nursery nursery = projection.scenario().nursery();
    double[][] gross = new ListPrices(nursery).gross(lot);
    List<Grade> grades = nursery.ladderOf(lot).grades();
    Map<String, Double> prices = new LinkedHashMap<>();
    for (Quality quality : Quality.values()) {
      for (int grade = 0; grade < grades.size(); grade++) {
        double price = gross[quality.ordinal()][grade + 1];
        if (price > 0) {
          prices.put(KeptJudging.key(grades.get(grade).name(), quality.toString()), price);
        }
      }
    }
    return prices;
  }

  private KeptLot lot(LotHistory history, KeptChances chances, Optional<KeptJudging> judging) {
    LotMoney money = LotMoney.of(accounts.lot(history.lot().name()).ledger());
    Lot lot = history.lot();
    double[] result = new double[money.months()];
    double sum = 0;
    for (int month = 0; month < result.length; month++) {
      sum += money.result(month);
      result[month] = sum;
    }
    return KeptLot.named(lot.name(), lot.species())
        .supplier(lot.papers().supplier())
        .bought(lot.purchase().isPresent())
        .quantity(lot.quantity())
        .spentBefore(lot.unitCost() * lot.quantity())
        .living(byMonth(history::standing))
        .trunkMm(byMonth(month -> history.monthStock(month).meanTrunkMm()))
        .trunkSpread(byMonth(month -> history.monthStock(month).trunkSpread()))
        .byQuality(byQuality(history))
        .byGrade(byGrade(history))
        .sales(KeptSale.of(history))
        .hours(byMonth(month -> money.hours[month]))
        .costs(costs(money))
        .result(byMonth(month -> result[month]))
        .chances(chances)
        .judging(judging)
        .build();
  }

  private List<Double> byMonth(IntToDoubleFunction figure) {
    return IntStream.range(0, projection.horizon().months()).mapToDouble(figure).boxed().toList();
  }

  private Map<String, List<Double>> byQuality(LotHistory history) {
    Map<String, List<Double>> stock = new LinkedHashMap<>();
    for (Quality quality : Quality.values()) {
      stock.put(
          quality.toString(), byMonth(month -> history.monthStock(month).standing().of(quality)));
    }
    return stock;
  }

  private Map<String, List<Double>> byGrade(LotHistory history) {
    Map<String, List<Double>> stock = new LinkedHashMap<>();
    stock.put(
        "",
        byMonth(month -> history.monthStock(month).standing().allOfGrade(GradedPlants.NO_GRADE)));
    for (int grade = 0; grade < history.grades().size(); grade++) {
      int which = grade;
      stock.put(
          history.grades().get(grade).name(),
          byMonth(month -> history.monthStock(month).standing().allOfGrade(which)));
    }
    return stock;
  }

  private Map<String, List<Double>> costs(LotMoney money) {
    Map<String, List<Double>> costs = new LinkedHashMap<>();
    for (CostKind kind : CostKind.values()) {
      costs.put(kind.toString(), byMonth(month -> money.cost(kind, month)));
    }
    return costs;
  }

  private static KeptOffer offer(Offer offer, Scenario scenario) {
    int taken =
        scenario.lots().stream()
            .filter(lot -> lot.name().equals(offer.name()))
            .mapToInt(Lot::quantity)
            .sum();
    Lot lot = offer.lot();
    return KeptOffer.named(offer.name(), lot.species(), offer.arrival().toString())
        .taken(taken)
        .supplier(lot.papers().supplier())
        .passport(lot.papers().passport())
        .unitPrice(offer.unitPrice(taken > 0 ? taken : offer.least()))
        .currency(offer.currency())
        .rate(offer.rate())
        .carriage(offer.carriage())
        .importCharges(offer.importCharges())
        .trunkMm(lot.trunks().meanMm())
        .first(lot.quality().first())
        .second(lot.quality().second())
        .qualitySure(lot.quality().sure())
        .lossSure(offer.lossSure())
        .fails(offer.fails())
        .build();
  }
}
