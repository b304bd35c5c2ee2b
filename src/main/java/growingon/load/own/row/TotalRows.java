package growingon.load.own.row;

import growingon.load.own.heading.Columns;
import growingon.load.own.heading.HeadedCells;
import growingon.load.own.heading.HeadingRead;
import growingon.load.own.lot.Draft;
import growingon.load.own.plant.PlantNames;
import growingon.load.own.sheet.SheetCell;
import growingon.load.own.sheet.SheetRow;
import growingon.load.own.text.CountText;
import growingon.load.own.text.Keys;
import growingon.load.own.text.Numbers;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeMap;

/** Rows that state a total. */
final class TotalRows {
  private static final Set<String> NAMES = Set.of("species", "genus", "cultivar", "common name");

  /** What is counted, beside a number alone. */
  private static final Set<String> COUNTED =
      Set.of(
          "trees",
          "plants",
          "count",
          "counted",
          "number",
          "baume",
          "pflanzen",
          "anzahl",
          "stuck",
          "arbres",
          "plantes",
          "plants en tout",
          "nombre",
          "bomen",
          "planten",
          "aantal",
          "alberi",
          "piante",
          "numero",
          "arboles",
          "plantas");

  /** What a lot has and a total has not. */
  private static final Set<String> DETAILS =
      Set.of(
          "lot",
          "size",
          "pot",
          "girth cm",
          "height cm",
          "trunk mm",
          "form",
          "place",
          "place detail",
          "arrived",
          "potted",
          "unit cost",
          "selling price");

  private static final Set<String> MONEY =
      Set.of("selling price", "unit cost", "row cost", "other price");

  private final List<HeadingRead> heads;
  private final List<TotalRow> totals = new ArrayList<>();

  /**
   * A row that states a total.
   *
   * @param lotsBefore lots read above it
   * @param sizes columns of sizes under which its numbers stand; empty if it has one for all plants
   */
  record TotalRow(int row, double stated, int lotsBefore, Set<Integer> sizes) {
    /** Whether a lot's number stands where those of the total do. */
    boolean isOver(Draft lot) {
      return sizes.isEmpty() || sizes.contains(lot.sizeColumn.orElse(-1));
    }
  }

  TotalRows(List<HeadingRead> heads) {
    this.heads = heads;
  }

  /** Whether a text says that what stands beside it is a count. */
  static boolean isCount(String text) {
    return RowWords.isTotal(text) || COUNTED.contains(Keys.of(text));
  }

  boolean isOne(SheetRow row, List<Draft> lots) {
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
    if ((texts.stream().anyMatch(RowWords::isTotal) || isCounted(row)) && numbersElse) {
      return true;
    }
    boolean named = !new HeadedCells(heads).first(row, "species").isEmpty();
    return isBareSum(row, lots)
        || isNamedSum(row, lots)
        || isSumLine(row, lots)
        || isLabelledSum(row, lots)
        || !named
            && row.cells().values().stream()
                .anyMatch(
                    cell ->
                        cell.formula()
                            .toUpperCase(java.util.Locale.ROOT)
                            .matches(".*(SUM|SUBTOTAL)\\(.*"));
  }

  /** Counted, without what stands in brackets, is the only word beside numbers. */
  private static boolean isCounted(SheetRow row) {
    List<SheetCell> words = row.cells().values().stream().filter(cell -> !isFigure(cell)).toList();
    return words.size() == 1
        && row.cells().size() > 1
        && COUNTED.contains(Keys.of(words.get(0).text().replaceAll("\\([^)]*\\)", " ")));
  }

  /** A row with nothing but a number that is the sum of those above. */
  private boolean isBareSum(SheetRow row, List<Draft> lots) {
    if (row.cells().size() != 1 || lots.size() < 2) {
      return false;
    }
    int column = row.cells().firstKey();
    boolean number =
        heads.stream().anyMatch(head -> head.is("quantity") && head.column() == column);
    Optional<Integer> value = CountText.of(row.cells().get(column)).value();
    return number && value.isPresent() && isSumOf(lots, value.get());
  }

  /** Whether a number is the plants of all lots, or of those since the last total. */
  private boolean isSumOf(List<Draft> lots, int number) {
    int since = totals.isEmpty() ? 0 : totals.get(totals.size() - 1).lotsBefore();
    return number > 0
        && (number == plants(lots) || number == plants(lots.subList(since, lots.size())));
  }

  /** Whether a number is the plants of the first lots, as of those above a title. */
  private static boolean isSumOfFirst(List<Draft> lots, int number) {
    long sum = 0;
    for (int i = 0; i < lots.size() && sum < number; i++) {
      sum += lots.get(i).counted();
      if (sum == number && i > 1) {
        return true;
      }
    }
    return false;
  }

