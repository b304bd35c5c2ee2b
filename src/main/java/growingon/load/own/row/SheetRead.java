package growingon.load.own.row;

import growingon.load.own.heading.ColumnFacts;
import growingon.load.own.heading.Columns;
import growingon.load.own.heading.Currencies;
import growingon.load.own.heading.HeadedCells;
import growingon.load.own.heading.HeadingRead;
import growingon.load.own.heading.HeadingRow;
import growingon.load.own.heading.OwnWords;
import growingon.load.own.heading.SizeGroup;
import growingon.load.own.heading.SoldOff;
import growingon.load.own.heading.TitledPrices;
import growingon.load.own.heading.WhoseList;
import growingon.load.own.lot.Draft;
import growingon.load.own.lot.Question;
import growingon.load.own.lot.Site;
import growingon.load.own.sheet.Sheet;
import growingon.load.own.sheet.SheetCell;
import growingon.load.own.sheet.SheetRow;
import growingon.load.own.size.RangeColumns;
import growingon.load.own.text.Keys;
import growingon.load.own.text.Meaning;
import growingon.load.own.text.MonthText;
import growingon.load.own.text.Titles;
import growingon.load.own.text.Words;
import growingon.problem.MarkedText;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Pattern;

/** One sheet of a list: its heading rows, side by side and one below the other, and its rows. */
public final class SheetRead {
  private static final Set<String> NO_PLACE =
      Set.of(
          "stock",
          "list",
          "bestand",
          "inventory",
          "stocklist",
          "stock list",
          "data",
          "lager",
          "plants",
          "trees",
          "export",
          "all",
          "table",
          "bestandsliste",
          "inventar",
          "inventaire",
          "voorraad",
          "inventario",
          "giacenza",
          "existencias",
          "availability");

  /** One in so many. */
  private static final int FEW = 5;

  private final Sheet sheet;
  private final OwnWords own;
  private final Site site;
  private final Map<Integer, RowKind> kinds = new TreeMap<>();
  public final List<HeadingRead> heads = new ArrayList<>();
  public final List<Draft> lots = new ArrayList<>();
  public final List<Draft> asked = new ArrayList<>();
  public final List<StatedTotal> totals = new ArrayList<>();
  public final List<String> notices = new ArrayList<>();
  public final List<Question> questions = new ArrayList<>();
  public final List<ListRead.UnusedTitle> unusedTitles = new ArrayList<>();
  public final Set<String> currencies = new HashSet<>();
  public Optional<YearMonth> counted = Optional.empty();
  private static final Pattern COLOUR =
      Pattern.compile("\\p{L}{3,}(?: \\p{L}+)?\\s*[=:]\\s*\\p{L}.*");

  /** Lines above the list that say what a colour means. */
  public final List<String> colours = new ArrayList<>();

  private boolean treeARow;
  private Optional<String> vatTitle = Optional.empty();
  public String why = "";

  public SheetRead(Sheet sheet, OwnWords own, Site site) {
    Optional<BenchChart> chart =
        HeadingRow.find(sheet, own).isEmpty() ? BenchChart.of(sheet) : Optional.empty();
    this.sheet = chart.map(BenchChart::list).orElse(sheet);
    this.own = own;
    this.site = site;
    read();
    chart.filter(each -> isList()).ifPresent(this::tellChart);
    Optional<String> terms = isList() ? WhoseList.terms(sheet, own) : Optional.empty();
    if (terms.isPresent()) {
      notices.add(0, this.sheet.said(WhoseList.notice(terms.get())));
      questions.add(0, WhoseList.question(sheet, lots));
    }
  }

  private void tellChart(BenchChart chart) {
    String others = String.join(", ", chart.others());
    notices.add(
        0,
        sheet.said(
            "is read as a chart: each cell is a lot, and stands where the heading above it says"
                + (others.isEmpty() ? "" : "; no plants are %s".formatted(others))));
  }

  public Sheet sheet() {
    return sheet;
  }

  public boolean isList() {
    return why.isEmpty();
  }

  private void read() {
    Optional<HeadingRow> first = HeadingRow.find(sheet, own);
    if (RowWords.isLegend(sheet.name())) {
      why = "it explains others";
    } else if (own.find("sheet", sheet.name()).filter(Meaning.NOT_READ::equals).isPresent()) {
      why = "you said so";
    } else if (first.isEmpty()) {
      why = "no row has headings with a plant's name";
    } else if (WhoseList.isASuppliers(sheet, own)) {
      why = "you said that it is a supplier's; " + WhoseList.BY_OFFERS;
    } else if (RowWords.isNoStockSheet(sheet.name())) {
      why = "its name says that it is no stock";
    }
    if (!why.isEmpty()) {
      return;
    }
    titles(first.get());
    HeadingRow head = first.get();
    while (head != null) {
      HeadingRow next = nextHeading(head);
      int end = next == null ? sheet.rows().size() : next.firstIndex();
      block(head, sheet.rows().subList(head.lastIndex() + 1, end));
      head = next;
    }
  }

