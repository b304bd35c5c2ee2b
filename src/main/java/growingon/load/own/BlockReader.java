package growingon.load.own;

import java.time.YearMonth;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

/**
 * Reads the rows below one heading row, from one column up to another: says of each what it is, and
 * reads those that are lots.
 */
final class BlockReader {
  private static final int LONGEST_GROUP = 45;

  /** The longest name that a plant of the nursery may have. */
  private static final int LONGEST_NAME = 100;

  private final List<HeadingRead> heads;
  private final RowReader reader;
  private final Set<String> titles;
  private final Sheet sheet;
  private final Map<Integer, SheetCell> above = new HashMap<>();
  private final List<Draft> lots = new ArrayList<>();
  private final List<Draft> asked = new ArrayList<>();
  private final List<Integer> groupsNotUsed = new ArrayList<>();
  private final Map<Integer, RowKind> kinds = new TreeMap<>();
  private final List<TotalRow> totals = new ArrayList<>();
  private final Tally notStock = new Tally();
  private final Tally struck = new Tally();
  private final Tally hidden = new Tally();
  private final Set<String> placeNames = new HashSet<>();
  private String nameAbove = "";
  private String genus = "";
  private Optional<PlantMatch> groupSpecies = Optional.empty();
  private String groupPlace = "";
  private String groupSize = "";
  private Optional<YearMonth> groupMonth = Optional.empty();
  private boolean groupIsNotStock;

  /** Rows and plants of one kind. */
  static final class Tally {
    final List<Integer> rows = new ArrayList<>();
    long plants;

    void add(int row, long number) {
      rows.add(row);
      plants += number;
    }
  }

  /**
   * A row that states a total.
   *
   * @param lotsBefore lots read above it
   */
  record TotalRow(int row, double stated, int lotsBefore) {}

  BlockReader(Sheet sheet, List<HeadingRead> heads, RowReader reader, Set<String> titles) {
    this.sheet = sheet;
    this.heads = heads;
    this.reader = reader;
    this.titles = titles;
  }

  void read(List<SheetRow> rows) {
    for (SheetRow row : rows) {
      for (HeadingRead head : heads) {
        if (head.is("place")) {
          placeNames.add(Keys.of(row.text(head.column())));
        }
      }
    }
    for (SheetRow row : rows) {
      if (!row.cells().isEmpty()) {
        kinds.put(row.number(), kind(filled(row)));
      }
    }
  }

  /** The row with what merged cells and marks for "as above" say. */
  private SheetRow filled(SheetRow row) {
    TreeMap<Integer, SheetCell> cells = new TreeMap<>(row.cells());
    for (HeadingRead head : heads) {
      int column = head.column();
      Optional<SheetCell> cell = row.cell(column);
      boolean name = head.is("species") || head.is("genus");
      if (cell.isPresent()
          && RowWords.isDitto(cell.get().text())
          && !name
          && above.containsKey(column)) {
        cells.put(column, above.get(column));
      } else if (cell.isEmpty()
          && above.containsKey(column)
          && isMergedDown(row.number(), column)) {
        cells.put(column, above.get(column));
      }
    }
    return new SheetRow(row.number(), row.hidden(), cells);
  }

  private boolean isMergedDown(int row, int column) {
    return sheet.merges().stream()
        .anyMatch(
            merge ->
                merge.isDown()
                    && merge.firstColumn() <= column
                    && merge.lastColumn() >= column
                    && merge.firstRow() < row
                    && merge.lastRow() >= row);
  }

  private RowKind kind(SheetRow row) {
    if (isHeadingAgain(row)) {
      return RowKind.HEADING_AGAIN;
    }
    if (isTotal(row)) {
      total(row);
      return RowKind.TOTAL;
    }
    String only = row.cells().size() == 1 ? row.cells().values().iterator().next().text() : "";
    if (!only.isEmpty() && (titles.contains(Keys.of(only)) || RowWords.isPage(only))) {
      return RowKind.NOTE;
    }
    if (isGroup(row)) {
      group(row);
      return RowKind.GROUP;
    }
    return isNote(row) ? RowKind.NOTE : lot(row);
  }

