package growingon.report.compare;

import growingon.chance.Chances;
import growingon.chance.Quantiles;
import growingon.money.Accounts;
import growingon.money.CashItem;
import growingon.money.LotAccount;
import growingon.money.bought.BoughtLot;
import growingon.nursery.Nursery;
import growingon.nursery.time.Horizon;
import growingon.project.lot.LotHistory;
import growingon.project.need.SpaceUse;
import growingon.project.need.Supplies;
import growingon.report.compare.CompareReport.Side;
import growingon.report.model.Kind;
import growingon.report.text.Shown;
import growingon.whole.WholeLot;
import growingon.whole.WholeSale;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BinaryOperator;
import java.util.function.Function;

/** The figures of two plans, set against each other. */
record CompareFigures(Side first, Side second) {
  /** Less is shown as nil: half a unit of money, half a tenth of anything else. */
  private static final double HALF_A_UNIT = 0.5;

  private static final double HALF_A_TENTH = 0.05;

  /** Plans that differ by less were only made whole otherwise. */
  private static final double HALF_A_PLANT = 0.5;

  private static final Shown NONE = new Shown(Double.NaN, Double.NaN);

  /**
   * A topic with what differs in it, largest difference first.
   *
   * @param name of its table and sheet
   * @param unit unit of its values
   * @param kind what its values are
   * @param rows what differs
   */
  record Topic(String name, String unit, Kind kind, List<Pair> rows) {
    Topic {
      rows = List.copyOf(rows);
    }
  }

  /**
   * A figure in both plans, in full and as shown; NaN where a plan does not have it.
   *
   * @param what the figure
   * @param season season it is of, empty for the whole plan
   */
  record Pair(String what, String season, Shown before, Shown after) {
    Shown difference() {
      return orNil(after).plus(-orNil(before).exact(), -orNil(before).shown());
    }

    private static Shown orNil(Shown value) {
      return isNone(value) ? Shown.NOTHING : value;
    }

    static boolean isNone(Shown value) {
      return Double.isNaN(value.exact());
    }

    boolean differsBy(double least) {
      Shown by = difference();
      return Math.abs(by.exact()) > least && by.shown() != 0;
    }
  }

  /** In all; then sales, space, hours, purchases, cash, lots and chances. */
  List<Topic> topics() {
    String money = CompareReport.currency(first, second);
    return List.of(
        topic("In all", money, Kind.MONEY, CompareFigures::whole),
        topic("Sales", money, Kind.MONEY, CompareFigures::sales),
        shown("Plants sold", "plants", Kind.PLANTS, CompareFigures::plantsSold),
        topic("Space missing", "m², worst month", Kind.SQUARE_METRES, CompareFigures::space),
        topic("Hours", "hours", Kind.HOURS, CompareFigures::hours),
        topic("Purchases", money, Kind.MONEY, CompareFigures::purchases),
        topic("Cash", money, Kind.MONEY, CompareFigures::cash),
        topic("Lots", money, Kind.MONEY, CompareFigures::lots),
        topic("Chances", money, Kind.MONEY, CompareFigures::chances));
  }

  /** What a figure is of. */
  private record Of(String what, String season) {}

  /** The figures of one plan. */
  private interface Figures<T> {
    Map<Of, T> of(Side side);
  }

  private Topic topic(String name, String unit, Kind kind, Figures<Double> figures) {
    return shown(
        name,
        unit,
        kind,
        side -> {
          Map<Of, Shown> map = new LinkedHashMap<>();
          figures.of(side).forEach((of, value) -> map.put(of, withoutSignOfNil(value)));
          return map;
        });
  }

  private static Shown withoutSignOfNil(double value) {
    double number = value == 0 ? 0 : value;
    return new Shown(number, number);
  }

  private Topic shown(String name, String unit, Kind kind, Figures<Shown> figures) {
    double least =
        switch (kind) {
          case PLANTS -> HALF_A_PLANT;
          case MONEY -> HALF_A_UNIT;
          default -> HALF_A_TENTH;
        };
    Map<Of, Shown> before = figures.of(first);
    Map<Of, Shown> after = figures.of(second);
    Set<Of> all = new LinkedHashSet<>(before.keySet());
    all.addAll(after.keySet());
    List<Pair> pairs = new ArrayList<>();
    for (Of of : all) {
      Pair pair =
          new Pair(
              of.what(), of.season(), before.getOrDefault(of, NONE), after.getOrDefault(of, NONE));
      if (pair.differsBy(least)) {
        pairs.add(pair);
      }
    }
    pairs.sort(Comparator.comparingDouble((Pair pair) -> -Math.abs(pair.difference().shown())));
    return new Topic(name, unit, kind, pairs);
  }

  private static Map<Of, Double> whole(Side side) {
    Accounts accounts = side.accounts();
    Map<Of, Double> map = new LinkedHashMap<>();
    double[] balances = accounts.cash().balances();
    map.put(new Of("sales", ""), accounts.cash().total(CashItem.SALES));
    map.put(new Of("cash at the end", ""), balances[balances.length - 1]);
    map.put(new Of("lowest cash", ""), Arrays.stream(balances).min().getAsDouble());
    map.put(new Of("worth in today's money", ""), accounts.presentValue());
    map.put(new Of("unsold at the end, at list", ""), accounts.unsoldAtList());
    for (BoughtLot each : side.bought()) {
      map.put(new Of("gain of " + each.lot().name(), ""), each.presentValue());
      if (each.ending().isJudgedLater()) {
        map.put(
            new Of("gain of %s when it is judged, later".formatted(each.lot().name()), ""),
            each.judged().presentValue());
      }
    }
    return map;
  }

