package growingon.report.build;

import growingon.report.model.Column;
import java.util.Objects;
import java.util.function.Function;

/**
 * A column of a table, and what it shows of the thing that a row is made from.
 *
 * @param <T> what a row is made from
 * @param column heading, unit and kind
 * @param cell what it shows of one thing; null for an empty cell
 */
public record ColumnOf<T>(Column column, Function<? super T, ?> cell) {
  public ColumnOf {
    Objects.requireNonNull(column);
    Objects.requireNonNull(cell);
  }

  /** What it shows of a thing; NaN is an empty cell. */
  Object shown(T thing) {
    Object shown = cell.apply(thing);
    return shown instanceof Double number && number.isNaN() ? null : shown;
  }
}
