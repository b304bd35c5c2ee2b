package growingon.load.own.heading;

import growingon.load.own.sheet.Sheet;
import growingon.load.own.sheet.SheetCell;
import growingon.load.own.sheet.SheetRow;
import growingon.load.own.size.RangeColumns;
import growingon.load.own.text.Keys;
import growingon.load.own.text.TaxWords;
import growingon.load.own.text.Units;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * Headings that stand in two rows, one above the other: under a merged cell, as halves, or with a
 * row of units below.
 */
final class TwoRows {
  /** How lists say that plants are counted, keyed. */
  private static final Set<String> PLANTS =
      Set.of("no", "nos", "nr", "stk", "stck", "st", "stuks", "pc", "pcs", "pz", "ud", "uds");

  private TwoRows() {}

  /** The row and the one above it as one heading row. */
  static Optional<HeadingRow> of(Sheet sheet, int index, OwnWords own) {
    if (index == 0) {
      return Optional.empty();
    }
    SheetRow upper = sheet.rows().get(index - 1);
    SheetRow lower = sheet.rows().get(index);
    boolean merged =
        sheet.merges().stream()
            .anyMatch(
                each ->
                    each.firstRow() == upper.number() && each.firstColumn() < each.lastColumn());
    boolean units = !merged && isUnits(lower);
    if (!merged && !units && !isUpperHalf(upper, lower, own)
        || lower.number() != upper.number() + 1) {
      return Optional.empty();
    }
    SortedMap<Integer, String> joined = new TreeMap<>();
    List<Integer> columns = new ArrayList<>(upper.cells().keySet());
    columns.addAll(lower.cells().keySet());
    for (int column : columns) {
      String above = above(sheet, upper, lower, column);
      String below = units && !isUnit(lower.text(column)) ? "" : lower.text(column);
      boolean again = !above.isBlank() && isAgain(lower, below);
      joined.put(column, again ? (above + " " + below).strip() : joined(above, below, own));
    }
    joined.values().removeIf(String::isBlank);
    boolean saysMore =
        joined.entrySet().stream()
            .anyMatch(
                each ->
                    !each.getValue().equals(lower.text(each.getKey()))
                        && !lower.text(each.getKey()).isBlank()
                        && HeadingRow.isKnown(each.getValue(), own));
    return HeadingRow.scored(index - 1, index, joined, own)
        .map(
            row ->
                new HeadingRow(
                    row.firstIndex(),
                    row.lastIndex(),
                    row.texts(),
                    row.score() + (saysMore ? 1 : 0),
                    row.sizes()));
  }

  /**
   * Whether a heading comes more than once in a row, so that what stands above tells them apart.
   */
  private static boolean isAgain(SheetRow row, String heading) {
    return !heading.isBlank()
        && row.cells().values().stream().filter(cell -> cell.text().equals(heading)).count() > 1;
  }

  /** Whether a row has nothing but the units of the headings above it. */
  private static boolean isUnits(SheetRow row) {
    long units =
        row.cells().values().stream()
            .filter(SheetCell::isText)
            .filter(cell -> isUnit(cell.text()))
            .count();
    return units > 1 && units * 2 >= row.cells().size();
  }

  private static boolean isUnit(String text) {
    String key = Keys.of(text);
    return PLANTS.contains(key) || Units.named(key).isPresent() || TaxWords.of(text).isPresent();
  }

  /** A row of headings in which the one below it has none of its own for the plants' names. */
  private static boolean isUpperHalf(SheetRow upper, SheetRow lower, OwnWords own) {
    List<SheetRow> both = List.of(upper, lower);
    return both.stream().allMatch(row -> row.cells().size() >= HeadingRow.LEAST_OF_A_LIST)
        && both.stream().flatMap(row -> row.cells().values().stream()).allMatch(SheetCell::isText)
        && upper.cells().firstKey() < lower.cells().firstKey()
        && upper.cells().values().stream().anyMatch(cell -> HeadingRow.isName(cell.text(), own))
        && lower.cells().values().stream().noneMatch(cell -> HeadingRow.isName(cell.text(), own));
  }

  private static String joined(String upper, String lower, OwnWords own) {
    String both = (upper + " " + lower).strip();
    if (RangeColumns.isEnd(lower) && HeadingRow.isKnown(upper, own)) {
      return both;
    }
    if (TaxWords.of(upper).isPresent() && HeadingRow.isKnown(lower, own)) {
      return HeadingRow.isKnown(both, own) ? both : (lower + " " + TaxWords.said(upper)).strip();
    }
    return HeadingRow.isKnown(both, own) && !meansTheSame(both, lower, own)
            || !HeadingRow.isKnown(lower, own)
        ? both
        : lower;
  }

  /** Stock over Qty says no more than Qty alone. */
  private static boolean meansTheSame(String both, String lower, OwnWords own) {
    Optional<String> alone = own.headings().find(lower).map(found -> found.meaning().ours());
    return alone.isPresent()
        && alone.equals(own.headings().find(both).map(found -> found.meaning().ours()));
  }

  /** What stands above a column, also where a merged cell or one heading stands over several. */
  private static String above(Sheet sheet, SheetRow upper, SheetRow lower, int column) {
    return sheet.merges().stream()
        .filter(merge -> merge.covers(upper.number(), column))
        .map(merge -> upper.text(merge.firstColumn()))
        .findFirst()
        .orElseGet(() -> upper.text(over(upper, lower, column)));
  }

  /** The column whose upper heading reaches over another, with lower headings all between. */
  private static int over(SheetRow upper, SheetRow lower, int column) {
    int at = column;
    while (at > 0 && upper.cell(at).isEmpty() && lower.cell(at).isPresent()) {
      at--;
    }
    return lower.cell(at).isPresent() ? at : column;
  }
}