  private void titles(HeadingRow head) {
    for (int i = 0; i < head.firstIndex(); i++) {
      kinds.put(sheet.rows().get(i).number(), RowKind.TITLE);
      for (SheetCell cell : sheet.rows().get(i).cells().values()) {
        counted =
            counted.or(
                () -> TitleAbove.isOfAPlace(cell.text()) ? Optional.empty() : Titles.month(cell));
        if (COLOUR.matcher(cell.text().strip()).matches()) {
          colours.add(cell.text().strip());
        }
        treeARow |= RowWords.saysATreeARow(cell.text());
        vatTitle =
            vatTitle.or(
                () ->
                    Optional.of(cell.text()).filter(each -> TitledPrices.vatOf(each).isPresent()));
      }
    }
    List<Integer> like = TitleAbove.likeLots(sheet, head);
    if (!like.isEmpty()) {
      notices.add(
          sheet.said(
              "%s above the headings, which looks like plants, is not read: move the headings up"
                  .formatted(Words.rows(like))));
    }
  }

  private Set<String> titleKeys(HeadingRow head) {
    Set<String> keys = new HashSet<>();
    for (int i = 0; i < head.firstIndex(); i++) {
      sheet.rows().get(i).cells().values().forEach(cell -> keys.add(Keys.of(cell.text())));
    }
    return keys;
  }

  /** A row further down with other headings begins a new list. */
  private HeadingRow nextHeading(HeadingRow head) {
    Set<String> known = new HashSet<>();
    head.texts().values().forEach(text -> known.add(Keys.of(text)));
    for (int i = head.lastIndex() + 1; i < sheet.rows().size(); i++) {
      SheetRow row = sheet.rows().get(i);
      boolean texts =
          row.cells().size() >= 3 && row.cells().values().stream().allMatch(SheetCell::isText);
      Optional<HeadingRow> next =
          texts && HeadingRow.mostAreKnown(row, own)
              ? HeadingRow.at(sheet, i, own)
              : Optional.empty();
      boolean other =
          next.isPresent()
              && next.get().hasName(own)
              && next.get().score() >= 3
              && row.cells().values().stream()
                      .filter(cell -> !known.contains(Keys.of(cell.text())))
                      .count()
                  > 0;
      if (other) {
        return next.get();
      }
    }
    return null;
  }

  private void block(HeadingRow written, List<SheetRow> below) {
    RangeColumns ranges = RangeColumns.of(written.texts());
    HeadingRow found = written.ofColumns(ranges.texts());
    List<SheetRow> body = below.stream().map(ranges::joined).toList();
    for (int i = found.firstIndex(); i <= found.lastIndex(); i++) {
      kinds.put(sheet.rows().get(i).number(), RowKind.HEADING);
    }
    HeadingRow head = found.withRemarks(body);
    List<Integer> starts = head.sizes().isEmpty() ? starts(head) : List.of();
    for (SizeGroup group : SizeGroup.of(head)) {
      part(group.heading(), group.rows(body), 0, Integer.MAX_VALUE);
    }
    for (int i = 0; i < starts.size(); i++) {
      int to = i + 1 < starts.size() ? starts.get(i + 1) : Integer.MAX_VALUE;
      part(head, body, starts.get(i), to);
    }
    for (SheetRow row : body) {
      kinds.putIfAbsent(row.number(), RowKind.NOT_READ);
    }
  }

  /** Where the first heading comes again a second list begins. */
  private static List<Integer> starts(HeadingRow head) {
    List<Integer> starts = new ArrayList<>();
    String first = "";
    for (Map.Entry<Integer, String> each : head.texts().entrySet()) {
      String key = Keys.of(each.getValue());
      if (first.isEmpty() || key.equals(first)) {
        starts.add(each.getKey());
        first = key;
      }
    }
    return starts;
  }

  private void part(HeadingRow head, List<SheetRow> body, int from, int to) {
    List<SheetRow> rows = body.stream().map(row -> row.between(from, to)).toList();
    List<SheetRow> own0 = rows.stream().filter(row -> !row.cells().isEmpty()).toList();
    List<SheetRow> values =
        own0.stream().filter(row -> row.cells().size() > 1 && !isAgain(row, head)).toList();
    List<HeadingRead> reads =
        TitledPrices.settled(Columns.of(sheet, head, values, from, to, own), vatTitle);
    heads.addAll(reads);
    ColumnFacts facts = ColumnFacts.of(reads, values, notices);
    if (treeARow) {
      facts.treeARow();
      notices.add(sheet.said("a row without a number is one plant, as your title says"));
    }
    boolean soldOff = SoldOff.isToBeTakenOff(sheet.name(), reads, values, own, questions, notices);
    Currencies money = Currencies.of(sheet.name(), reads, values, own, questions);
    currencies.addAll(money.all());
    RowReader reader = new RowReader(sheet.name(), reads, facts, site, own, soldOff, money);
    reserved(reads, values);
    BlockReader block =
        new BlockReader(
            sheet,
            reads,
            reader,
            titleKeys(head),
            TitleAbove.of(sheet, head, from, to),
            counted.filter(month -> holds(month, reader, values)));
    tellBeside(own0, lastHeaded(reads));
    block.read(headed(own0, lastHeaded(reads)));
    take(block);
  }

