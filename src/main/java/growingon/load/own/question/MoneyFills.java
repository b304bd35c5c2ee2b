package growingon.load.own.question;

import growingon.load.own.lot.OwnLot;
import growingon.load.own.lot.UsualTrunk;
import growingon.load.own.row.ListRead;
import growingon.load.own.size.PotSize;
import growingon.load.own.usual.UsualNursery;
import growingon.load.own.usual.UsualSeason;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** What is asked of money and growth. */
final class MoneyFills {
  private static final String MONEY = ToFill.MONEY;
  private static final String ALL_SPECIES = "*";

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
    classes(usual, fills);
    add(
        "1",
        "Do your trees grow faster or slower than usual? 1.2 is a fifth faster",
        "times",
        "when all trees are ready",
        "settings",
        "site speed",
        "value");
    unknownSpecies();
    add(
        "15",
        "What does an hour of work cost?",
        currency,
        "all work",
        "settings",
        "hourly rate",
        "value");
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
      String column) {
    fills.add(new Fill(its, question, unit, moves, table, row, column, MONEY, false));
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
        UsualSeason.SALES);
    add(
        Long.toString(Math.round(usual.season().trees())),
        "About how many trees was that?",
        "plants",
        "all usual prices and units",
        "demand",
        UsualSeason.LAST_YEAR,
        UsualSeason.TREES);
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
          "price");
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
          "units");
    }
  }

  private void unknownSpecies() {
    for (Map<String, String> row : usual.tables().get("species")) {
      if (row.get("library").equals("deciduous") || row.get("library").equals("evergreen")) {
        add(
            row.get("library"),
            "%s is not in the library: which plant there is it most like?"
                .formatted(row.get("species")),
            "",
            "its growth and losses",
            "species",
            row.get("species"),
            "library");
      }
    }
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
  private static void classes(UsualNursery usual, List<Fill> fills) {
    Map<String, Long> plants = new LinkedHashMap<>();
    Map<String, Double> trunk = new LinkedHashMap<>();
    for (OwnLot lot : usual.lots().isEmpty() ? usual.offers() : usual.lots()) {
      if (lot.trunkFromMm().isEmpty()) {
        String name = UsualTrunk.classOf(lot);
        plants.merge(name, (long) lot.quantity().orElse(0), Long::sum);
        trunk.putIfAbsent(name, UsualTrunk.mm(lot));
      }
    }
    plants.entrySet().stream()
        .sorted(Map.Entry.<String, Long>comparingByValue().reversed())
        .limit(3)
        .forEach(
            each ->
                fills.add(
                    new Fill(
                        PotSize.plain(trunk.get(each.getKey())),
                        "How thick is the trunk of trees in %s?".formatted(each.getKey()),
                        "mm",
                        each.getValue() + " plants",
                        "stock",
                        each.getKey(),
                        "trunk mm",
                        MONEY,
                        false)));
  }
}
