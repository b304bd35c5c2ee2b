package growingon.report.model;

import java.util.List;
import java.util.Objects;

/**
 * A column of a table.
 *
 * @param key name in figures.json and, as heading, in tables/*.csv; lower case, words joined by _
 * @param heading as shown, without the unit
 * @param unit unit shown under or after the heading, may be empty
 * @param kind what kind of value it holds
 * @param total whether a total stands under it
 * @param flag which values are marked because they call for a look
 * @param width width in characters to print at; 0 means as wide as its content needs
 */
public record Column(
    String key, String heading, String unit, Kind kind, boolean total, Flag flag, int width) {
  /** Which values of a column are marked, in colour and with a sign that survives a black print. */
  public enum Flag {
    /** None. */
    NONE,
    /** Values above zero: what overflows, hours short, sales missed. */
    ABOVE_ZERO,
    /** Values below zero: a cash balance, a lot that does not pay. */
    BELOW_ZERO
  }

  public Column {
    Objects.requireNonNull(key);
    Objects.requireNonNull(heading);
    Objects.requireNonNull(unit);
    Objects.requireNonNull(kind);
    Objects.requireNonNull(flag);
  }

  /** A column without a flag, as wide as its content needs. */
  public Column(String key, String heading, String unit, Kind kind, boolean total) {
    this(key, heading, unit, kind, total, Flag.NONE, 0);
  }

  /** A column without a total. */
  public static Column of(String key, String heading, String unit, Kind kind) {
    return new Column(key, heading, unit, kind, false);
  }

  /** A column with a total. */
  public static Column summed(String key, String heading, String unit, Kind kind) {
    return new Column(key, heading, unit, kind, true);
  }

  /** The same column with some of its values marked. */
  public Column flagged(Flag which) {
    return new Column(key, heading, unit, kind, total, which, width);
  }

  /** The same column at a stated width in characters: a cell to write in by hand, for one. */
  public Column wide(int characters) {
    return new Column(key, heading, unit, kind, total, flag, characters);
  }

  /** Whether a value of this column is marked. */
  public boolean flags(double value) {
    return switch (flag) {
      case NONE -> false;
      case ABOVE_ZERO -> value > 0;
      case BELOW_ZERO -> value < 0;
    };
  }

  /** Heading with its unit, unless it names it already: {@code needed, m²}, {@code hours short}. */
  public String headingWithUnit() {
    return unit.isEmpty() || List.of(heading.split(" ")).contains(unit)
        ? heading
        : heading + ", " + unit;
  }
}