  /** The month of a title is not that of the count where many plants have come after it. */
  private boolean holds(YearMonth month, RowReader reader, List<SheetRow> rows) {
    long later = rows.stream().filter(row -> reader.arrivals().comesAfter(row, month)).count();
    return !own.list().isOffers() && later * FEW <= rows.size();
  }

  /** What is promised to others is planned with all the same. */
  private void reserved(List<HeadingRead> reads, List<SheetRow> rows) {
    HeadedCells heads = new HeadedCells(reads);
    long plants = rows.stream().mapToLong(row -> heads.count(row, "reserved").orElse(0)).sum();
    if (plants > 0) {
      notices.add(
          sheet.said(
              "%s plants are reserved by your list; nothing is held back for them"
                  .formatted(MarkedText.number(plants))));
    }
  }

  private static boolean isAgain(SheetRow row, HeadingRow head) {
    return row.cells().entrySet().stream()
            .filter(
                each ->
                    Keys.of(each.getValue().text())
                        .equals(Keys.of(head.texts().getOrDefault(each.getKey(), "\u0000"))))
            .count()
        >= 2;
  }

  /**
   * Columns without a heading that stand behind the last one with a heading are a table beside it.
   */
  private static List<SheetRow> headed(List<SheetRow> rows, int last) {
    return rows.stream()
        .map(row -> row.between(0, last + 1))
        .filter(row -> !row.cells().isEmpty())
        .toList();
  }

  private static int lastHeaded(List<HeadingRead> reads) {
    return reads.stream().mapToInt(HeadingRead::column).max().orElse(0);
  }

  /** One line for what stands beside the list without a heading. */
  private void tellBeside(List<SheetRow> rows, int last) {
    List<SheetRow> beside =
        rows.stream()
            .map(row -> row.between(last + 1, Integer.MAX_VALUE))
            .filter(row -> !row.cells().isEmpty())
            .toList();
    if (!beside.isEmpty()) {
      SheetRow first = beside.get(0);
      notices.add(
          sheet.said(
              "what stands beside the list without a heading is not read (%s, as in row %d, \"%s\"); a heading such as note makes it a part of the list"
                  .formatted(
                      MarkedText.number(beside.size()) + (beside.size() == 1 ? " row" : " rows"),
                      first.number(),
                      MarkedText.asItIs(first.text(first.cells().firstKey())))));
    }
  }

  private void take(BlockReader block) {
    block
        .kinds()
        .forEach(
            (row, kind) ->
                kinds.merge(
                    row,
                    kind,
                    (a, b) ->
                        a.compareTo(RowKind.LOT) == 0 ? a : b.compareTo(RowKind.LOT) == 0 ? b : a));
    totals.addAll(TotalsCheck.of(sheet, block));
    lots.addAll(block.lots());
    asked.addAll(block.asked());
    counted
        .filter(month -> !own.list().isOffers())
        .ifPresent(
            month -> {
              block.lots().forEach(lot -> lot.countedIn(month));
              block.asked().forEach(lot -> lot.countedIn(month));
            });
    notices.addAll(block.passed().told(sheet));
    block
        .groupsNotUsed()
        .forEach(
            (row, text) -> unusedTitles.add(new ListRead.UnusedTitle(sheet.name(), row, text)));
  }

  /** The sheet's name as a place, where it may be one. */
  public Optional<String> place() {
    String key = Keys.of(sheet.name());
    boolean plain =
        key.matches("(?:sheet|tabelle|feuil|blad|foglio|hoja|feuille|table) ?\\d*")
            || NO_PLACE.contains(key);
    boolean dated = MonthText.isSeasonOrYear(sheet.name()) || key.matches(".*(?:19|20)\\d\\d.*");
    return sheet.csv()
            || plain
            || dated
            || NO_PLACE.stream().anyMatch(word -> (" " + key + " ").contains(" " + word + " "))
        ? Optional.empty()
        : Optional.of(sheet.name());
  }

  public SheetAccount account() {
    if (!isList()) {
      return new SheetAccount(
          sheet.file(),
          sheet.name(),
          "no: " + why,
          sheet.rows().size(),
          0,
          0,
          0,
          0,
          0,
          0,
          0,
          0,
          0,
          0,
          sheet.rows().size());
    }
    return new SheetAccount(
        sheet.file(),
        sheet.name(),
        "yes",
        kinds.size(),
        count(RowKind.TITLE),
        count(RowKind.HEADING),
        count(RowKind.HEADING_AGAIN),
        count(RowKind.LOT),
        count(RowKind.GROUP),
        count(RowKind.TOTAL),
        count(RowKind.NOTE),
        count(RowKind.STRUCK),
        count(RowKind.GONE),
        count(RowKind.ASKED),
        count(RowKind.NOT_READ));
  }

  private int count(RowKind kind) {
    return (int) kinds.values().stream().filter(each -> each == kind).count();
  }
}
