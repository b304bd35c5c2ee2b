package growingon.report.model;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.util.List;
import java.util.Objects;

/**
 * A sheet of the workbook: tables one below the other, and charts by name beside or below them.
 *
 * @param name sheet name, at most 31 characters
 * @param sentences shown at the top, as text
 * @param tables top to bottom
 * @param charts names of charts shown on the sheet: above its tables, or beside them if one has
 *     more than 30 rows
 * @param portrait whether it prints upright; else landscape
 * @param book the workbook it stands in
 * @param paper that it is printed on
 */
@RecordBuilder
public record Sheet(
    String name,
    List<String> sentences,
    List<Table> tables,
    List<String> charts,
    boolean portrait,
    Book book,
    Paper paper)
    implements SheetBuilder.With {
  /** A sheet of A4. */
  public Sheet(
      String name,
      List<String> sentences,
      List<Table> tables,
      List<String> charts,
      boolean portrait,
      Book book) {
    this(name, sentences, tables, charts, portrait, book, Paper.A4);
  }

  public Sheet {
    Objects.requireNonNull(name);
    Objects.requireNonNull(book);
    Objects.requireNonNull(paper);
    sentences = List.copyOf(sentences);
    tables = List.copyOf(tables);
    charts = List.copyOf(charts);
  }

  /** A sheet of the book to act on. */
  public Sheet(
      String name,
      List<String> sentences,
      List<Table> tables,
      List<String> charts,
      boolean portrait) {
    this(name, sentences, tables, charts, portrait, Book.PLAN);
  }

  /** A landscape sheet of tables. */
  public static Sheet of(String name, Table... tables) {
    return new Sheet(name, List.of(), List.of(tables), List.of(), false);
  }

  /** Whether there is nothing to show; such a sheet is not written. */
  public boolean isEmpty() {
    return sentences.isEmpty()
        && charts.isEmpty()
        && tables.stream().allMatch(table -> table.rows().isEmpty());
  }
}
