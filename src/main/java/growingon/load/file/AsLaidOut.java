package growingon.load.file;

import com.google.common.base.Splitter;
import growingon.load.cell.Texts;
import growingon.load.row.Heading;
import growingon.load.row.Row;
import growingon.load.source.Table;
import growingon.load.source.TableFormat;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What the tables of a nursery around a list were laid out with. A cell that still says so is not
 * the grower's: it follows the list and the answers, as a nursery laid out today would.
 *
 * @param tables by name of a table and by what a row of it is known by, its cells by heading
 */
public record AsLaidOut(Map<String, Map<List<String>, Map<String, String>>> tables) {
  private static final Heading<String> TABLE = Heading.text("table");
  private static final Heading<String> ROW = Heading.text("row");
  private static final Heading<String> COLUMN = Heading.text("column");
  private static final Heading<String> VALUE = Heading.text("value");

  /** The sheet that keeps it. */
  public static final TableFormat FORMAT =
      TableFormat.of("as laid out", TABLE.needed(), ROW.needed(), COLUMN.needed(), VALUE.needed());

  /** Columns by which a row of a table is known, where that is not its first alone. */
  private static final Map<String, List<String>> KNOWN_BY =
      Map.of(
          "grades", List.of("ladder", "grade"),
          "demand", List.of("species", "ladder", "grade"),
          "routes", List.of("route", "step"),
          "mixes", List.of("mix", "component"));

  /** Of a nursery that does not say so. */
  public static final AsLaidOut UNKNOWN = new AsLaidOut(Map.of());

  private static final String BETWEEN = " | ";
  private static final Splitter PARTS = Splitter.on(BETWEEN);

  /** Columns by which the rows of a table are known. */
  public static List<String> knownBy(String table, Map<String, String> row) {
    return KNOWN_BY.getOrDefault(table, List.of(row.keySet().iterator().next()));
  }

  /** What a row of a table is known by. */
  public static List<String> known(Row row, List<String> by) {
    return by.stream().map(column -> row.cell(column).shown()).toList();
  }

  /** Rows of a table by what they are known by. */
  public static Map<List<String>, Map<String, String>> known(
      String table, List<Map<String, String>> rows) {
    Map<List<String>, Map<String, String>> known = new LinkedHashMap<>();
    for (Map<String, String> row : rows) {
      known.putIfAbsent(knownBy(table, row).stream().map(row::get).toList(), row);
    }
    return known;
  }

  /** What the tables of a nursery say of it. */
  public static AsLaidOut in(Tables tables) {
    Map<String, Map<List<String>, Map<String, String>>> laidOut = new LinkedHashMap<>();
    for (Row row : tables.find(FORMAT).map(Table::rows).orElse(List.of())) {
      laidOut
          .computeIfAbsent(Texts.key(row.cell(TABLE).shown()), table -> new LinkedHashMap<>())
          .computeIfAbsent(PARTS.splitToList(row.cell(ROW).shown()), known -> new LinkedHashMap<>())
          .put(row.cell(COLUMN).shown(), row.cell(VALUE).shown());
    }
    return new AsLaidOut(laidOut);
  }

  /**
   * What tables are laid out with, as rows of the sheet that keeps it; empty cells are left out.
   */
  public static List<List<String>> rows(Map<String, List<Map<String, String>>> tables) {
    List<List<String>> kept = new ArrayList<>();
    tables.forEach(
        (table, rows) ->
            known(table, rows)
                .forEach(
                    (known, row) ->
                        row.forEach(
                            (column, value) -> {
                              if (!value.isEmpty()) {
                                kept.add(
                                    List.of(table, String.join(BETWEEN, known), column, value));
                              }
                            })));
    return kept;
  }

  /** A row of a table as it was laid out; empty if it was not. */
  public Optional<Map<String, String>> row(String table, List<String> known) {
    return Optional.ofNullable(tables.getOrDefault(table, Map.of()).get(known));
  }

  /** Whether it is known of a table. */
  public boolean isOf(String table) {
    return tables.containsKey(table);
  }
}