  /** Words that are no plant beside a number that is the sum of those above: 131 pieces here. */
  private boolean isNamedSum(SheetRow row, List<Draft> lots) {
    HeadedCells cells = new HeadedCells(heads);
    int number = cells.count(row, "quantity").orElse(0);
    return lots.size() >= 2
        && row.cells().size() == 2
        && (isSumOf(lots, number) || isSumOfFirst(lots, number))
        && !cells.first(row, "species").isEmpty()
        && !PlantNames.shipped().find(cells.first(row, "species"), "").isPlant();
  }

  /**
   * A word that is no plant, and beside it a number alone: where no plant stands, or that of all
   * above, as in trees 36.
   */
  private boolean isLabelledSum(SheetRow row, List<Draft> lots) {
    if (row.cells().size() != 2 || lots.size() < 2) {
      return false;
    }
    int label = row.cells().firstKey();
    int number = row.cells().lastKey();
    Optional<Integer> value =
        row.cell(label)
            .filter(SheetCell::isText)
            .flatMap(cell -> CountText.of(row.cells().get(number)).value());
    boolean word = row.text(label).matches("[\\p{L} .:]{3,}");
    if (!word || value.isEmpty() || PlantNames.shipped().find(row.text(label), "").isPlant()) {
      return false;
    }
    if (COUNTED.contains(Keys.of(row.text(label)))) {
      return true;
    }
    boolean counted = is(number, Set.of("quantity"));
    boolean sum = isSumOf(lots, value.get());
    return counted && !is(label, NAMES) && !is(label, DETAILS)
        || (counted || is(number, NAMES)) && sum;
  }

  private boolean is(int column, Set<String> ours) {
    return heads.stream().anyMatch(head -> head.column() == column && ours.contains(head.ours()));
  }

  /**
   * A row of a number and other figures alone, in a list whose lots have a code, a size or a place
   * each: the last line of an export.
   */
  private boolean isSumLine(SheetRow row, List<Draft> lots) {
    HeadedCells cells = new HeadedCells(heads);
    boolean figures = row.cells().values().stream().allMatch(TotalRows::isFigure);
    boolean lotsSayMore =
        heads.stream().anyMatch(head -> isDetail(head) && head.rows() * 2 > lots.size());
    return lots.size() >= 2
        && figures
        && lotsSayMore
        && cells.has("quantity")
        && !cells.first(row, "quantity").isEmpty()
        && heads.stream()
            .filter(head -> isDetail(head) || NAMES.contains(head.ours()))
            .noneMatch(head -> row.cell(head.column()).isPresent());
  }

  private static boolean isFigure(SheetCell cell) {
    return !cell.isText() || Numbers.money(cell.text()).isPresent();
  }

  private static boolean isDetail(HeadingRead head) {
    return DETAILS.contains(head.ours());
  }

  private static long plants(List<Draft> of) {
    return of.stream().mapToLong(Draft::counted).sum();
  }

  void take(SheetRow row, int lotsBefore) {
    Map<Integer, Integer> bySize = new TreeMap<>();
    new HeadedCells(heads)
        .each(
            row,
            Columns.SIZE_HEADING,
            size ->
                CountText.of(size.cell())
                    .value()
                    .ifPresent(number -> bySize.put(size.head().column(), number)));
    OptionalInt all = new HeadedCells(heads).count(row, "quantity");
    if (all.isPresent()) {
      totals.add(new TotalRow(row.number(), all.getAsInt(), lotsBefore, Set.of()));
    } else if (!bySize.isEmpty()) {
      double sum = bySize.values().stream().mapToDouble(Integer::doubleValue).sum();
      totals.add(new TotalRow(row.number(), sum, lotsBefore, bySize.keySet()));
    } else {
      ofPlantsARow(row)
          .ifPresent(
              number -> totals.add(new TotalRow(row.number(), number, lotsBefore, Set.of())));
    }
  }

  /** The number of a total in a list without a column of numbers. */
  private Optional<Integer> ofPlantsARow(SheetRow row) {
    boolean none =
        heads.stream().noneMatch(head -> head.is("quantity") || head.is(Columns.SIZE_HEADING));
    int last = row.cells().lastKey();
    return none && row.cells().size() == 2 && !is(last, MONEY)
        ? CountText.of(row.cells().get(last)).value()
        : Optional.empty();
  }

  /** Those taken, from the top. */
  List<TotalRow> all() {
    return totals;
  }
}
