package growingon.load.own;

import growingon.load.own.HeadingRead.How;
import growingon.nursery.OwnReading;
import growingon.nursery.OwnReading.Listed;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;

/** How lists were read: in a few sentences, and in tables for whoever wants to check it. */
public final class OwnReport {
  private static final List<String> WORD_COLUMNS =
      List.of("kind", "yours", "ours", "where", "how", "rows", "example");

  private static final int NAMED = 5;

  private final List<ListRead> lists;
  private final UsualNursery usual;
  private final List<Fill> fills;

  /** The report of lists, of the nursery laid out for them, and of what is asked. */
  public OwnReport(List<ListRead> lists, UsualNursery usual, List<Fill> fills) {
    this.lists = List.copyOf(lists);
    this.usual = usual;
    this.fills = List.copyOf(fills);
  }

  /** Sentences and tables. */
  public OwnReading reading() {
    List<Listed> tables = new ArrayList<>(List.of(stock(), words(), fillTable(), rows(), totals()));
    if (lists.stream().anyMatch(list -> list.kind().isOffers())) {
      tables.add(1, offers());
    }
    return new OwnReading(sentences(), tables);
  }

  /** What a grower reads first. */
  public List<String> sentences() {
    List<String> lines = new ArrayList<>();
    for (ListRead list : lists) {
      lines.addAll(sheetLines(list));
    }
    List<String> next = new ArrayList<>();
    leftOut().ifPresent(next::add);
    doFirst().ifPresent(next::add);
    lines.addAll(Math.min(1, lines.size()), next);
    for (ListRead list : lists) {
      list.totals().stream()
          .filter(total -> !total.agrees())
          .limit(2)
          .forEach(total -> lines.add(totalLine(total)));
    }
    lines.add(headingLine());
    about().ifPresent(lines::add);
    offered().ifPresent(lines::add);
    lines.add(
        "Prices, the growth of %d %s and the size of %d %s are usual values, not yours: %d cells in to fill, what moves most first."
            .formatted(
                taxa(),
                taxa() == 1 ? "species" : "species",
                places(),
                places() == 1 ? "place" : "places",
                asked()));
    return lines;
  }

  private static List<String> sheetLines(ListRead list) {
    List<String> lines = new ArrayList<>();
    for (SheetAccount account : list.accounts()) {
      if (!account.read().equals("yes")) {
        continue;
      }
      List<OwnLot> lots =
          list.lots().stream().filter(lot -> lot.sheet().equals(account.sheet())).toList();
      Set<String> taxa =
          new TreeSet<>(lots.stream().map(lot -> lot.taxon().orElse(lot.called())).toList());
      String sheet = account.sheet().equals(list.file()) ? "" : ", " + account.sheet();
      lines.add(
          "%s%s: %s, %s, %s in %d rows (%s)."
              .formatted(
                  list.file(),
                  sheet,
                  many(lots.size(), list.kind().row()),
                  many(lots.stream().mapToLong(lot -> lot.quantity().orElse(0)).sum(), "plant"),
                  taxa.size() == 1 ? "1 taxon" : taxa.size() + " taxa",
                  account.rows(),
                  parts(account, list.kind())));
    }
    if (lines.size() > 3) {
      int more = lines.size() - 2;
      List<String> few = new ArrayList<>(lines.subList(0, 2));
      few.add(
          "and %d more sheets; %s, %d plants in all"
              .formatted(more, many(list.lots().size(), list.kind().row()), list.plants()));
      return few;
    }
    return lines;
  }

  private static String parts(SheetAccount account, ListKind kind) {
    List<String> parts = new ArrayList<>();
    add(parts, account.titles(), "title");
    add(parts, account.headings() + account.headingsAgain(), "heading row");
    add(parts, account.lots(), kind.row());
    add(parts, account.groups(), "group");
    add(parts, account.totals(), "total");
    add(parts, account.notes(), "note");
    add(parts, account.struckOut(), "struck out");
    add(parts, account.gone(), "gone");
    add(parts, account.asked(), "asked");
    add(parts, account.notRead(), "not read");
    return String.join(", ", parts);
  }