  private boolean isHeadingAgain(SheetRow row) {
    long same =
        heads.stream()
            .filter(head -> Keys.of(row.text(head.column())).equals(Keys.of(head.heading())))
            .count();
    return same >= 2 && same * 2 >= row.cells().size();
  }

  private boolean isTotal(SheetRow row) {
    List<String> texts =
        row.cells().values().stream()
            .filter(SheetCell::isText)
            .map(SheetCell::text)
            .limit(2)
            .toList();
    boolean numbersElse =
        row.cells().values().stream()
                .filter(SheetCell::isText)
                .filter(cell -> Numbers.money(cell.text()).isEmpty())
                .count()
            <= 2;
    if (texts.stream().anyMatch(RowWords::isTotal) && numbersElse) {
      return true;
    }
    boolean named = !text(row, "species").isEmpty();
    return isBareSum(row)
        || !named
            && row.cells().values().stream()
                .anyMatch(
                    cell ->
                        cell.formula()
                            .toUpperCase(java.util.Locale.ROOT)
                            .matches(".*(SUM|SUBTOTAL)\\(.*"));
  }

  /** A row with nothing but a number that is the sum of those above. */
  private boolean isBareSum(SheetRow row) {
    if (row.cells().size() != 1 || lots.size() < 2) {
      return false;
    }
    int column = row.cells().firstKey();
    boolean number =
        heads.stream().anyMatch(head -> head.is("quantity") && head.column() == column);
    int since = totals.isEmpty() ? 0 : totals.get(totals.size() - 1).lotsBefore();
    Optional<Integer> value = CountText.of(row.cells().get(column)).value();
    return number
        && value.isPresent()
        && (value.get() == plants(lots) || value.get() == plants(lots.subList(since, lots.size())));
  }

  private static long plants(List<Draft> of) {
    return of.stream().mapToLong(Draft::counted).sum();
  }

  private void total(SheetRow row) {
    double stated = 0;
    boolean any = false;
    for (HeadingRead head : heads) {
      boolean counts = head.is("quantity") || head.is(Columns.SIZE_HEADING);
      Optional<Integer> number =
          counts
              ? row.cell(head.column()).flatMap(cell -> CountText.of(cell).value())
              : Optional.empty();
      if (number.isPresent() && !(any && head.is("quantity"))) {
        stated += number.get();
        any = true;
      }
    }
    if (any) {
      totals.add(new TotalRow(row.number(), stated, lots.size()));
    }
  }

  private String text(SheetRow row, String ours) {
    for (HeadingRead head : heads) {
      if (head.is(ours) && !row.text(head.column()).isBlank()) {
        return row.text(head.column()).strip();
      }
    }
    return "";
  }

  private boolean hasAny(SheetRow row, String... ours) {
    for (String each : ours) {
      if (!text(row, each).isEmpty()) {
        return true;
      }
    }
    return heads.stream()
        .anyMatch(head -> head.is(Columns.SIZE_HEADING) && row.cell(head.column()).isPresent());
  }

  private boolean isGroup(SheetRow row) {
    boolean texts = row.cells().values().stream().allMatch(cell -> cell.isText() || isYear(cell));
    int length = row.cells().values().stream().mapToInt(cell -> cell.text().length()).sum();
    return row.cells().size() <= 2
        && texts
        && length < LONGEST_GROUP
        && !row.cells().values().stream().anyMatch(cell -> RowWords.isDitto(cell.text()))
        && !hasAny(
            row,
            "quantity",
            "size",
            "pot",
            "girth cm",
            "height cm",
            "trunk mm",
            "unit cost",
            "selling price",
            "arrived",
            "note",
            "row cost",
            "packs")
        && (row.cells().size() == 1
            || text(row, "species").isEmpty()
            || text(row, "lot").isEmpty());
  }

