package growingon.report.edition;

import growingon.money.ListPrices;
import growingon.nursery.Nursery;
import growingon.nursery.Scenario;
import growingon.nursery.market.Grade;
import growingon.nursery.market.Quality;
import growingon.nursery.supply.Pot;
import growingon.nursery.time.Horizon;
import growingon.project.Projection;
import growingon.project.Projector;
import growingon.project.history.Sale;
import growingon.project.history.Stood;
import growingon.project.lot.Facts;
import growingon.project.lot.LotHistory;
import growingon.report.text.Phrases;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What of the plants that stand can be had this season and the next: those that may be sold at the
 * plan's first month, and those that reach the grade by the end of the next season. What the plan
 * sells within that time can be had as well. Nothing that is still to be bought is in it.
 */
final class Availability {
  /** Exact numbers are nobody's business, and a forecast of plants is no finer. */
  static final int ROUNDED_TO = 5;

  /** A number stands from the month in which so much of it does. */
  private static final double NEARLY_ALL = 0.9;

  private static final double NIL = 1e-9;
  private static final double HALF_A_PLANT = 0.5;

  private final Horizon horizon;
  private final Nursery nursery;
  private final Projection projection;
  private final int last;
  private final ListPrices prices;
  private final Phrases say;

  /**
   * A line of the list.
   *
   * @param ladder its grade ladder
   * @param species botanical or other name, as the nursery writes it
   * @param rank place of the grade on the ladder
   * @param grade name of the grade
   * @param size trunk from and to
   * @param litres of the pot, whole; 0 without one
   * @param quality first, second or third
   * @param price list price, each
   */
  record Key(
      String ladder,
      String species,
      int rank,
      String grade,
      String size,
      double litres,
      Quality quality,
      double price) {}

  /**
   * How many of it can be had.
   *
   * @param now plants in the plan's first month, in fives
   * @param first month in which the first of them stands free; empty where some are there now
   * @param more plants that come later, in fives
   * @param from when nearly all of these stand; empty where none come
   */
  record Line(Key key, int now, Optional<YearMonth> first, int more, Optional<YearMonth> from) {}

  Availability(Scenario scenario) {
    this.say = Phrases.of(scenario);
    this.projection = Projector.project(scenario, Facts.NONE);
    this.horizon = projection.horizon();
    this.nursery = scenario.nursery();
    this.prices = new ListPrices(nursery);
    this.last = horizon.seasonLast(Math.min(1, horizon.seasons() - 1));
  }

  /** The last month that it speaks of. */
  YearMonth until() {
    return horizon.month(last);
  }

  /** Lines by ladder, species, grade, pot and quality. */
  List<Line> lines() {
    Map<Key, double[]> had = new LinkedHashMap<>();
    projection.lots().stream()
        .filter(lot -> lot.lot().purchase().isEmpty())
        .forEach(lot -> add(lot, had));
    List<Line> lines = new ArrayList<>();
    had.forEach((key, byMonth) -> line(key, byMonth).ifPresent(lines::add));
    lines.sort(
        Comparator.comparing((Line line) -> line.key().ladder())
            .thenComparing(line -> line.key().species())
            .thenComparing(line -> line.key().rank())
            .thenComparing(line -> line.key().litres())
            .thenComparing(line -> line.key().quality()));
    return lines;
  }

  private void add(LotHistory lot, Map<Key, double[]> had) {
    double[][] gross = prices.gross(lot.lot());
    for (Quality quality : Quality.values()) {
      for (int grade = 0; grade < lot.grades().size(); grade++) {
        double price = gross[quality.ordinal()][grade + 1];
        double[] byMonth = had(lot, quality, grade);
        if (price > 0 && byMonth[last] > 0) {
          add(key(lot, quality, grade, price, byMonth), byMonth, had);
        }
      }
    }
  }

  private static void add(Key key, double[] byMonth, Map<Key, double[]> had) {
    double[] sum = had.computeIfAbsent(key, each -> new double[byMonth.length]);
    for (int month = 0; month < sum.length; month++) {
      sum[month] += byMonth[month];
    }
  }

  /** Most plants that could be had up to the end of each month, sold ones among them. */
  private double[] had(LotHistory lot, Quality quality, int grade) {
    double[] sold = new double[horizon.months()];
    for (Sale sale : lot.sales()) {
      sold[sale.month()] += sale.grade() == grade && sale.quality() == quality ? sale.units() : 0;
    }
    double[] had = new double[horizon.months()];
    double soldSoFar = 0;
    double most = 0;
    for (int month = 0; month < had.length; month++) {
      soldSoFar += sold[month];
      double ready = lot.monthStock(month).ready().of(quality, grade);
      most = Math.max(most, soldSoFar + ready);
      had[month] = most;
    }
    return had;
  }

  private Key key(LotHistory lot, Quality quality, int grade, double price, double[] byMonth) {
    int first = 0;
    while (byMonth[first] <= NIL) {
      first++;
    }
    Grade of = lot.grades().get(grade);
    String ladder = nursery.ladderOf(lot.lot()).name();
    return new Key(
        ladder,
        lot.lot().species(),
        grade,
        of.name(),
        size(lot.grades(), grade),
        litres(lot, first),
        quality,
        price);
  }

  private double litres(LotHistory lot, int month) {
    return Optional.ofNullable(lot.stood(month))
        .map(Stood::pot)
        .map(nursery.pots()::get)
        .map(Pot::brimLitres)
        .map(Math::rint)
        .orElse(0.0);
  }

  /** From the grade's least trunk up to that of the next grade that asks for a thicker one. */
  private String size(List<Grade> grades, int grade) {
    double least = grades.get(grade).leastTrunkMm();
    String from = say.whole(least);
    return grades.stream()
        .skip(grade)
        .mapToDouble(Grade::leastTrunkMm)
        .filter(next -> next > least)
        .mapToObj(next -> from + "–" + say.whole(next) + " mm")
        .findFirst()
        .orElse(from + " mm and more");
  }

  private Optional<Line> line(Key key, double[] byMonth) {
    int now = fives(byMonth[0]);
    int more = fives(byMonth[last] - now);
    if (now == 0 && more == 0) {
      return Optional.empty();
    }
    int month = 0;
    while (byMonth[month] < now + NEARLY_ALL * more - NIL) {
      month++;
    }
    Optional<YearMonth> from = more == 0 ? Optional.empty() : Optional.of(horizon.month(month));
    Optional<YearMonth> first =
        now > 0 ? Optional.empty() : Optional.of(horizon.month(first(byMonth)));
    return Optional.of(new Line(key, now, first, more, from));
  }

  /** The first month in which a plant stands, and not only a part of one. */
  private static int first(double[] byMonth) {
    int month = 0;
    while (byMonth[month] < HALF_A_PLANT) {
      month++;
    }
    return month;
  }

  private static int fives(double plants) {
    return (int) ((plants + NIL) / ROUNDED_TO) * ROUNDED_TO;
  }
}