  private static void add(List<String> parts, int number, String what) {
    boolean noun =
        !what.contains("out")
            && !what.equals("gone")
            && !what.equals("asked")
            && !what.equals("not read");
    if (number > 0) {
      parts.add(noun ? many(number, what) : number + " " + what);
    }
  }

  private static String many(long number, String what) {
    return number + " " + what + (number == 1 ? "" : "s");
  }

  /** Rows that are no lots till they are answered are named before all else. */
  private Optional<String> leftOut() {
    List<String> rows = lists.stream().flatMap(list -> list.leftOut().stream()).toList();
    if (rows.isEmpty()) {
      return Optional.empty();
    }
    String more = rows.size() > NAMED ? " and %d more".formatted(rows.size() - NAMED) : "";
    return Optional.of(
        "Left out till you answer: %s%s."
            .formatted(String.join(", ", rows.subList(0, Math.min(NAMED, rows.size()))), more));
  }

  private Optional<String> doFirst() {
    List<Fill> open =
        fills.stream()
            .filter(each -> each.block().equals(ToFill.READING) && !each.usual().equals("yes"))
            .toList();
    if (open.isEmpty()) {
      return lists.stream()
          .flatMap(list -> list.headings().stream())
          .filter(head -> head.how() == How.OPEN)
          .findFirst()
          .map(
              head ->
                  "Do this first: what is the column %s? (own words); till then it is not read."
                      .formatted(head.heading()));
    }
    Fill first = open.get(0);
    return Optional.of(
        "Do this first: %s (to fill, row %d)%s."
            .formatted(
                first.question().replaceFirst("\\?$", ""),
                fills.indexOf(first) + 2,
                first.usual().isEmpty() ? "" : "; till then " + first.usual()));
  }

  private static String totalLine(StatedTotal total) {
    return "Your total in row %d says %d: %s. %d is read."
        .formatted(
            total.row(),
            total.stated(),
            total.why().isEmpty() ? "the rows add up to another number" : total.why(),
            total.read());
  }

  private String headingLine() {
    List<HeadingRead> all = lists.stream().flatMap(list -> list.headings().stream()).toList();
    Map<String, HeadingRead> once = new LinkedHashMap<>();
    all.forEach(head -> once.putIfAbsent(Keys.of(head.heading()), head));
    long asked = once.values().stream().filter(head -> head.is(Meaning.OPEN)).count();
    String some =
        String.join(
            ", ",
            once.values().stream()
                .filter(
                    head ->
                        !head.is(Meaning.OPEN)
                            && !Keys.of(head.heading()).equals(Keys.of(head.ours())))
                .limit(3)
                .map(head -> head.heading() + " = " + head.ours())
                .toList());
    return "%d of %d headings understood, %d asked%s; see own words."
        .formatted(
            once.size() - asked, once.size(), asked, some.isEmpty() ? "" : ": " + some + ", ...");
  }

  private Optional<String> offered() {
    int offers = usual.offers().size();
    return offers == 0
        ? Optional.empty()
        : Optional.of(
            "%s may be bought and none is taken; buying says which pay."
                .formatted(many(offers, ListKind.OFFERS.row())));
  }

  private Optional<String> about() {
    long numbers = lots().stream().filter(OwnLot::about).count();
    long dates = lots().stream().filter(OwnLot::arrivedAbout).count();
    return numbers + dates == 0
        ? Optional.empty()
        : Optional.of(
            "%s %s about."
                .formatted(
                    String.join(
                        " and ",
                        Stream.of(
                                numbers > 0 ? many(numbers, "number") : "",
                                dates > 0 ? many(dates, "date") : "")
                            .filter(each -> !each.isEmpty())
                            .toList()),
                    numbers + dates == 1 ? "is" : "are"));
  }

