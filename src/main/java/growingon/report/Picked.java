package growingon.report;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** Tables and columns by name, for editions that show only what they name. */
final class Picked {
  private Picked() {}

  /** Those tables of a sheet that are named, in the order of the names. */
  static List<Table> tables(Sheet sheet, String... names) {
    return Stream.of(names)
        .flatMap(name -> sheet.tables().stream().filter(each -> each.name().equals(name)))
        .toList();
  }

  /** A sheet of the named tables of another one, without its sentences. */
  static Sheet sheet(Sheet sheet, String... names) {
    return FilledSheet.of(sheet.name(), List.of(), tables(sheet, names).toArray(Table[]::new));
  }

  /** A table with the named columns only, and with the notes given instead of its own. */
  static Table columns(Table table, List<String> notes, String... keys) {
    List<Integer> places = new ArrayList<>();
    for (String key : keys) {
      for (int i = 0; i < table.columns().size(); i++) {
        if (table.columns().get(i).key().equals(key)) {
          places.add(i);
        }
      }
    }
    return new Table(
        table.name(),
        table.title(),
        notes,
        places.stream().map(table.columns()::get).toList(),
        cells(table.rows(), places),
        cells(table.inFull(), places));
  }

  private static List<List<Object>> cells(List<List<Object>> from, List<Integer> places) {
    Rows rows = new Rows();
    for (List<Object> row : from) {
      List<Object> cells = new ArrayList<>();
      places.forEach(place -> cells.add(row.get(place)));
      rows.add(cells);
    }
    return rows.list();
  }

  /** Those charts that are named. */
  static List<Chart> charts(List<Chart> charts, String... names) {
    List<String> wanted = List.of(names);
    return charts.stream().filter(each -> wanted.contains(each.name())).toList();
  }
}
