package growingon.load.own.heading;

import growingon.load.own.heading.HeadingRead.How;
import growingon.load.own.plant.PlantNames;
import growingon.load.own.sheet.SheetCell;
import growingon.load.own.size.SizeGrammar;
import growingon.load.own.size.Span;
import growingon.load.own.text.Keys;
import growingon.load.own.text.Meaning;
import growingon.load.own.text.MonthText;
import growingon.load.own.text.OfferMonth;
import growingon.load.own.text.QualityText;
import growingon.load.own.text.Units;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** What a column is by its cells, where its heading leaves that open. */
final class ByCells {
  /** So many numbers in turn from 1 on are no numbers of plants. */
  private static final int LEAST_NUMBERED = 5;

  /** The one letter that is a heading of numbers. */
  private static final String LETTER = "n";

  private static final Set<String> STEMS = Set.of("st", "stam", "stamm", "stem");

  private static final Set<String> POTS =
      Set.of("pots", "topfe", "toepfe", "potten", "vasi", "macetas", "godets");

  private static final Set<String> COUNTS =
      Set.of("quantity", "opening", "available", "reserved", "sold", "lost", "packs", "per pack");

  private final List<HeadingRead> reads;
  private final List<Integer> ranks;
  private final Set<Integer> notUnderstood;
  private final ColumnCells cells;
  private final ListKind list;

  /**
   * By the cells of a list.
   *
   * @param reads its columns as far as they are known, which may change meanwhile
   * @param ranks of their headings
   * @param notUnderstood columns whose headings nobody knows
   */
  ByCells(
      List<HeadingRead> reads,
      List<Integer> ranks,
      Set<Integer> notUnderstood,
      ColumnCells cells,
      ListKind list) {
    this.reads = reads;
    this.ranks = ranks;
    this.notUnderstood = notUnderstood;
    this.cells = cells;
    this.list = list;
  }

  private boolean has(String ours) {
    return reads.stream().anyMatch(each -> each.is(ours));
  }

  /** Whether a heading that is spelt nearly so may be meant: words are no numbers of plants. */
  boolean mayBe(HeadingWords.Near near, int column) {
    return !COUNTS.containsAll(near.choices()) || cells.most(column, CellKinds::isCount);
  }

  /** What a heading that nobody knows may be, by what stands below it: offered, never taken. */
  List<String> offered(int column) {
    List<String> offered = new ArrayList<>();
    if (cells.all(column, MonthText::isMonth)) {
      offered.addAll(List.of("arrived", "potted"));
    }
    if (cells.all(column, CellKinds::mayBeMoney)) {
      offered.addAll(List.of("unit cost", "row cost", "selling price"));
    }
    if (!has("quantity") && cells.all(column, CellKinds::isCount)) {
      offered.add(0, "quantity");
    }
    return offered;
  }

  /** What a heading leaves open, and what its cells may be besides. */
  List<String> withOffered(HeadingRead read) {
    Set<String> all = new LinkedHashSet<>(read.choices());
    if (!all.contains("selling price")) {
      all.addAll(offered(read.column()));
    }
    return List.copyOf(all);
  }

  /** Pots and roots; T1, T2 … alone are tunnels or tables. */
  boolean sayPots(int column) {
    return cells.all(column, CellKinds::holdsAPot)
        && !cells.all(column, cell -> cell.text().strip().matches("T\\s?[0-9]{1,2}"));
  }

  /** Clear stems under st., beside a number of plants. */
  boolean areStems(HeadingRead read) {
    return read.is("quantity")
        && read.how() != How.YOURS
        && STEMS.contains(Keys.of(read.heading()))
        && reads.stream().anyMatch(each -> each != read && each.is("quantity"))
        && cells.all(read.column(), CellKinds::isClearStem);
  }

  /** Girths under a heading of trunks in cm: no trunk is sold by classes of girth. */
  boolean areGirths(HeadingRead read) {
    return read.is("trunk mm")
        && read.unit().equals("cm")
        && read.how() != How.YOURS
        && cells.most(
            read.column(),
            cell -> SizeGrammar.bare(cell.text()).filter(Span::isGirthClass).isPresent());
  }

  /** How many pots there are, where another column says which: a heading in the plural alone. */
  boolean arePotsCounted(HeadingRead read) {
    return read.is("pot")
        && read.how() != How.YOURS
        && POTS.contains(Keys.of(read.heading()))
        && !has("quantity")
        && cells.all(read.column(), CellKinds::isCount)
        && reads.stream()
            .anyMatch(
                each ->
                    each.column() != read.column()
                        && cells.most(each.column(), CellKinds::holdsAPot));
  }

