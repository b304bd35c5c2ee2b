package growingon.write.workbook;

import growingon.report.model.Sheet;
import growingon.report.model.Table;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/**
 * Divides a sheet so that each table prints under its headings: a spreadsheet repeats the headings
 * of one table a sheet, so a table longer than a page is the last of its sheet, and what follows it
 * stands on a sheet that is called by its first table. A very long one has a sheet of its own,
 * whose columns are as wide as its own texts need.
 */
final class SheetDivision {
  /** A table of more rows does not share its columns with others. */
  private static final int LONG_ALONE = 400;

  private SheetDivision() {}

  /** The parts of a sheet, laid out; none of one that is empty. */
  static Stream<SheetLayout> of(Sheet sheet) {
    if (sheet.isEmpty()) {
      return Stream.of();
    }
    SheetLayout layout = new SheetLayout(sheet);
    List<Sheet> parts = new ArrayList<>();
    List<Table> together = new ArrayList<>();
    for (Table table : layout.tables()) {
      if (table.rows().size() > LONG_ALONE && !together.isEmpty()) {
        parts.add(part(sheet, parts.isEmpty(), together));
        together.clear();
      }
      together.add(table);
      if (layout.isLong(table)) {
        parts.add(part(sheet, parts.isEmpty(), together));
        together.clear();
      }
    }
    if (parts.isEmpty() || !together.isEmpty()) {
      parts.add(part(sheet, parts.isEmpty(), together));
    }
    return (parts.size() == 1 ? Stream.of(layout) : parts.stream().map(SheetLayout::new))
        .map(SheetLayout::turned);
  }

  private static Sheet part(Sheet sheet, boolean first, List<Table> tables) {
    return first
        ? new Sheet(
            sheet.name(), sheet.sentences(), tables, sheet.charts(), sheet.portrait(), sheet.book())
        : new Sheet(
            called(tables.get(0)), List.of(), tables, List.of(), sheet.portrait(), sheet.book());
  }

  /** The name of a table as a heading: Sales by lot of sales-by-lot. */
  private static String called(Table table) {
    String words = table.name().replace('-', ' ');
    return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
  }
}
