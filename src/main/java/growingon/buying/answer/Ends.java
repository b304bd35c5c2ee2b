package growingon.buying.answer;

import growingon.buying.engine.Engine;
import growingon.buying.engine.Outcome;
import growingon.buying.question.Candidate;
import growingon.buying.question.Choice.Take;
import growingon.buying.question.Question;
import growingon.buying.question.Spread;
import growingon.money.Finance;
import growingon.money.ListPrices;
import growingon.nursery.Nursery;
import growingon.nursery.Scenario;
import growingon.nursery.lot.Lot;
import growingon.nursery.lot.Offer;
import growingon.nursery.market.Quality;
import growingon.project.Projection;
import growingon.project.Projector;
import growingon.project.history.SeasonStock;
import growingon.project.history.Stood;
import growingon.project.lot.LotHistory;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * What an offer has gained by the end of each season, from the plan's end on until nine tenths of
 * what could be sold of it are sold, at most ten seasons more. Nothing is bought after the plan.
 */
final class Ends {
  private static final int MORE_SEASONS = 10;
  private static final int LAST_SEASON = 40;
  private static final double NOT_SOLD = 0.1;
  private static final int DRAWS = 200;

  private final Scenario scenario;
  private final List<Offer> orders;
  private final Projection longest;
  private final int planEnd;
  private final int judgedAt;
  private final boolean isSold;
  private final List<Spread> gains = new ArrayList<>();
  private final OptionalInt payback;

  /**
   * The ends of an offer.
   *
   * @param endings engines of longer plans made already, by number of seasons; more are added
   */
  Ends(
      Engine engine,
      PlanDraws planDraws,
      Candidate with,
      Candidate without,
      Take take,
      Map<Integer, Engine> endings) {
    this.scenario = engine.scenario();
    this.orders = take.orders();
    Question question = engine.question();
    int seasons = scenario.plan().seasons();
    this.planEnd = seasons - 1;
    int last = Math.min(seasons + MORE_SEASONS, Math.max(seasons, LAST_SEASON));
    this.longest = Projector.project(over(last).withLots(question.lots(with)));
    int at = planEnd;
    while (at < last - 1 && isUnsold(at)) {
      at++;
    }
    this.judgedAt = at;
    this.isSold = !isUnsold(at);
    for (int end = planEnd; end <= judgedAt; end++) {
      int longer = end + 1;
      Engine ending =
          end == planEnd
              ? engine
              : endings.computeIfAbsent(
                  longer, any -> new Engine(question, over(longer), engine.threads()));
      // Between the plan's end and the end of sales its line is enough.
      boolean drawn = end == planEnd || end == judgedAt;
      int draws = drawn ? Math.min(planDraws.draws(), DRAWS) : 0;
      gains.add(new PlanDraws(ending, draws).gain(with, without));
    }
    this.payback = payback(engine.line(with), engine.line(without));
  }

  private Scenario over(int seasons) {
    return new Scenario(scenario.nursery(), scenario.plan().withSeasons(seasons), scenario.lots());
  }

  private static OptionalInt payback(Outcome with, Outcome without) {
    double[] more = new double[with.cash().length];
    double before = 0;
    for (int month = 0; month < more.length; month++) {
      double together = with.cash()[month] - without.cash()[month];
      more[month] = together - before;
      before = together;
    }
    return Finance.payback(more);
  }

  private List<LotHistory> histories() {
    return orders.stream().map(order -> longest.lot(order.name())).toList();
  }

  /** Plants that could be sold one day and stand at a season's end. */
  double unsold(int season) {
    double plants = 0;
    for (LotHistory history : histories()) {
      plants += unsold(history, season);
    }
    return plants;
  }

  private double unsold(LotHistory history, int season) {
    Nursery nursery = scenario.nursery();
    double plants = 0;
    for (SeasonStock stock : history.seasons()) {
      for (Quality quality : Quality.values()) {
        boolean sells = nursery.qualities().get(quality).priceShare() > 0;
        plants += stock.season() == season && sells ? stock.standing().of(quality) : 0;
      }
    }
    return plants;
  }

  private boolean isUnsold(int season) {
    double bought = 0;
    for (LotHistory history : histories()) {
      bought += history.lot().quantity();
    }
    return unsold(season) > NOT_SOLD * bought;
  }

  /** What stands at the plan's end at list price. */
  double unsoldAtList() {
    ListPrices prices = new ListPrices(scenario.nursery());
    double sum = 0;
    for (LotHistory history : histories()) {
      Lot lot = history.lot();
      for (SeasonStock stock : history.seasons()) {
        for (int grade = 0; grade < history.grades().size() && stock.season() == planEnd; grade++) {
          double price = prices.of(lot, history.grades().get(grade).name()).orElse(0);
          for (Quality quality : Quality.values()) {
            double share = scenario.nursery().qualities().get(quality).priceShare();
            sum += stock.standing().of(quality, grade) * price * share;
          }
        }
      }
    }
    return sum;
  }

  int planEnd() {
    return planEnd;
  }

  /** Season at whose end it is judged. */
  int judgedAt() {
    return judgedAt;
  }

  /** Whether nine tenths are sold by then. */
  boolean isSold() {
    return isSold;
  }

  /** What it gains by then. */
  Spread gain() {
    return gains.get(gains.size() - 1);
  }

  /** First season from which on its mean gain is not below nil. */
  OptionalInt paysFrom() {
    int from = gains.size();
    while (from > 0 && gains.get(from - 1).mean() >= 0) {
      from--;
    }
    return from < gains.size() ? OptionalInt.of(planEnd + from) : OptionalInt.empty();
  }

  OptionalInt payback() {
    return payback;
  }

  /**
   * The landed price of a plant at which the mean gain is nil: a price takes as much from the gain
   * as it is more, discounted from the arrival.
   */
  OptionalDouble mostLanded(int number, double meanGain) {
    double rate = scenario.nursery().settings().discountRate();
    double paid = 0;
    double landed = 0;
    for (Offer order : orders) {
      double[] one = new double[Math.max(0, scenario.horizon().offset(order.arrival())) + 1];
      one[one.length - 1] = number;
      paid += Finance.presentValue(one, rate);
      landed += order.taken(number).purchase().orElseThrow().landed(number);
    }
    double most = landed / orders.size() / number + meanGain / paid;
    return most > 0 ? OptionalDouble.of(most) : OptionalDouble.empty();
  }

  /** Gain for a square metre and year that its plants stand on; NaN where they stand nowhere. */
  double yieldPerM2Year(double gain) {
    double m2Months = 0;
    int months = scenario.horizon().seasonLast(judgedAt) + 1;
    for (LotHistory history : histories()) {
      for (int month = 0; month < Math.min(months, history.months()); month++) {
        Stood stood = history.stood(month);
        m2Months += stood == null ? 0 : stood.m2();
      }
    }
    return 12 * gain / m2Months;
  }
}
