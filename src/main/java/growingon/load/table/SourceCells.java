package growingon.load.table;

import growingon.load.cell.As;
import growingon.load.cell.Range;
import growingon.load.cell.Row;
import growingon.nursery.Source;
import java.util.OptionalInt;

/**
 * From whom pots, components and materials are bought.
 *
 * <pre>
 * supplier             whom to write to [none]
 * order lead months    between ordering and need [those of the settings]
 * </pre>
 */
final class SourceCells {
  static final String SUPPLIER = "supplier";
  static final String LEAD = "order lead months";

  private SourceCells() {}

  static Source of(Row row) {
    return new Source(
        row.find(SUPPLIER, As.TEXT).orElse(""),
        row.find(LEAD, As.whole(Range.of(0, 24))).map(OptionalInt::of).orElse(OptionalInt.empty()));
  }
}
