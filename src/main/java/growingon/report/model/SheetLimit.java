package growingon.report.model;

import growingon.report.text.Phrases;
import java.util.ArrayList;
import java.util.List;

/**
 * Keeps tables off the workbook's sheets that nobody would read there: of a nursery of thousands of
 * lots, some have a hundred thousand rows. They are written as tables all the same, and a sentence
 * on the sheet says so.
 *
 * @param sheets sheets without their longest tables
 * @param tables the tables taken off
 */
public record SheetLimit(List<Sheet> sheets, List<Table> tables) {
  /** A table of more rows is not put on a sheet. */
  public static final int MOST_ROWS = 30_000;

  /** Takes tables of more than so many rows off the sheets. */
  public static SheetLimit of(List<Sheet> all, int mostRows, Phrases say) {
    List<Sheet> sheets = new ArrayList<>();
    List<Table> taken = new ArrayList<>();
    for (Sheet sheet : all) {
      List<Table> longOnes =
          sheet.tables().stream().filter(table -> table.rows().size() > mostRows).toList();
      taken.addAll(longOnes);
      sheets.add(longOnes.isEmpty() ? sheet : without(sheet, longOnes, say));
    }
    return new SheetLimit(List.copyOf(sheets), List.copyOf(taken));
  }

  private static Sheet without(Sheet sheet, List<Table> longOnes, Phrases say) {
    List<String> sentences = new ArrayList<>(sheet.sentences());
    longOnes.forEach(table -> sentences.add(told(table, say)));
    List<Table> rest = new ArrayList<>(sheet.tables());
    rest.removeAll(longOnes);
    return sheet.withSentences(sentences).withTables(rest);
  }

  private static String told(Table table, Phrases say) {
    return "%s: %s, too many for a sheet; they are in tables/%s.csv."
        .formatted(
            table.title().isEmpty() ? "The table" : table.title(),
            say.counted(table.rows().size(), "line", "lines"),
            table.name());
  }
}