  private static boolean isYear(SheetCell cell) {
    return cell.number().isPresent() && cell.text().matches("20\\d\\d");
  }

  private void group(SheetRow row) {
    String text =
        String.join(" ", row.cells().values().stream().map(SheetCell::text).toList()).strip();
    groupIsNotStock = RowWords.isNotStock(text);
    nameAbove = "";
    PlantMatch match = PlantNames.shipped().find(text, "");
    String key = PlantNames.shipped().genusIn(text);
    if (groupIsNotStock) {
      return;
    }
    if (PlantNames.shipped().isGenus(key) && Keys.words(Keys.of(text)).size() == 1) {
      genus = key;
      groupSpecies = Optional.empty();
    } else if (match.isKnown() && match.how() == PlantMatch.How.CERTAIN) {
      genus = PlantNames.genusOf(Keys.of(match.taxon().get()));
      groupSpecies = Optional.of(match);
    } else if (MonthText.isSeasonOrYear(text)) {
      groupMonth = new MonthText(Optional.empty(), false).of(SheetCell.of(text)).value();
    } else if (RowWords.isPlace(text) || placeNames.contains(Keys.of(text))) {
      groupPlace = text;
    } else if (reader.readsSizeOf(text)) {
      groupSize = text;
    } else {
      genus =
          Keys.words(Keys.of(text)).size() == 1
                  && text.equals(text.toUpperCase(java.util.Locale.ROOT))
                  && PlantText.isEpithet(Keys.of(text))
                  && !Keys.of(text).endsWith("s")
              ? Keys.of(text)
              : "";
      groupSpecies = Optional.empty();
      groupsNotUsed.add(row.number());
    }
  }

  private Group under() {
    return new Group(genus, groupSpecies, groupSize);
  }

  private boolean isNote(SheetRow row) {
    boolean name = hasAny(row, "species", "genus", "cultivar", "common name");
    boolean number = hasAny(row, "quantity", "packs");
    if (!name && !number) {
      return !hasAny(row, "size", "pot", "girth cm", "trunk mm", "unit cost", "selling price");
    }
    if (number) {
      return false;
    }
    boolean longText =
        row.cells().size() == 1
            && row.cells().values().iterator().next().text().length() >= LONGEST_GROUP;
    return longText;
  }

  private RowKind lot(SheetRow row) {
    String name = name(row);
    if (name.length() > LONGEST_NAME) {
      return tooLong(row, name.substring(0, LONGEST_GROUP));
    }
    if (isStruck(row)) {
      struck.add(row.number(), plants(row));
      return RowKind.STRUCK;
    }
    if (groupIsNotStock || isDue(row)) {
      notStock.add(row.number(), plants(row));
      return RowKind.NOT_READ;
    }
    if (RowWords.isThing(name) && !PlantNames.shipped().find(name, genus).isPlant()) {
      return RowKind.NOT_READ;
    }
    return heads.stream().anyMatch(head -> head.is(Columns.SIZE_HEADING))
        ? bySize(row, name)
        : one(row, name);
  }

  /** Nothing is called so long; it is not looked for among the plants, which would take long. */
  private RowKind tooLong(SheetRow row, String beginning) {
    Draft draft = new Draft(sheet.name(), row.number());
    draft.ownName = beginning;
    draft.rowAsked = true;
    draft.ask("species", beginning, "no plant has so long a name; which is it?");
    asked.add(draft);
    return RowKind.ASKED;
  }

  private RowKind one(SheetRow row, String name) {
    boolean gone = isGone(row);
    remember(row);
    nameAbove = name;
    if (gone) {
      return RowKind.GONE;
    }
    return finish(row, reader.read(row, name, under()));
  }

