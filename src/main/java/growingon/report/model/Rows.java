package growingon.report.model;

import growingon.problem.MarkedText;
import growingon.report.text.Plants;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Columns and cells that many tables have. */
public final class Rows {
  private Rows() {}

  /** Those that have a whole plant in some cell. */
  public static List<List<Object>> withPlants(List<List<Object>> rows) {
    return rows.stream().filter(Rows::hasPlants).toList();
  }

  private static boolean hasPlants(List<Object> row) {
    return row.stream().anyMatch(cell -> cell instanceof Plants plants && plants.whole() != 0);
  }

  /** Empty for what is not a number, such as the cost of each of no plants. */
  public static Double number(double value) {
    return Double.isFinite(value) ? value : null;
  }

  /** Empty text leaves a cell empty. */
  public static String text(String value) {
    return value.isEmpty() ? null : value;
  }

  /** Empty text leaves a cell empty. */
  public static MarkedText text(MarkedText value) {
    return value.isEmpty() ? null : value;
  }

  public static Column month() {
    return Column.of("month", "month", "", Kind.MONTH);
  }

  public static Column season() {
    return Column.of("season", "season", "", Kind.TEXT);
  }

  public static Column lot() {
    return Column.of("lot", "lot", "", Kind.TEXT);
  }

  public static Column place() {
    return Column.of("place", "place", "", Kind.TEXT);
  }

  /**
   * Names as column keys: lower case letters and digits joined by underscores, numbered where two
   * names would have the same.
   */
  public static List<String> keys(List<String> names) {
    List<String> keys = new ArrayList<>();
    for (String name : names) {
      String key = name.toLowerCase(Locale.ENGLISH).replaceAll("[^\\p{L}\\p{N}]+", "_");
      String candidate = key;
      for (int number = 2; keys.contains(candidate); number++) {
        candidate = key + "_" + number;
      }
      keys.add(candidate);
    }
    return keys;
  }
}