  private static Map<Of, Double> sales(Side side) {
    return bySale(side, WholeSale::money, Double::sum);
  }

  private static Map<Of, Shown> plantsSold(Side side) {
    return bySale(side, sale -> new Shown(sale.units(), sale.whole()), Shown::plus);
  }

  private static <T> Map<Of, T> bySale(
      Side side, Function<WholeSale, T> value, BinaryOperator<T> sum) {
    Map<Of, T> map = new LinkedHashMap<>();
    Horizon horizon = side.accounts().projection().horizon();
    for (WholeLot lot : side.whole().lots()) {
      LotHistory history = lot.history();
      for (WholeSale sale : lot.sales()) {
        String grade = history.grades().get(sale.grade()).name();
        String season = horizon.seasonName(horizon.season(sale.month()));
        Of of = new Of(history.lot().species() + ", " + grade, season);
        map.merge(of, value.apply(sale), sum);
      }
    }
    return map;
  }

  private static Map<Of, Double> space(Side side) {
    Map<Of, Double> map = new LinkedHashMap<>();
    Nursery nursery = side.inputs().scenario().nursery();
    if (nursery.places().isEmpty()) {
      return map;
    }
    Horizon horizon = side.accounts().projection().horizon();
    SpaceUse space = side.accounts().space();
    for (Optional<String> place : space.places()) {
      for (SpaceUse.PlaceMonth month : space.months(place)) {
        String season = horizon.seasonName(horizon.season(month.month()));
        String name = place.orElse("lots without a place");
        map.merge(new Of(name, season), month.overflowM2(), Math::max);
      }
    }
    return map;
  }

  private static Map<Of, Double> hours(Side side) {
    Map<Of, Double> map = new LinkedHashMap<>();
    Horizon horizon = side.accounts().projection().horizon();
    side.accounts().hours().byJob().forEach((job, hours) -> addBySeason(map, job, hours, horizon));
    double[] missing = new double[horizon.months()];
    Arrays.setAll(missing, side.accounts().hours()::shortBy);
    addBySeason(map, "hours short", missing, horizon);
    return map;
  }

  private static void addBySeason(
      Map<Of, Double> map, String what, double[] values, Horizon horizon) {
    for (int month = 0; month < values.length; month++) {
      String season = horizon.seasonName(horizon.season(month));
      map.merge(new Of(what, season), values[month], Double::sum);
    }
  }

  private static Map<Of, Double> purchases(Side side) {
    Map<Of, Double> map = new LinkedHashMap<>();
    Horizon horizon = side.accounts().projection().horizon();
    for (Supplies.Item item : side.accounts().supplies().items()) {
      double[] costs = new double[horizon.months()];
      Arrays.setAll(costs, item::cost);
      addBySeason(map, item.name(), costs, horizon);
    }
    for (CashItem item : new CashItem[] {CashItem.PLANTS, CashItem.CARRIAGE}) {
      double[] costs = new double[horizon.months()];
      Arrays.setAll(costs, month -> -side.accounts().cash().get(item, month));
      addBySeason(map, item.toString(), costs, horizon);
    }
    return map;
  }

  private static Map<Of, Double> cash(Side side) {
    Map<Of, Double> map = new LinkedHashMap<>();
    Horizon horizon = side.accounts().projection().horizon();
    double[] balances = side.accounts().cash().balances();
    for (int season = 0; season < horizon.seasons(); season++) {
      map.put(
          new Of("cash at the end of the season", horizon.seasonName(season)),
          balances[horizon.seasonLast(season)]);
    }
    for (CashItem item : CashItem.values()) {
      map.put(new Of(item + ", whole plan", ""), side.accounts().cash().total(item));
    }
    return map;
  }

  private static Map<Of, Double> lots(Side side) {
    Map<Of, Double> map = new LinkedHashMap<>();
    for (LotAccount lot : side.accounts().lots()) {
      String name = lot.lot().name();
      map.put(new Of(name + ": result", ""), lot.result());
      map.put(new Of(name + ": sales", ""), lot.sales());
      map.put(new Of(name + ": costs", ""), lot.costs());
    }
    return map;
  }

  /** What a tenth of all luck falls below, half of it, and nine tenths of it. */
  private static Map<Of, Double> chances(Side side) {
    Map<Of, Double> map = new LinkedHashMap<>();
    if (side.chances().isEmpty()) {
      return map;
    }
    Chances chances = side.chances().get();
    Horizon horizon = side.accounts().projection().horizon();
    for (int season = 0; season < horizon.seasons(); season++) {
      String name = horizon.seasonName(season);
      addQuantiles(map, "cash", name, chances.cash().get(horizon.seasonLast(season)));
      addQuantiles(map, "sales", name, chances.sales().get(season));
    }
    chances
        .lotResults()
        .forEach((lot, result) -> addQuantiles(map, "result of " + lot, "", result));
    return map;
  }

  private static void addQuantiles(
      Map<Of, Double> map, String what, String season, Quantiles quantiles) {
    map.put(new Of(what + ", P10", season), quantiles.p10());
    map.put(new Of(what + ", P50", season), quantiles.p50());
    map.put(new Of(what + ", P90", season), quantiles.p90());
  }
}