  /** C15 may be a bay; 35L airpot beside it is none. */
  boolean arePots(int column) {
    return cells.all(column, CellKinds::holdsAPot)
        && cells.of(column).stream().anyMatch(CellKinds::saysLitres);
  }

  /** What a column is whose heading says that it has months: asked where its cells are none. */
  HeadingRead ofMonths(HeadingRead read) {
    int column = read.column();
    if (read.is("root work") && cells.all(column, CellKinds::isHowOften)) {
      return read.as("note", "", How.BY_ITS_CELLS, "taken by its cells");
    }
    boolean none =
        read.rows() > 0
            && !list.isOffers()
            && cells.of(column).stream()
                .noneMatch(cell -> MonthText.isMonth(cell) || MonthText.isNow(cell));
    return none
        ? read.as(Meaning.OPEN, "", How.OPEN, "its cells are no months")
            .offering(List.of(read.ours(), "note"))
        : read;
  }

  /** Whether a column of names holds figures alone, or words with figures beside plants. */
  boolean areCodes(HeadingRead read) {
    boolean beside =
        reads.stream()
            .anyMatch(each -> each != read && each.is("species") && plants(each.column()) > 0);
    return cells.all(read.column(), cell -> cell.text().matches("[0-9 .-]+"))
        || beside
            && plants(read.column()) == 0
            && cells.all(read.column(), cell -> cell.text().strip().matches("\\S*[0-9]\\S*"));
  }

  /** Share of the texts of a column that are plants; nil where it is under three in ten. */
  double plants(int column) {
    List<SheetCell> texts = cells.of(column).stream().filter(SheetCell::isText).limit(200).toList();
    long plants =
        texts.stream().filter(cell -> PlantNames.shipped().find(cell.text(), "").isPlant()).count();
    return plants * 10 >= texts.size() * 3 && plants > 0 ? (double) plants / texts.size() : 0;
  }

  /** What an open heading is, where its cells decide among its readings. */
  Optional<String> of(HeadingRead read) {
    Set<String> choices = new HashSet<>(read.choices());
    int column = read.column();
    if (choices.equals(Set.of("lot", "quantity"))) {
      return numberOrLot(read);
    }
    if (choices.equals(Set.of("quantity", "selling price"))) {
      return numberOrPrice(read);
    }
    if (choices.equals(Set.of("arrived", "quantity"))) {
      return datesOrNumbers(column);
    }
    if (choices.equals(Set.of("supplier", "arrived"))) {
      boolean months =
          cells.all(column, MonthText::isMonth)
              || list.isOffers() && cells.most(column, OfferMonth::isOne);
      return Optional.of(months ? "arrived" : "supplier");
    }
    if (choices.equals(Set.of("quantity", "species"))) {
      return cells.most(column, SheetCell::isText) && !cells.most(column, CellKinds::isCount)
          ? Optional.of("species")
          : Optional.of("quantity");
    }
    if (choices.equals(Set.of("quantity", "place"))) {
      return Optional.of(cells.most(column, CellKinds::isCount) ? "quantity" : "place");
    }
    if (choices.equals(Set.of("species", "form")) && has("genus")) {
      return Optional.of("species");
    }
    if (choices.equals(Set.of("arrived"))) {
      return cells.all(column, MonthText::isMonth) ? Optional.of("arrived") : Optional.empty();
    }
    if (choices.equals(Set.of("arrived", "note"))) {
      return cells.all(column, cell -> isMonth(read, cell))
          ? Optional.of("arrived")
          : Optional.empty();
    }
    return size(read, choices);
  }

  /** What an open column of sizes, pots and forms is. */
  private Optional<String> size(HeadingRead read, Set<String> choices) {
    int column = read.column();
    if (choices.contains("quality word")
        && cells.all(column, cell -> QualityText.of(cell.text()).isPresent())) {
      return Optional.of("quality word");
    }
    if (choices.contains("size") && cells.most(column, CellKinds::saysWhichSize)) {
      return Optional.of("size");
    }
    boolean litres = read.unit().equals("litres") && cells.most(column, CellKinds::isLitres);
    if (choices.equals(Set.of("pot", "note"))
        && (litres || cells.most(column, CellKinds::holdsAPot))) {
      return Optional.of("pot");
    }
    if (choices.contains("quality word") && cells.most(column, CellKinds::hasWords)) {
      return Optional.of("quality word");
    }
    if (choices.contains("height cm") && Units.isLength(read.unit())) {
      return Optional.of("height cm");
    }
    if (choices.contains("clear stem")
        && (has("girth cm") || cells.all(column, CellKinds::isClearStem))) {
      return Optional.of("clear stem");
    }
    boolean sized =
        has(Columns.SIZE_HEADING)
            || reads.stream().anyMatch(each -> each.column() == SizeGroup.SIZE_COLUMN);
    return read.choices().contains(Meaning.NOT_READ) && sized
        ? Optional.of(Meaning.NOT_READ)
        : Optional.empty();
  }

