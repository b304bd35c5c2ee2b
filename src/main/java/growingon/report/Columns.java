package growingon.report;

import growingon.report.Column.Flag;

/** Columns whose values above or below nil the reader should see at once. */
final class Columns {
  private Columns() {}

  /** What is too much or short: space, hours. */
  static Column aboveNil(Column column) {
    return column.flagged(Flag.ABOVE_ZERO);
  }

  /** What should not fall below nil: cash, a result, room left. */
  static Column belowNil(Column column) {
    return column.flagged(Flag.BELOW_ZERO);
  }
}
