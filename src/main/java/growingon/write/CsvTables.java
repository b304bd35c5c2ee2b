package growingon.write;

import growingon.report.Column;
import growingon.report.Table;
import java.io.IOException;
import java.io.OutputStream;
import java.io.Writer;
import java.util.List;
import org.apache.commons.csv.CSVFormat;

/**
 * Writes tables/NAME.csv: UTF-8 without a byte order mark (for programs; the workbook is for
 * spreadsheets), commas, RFC 4180 quotes and line ends; the column keys as heading; months as
 * 2027-03; numbers plain with a point and every digit; plants whole, so that a column adds up;
 * empty where there is nothing. A text that a spreadsheet might take for a formula gets an
 * apostrophe in front.
 */
final class CsvTables {
  private static final CSVFormat FORMAT = CSVFormat.RFC4180;

  private CsvTables() {}

  static void write(Table table, OutputStream to) throws IOException {
    try (Writer out = new Utf8Writer(to)) {
      FORMAT.printRecord(out, table.columns().stream().map(Column::key).toArray());
      for (List<Object> row : table.rows()) {
        for (int i = 0; i < row.size(); i++) {
          print(row.get(i), out, i == 0);
        }
        FORMAT.println(out);
      }
    }
  }

  /** Most cells are numbers, which need no quotes and so are not looked at for them. */
  private static void print(Object cell, Writer out, boolean first) throws IOException {
    if (Numbers.isShown(cell)) {
      if (!first) {
        out.write(FORMAT.getDelimiterString());
      }
      out.write(Numbers.plain(Numbers.shown(cell)));
    } else {
      FORMAT.print(text(cell), out, first);
    }
  }

  private static String text(Object cell) {
    return cell == null || cell instanceof Number ? "" : SafeText.forCsv(cell.toString());
  }
}
