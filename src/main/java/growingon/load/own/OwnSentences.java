package growingon.load.own;

import growingon.load.own.HeadingRead.How;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;

/** What a grower reads first of lists that were read. */
final class OwnSentences {
  private static final int NAMED = 5;

  private final List<ListRead> lists;
  private final UsualNursery usual;
  private final List<Fill> fills;

  OwnSentences(List<ListRead> lists, UsualNursery usual, List<Fill> fills) {
    this.lists = lists;
    this.usual = usual;
    this.fills = fills;
  }

  /** The sentences in order. */
  List<String> all() {
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
    long numbers = ListRead.lotsOfStock(lists).stream().filter(OwnLot::about).count();
    long dates = ListRead.lotsOfStock(lists).stream().filter(OwnLot::arrivedAbout).count();
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

  private int taxa() {
    return usual.tables().get("species").size();
  }

  private int places() {
    return usual.tables().get("places").size();
  }

  private long asked() {
    return fills.stream().filter(each -> !each.block().equals("more")).count();
  }
}
