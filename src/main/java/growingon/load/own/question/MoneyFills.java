package growingon.load.own.question;

import growingon.load.own.lot.OwnLot;
import growingon.load.own.lot.UsualTrunk;
import growingon.load.own.row.ListRead;
import growingon.load.own.size.PotSize;
import growingon.load.own.usual.UsualNursery;
import growingon.load.own.usual.UsualSeason;
import growingon.nursery.library.Library;
import growingon.nursery.library.Taxon;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/** What is asked of money and growth. */
final class MoneyFills {
  private static final String MONEY = ToFill.MONEY;
  private static final String ALL_SPECIES = "*";
  private static final String HOURLY_RATE = "hourly rate";

  private final List<ListRead> lists;
  private final UsualNursery usual;
  private final String currency;
  private final List<Fill> fills = new ArrayList<>();

  MoneyFills(List<ListRead> lists, UsualNursery usual, String currency) {
    this.lists = lists;
    this.usual = usual;
    this.currency = currency;
  }

  /** The rows in order. */
  List<Fill> all() {
    currency(lists).ifPresent(fills::add);
    lastYear();
    prices();
    classes();
    add(
        "1",
        "Do your trees grow faster or slower than usual? 1.2 is a fifth faster",
        "times",
        "when all trees are ready",
        "settings",
        "site speed",
        "value",
        Range.OF_SPEEDS);
    unknownSpecies();
    add(
        setting(HOURLY_RATE),
        "What does an hour of work cost?",
        currency,
        "all work",
        "settings",
        HOURLY_RATE,
        "value",
        Range.OF_WAGES);
    units();
    return fills;
  }

  private void add(
      String its,
      String question,
      String unit,
      String moves,
      String table,
      String row,
      String column,
      Range range) {
    double usually = Double.parseDouble(its);
    fills.add(
        new Fill(its, question, unit, moves, table, row, column, MONEY, false)
            .between(range.low(usually), range.high(usually)));
  }

  /**
   * A low and a high usual value.
   *
   * @param times the usual value the high one is, and the low one the usual value by
   * @param least of what is sold in whole plants
   */
  private record Range(double times, double least) {
    /** Prices of like trees between nurseries: common practice, no source. */
    static final Range OF_PRICES = new Range(1.4, 0);

    /** What is sold of what is ready, and in all: common practice, no source. */
    static final Range OF_SALES = new Range(2, 0);

    static final Range OF_UNITS = new Range(2, 1);

    /** Nurseries in pots by the library: its spread between sites, 0.30, times 1.2816. */
    static final Range OF_SPEEDS = new Range(1.5, 0);

    /** As the spread of usual trunks. */
    static final Range OF_TRUNKS = new Range(1.3, 0);

    /** An hour with what is paid on it: common practice, no source. */
    static final Range OF_WAGES = new Range(1.6, 0);

    String low(double usually) {
      return written(Math.max(least, usually / times));
    }

    String high(double usually) {
      return written(usually * times);
    }

    /** In whole numbers, of less than ten in tenths, of more than a thousand in three figures. */
    private String written(double value) {
      double tens = Math.pow(10, Math.max(0, Math.floor(Math.log10(value)) - 2));
      double step = value < 10 && least == 0 ? 0.1 : tens;
      return UsualSeason.written(Math.rint(Math.rint(value / step) * step * 10) / 10);
    }
  }

  private String setting(String name) {
    return usual.tables().get("settings").stream()
        .filter(row -> row.get("name").equals(name))
        .map(row -> row.get("value"))
        .findFirst()
        .orElseThrow();
  }

  private List<Map<String, String>> demandOfAll() {
    return usual.tables().get("demand").stream()
        .filter(row -> row.get("species").equals(ALL_SPECIES))
        .toList();
  }

  private static String named(Map<String, String> demand) {
    return "%s, %s".formatted(demand.get("ladder"), demand.get("grade"));
  }

  private void lastYear() {
    add(
        Long.toString(Math.round(usual.season().sales())),
        "What did you sell last year, without VAT?",
        currency,
        "all usual prices and units",
        "demand",
        UsualSeason.LAST_YEAR,
        UsualSeason.SALES,
        Range.OF_SALES);
    add(
        Long.toString(Math.round(usual.season().trees())),
        "About how many trees was that?",
        "plants",
        "all usual prices and units",
        "demand",
        UsualSeason.LAST_YEAR,
        UsualSeason.TREES,
        Range.OF_SALES);
  }

