package growingon.load.own.account;

import growingon.load.own.heading.Columns;
import growingon.load.own.heading.HeadingRead;
import growingon.load.own.heading.HeadingRead.How;
import growingon.load.own.heading.ListKind;
import growingon.load.own.heading.SizeGroup;
import growingon.load.own.lot.OwnLot;
import growingon.load.own.question.Fill;
import growingon.load.own.question.Moved;
import growingon.load.own.question.ToFill;
import growingon.load.own.row.ListRead;
import growingon.load.own.row.SheetAccount;
import growingon.load.own.row.StatedTotal;
import growingon.load.own.text.Keys;
import growingon.load.own.text.Meaning;
import growingon.load.own.usual.UsualNursery;
import growingon.nursery.number.Writing;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;

/** What a grower reads first of lists that were read. */
final class OwnSentences {
  private static final int NAMED = 5;
  private static final int FEW = 3;

  private final List<ListRead> lists;
  private final UsualNursery usual;
  private final List<Fill> fills;
  private final Moved moved;
  private final Function<Fill, OptionalInt> rowOf;
  private final Writing writing;

  OwnSentences(
      List<ListRead> lists,
      UsualNursery usual,
      List<Fill> fills,
      Moved moved,
      Function<Fill, OptionalInt> rowOf,
      Writing writing) {
    this.lists = lists;
    this.usual = usual;
    this.fills = fills;
    this.moved = moved;
    this.rowOf = rowOf;
    this.writing = writing;
  }

  /** The sentences in order. */
  List<String> all() {
    List<String> lines = new ArrayList<>();
    lists.stream().filter(ListRead::lacksNumber).forEach(list -> lines.add(whichIsTheNumber(list)));
    lists.stream()
        .filter(list -> !list.lacksNumber() && list.isMisread(open(list)))
        .forEach(list -> lines.add(manyAreNone(list)));
    if (!lines.isEmpty()) {
      return lines;
    }
    for (ListRead list : lists) {
      lines.addAll(sheetLines(list));
    }
    leftOut().ifPresent(lines::add);
    doFirst().ifPresent(lines::add);
    for (ListRead list : lists) {
      list.totals().stream()
          .filter(total -> !total.agrees())
          .limit(2)
          .forEach(total -> lines.add(totalLine(total, list)));
    }
    lines.add(headingLine());
    about().ifPresent(lines::add);
    offered().ifPresent(lines::add);
    lines.add(usualValues());
    return lines;
  }

  /** Of a list without a number of plants there is nothing to say but that it must be known. */
  private static String whichIsTheNumber(ListRead list) {
    List<String> maybe = list.maybeNumbers();
    return "Do this first: which heading of %s is the number of plants%s? say so in own words; without it there is no plan."
        .formatted(list.file(), maybe.isEmpty() ? "" : ", " + String.join(" or ", maybe));
  }

  private String manyAreNone(ListRead list) {
    List<OwnLot> open = open(list);
    List<String> rows = list.leftOut(open);
    return "Do this first: %d of %d rows of %s say no number of plants (%s%s): say in own words which heading does, or type theirs into to fill; without them there is no plan."
        .formatted(
            open.size(),
            list.lots().size() + list.asked().size(),
            list.file(),
            String.join(", ", rows.subList(0, Math.min(NAMED, rows.size()))),
            rows.size() > NAMED ? " and %d more".formatted(rows.size() - NAMED) : "");
  }

  /** Rows of a list that are left out, as what they must say is still asked. */
  private List<OwnLot> open(ListRead list) {
    return list.asked().stream()
        .filter(lot -> fills.stream().anyMatch(fill -> fill.row().equals(lot.lot())))
        .toList();
  }

  /** How much of the plan is not the grower's. */
  private String usualValues() {
    boolean priced =
        ListRead.lotsOfStock(lists).stream().anyMatch(lot -> lot.sellingPrice().isPresent());
    List<String> usualOnes = new ArrayList<>();
    usualOnes.add(priced ? "Prices of other sizes" : "Prices");
    usualOnes.add("the growth of %d species".formatted(taxa()));
    if (places() > 0) {
      usualOnes.add("the size of %s".formatted(many(places(), "place")));
    }
    return "%s are usual values, not yours: %d cells in to fill%s."
        .formatted(
            Writing.list(usualOnes), asked(), moved.isKnown() ? ", what moves most first" : "");
  }

  /**
   * The month that titles say of the count; a list is known by its name where there are several.
   */
  private Optional<String> counted() {
    List<String> months =
        lists.stream()
            .filter(list -> list.counted().isPresent())
            .map(
                list ->
                    writing.longMonth(list.counted().get())
                        + (lists.size() == 1 ? "" : " (" + list.file() + ")"))
            .toList();
    return months.isEmpty()
        ? Optional.empty()
        : Optional.of("the title says that it was counted in %s".formatted(Writing.list(months)));
  }

