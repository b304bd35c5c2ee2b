package growingon.load.own.usual;

import com.google.common.base.Suppliers;
import growingon.load.own.lot.Evergreens;
import growingon.load.own.lot.OwnLot;
import growingon.load.own.lot.UsualTrunk;
import growingon.load.own.size.PotSize;
import growingon.load.own.text.Keys;
import growingon.nursery.library.Library;
import growingon.nursery.library.Match;
import growingon.nursery.time.Hemisphere;
import java.time.YearMonth;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.apache.commons.lang3.StringUtils;

/**
 * All that a plan needs and a list does not say, with usual values: species by the library, pots,
 * places, routes, grades, prices, settings. Rows as texts by heading, as a grower would type them.
 */
public final class UsualNursery {
  /** The edition of the usual values. */
  public static final String EDITION = "2026-11";

  static final double LARGE_POT = 10;
  static final String TRAINING_POT = "training pot";

  private final List<OwnLot> lots;
  private final List<OwnLot> offers;
  private final String name;
  private final String currency;
  private final YearMonth firstMonth;
  private final boolean south;
  private final Map<String, Boolean> evergreen = new HashMap<>();
  private final Supplier<Map<String, List<Map<String, String>>>> laidOut =
      Suppliers.memoize(() -> Collections.unmodifiableMap(layOut()));

  /**
   * The usual nursery of lots.
   *
   * @param lots each with its species called as the plan calls it
   * @param name of the nursery
   * @param currency of its money
   * @param firstMonth of the plan
   * @param south whether it lies south of the equator
   */
  public UsualNursery(
      List<OwnLot> lots, String name, String currency, YearMonth firstMonth, boolean south) {
    this(lots, List.of(), name, currency, firstMonth, south);
  }

  /**
   * The same with what is offered to it: its plants, pots and routes are there too, and nothing is
   * sold or stands on its account.
   */
  public UsualNursery(
      List<OwnLot> lots,
      List<OwnLot> offers,
      String name,
      String currency,
      YearMonth firstMonth,
      boolean south) {
    Map<String, String> names = Called.most(lots.isEmpty() ? offers : lots);
    Called.most(offers).forEach(names::putIfAbsent);
    Map<String, String> spelt = new HashMap<>();
    this.lots = calledAlike(lots, names, spelt);
    this.offers = calledAlike(offers, names, spelt);
    this.name = name;
    this.currency = currency;
    this.firstMonth = firstMonth;
    this.south = south;
    all().forEach(lot -> evergreen.put(lot.called(), Evergreens.isOne(lot)));
  }

  /** What stands and what is offered. */
  private List<OwnLot> all() {
    return Stream.concat(lots.stream(), offers.stream()).toList();
  }

  /** The offers, called as the lots are. */
  public List<OwnLot> offers() {
    return offers;
  }

  /** The lots, those of one taxon called alike. */
  public List<OwnLot> lots() {
    return lots;
  }

  private static List<OwnLot> calledAlike(
      List<OwnLot> lots, Map<String, String> most, Map<String, String> spelt) {
    List<OwnLot> alike = new ArrayList<>();
    for (OwnLot lot : lots) {
      String called = lot.taxon().map(most::get).orElse(lot.called());
      alike.add(lot.calledAs(spelt.computeIfAbsent(Keys.of(called), each -> called)));
    }
    return List.copyOf(alike);
  }

  private String ladder(OwnLot lot) {
    return evergreen.get(lot.called()) ? "evergreen pot trees" : "deciduous pot trees";
  }

  /** Trunk of a lot, mm: the middle of what the list states, else the usual one. */
  static double trunkMm(OwnLot lot) {
    return lot.trunkFromMm().isPresent()
        ? (lot.trunkFromMm().getAsDouble()
                + lot.trunkToMm().orElse(lot.trunkFromMm().getAsDouble()))
            / 2
        : UsualTrunk.mm(lot);
  }

  /** Every table, its rows in order. */
  public Map<String, List<Map<String, String>>> tables() {
    return laidOut.get();
  }

  private Map<String, List<Map<String, String>>> layOut() {
    Map<String, List<Map<String, String>>> tables = new LinkedHashMap<>();
    Set<String> ladders = new TreeSet<>(all().stream().map(this::ladder).toList());
    tables.put("species", species());
    tables.put("grades", UsualMarket.grades(ladders));
    tables.put(
        "demand", new UsualMarket(lots, UsualNursery::trunkMm, this::ladder).demand(ladders));
    tables.put("routes", UsualRoutes.rows(routes(), south));
    tables.put("pots", pots());
    tables.put("mixes", UsualSupplies.mixes());
    tables.put("components", UsualSupplies.components());
    tables.put("materials", UsualSupplies.materials());
    tables.put("places", UsualPlaces.rows(lots));
    tables.put("settings", settings());
    return tables;
  }