  private void prices() {
    for (Map<String, String> row : demandOfAll()) {
      add(
          row.get("price"),
          "What does a %s tree sell for? (%s)".formatted(row.get("grade"), row.get("ladder")),
          currency + " without VAT",
          "all sales of that grade",
          "demand",
          named(row),
          "price",
          Range.OF_PRICES);
    }
  }

  private void units() {
    for (Map<String, String> row : demandOfAll()) {
      add(
          row.get("units"),
          "How many %s trees do you sell in a season? (%s)"
              .formatted(row.get("grade"), row.get("ladder")),
          "plants",
          "all sales of that grade",
          "demand",
          named(row),
          "units",
          Range.OF_UNITS);
    }
  }

  private void unknownSpecies() {
    for (Map<String, String> row : usual.tables().get("species")) {
      if (row.get("library").equals("deciduous") || row.get("library").equals("evergreen")) {
        fills.add(
            new Fill(
                    row.get("library"),
                    "%s is not in the library: which plant there is it most like?"
                        .formatted(row.get("species")),
                    "",
                    "its growth and losses",
                    "species",
                    row.get("species"),
                    "library",
                    MONEY,
                    false)
                .between(ofKind(row.get("library"), 0.1), ofKind(row.get("library"), 0.9)));
      }
    }
  }

  /** The plant of a kind than which a share of its kind grow slower. */
  private static String ofKind(String kind, double share) {
    List<Taxon> kin =
        Library.shipped().taxa().stream()
            .filter(taxon -> taxon.habit().toString().equals(kind))
            .sorted(Comparator.comparing(Taxon::fieldMm))
            .toList();
    return kin.get((int) Math.rint(share * (kin.size() - 1))).species();
  }

  /** Where the prices do not say it, the currency is asked for. */
  private static Optional<Fill> currency(List<ListRead> lists) {
    Set<String> signs = new HashSet<>();
    boolean stock = lists.stream().anyMatch(list -> !list.kind().isOffers());
    lists.stream()
        .filter(list -> !stock || !list.kind().isOffers())
        .forEach(list -> signs.addAll(list.currencies()));
    return signs.size() == 1
        ? Optional.empty()
        : Optional.of(
            new Fill(
                    "EUR",
                    "Which is the currency of your prices? as GBP, EUR or USD",
                    "",
                    "all money",
                    "settings",
                    "currency",
                    "value",
                    MONEY,
                    false)
                .choosing(List.of("GBP", "EUR", "USD", "CHF")));
  }

  /** The classes of usual trunks with most plants. */
  private void classes() {
    Map<String, Long> plants = new LinkedHashMap<>();
    Map<String, Double> trunk = new LinkedHashMap<>();
    Map<String, Set<String>> sizes = new HashMap<>();
    for (OwnLot lot : usual.lots().isEmpty() ? usual.offers() : usual.lots()) {
      if (lot.trunkFromMm().isEmpty()) {
        String name = UsualTrunk.classOf(lot);
        plants.merge(name, (long) lot.quantity().orElse(0), Long::sum);
        trunk.putIfAbsent(name, UsualTrunk.mm(lot));
        sizes.computeIfAbsent(name, each -> new TreeSet<>()).add(lot.terms().size());
      }
    }
    plants.entrySet().stream()
        .sorted(Map.Entry.<String, Long>comparingByValue().reversed())
        .limit(3)
        .forEach(
            each ->
                add(
                    PotSize.plain(trunk.get(each.getKey())),
                    "How thick is the trunk of trees in %s?%s"
                        .formatted(each.getKey(), explained(sizes.get(each.getKey()))),
                    "mm",
                    Fill.plants(each.getValue()),
                    "stock",
                    each.getKey(),
                    "trunk mm",
                    Range.OF_TRUNKS));
  }

  /** What lists explain of sizes. */
  private String explained(Set<String> sizes) {
    return lists.stream()
        .map(list -> list.legend().about("", sizes))
        .filter(said -> !said.isEmpty())
        .findFirst()
        .orElse("");
  }
}