  private static boolean isMonth(HeadingRead read, SheetCell cell) {
    return MonthText.isMonth(cell)
        || read.unit().equals(Units.WEEK)
            && new MonthText(Optional.empty(), false).ofWeek(cell).value().isPresent();
  }

  /**
   * Not read where it numbers many rows; the number of plants if no other column is; else the lot
   * if all differ; else not read. Beside a number a lone N may as well be a point of the compass or
   * a count of stems.
   */
  private Optional<String> numberOrLot(HeadingRead read) {
    boolean other = isCountedElsewhere(read);
    List<String> texts = cells.of(read.column()).stream().map(SheetCell::text).toList();
    if (other && new HashSet<>(texts).size() == texts.size()) {
      return Optional.of(isCountingDown(texts) ? Meaning.NOT_READ : "lot");
    }
    if (texts.size() >= LEAST_NUMBERED && isCountingDown(texts)) {
      return Optional.of(Meaning.NOT_READ);
    }
    boolean letter = Keys.of(read.heading()).equals(LETTER);
    if (cells.most(read.column(), CellKinds::isCount)) {
      return other && letter ? Optional.empty() : Optional.of("quantity");
    }
    return letter ? Optional.empty() : Optional.of("lot");
  }

  /** Whether a column of lines only numbers the rows of a list. */
  boolean isNumbering(HeadingRead read) {
    List<String> texts = cells.of(read.column()).stream().map(SheetCell::text).toList();
    return texts.size() >= LEAST_NUMBERED
        && Keys.of(read.heading()).startsWith("line")
        && isCountingDown(texts);
  }

  private boolean isCountedElsewhere(HeadingRead read) {
    return reads.stream()
        .anyMatch(each -> each != read && (each.is("quantity") || each.is(Columns.SIZE_HEADING)));
  }

  private static boolean isCountingDown(List<String> texts) {
    boolean counting = true;
    for (int i = 0; i < texts.size(); i++) {
      counting &= texts.get(i).equals(Integer.toString(i + 1));
    }
    return counting;
  }

  /** What there is now, or beside what it was what it costs now. */
  private Optional<String> numberOrPrice(HeadingRead read) {
    if (Units.isMoney(read.unit()) || cells.most(read.column(), CellKinds::isMoney)) {
      return Optional.of(list.isOffers() ? "unit cost" : "selling price");
    }
    return !isSurelyCounted() && cells.most(read.column(), CellKinds::isCount)
        ? Optional.of("quantity")
        : Optional.empty();
  }

  /** Whether a column is the number of plants and nothing else: not what was potted once. */
  private boolean isSurelyCounted() {
    for (int i = 0; i < reads.size(); i++) {
      if (reads.get(i).is(Columns.SIZE_HEADING)
          || (reads.get(i).is("quantity") && ranks.get(i) <= 2)) {
        return true;
      }
    }
    return false;
  }

  private Optional<String> datesOrNumbers(int column) {
    boolean counts = cells.all(column, CellKinds::isCount);
    boolean months = cells.all(column, MonthText::isMonth);
    boolean mostMonths = has("quantity") && !counts && cells.most(column, MonthText::isMonth);
    if ((months || mostMonths) && !cells.all(column, CellKinds::mayBeMoney)) {
      return Optional.of("arrived");
    }
    if (counts && has("quantity")) {
      return Optional.of("note");
    }
    if (!has("pot") && cells.most(column, CellKinds::holdsAPot)) {
      return Optional.of("pot");
    }
    return counts && !mayBeTheNumber(column) ? Optional.of("quantity") : Optional.empty();
  }

  /** Whether a column that is not understood counts as well, and may be what is left. */
  private boolean mayBeTheNumber(int column) {
    return reads.stream()
        .anyMatch(
            read ->
                read.column() != column
                    && read.how() == How.OPEN
                    && notUnderstood.contains(read.column())
                    && cells.all(read.column(), CellKinds::isCount));
  }
}
