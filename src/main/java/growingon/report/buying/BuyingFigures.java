package growingon.report.buying;

import growingon.buying.answer.Answer;
import growingon.buying.answer.OfferAnswer;
import growingon.nursery.Scenario;
import growingon.nursery.Settings;
import growingon.nursery.lot.Hold;
import growingon.nursery.lot.Lot;
import growingon.nursery.time.Horizon;
import growingon.project.Projection;
import growingon.project.Projector;
import growingon.project.history.MonthStock;
import growingon.project.history.Sale;
import growingon.project.lot.Facts;
import growingon.project.lot.LotHistory;
import growingon.report.text.Phrases;
import growingon.report.text.Plants;
import growingon.whole.WholePlan;
import growingon.whole.WholeSale;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What is shown of an answer that is not in it: projections as given and as recommended. */
final class BuyingFigures {
  private static final double PLANT = 0.5;

  final Answer answer;
  final Projection given;
  final Projection recommended;
  private final Map<Projection, WholePlan> whole = new IdentityHashMap<>();
  final Horizon horizon;
  final Settings settings;
  final String currency;
  final Phrases say;

  BuyingFigures(Answer answer) {
    this.answer = answer;
    Scenario scenario = answer.inputs().scenario();
    this.horizon = scenario.horizon();
    this.settings = scenario.nursery().settings();
    this.say = Phrases.of(settings);
    this.currency = settings.currency();
    this.given = project(scenario, answer.lots(answer.question().asGiven()));
    this.recommended = project(scenario, answer.lots(answer.found().recommended()));
  }

  private static Projection project(Scenario scenario, List<Lot> lots) {
    return Projector.project(scenario.withLots(lots), Facts.NONE);
  }

  /** Lots of a name in a projection: one of stock, or each order of an offer. */
  List<LotHistory> histories(Projection projection, String name) {
    List<String> names = new ArrayList<>(List.of(name));
    answer.inputs().offers().stream()
        .filter(offer -> offer.name().equals(name))
        .forEach(offer -> offer.orders(horizon).forEach(order -> names.add(order.name())));
    return projection.lots().stream().filter(lot -> names.contains(lot.lot().name())).toList();
  }

  /**
   * Plants sold as a grade in a season.
   *
   * @param ladder the grade's ladder
   */
  record Sold(String ladder, String grade, int season) {}

  /** Plants of some lots sold, by grade and season. */
  Map<Sold, Double> sold(List<LotHistory> lots) {
    Map<Sold, Double> sold = new LinkedHashMap<>();
    for (LotHistory lot : lots) {
      String ladder = answer.inputs().scenario().nursery().ladderOf(lot.lot()).name();
      for (Sale sale : lot.sales()) {
        String grade = lot.grades().get(sale.grade()).name();
        sold.merge(
            new Sold(ladder, grade, horizon.season(sale.month())), sale.units(), Double::sum);
      }
    }
    return sold;
  }

  /** What is sold more as recommended than as given, most first. */
  List<Map.Entry<Sold, Double>> more(List<LotHistory> before, List<LotHistory> after) {
    Map<Sold, Double> more = sold(after);
    sold(before).forEach((what, plants) -> more.merge(what, -plants, Double::sum));
    return more.entrySet().stream()
        .filter(each -> each.getValue() >= PLANT)
        .sorted(Comparator.comparingDouble(each -> -each.getValue()))
        .toList();
  }

  /** Plants of lots sold in the plan's first season. */
  Plants soldThisSeason(Projection projection, List<LotHistory> lots) {
    WholePlan plan = whole.computeIfAbsent(projection, WholePlan::of);
    Plants sold = Plants.NONE;
    for (LotHistory lot : lots) {
      for (WholeSale sale : plan.lot(lot).sales()) {
        sold = horizon.season(sale.month()) == 0 ? sold.plus(sale.units(), sale.whole()) : sold;
      }
    }
    return sold;
  }

  /** Receipts of a season. */
  double receipts(Projection projection, int season) {
    double money = 0;
    for (LotHistory lot : projection.lots()) {
      for (Sale sale : lot.sales()) {
        money += horizon.season(sale.month()) == season ? sale.money() : 0;
      }
    }
    return money;
  }

  /** Plants standing after the plan's first month, by grade: 12 started, 30 branched. */
  String standingByGrade(List<LotHistory> lots) {
    Map<String, Double> byGrade = new LinkedHashMap<>();
    for (LotHistory lot : lots) {
      MonthStock stock = lot.monthStock(0);
      for (int grade = 0; grade < lot.grades().size(); grade++) {
        double plants = stock.standing().ofGrade(grade);
        byGrade.merge(lot.grades().get(grade).name(), plants, Double::sum);
      }
    }
    List<String> words = new ArrayList<>();
    byGrade.forEach(
        (grade, plants) -> {
          if (plants >= PLANT) {
            words.add(say.whole(plants) + " " + grade);
          }
        });
    return String.join(", ", words);
  }

  /** half of the best to stout, all to shaped, none. */
  String held(Optional<Hold> hold) {
    return hold.filter(some -> some.share() > 0)
        .map(some -> share(some) + " to " + some.grade())
        .orElse("none");
  }

  private String share(Hold hold) {
    if (hold.share() >= 1) {
      return "all";
    }
    String part =
        switch ((int) Math.round(100 * hold.share())) {
          case 25 -> "a quarter";
          case 50 -> "half";
          case 75 -> "three quarters";
          default -> say.percent(hold.share());
        };
    return hold.which() == Hold.Which.BEST ? "the best " + part.replaceFirst("^a ", "") : part;
  }

  /** Month by the end of which an offer must be ordered. */
  YearMonth orderBy(OfferAnswer offer) {
    var first = offer.take().orders().get(0);
    return first.orderBy().orElse(first.arrival().minusMonths(settings.orderLeadMonths()));
  }

  /** Money to three figures: 8,900; 12,300; 640. */
  String three(double amount) {
    return say.writing().threeFigures(amount);
  }

  /** Whether an amount is so small that it would be written as nothing. */
  static boolean isShownAsNil(double amount) {
    return Math.abs(amount) < 0.5;
  }

  String money(double amount) {
    return say.writing().money(currency, three(amount));
  }

  String season(int season) {
    return horizon.seasonName(season);
  }
}
