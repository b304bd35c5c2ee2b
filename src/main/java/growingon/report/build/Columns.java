package growingon.report.build;

import growingon.report.model.Column;
import growingon.report.model.Column.Flag;

/** Columns whose values above or below nil the reader should see at once. */
public final class Columns {
  private Columns() {}

  /** What is too much or short: space, hours. */
  public static Column aboveNil(Column column) {
    return column.flagged(Flag.ABOVE_ZERO);
  }

  /** What should not fall below nil: cash, a result, room left. */
  public static Column belowNil(Column column) {
    return column.flagged(Flag.BELOW_ZERO);
  }
}
