package growingon.report.build;

import growingon.report.model.Chart;
import growingon.report.model.Column;
import growingon.report.model.FixedRow;
import growingon.report.model.Sheet;
import growingon.report.model.Table;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Tables and columns by name, for editions that show only what they name. */
public final class Picked {
  private Picked() {}

  /**
   * The named tables of a sheet, in the order of the names; none of a sheet that is empty.
   *
   * @throws IllegalArgumentException if the sheet has tables, but not one that is named
   */
  public static List<Table> tables(Sheet sheet, String... names) {
    return sheet.isEmpty() ? List.of() : Stream.of(names).map(name -> table(sheet, name)).toList();
  }

  private static Table table(Sheet sheet, String name) {
    return sheet.tables().stream()
        .filter(table -> table.name().equals(name))
        .findFirst()
        .orElseThrow(
            () ->
                new IllegalArgumentException(
                    "the sheet %s has no table %s".formatted(sheet.name(), name)));
  }

  /** A sheet of the named tables of another one, without its sentences. */
  public static Sheet sheet(Sheet sheet, String... names) {
    return FilledSheet.of(sheet.name(), List.of(), tables(sheet, names).toArray(Table[]::new));
  }

  /**
   * A table with the named columns only, and with the notes given instead of its own.
   *
   * @throws IllegalArgumentException if the table has no column of that key
   */
  public static Table columns(Table table, List<String> notes, String... keys) {
    List<Integer> places = Stream.of(keys).map(key -> place(table, key)).toList();
    return new Table(
        table.name(),
        table.title(),
        notes,
        places.stream().map(table.columns()::get).toList(),
        cells(table.rows(), places),
        cells(table.inFull(), places));
  }

  /** A table without the columns of those keys, as far as it has them. */
  public static Table without(Table table, Set<String> keys) {
    return columns(
        table,
        table.notes(),
        table.columns().stream()
            .map(Column::key)
            .filter(key -> !keys.contains(key))
            .toArray(String[]::new));
  }

  private static int place(Table table, String key) {
    return IntStream.range(0, table.columns().size())
        .filter(place -> table.columns().get(place).key().equals(key))
        .findFirst()
        .orElseThrow(
            () ->
                new IllegalArgumentException(
                    "the table %s has no column %s".formatted(table.name(), key)));
  }

  private static List<List<Object>> cells(List<List<Object>> from, List<Integer> places) {
    return from.stream()
        .<List<Object>>map(row -> new FixedRow(places.stream().map(row::get).toArray()))
        .toList();
  }

  /** Those charts that are named. */
  public static List<Chart> charts(List<Chart> charts, String... names) {
    List<String> wanted = List.of(names);
    return charts.stream().filter(each -> wanted.contains(each.name())).toList();
  }
}
