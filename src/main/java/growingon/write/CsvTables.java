package growingon.write;

import growingon.report.Column;
import growingon.report.Table;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.OptionalDouble;
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

  static byte[] bytes(Table table) throws IOException {
    StringBuilder text = new StringBuilder();
    FORMAT.printRecord(text, table.columns().stream().map(Column::key).toArray());
    for (List<Object> row : table.rows()) {
      FORMAT.printRecord(text, row.stream().map(CsvTables::cell).toArray());
    }
    return text.toString().getBytes(StandardCharsets.UTF_8);
  }

  private static String cell(Object cell) {
    OptionalDouble number = Numbers.shown(cell);
    if (number.isPresent()) {
      return Numbers.plain(number.getAsDouble());
    }
    if (cell instanceof Number) {
      return "";
    }
    return cell == null ? "" : SafeText.forCsv(cell.toString());
  }
}
