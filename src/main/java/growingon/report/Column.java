package growingon.report;

import java.util.Objects;

/**
 * A column of a table.
 *
 * @param key name in figures.json and, as heading, in tables/*.csv; lower case, words joined by _
 * @param heading as shown, without the unit
 * @param unit unit shown under or after the heading, may be empty
 * @param kind what kind of value it holds
 * @param total whether a total stands under it
 */
public record Column(String key, String heading, String unit, Kind kind, boolean total) {
  public Column {
    Objects.requireNonNull(key);
    Objects.requireNonNull(heading);
    Objects.requireNonNull(unit);
    Objects.requireNonNull(kind);
  }

  /** A column without a total. */
  public static Column of(String key, String heading, String unit, Kind kind) {
    return new Column(key, heading, unit, kind, false);
  }

  /** A column with a total. */
  public static Column summed(String key, String heading, String unit, Kind kind) {
    return new Column(key, heading, unit, kind, true);
  }

  /** Heading with its unit: {@code needed, m²}. */
  public String headingWithUnit() {
    return unit.isEmpty() ? heading : heading + ", " + unit;
  }
}