  private List<OwnLot> lots() {
    return lists.stream()
        .filter(list -> !list.kind().isOffers())
        .flatMap(list -> list.lots().stream())
        .toList();
  }

  private int taxa() {
    return usual.tables().get("species").size();
  }

  private int places() {
    return usual.tables().get("places").size();
  }

  private long asked() {
    return fills.stream().filter(each -> !each.block().equals("more")).count();
  }

  private Listed stock() {
    List<List<Object>> rows = new ArrayList<>();
    List<OwnLot> called = usual.lots();
    int i = 0;
    for (ListRead list : lists) {
      for (OwnLot lot : list.kind().isOffers() ? List.<OwnLot>of() : list.lots()) {
        rows.add(
            stockRow(list.file(), lot, i < called.size() ? called.get(i).called() : lot.called()));
        i++;
      }
    }
    return new Listed(
        "stock-as-read",
        "Your list as it was read",
        List.of(
            "list",
            "sheet",
            "row",
            "lot",
            "own_name",
            "species",
            "library",
            "quantity",
            "about",
            "trunk_from_mm",
            "trunk_to_mm",
            "trunk_basis",
            "pot",
            "pot_litres",
            "height_cm",
            "place",
            "arrived",
            "arrived_basis",
            "unit_cost",
            "selling_price",
            "note"),
        rows);
  }

  private static List<Object> stockRow(String file, OwnLot lot, String called) {
    List<Object> row =
        new ArrayList<>(List.of(file, lot.sheet(), lot.row(), lot.lot(), lot.ownName(), called));
    boolean stated = lot.trunkFromMm().isPresent();
    row.add(lot.taxon().orElse(""));
    row.add(lot.quantity().isPresent() ? lot.quantity().getAsInt() : "");
    row.add(lot.about() ? "yes" : "no");
    row.add(stated ? hundredths(lot.trunkFromMm()) : UsualTrunk.mm(lot));
    row.add(stated ? hundredths(lot.trunkToMm()) : UsualTrunk.mm(lot));
    row.add(stated ? "list" : "usual");
    row.add(lot.pot());
    row.add(number(lot.potLitres()));
    row.add(number(lot.heightCm()));
    row.add(lot.place());
    row.add(lot.arrived().map(Object::toString).orElse(""));
    row.add(lot.arrived().isPresent() ? "list" : "usual");
    row.add(number(lot.unitCost()));
    row.add(number(lot.sellingPrice()));
    row.add(lot.note());
    return row;
  }

  private Listed offers() {
    List<List<Object>> rows = new ArrayList<>();
    Map<String, OwnLot> called = new HashMap<>();
    usual.offers().forEach(offer -> called.put(offer.lot(), offer));
    for (ListRead list : lists) {
      for (OwnLot offer : list.kind().isOffers() ? list.lots() : List.<OwnLot>of()) {
        rows.add(offerRow(list.file(), called.getOrDefault(offer.lot(), offer)));
      }
    }
    return new Listed(
        "offers-as-read",
        "What suppliers offer, as it was read",
        List.of(
            "list",
            "sheet",
            "row",
            "offer",
            "own_name",
            "species",
            "library",
            "form",
            "trunk_from_mm",
            "trunk_to_mm",
            "trunk_basis",
            "pot",
            "pot_litres",
            "height_cm",
            "unit_price",
            "least",
            "multiple",
            "most",
            "month",
            "month_basis",
            "supplier",
            "note"),
        rows);
  }

