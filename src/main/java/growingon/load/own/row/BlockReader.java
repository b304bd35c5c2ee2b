package growingon.load.own.row;

import growingon.load.own.heading.Columns;
import growingon.load.own.heading.HeadingRead;
import growingon.load.own.lot.Draft;
import growingon.load.own.plant.PlantNames;
import growingon.load.own.sheet.Sheet;
import growingon.load.own.sheet.SheetCell;
import growingon.load.own.sheet.SheetRow;
import growingon.load.own.text.CountText;
import growingon.load.own.text.Keys;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.HashMap;
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
  static final int LONGEST_GROUP = 45;

  /** The longest name that a plant of the nursery may have. */
  private static final int LONGEST_NAME = 100;

  private final List<HeadingRead> heads;
  private final RowReader reader;
  private final Set<String> titles;
  private final Optional<YearMonth> counted;
  private final Sheet sheet;
  private final Map<Integer, SheetCell> above = new HashMap<>();
  private final List<Draft> lots = new ArrayList<>();
  private final List<Draft> asked = new ArrayList<>();
  private final Map<Integer, RowKind> kinds = new TreeMap<>();
  private final TotalRows totals;
  private final PassedOver passed = new PassedOver();
  private final GroupTitles group;
  private final NameAbove names = new NameAbove();

  /**
   * A reader of one block.
   *
   * @param titles above the list
   * @param above what the title right above the block says
   * @param counted month of the count, after which nothing has come; empty if it is not known
   */
  BlockReader(
      Sheet sheet,
      List<HeadingRead> heads,
      RowReader reader,
      Set<String> titles,
      TitleAbove above,
      Optional<YearMonth> counted) {
    this.counted = counted;
    this.sheet = sheet;
    this.heads = heads;
    this.reader = reader;
    this.titles = titles;
    this.group = new GroupTitles(reader, above);
    this.totals = new TotalRows(heads);
  }

  void read(List<SheetRow> rows) {
    for (SheetRow row : rows) {
      for (HeadingRead head : heads) {
        if (head.is("place")) {
          group.addPlace(row.text(head.column()));
        }
      }
    }
    for (SheetRow row : rows) {
      if (!row.cells().isEmpty()) {
        kinds.merge(
            row.number(), kind(filled(row)), (one, other) -> other == RowKind.LOT ? other : one);
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
          && sheet.isMergedDown(row.number(), column)) {
        cells.put(column, above.get(column));
      }
    }
    return new SheetRow(row.number(), row.hidden(), cells);
  }

  private RowKind kind(SheetRow row) {
    if (isHeadingAgain(row)) {
      return RowKind.HEADING_AGAIN;
    }
    if (totals.isOne(row, lots)) {
      totals.take(row, lots.size());
      return RowKind.TOTAL;
    }
    String only = only(row);
    if (!only.isEmpty() && (titles.contains(Keys.of(only)) || RowWords.isPage(only))) {
      return RowKind.NOTE;
    }
    if (isGroup(row)) {
      names.forget();
      group.take(row);
      return RowKind.GROUP;
    }
    if (isNote(row)) {
      group.takeTerms(only);
      return RowKind.NOTE;
    }
    if (RowWords.isNothing(text(row, "species")) && !hasAny(row, "quantity", "packs")) {
      return RowKind.NOTE;
    }
    if (isBelowTotal(row)) {
      passed.belowTotal.add(row.number(), 0);
      return RowKind.NOTE;
    }
    return lot(row);
  }

  /** What stands below a total without a number is said of the list, if it is no plant. */
  private boolean isBelowTotal(SheetRow row) {
    String name = text(row, "species");
    return !totals.all().isEmpty()
        && !hasAny(row, "quantity", "packs", "size", "pot", "girth cm", "arrived")
        && !isPlantARow()
        && (name.length() >= LONGEST_GROUP
            || name.endsWith(".")
            || !PlantNames.shipped().find(name, group.under().genus()).isPlant());
  }

  private boolean isPlantARow() {
    return heads.stream().anyMatch(HeadingRead::isPlantARow);
  }

  private boolean isHeadingAgain(SheetRow row) {
    long same =
        heads.stream()
            .filter(head -> Keys.of(row.text(head.column())).equals(Keys.of(head.heading())))
            .count();
    return same >= 2 && same * 2 >= row.cells().size();
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
            isLoneTitle(row) ? "size" : "quantity",
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

  /** A word alone where numbers stand is a title at the left edge of the list. */
  private boolean isLoneTitle(SheetRow row) {
    return row.cells().size() == 1
        && row.cells().firstKey().equals(heads.get(0).column())
        && only(row).matches("[\\p{L} ]{3,}");
  }

  private static boolean isYear(SheetCell cell) {
    return cell.number().isPresent() && cell.text().matches("20\\d\\d");
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
    return only(row).length() >= LONGEST_GROUP;
  }

  /** The text of the only cell; empty where there are more. */
  private static String only(SheetRow row) {
    return row.cells().size() == 1 ? row.cells().values().iterator().next().text() : "";
  }

  private RowKind lot(SheetRow row) {
    String name = names.of(named(row), text(row, "genus"), text(row, "cultivar"));
    if (name.length() > LONGEST_NAME) {
      return tooLong(row, name.substring(0, LONGEST_GROUP));
    }
    if (isStruck(row)) {
      return pass(passed.struck, row, name, RowKind.STRUCK);
    }
    if (group.saysNoStock() || isDue(row) || !isGone(row) && reader.hasDeparted(row)) {
      return pass(passed.notStock, row, name, RowKind.NOT_READ);
    }
    if (counted.filter(month -> reader.arrivals().comesAfter(row, month)).isPresent()) {
      return pass(passed.toCome, row, name, RowKind.NOT_READ);
    }
    String what = RowWords.isFigure(name) ? text(row, "lot") : name;
    if (RowWords.isThing(what, group.under().genus())) {
      passed.things.add(row.number(), plants(row));
      return RowKind.NOT_READ;
    }
    if (heads.stream().noneMatch(head -> head.is(Columns.SIZE_HEADING))) {
      return one(row, name);
    }
    if (reader.saysPrices(name)) {
      passed.prices.add(row.number(), 0);
      return RowKind.NOT_READ;
    }
    return bySize(row, name);
  }

  /** Passes a row over, to which marks for "as above" below it point all the same. */
  private RowKind pass(PassedOver.Tally tally, SheetRow row, String name, RowKind kind) {
    tally.add(row.number(), plants(row));
    remember(row, name);
    return kind;
  }

  /** The name; of rootstocks that bear nothing yet, theirs. */
  private String named(SheetRow row) {
    boolean none = !hasAny(row, "species", "genus", "cultivar", "common name");
    return none ? text(row, "rootstock") : text(row, "species");
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
    remember(row, name);
    if (gone) {
      return RowKind.GONE;
    }
    return finish(row, reader.read(row, name, group.under()));
  }

  private RowKind finish(SheetRow row, Draft draft) {
    if (draft.placeIsDetail && !group.place().isEmpty()) {
      draft.note(draft.place);
      draft.place = "";
    }
    draft.placeIsDetail &= !draft.place.isEmpty();
    draft.place = draft.place.isEmpty() ? group.place() : draft.place;
    draft.placeFromNotes(RowWords::isOneOfPlaces);
    if (draft.arrived.isEmpty() && text(row, "arrived").isEmpty()) {
      draft.arrived = group.month();
      draft.arrivedAbout |= group.month().isPresent();
    }
    if (draft.ownName.isEmpty() || RowWords.isFigure(draft.ownName)) {
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
      passed.hidden.add(row.number(), draft.quantity.orElse(0));
    }
    lots.add(draft);
    return RowKind.LOT;
  }

  /** Each filled cell under a size is a lot of that size. */
  private RowKind bySize(SheetRow row, String name) {
    remember(row, name);
    RowKind kind = RowKind.GONE;
    for (HeadingRead head : heads) {
      Optional<SheetCell> cell =
          head.is(Columns.SIZE_HEADING) ? row.cell(head.column()) : Optional.empty();
      if (cell.isPresent() && !CountText.isGone(cell.get())) {
        Draft draft = reader.readSized(row, name, group.under(), head, cell.get());
        RowKind found = finish(row, draft);
        kind = kind == RowKind.LOT ? kind : found;
      }
    }
    return kind == RowKind.GONE && hasAny(row, "quantity") ? one(row, name) : kind;
  }

  private void remember(SheetRow row, String name) {
    above.keySet().removeIf(column -> row.cell(column).isEmpty());
    row.cells().forEach(above::put);
    names.remember(RowReader.withoutNumber(name), text(row, "genus"));
  }

  private boolean isStruck(SheetRow row) {
    return heads.stream()
        .filter(head -> head.is("species") || head.is("quantity"))
        .flatMap(head -> row.cell(head.column()).stream())
        .anyMatch(SheetCell::struck);
  }

  private long plants(SheetRow row) {
    if (isPlantARow()) {
      return 1;
    }
    for (HeadingRead head : heads) {
      if (head.is("quantity") && row.cell(head.column()).isPresent()) {
        Optional<Integer> number = CountText.of(row.cell(head.column()).get()).value();
        return number.isPresent() ? number.get() : onlyNumber(row);
      }
    }
    return 0;
  }

  /** The number of a row whose columns stand otherwise than the headings say. */
  private static long onlyNumber(SheetRow row) {
    List<SheetCell> numbers =
        row.cells().values().stream().filter(cell -> cell.number().isPresent()).toList();
    return numbers.size() == 1 ? CountText.of(numbers.get(0)).value().orElse(0) : 0;
  }

  private boolean isDue(SheetRow row) {
    String number = text(row, "quantity");
    String arrived = text(row, "arrived");
    return (RowWords.isDue(number) && !number.isEmpty())
        || (RowWords.isDue(arrived) && !reader.arrivals().hasCome(row))
        || (!text(row, "on order").isEmpty() && arrived.isEmpty());
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

  List<TotalRows.TotalRow> totals() {
    return totals.all();
  }

  PassedOver passed() {
    return passed;
  }

  Map<Integer, String> groupsNotUsed() {
    return group.notUsed();
  }
}