  /** What a season sells by the usual units and prices. */
  public UsualSeason season() {
    return UsualSeason.of(tables().get("demand"));
  }

  private List<Map<String, String>> species() {
    Map<String, Map<String, String>> rows = new LinkedHashMap<>();
    for (OwnLot lot : all()) {
      rows.computeIfAbsent(lot.called(), name0 -> speciesRow(lot));
    }
    return List.copyOf(rows.values());
  }

  private Map<String, String> speciesRow(OwnLot lot) {
    boolean potted =
        all().stream()
            .anyMatch(each -> each.called().equals(lot.called()) && each.potLitres().isPresent());
    String kind = evergreen.get(lot.called()) ? "evergreen" : "deciduous";
    return row(
        "species", lot.called(),
        "ladder", ladder(lot),
        "library", lot.taxon().orElse(standIn(lot, kind)),
        "usual condition", potted ? TRAINING_POT : "field");
  }

  private static String standIn(OwnLot lot, String kind) {
    return lot.standIn().isEmpty() || !(Library.shipped().find(lot.standIn()) instanceof Match.One)
        ? kind
        : StringUtils.capitalize(lot.standIn());
  }

  private List<Map<String, String>> pots() {
    Map<Double, Map<String, String>> byLitres = new TreeMap<>();
    for (double litres : new double[] {3, 7.5, 15, 30}) {
      byLitres.put(litres, UsualSupplies.pot(PotSize.ofLitres(litres)));
    }
    Map<String, Map<String, String>> rows = new LinkedHashMap<>();
    byLitres.values().forEach(row -> rows.put(row.get("pot"), row));
    for (OwnLot lot : all()) {
      if (lot.potLitres().isPresent()) {
        rows.putIfAbsent(
            lot.pot(), UsualSupplies.pot(new PotSize(lot.pot(), lot.potLitres().getAsDouble())));
      }
    }
    return List.copyOf(rows.values());
  }

  private List<Map<String, String>> settings() {
    Map<String, String> values = new LinkedHashMap<>();
    values.put("name", name);
    values.put("currency", currency);
    values.put("hourly rate", "15");
    values.put("discount rate % a year", "4");
    values.put("hours a week", "40");
    values.put("opening cash", "0");
    values.put("minutes a sale", "3");
    values.put("prices sure %", "50");
    values.put("demand sure %", "50");
    values.put("usual values of", EDITION);
    return values.entrySet().stream()
        .map(each -> row("name", each.getKey(), "value", each.getValue()))
        .toList();
  }

  /** Its row in the stock table. */
  public Map<String, String> stockRow(OwnLot lot) {
    Map<String, String> row =
        row(
            "lot", lot.lot(),
            "species", lot.called(),
            "form", form(lot),
            "quantity", Integer.toString(lot.quantity().orElse(0)),
            "arrived", arrived(lot).toString(),
            "route", route(lot));
    stands(lot, row);
    if (lot.potLitres().isPresent()) {
      lot.potted()
          .filter(month -> !month.isAfter(firstMonth))
          .ifPresent(month -> row.put("potted", month.toString()));
    }
    if (UsualRoutes.isTraining(route(lot))) {
      row.put(
          "training since",
          lot.potted().filter(month -> !month.isAfter(firstMonth)).orElse(arrived(lot)).toString());
    }
    put(row, "place", lot.place());
    lot.kept()
        .ifPresent(
            kept -> row.put("kept", Integer.toString(Math.min(kept, lot.quantity().orElse(0)))));
    lot.unitCost()
        .ifPresent(cost -> row.put("unit cost", PotSize.plain(Math.rint(cost * 1e4) / 1e4)));
    papers(lot, row);
    lot.stated().put(row, arrived(lot), firstMonth);
    return row;
  }

  public static String form(OwnLot lot) {
    return !lot.form().isEmpty()
        ? lot.form()
        : lot.potLitres().isPresent() ? "container" : "bare root";
  }

  /** Its trunk, and the room it stands in. */
  private static void stands(OwnLot lot, Map<String, String> row) {
    UsualTrunk.put(lot, row);
    if (lot.potLitres().isPresent()) {
      row.put("pot", lot.pot());
      row.put("gap mm", lot.potLitres().getAsDouble() < LARGE_POT ? "0" : "80");
    } else {
      row.put("plants per m2", PotSize.plain(UsualPlaces.plantsAM2(lot, trunkMm(lot))));
    }
    lot.heightCm().ifPresent(cm -> row.put("height left mm", PotSize.plain(Math.rint(cm * 10))));
  }