  private List<String> sheetLines(ListRead list) {
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
          "%s%s: %s, %s, %s in %s rows (%s)."
              .formatted(
                  list.file(),
                  sheet,
                  many(lots.size(), list.kind().row()),
                  many(lots.stream().mapToLong(lot -> lot.quantity().orElse(0)).sum(), "plant"),
                  taxa.size() == 1 ? "1 taxon" : taxa.size() + " taxa",
                  writing.whole(account.rows()),
                  parts(account, list.kind())));
    }
    if (lines.size() > 3) {
      int more = lines.size() - 2;
      List<String> few = new ArrayList<>(lines.subList(0, 2));
      few.add(
          "and %d more sheets; %s, %s in all."
              .formatted(
                  more, many(list.lots().size(), list.kind().row()), many(list.plants(), "plant")));
      return few;
    }
    return lines;
  }

  private String parts(SheetAccount account, ListKind kind) {
    List<String> parts = new ArrayList<>();
    addSome(parts, account.titles(), "title");
    addSome(parts, account.headings() + account.headingsAgain(), "heading row");
    addSome(parts, account.lots(), kind.row());
    addSome(parts, account.groups(), "group");
    addSome(parts, account.totals(), "total");
    addSome(parts, account.notes(), "note");
    addThatAre(parts, account.struckOut(), "struck out");
    addThatAre(parts, account.gone(), "gone");
    addThatAre(parts, account.asked(), "asked");
    addThatAre(parts, account.notRead(), "not read");
    return String.join(", ", parts);
  }

  private void addSome(List<String> parts, int number, String what) {
    if (number > 0) {
      parts.add(many(number, what));
    }
  }

  private void addThatAre(List<String> parts, int number, String how) {
    if (number > 0) {
      parts.add(writing.whole(number) + " " + how);
    }
  }

  private String many(long number, String what) {
    return writing.whole(number) + " " + what + (number == 1 ? "" : "s");
  }

  /** Rows that are no lots till they are answered are named before all else. */
  private Optional<String> leftOut() {
    List<String> rows = lists.stream().flatMap(list -> list.leftOut(open(list)).stream()).toList();
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
        "Do this first: %s (to fill, %s)%s."
            .formatted(
                first.question().replaceFirst("(?<=[^\\s:])\\?$", ""),
                placeOf(first),
                tillThen(first)));
  }

  /** A question that is new since the sheet was laid out wants a row of its own. */
  private String placeOf(Fill asked) {
    OptionalInt row = rowOf.apply(asked);
    return row.isPresent()
        ? "row " + row.getAsInt()
        : "a new row: table %s, row %s, column %s"
            .formatted(asked.table(), asked.row(), asked.column());
  }

  private static String tillThen(Fill open) {
    boolean month = open.usual().isEmpty() && open.column().equals("arrived");
    boolean offer = open.table().equals(ListKind.OFFERS.table());
    String holds =
        month ? offer ? "the plan's first month is taken" : "a year ago is taken" : open.usual();
    return holds.isEmpty() ? "" : "; till then " + holds;
  }

  private String totalLine(StatedTotal total, ListRead list) {
    return "Your total in %s says %s: %s. %s is read."
        .formatted(
            list.place(total.sheet(), total.row()),
            writing.whole(total.stated()),
            total.why().isEmpty() ? "the rows add up to another number" : total.why(),
            writing.whole(total.read()));
  }

  private String headingLine() {
    List<HeadingRead> all =
        lists.stream()
            .flatMap(list -> list.headings().stream())
            .filter(head -> head.column() < SizeGroup.SIZE_COLUMN)
            .toList();
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
                .map(
                    head ->
                        head.is(Columns.SIZE_HEADING)
                            ? head.heading() + " = a size"
                            : head.heading() + " = " + head.ours())
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

  /** What is not exact, with some of it as it stands in the list, and when it was counted. */
  private Optional<String> about() {
    List<OwnLot> lots = ListRead.lotsOfStock(lists);
    long numbers = lots.stream().filter(OwnLot::about).count();
    long dates = lots.stream().filter(OwnLot::arrivedAbout).count();
    List<String> parts = new ArrayList<>();
    if (numbers > 0) {
      parts.add(many(numbers, "number"));
    }
    if (dates > 0) {
      parts.add(many(dates, "date"));
    }
    List<String> said = new ArrayList<>();
    if (!parts.isEmpty()) {
      List<String> some =
          lists.stream().flatMap(list -> list.abouts().stream()).distinct().limit(FEW).toList();
      said.add(
          "%s %s about%s"
              .formatted(
                  Writing.list(parts),
                  numbers + dates == 1 ? "is" : "are",
                  some.isEmpty() ? "" : " (" + String.join(", ", some) + ")"));
    }
    counted().ifPresent(said::add);
    if (said.isEmpty()) {
      return Optional.empty();
    }
    String line = String.join("; ", said) + ".";
    return Optional.of(line.substring(0, 1).toUpperCase(java.util.Locale.ROOT) + line.substring(1));
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