  private List<Object> offerRow(String file, OwnLot offer) {
    List<Object> row = new ArrayList<>();
    row.addAll(List.of(file, offer.sheet(), offer.row(), offer.lot(), offer.ownName()));
    row.addAll(List.of(offer.called(), offer.taxon().orElse(""), UsualNursery.form(offer)));
    boolean stated = offer.trunkFromMm().isPresent();
    row.add(stated ? hundredths(offer.trunkFromMm()) : UsualTrunk.mm(offer));
    row.add(stated ? hundredths(offer.trunkToMm()) : UsualTrunk.mm(offer));
    row.add(stated ? "list" : "usual");
    row.add(offer.pot());
    row.add(number(offer.potLitres()));
    row.add(number(offer.heightCm()));
    row.add(number(offer.unitCost()));
    row.add(whole(offer.terms().least()));
    row.add(whole(offer.terms().multiple()));
    row.add(whole(offer.quantity()));
    row.add(usual.arrival(offer).toString());
    row.add(offer.arrived().isPresent() ? "list" : "usual");
    row.add(offer.supplier());
    row.add(offer.note());
    return row;
  }

  private static Object whole(OptionalInt value) {
    return value.isPresent() ? value.getAsInt() : "";
  }

  private static Object hundredths(OptionalDouble value) {
    return value.isPresent() ? Math.rint(value.getAsDouble() * 100) / 100 : "";
  }

  private static Object number(OptionalDouble value) {
    return value.isPresent() ? value.getAsDouble() : "";
  }

  /** The rows of own words: lists, then headings, species, places and pots; the open ones first. */
  public List<List<String>> wordRows(List<String> paths, List<String> offers) {
    List<List<String>> rows = new ArrayList<>();
    for (String path : paths) {
      rows.add(List.of(ListKind.STOCK.word(), path, "", "every list", "certain", "", ""));
    }
    for (String path : offers) {
      rows.add(List.of(ListKind.OFFERS.word(), path, "", "every list", "certain", "", ""));
    }
    List<List<String>> heads = new ArrayList<>();
    Set<String> seen = new LinkedHashSet<>();
    for (ListRead list : lists) {
      for (HeadingRead head : list.headings()) {
        if (seen.add(list.kind().heading() + Keys.of(head.heading()) + head.ours())) {
          heads.add(headRow(list.kind(), head));
        }
      }
    }
    heads.sort((a, b) -> Boolean.compare(!a.get(4).equals("open"), !b.get(4).equals("open")));
    rows.addAll(heads);
    rows.addAll(names());
    return rows;
  }

  /** For rows of own words that are open headings: what each may be, by the row's index. */
  public Map<Integer, List<String>> wordChoices(List<List<String>> rows) {
    Map<String, List<String>> byHeading = new HashMap<>();
    for (ListRead list : lists) {
      for (HeadingRead head : list.headings()) {
        if (head.is(Meaning.OPEN) && !head.choosable().isEmpty()) {
          byHeading.putIfAbsent(list.kind().heading() + Keys.of(head.heading()), head.choosable());
        }
      }
    }
    Map<Integer, List<String>> choices = new HashMap<>();
    for (int i = 0; i < rows.size(); i++) {
      List<String> row = rows.get(i);
      List<String> its = byHeading.get(row.get(0) + Keys.of(row.get(1)));
      if (row.get(2).isEmpty() && its != null) {
        choices.put(i, its);
      }
    }
    return choices;
  }

  private static List<String> headRow(ListKind kind, HeadingRead head) {
    String ours =
        head.is(Meaning.OPEN)
            ? ""
            : head.is(Columns.SIZE_HEADING) ? "quantity of " + head.heading() : head.ours();
    String choices =
        head.is(Meaning.OPEN) && !head.choices().isEmpty()
            ? " (" + String.join(" or ", head.choices()) + "?)"
            : "";
    return List.of(
        kind.heading(),
        head.heading(),
        ours,
        "every list",
        head.is(Meaning.OPEN) ? "open" : head.how().toString(),
        Integer.toString(head.rows()),
        head.example() + choices);
  }