  private RowKind finish(SheetRow row, Draft draft) {
    draft.place = draft.place.isEmpty() ? groupPlace : draft.place;
    if (draft.arrived.isEmpty() && text(row, "arrived").isEmpty()) {
      draft.arrived = groupMonth;
      draft.arrivedAbout |= groupMonth.isPresent();
    }
    if (draft.ownName.isEmpty()) {
      draft.rowAsked = true;
      draft.ask("species", "", "which plant is it?");
    }
    if (draft.rowAsked) {
      asked.add(draft);
      return RowKind.ASKED;
    }
    if (draft.quantity.orElse(1) == 0) {
      return RowKind.GONE;
    }
    if (row.hidden()) {
      hidden.add(row.number(), draft.quantity.orElse(0));
    }
    lots.add(draft);
    return RowKind.LOT;
  }

  /** Each filled cell under a size is a lot of that size. */
  private RowKind bySize(SheetRow row, String name) {
    remember(row);
    nameAbove = name;
    RowKind kind = RowKind.GONE;
    for (HeadingRead head : heads) {
      Optional<SheetCell> cell =
          head.is(Columns.SIZE_HEADING) ? row.cell(head.column()) : Optional.empty();
      if (cell.isPresent() && !CountText.isGone(cell.get())) {
        Draft draft = reader.readSized(row, name, under(), head, cell.get());
        RowKind found = finish(row, draft);
        kind = kind == RowKind.LOT ? kind : found;
      }
    }
    return kind == RowKind.GONE && hasAny(row, "quantity") ? one(row, name) : kind;
  }

  /** The name, also where a mark or an empty cell means the one above. */
  private String name(SheetRow row) {
    String text = text(row, "species");
    String genusCell = text(row, "genus");
    if (text.isEmpty() && !genusCell.isEmpty()) {
      text =
          RowWords.isDitto(genusCell)
              ? nameAbove
              : (genusCell + " " + text(row, "cultivar")).strip();
    }
    if (text.isEmpty() || RowWords.isDitto(text)) {
      return nameAbove.isEmpty() ? text.isEmpty() ? "" : text : nameAbove;
    }
    if (text.matches("(?:\"|''|„|”|do\\.?|dto\\.?)\\s+\\S.*") && !nameAbove.isEmpty()) {
      String rest = text.replaceFirst("^(?:\"|''|„|”|do\\.?|dto\\.?)\\s+", "");
      return PlantText.called(nameAbove) + " " + rest;
    }
    if (!genusCell.isEmpty()
        && !RowWords.isDitto(genusCell)
        && !Keys.of(text).startsWith(Keys.of(genusCell))) {
      return genusCell + " " + text;
    }
    return text;
  }

  private void remember(SheetRow row) {
    row.cells().forEach(above::put);
  }

  private boolean isStruck(SheetRow row) {
    return heads.stream()
        .filter(head -> head.is("species") || head.is("quantity"))
        .flatMap(head -> row.cell(head.column()).stream())
        .anyMatch(SheetCell::struck);
  }

  private long plants(SheetRow row) {
    for (HeadingRead head : heads) {
      if (head.is("quantity") && row.cell(head.column()).isPresent()) {
        return CountText.of(row.cell(head.column()).get()).value().orElse(0);
      }
    }
    return 0;
  }

  private boolean isDue(SheetRow row) {
    String number = text(row, "quantity");
    return (RowWords.isDue(number) && !number.isEmpty())
        || (!text(row, "on order").isEmpty() && text(row, "arrived").isEmpty());
  }

  private boolean isGone(SheetRow row) {
    List<SheetCell> cells =
        heads.stream()
            .filter(head -> head.is("quantity"))
            .flatMap(head -> row.cell(head.column()).stream())
            .toList();
    return !cells.isEmpty() && cells.stream().anyMatch(CountText::isGone);
  }

  List<Draft> lots() {
    return lots;
  }

  List<Draft> asked() {
    return asked;
  }

  Map<Integer, RowKind> kinds() {
    return kinds;
  }

  List<TotalRow> totals() {
    return totals;
  }

  Tally notStock() {
    return notStock;
  }

  Tally struck() {
    return struck;
  }

  Tally hidden() {
    return hidden;
  }

  List<Integer> groupsNotUsed() {
    return groupsNotUsed;
  }
}