  private static void papers(OwnLot lot, Map<String, String> row) {
    put(row, "supplier", lot.supplier());
    put(row, "passport", lot.passport());
    put(row, "origin", lot.origin());
    put(row, "note", lot.note());
    row.put("apart months", "0");
  }

  private static void put(Map<String, String> row, String heading, String value) {
    if (!value.isEmpty()) {
      row.put(heading, value.length() > 500 ? value.substring(0, 500) : value);
    }
  }

  /**
   * The stated arrival, the month before the plan at the latest; else a year before it, or when the
   * plants were counted, if that was earlier.
   */
  YearMonth arrived(OwnLot lot) {
    YearMonth latest = firstMonth.minusMonths(1);
    YearMonth usual = firstMonth.minusMonths(12);
    YearMonth by = lot.stated().counted().filter(usual::isAfter).orElse(usual);
    YearMonth stated = lot.arrived().orElse(by);
    return stated.isAfter(latest) ? latest : stated;
  }

  private String route(OwnLot lot) {
    YearMonth since = lot.potted().filter(month -> month.isBefore(firstMonth)).orElse(arrived(lot));
    int stood = (int) ChronoUnit.MONTHS.between(since, firstMonth);
    return UsualRoutes.of(lot, trunkMm(lot), evergreen.get(lot.called()), stood);
  }

  /** When the steps of a route are due in the south, by route, step and what it is in the north. */
  public Map<List<String>, String> turnedSouth() {
    List<Map<String, String>> north = UsualRoutes.rows(routes(), false);
    List<Map<String, String>> there = UsualRoutes.rows(routes(), true);
    Map<List<String>, String> turned = new HashMap<>();
    for (int i = 0; i < north.size(); i++) {
      String when = there.get(i).get("when");
      if (!when.equals(north.get(i).get("when"))) {
        turned.put(
            List.of(north.get(i).get("route"), north.get(i).get("step"), north.get(i).get("when")),
            when);
      }
    }
    return turned;
  }

  private Set<String> routes() {
    Set<String> routes = new LinkedHashSet<>(lots.stream().map(this::route).toList());
    offers.forEach(offer -> routes.add(routeOf(offer)));
    return routes;
  }

  /** What comes without a pot is bought to be potted, however many are there. */
  private String routeOf(OwnLot offer) {
    return offer.potLitres().isPresent()
        ? UsualRoutes.of(offer, trunkMm(offer), evergreen.get(offer.called()), 0)
        : UsualRoutes.lifted(evergreen.get(offer.called()));
  }

  /**
   * The row of an offer in the table of offers, none of it taken.
   *
   * @param its currency, empty for that of the nursery
   */
  public Map<String, String> offerRow(OwnLot offer, String its) {
    Map<String, String> row =
        row(
            "offer", offer.lot(),
            "take", "no",
            "species", offer.called(),
            "form", form(offer),
            "unit price", PotSize.plain(Math.rint(offer.unitCost().orElse(0) * 1e4) / 1e4),
            "arrival month", arrival(offer).toString(),
            "route", routeOf(offer));
    put(row, "currency", its);
    offer.terms().least().ifPresent(number -> row.put("least", Integer.toString(number)));
    offer.terms().multiple().ifPresent(number -> row.put("multiple", Integer.toString(number)));
    offer.quantity().ifPresent(number -> row.put("most", Integer.toString(number)));
    stands(offer, row);
    papers(offer, row);
    row.putAll(offer.stated().cells());
    return row;
  }

  /** The rows of an offer for more of it than the least, at other prices. */
  public List<Map<String, String>> breakRows(OwnLot offer) {
    return offer.terms().breaks().entrySet().stream()
        .map(
            each ->
                row(
                    "offer", offer.lot(),
                    "least", Integer.toString(each.getKey()),
                    "unit price", PotSize.plain(Math.rint(each.getValue() * 1e4) / 1e4)))
        .toList();
  }

  /** The stated month, the first of the plan at the earliest; from the ground not before autumn. */
  public YearMonth arrival(OwnLot offer) {
    YearMonth stated = offer.arrived().orElse(firstMonth);
    YearMonth month = stated.isBefore(firstMonth) ? firstMonth : stated;
    if (offer.arrived().isEmpty() && offer.potLitres().isEmpty()) {
      Hemisphere half = south ? Hemisphere.SOUTH : Hemisphere.NORTH;
      while (!half.dormantSeason().contains(month.getMonthValue())) {
        month = month.plusMonths(1);
      }
    }
    return month;
  }

  static Map<String, String> row(String... cells) {
    Map<String, String> row = new LinkedHashMap<>();
    for (int i = 0; i < cells.length; i += 2) {
      row.put(cells[i], cells[i + 1]);
    }
    return row;
  }
}
