package growingon.write.text;

import growingon.report.model.Column;
import growingon.report.model.Kind;
import growingon.report.model.Table;
import java.io.IOException;
import java.io.OutputStream;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.QuoteMode;

/**
 * Writes tables/NAME.csv: UTF-8 without a byte order mark (for programs; the workbook is for
 * spreadsheets), commas, RFC 4180 quotes and line ends; the column keys as heading; months as
 * 2027-03; numbers plain with a point; money in cents, plants whole, other numbers with as many
 * decimals as say something (figures.json has every digit); empty where there is nothing. What a
 * spreadsheet might take for a formula gets an apostrophe in front, and a text with a semicolon
 * quotes.
 */
public final class CsvTables {
  private static final CSVFormat FORMAT = CSVFormat.RFC4180;

  /** For texts that a program with semicolons between the columns would part. */
  private static final CSVFormat QUOTED = FORMAT.builder().setQuoteMode(QuoteMode.ALL).get();

  /** ASCII characters that never ask for quotes, but for a blank at an end. */
  private static final boolean[] PLAIN = plain();

  private CsvTables() {}

  /** Writes a table: headings, then rows; numbers in full and plainly. */
  public static void write(Table table, OutputStream to) throws IOException {
    try (Utf8Writer out = new Utf8Writer(to)) {
      FORMAT.printRecord(out, table.columns().stream().map(Column::key).toArray());
      for (List<Object> row : table.rows()) {
        for (int i = 0; i < row.size(); i++) {
          print(row.get(i), table.columns().get(i).kind(), out, i == 0);
        }
        FORMAT.println(out);
      }
    }
  }

  /** Most cells are numbers or words, which need no quotes and so are written as they are. */
  private static void print(Object cell, Kind kind, Utf8Writer out, boolean first)
      throws IOException {
    boolean isNumber = Numbers.isShown(cell);
    String text = isNumber ? number(Numbers.shown(cell), kind) : text(cell);
    if (!isNumber && !isPlain(text)) {
      boolean parted = text.indexOf(';') >= 0 || text.indexOf('\t') >= 0;
      (parted ? QUOTED : FORMAT).print(text, out, first);
      return;
    }
    if (!first) {
      out.ascii(FORMAT.getDelimiterString());
    }
    out.ascii(text);
  }

  private static String number(double value, Kind kind) {
    return switch (kind) {
      case MONEY, MONEY_EACH -> Numbers.cents(value);
      case LITRES, HOURS, SQUARE_METRES, KG, MM -> Numbers.plain(Numbers.rounded(value, 2));
      case SHARE, NUMBER -> Numbers.plain(Numbers.rounded(value, 4));
      case COUNT, PLANTS, TEXT, VALUE, LONG_TEXT, MONTH, TO_FILL -> Numbers.plain(value);
    };
  }

  private static boolean[] plain() {
    boolean[] plain = new boolean[128];
    " .-/0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz"
        .chars()
        .forEach(character -> plain[character] = true);
    return plain;
  }

  private static boolean isPlain(String text) {
    for (int i = 0; i < text.length(); i++) {
      char character = text.charAt(i);
      if (character >= PLAIN.length || !PLAIN[character]) {
        return false;
      }
    }
    return !text.isEmpty() && text.charAt(0) != ' ' && text.charAt(text.length() - 1) != ' ';
  }

  private static String text(Object cell) {
    return cell == null || cell instanceof Number ? "" : SafeText.forCsv(cell.toString());
  }
}