  private List<List<String>> names() {
    Map<String, List<OwnLot>> species = new LinkedHashMap<>();
    Map<String, Integer> places = new LinkedHashMap<>();
    Map<String, Integer> pots = new LinkedHashMap<>();
    lists.stream()
        .filter(list -> list.kind().isOffers())
        .flatMap(list -> list.lots().stream())
        .forEach(lot -> species.computeIfAbsent(lot.ownName(), each -> new ArrayList<>()).add(lot));
    for (OwnLot lot : lots()) {
      species.computeIfAbsent(lot.ownName(), each -> new ArrayList<>()).add(lot);
      places.merge(lot.place(), 1, Integer::sum);
      pots.merge(lot.pot(), 1, Integer::sum);
    }
    List<List<String>> rows = new ArrayList<>();
    species.forEach(
        (name, lots) -> {
          Optional<String> taxon = lots.get(0).taxon();
          rows.add(
              List.of(
                  "species",
                  name,
                  taxon.orElse(""),
                  "every list",
                  taxon.isPresent() ? "certain" : "open",
                  Integer.toString(lots.size()),
                  taxon.isPresent()
                      ? ""
                      : lots.get(0).standIn().isEmpty()
                          ? "not in the library"
                          : "of the genus " + lots.get(0).standIn()));
        });
    rows.sort((a, b) -> Boolean.compare(!a.get(4).equals("open"), !b.get(4).equals("open")));
    places.forEach(
        (name, number) ->
            rows.add(
                List.of(
                    "place", name, name, "every list", "certain", Integer.toString(number), "")));
    pots.forEach(
        (name, number) ->
            rows.add(
                List.of("pot", name, name, "every list", "certain", Integer.toString(number), "")));
    rows.removeIf(row -> row.get(1).isEmpty());
    return rows;
  }

  private Listed words() {
    List<List<Object>> rows = new ArrayList<>();
    wordRows(List.of(), List.of()).forEach(row -> rows.add(new ArrayList<>(row)));
    return new Listed("own-words", "What your words mean here", WORD_COLUMNS, rows);
  }

  /** Columns of the sheet own words. */
  public static List<String> wordColumns() {
    return WORD_COLUMNS;
  }

  private Listed fillTable() {
    List<List<Object>> rows = new ArrayList<>();
    for (Fill fill : fills) {
      rows.add(
          List.of(
              "",
              fill.usual(),
              fill.question(),
              fill.unit(),
              fill.moves(),
              fill.table(),
              fill.row(),
              fill.column(),
              fill.block(),
              fill.needed() ? "yes" : ""));
    }
    return new Listed("to-fill", "What moves the answer most, to fill in", fillColumns(), rows);
  }

  /** Columns of the sheet to fill. */
  public static List<String> fillColumns() {
    return List.of(
        "fill in",
        "usual",
        "question",
        "unit",
        "moves",
        "table",
        "row",
        "column",
        "block",
        "needed");
  }

  private Listed rows() {
    List<List<Object>> rows = new ArrayList<>();
    for (ListRead list : lists) {
      for (SheetAccount a : list.accounts()) {
        rows.add(
            List.of(
                list.file(),
                a.sheet(),
                a.read(),
                a.rows(),
                a.titles(),
                a.headings(),
                a.headingsAgain(),
                a.lots(),
                a.groups(),
                a.totals(),
                a.notes(),
                a.struckOut(),
                a.gone(),
                a.asked(),
                a.notRead()));
      }
    }
    return new Listed(
        "rows-read",
        "Every row of your list accounted for",
        List.of(
            "list",
            "sheet",
            "read",
            "rows",
            "titles",
            "headings",
            "headings_again",
            "lots",
            "groups",
            "totals",
            "notes",
            "struck_out",
            "gone",
            "asked",
            "not_read"),
        rows);
  }

  private Listed totals() {
    List<List<Object>> rows = new ArrayList<>();
    for (ListRead list : lists) {
      for (StatedTotal total : list.totals()) {
        rows.add(
            List.of(
                list.file(),
                total.sheet(),
                total.row(),
                total.stated(),
                total.read(),
                total.agrees() ? "yes" : "no"));
      }
    }
    return new Listed(
        "list-totals",
        "Totals that your list states",
        List.of("list", "sheet", "row", "stated", "read", "agrees"),
        rows);
  }
}
