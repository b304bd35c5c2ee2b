package growingon.load.table.supply;

import growingon.load.cell.Range;
import growingon.load.row.As;
import growingon.load.row.Heading;
import growingon.load.row.Row;
import growingon.nursery.supply.Source;
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
  static final Heading<String> SUPPLIER =
      Heading.text("supplier").means("From whom you buy it; To order has a block for each");
  static final Heading<Integer> LEAD =
      Heading.number("order lead months", As.whole(Range.of(0, 24)))
          .ifEmpty("the setting order lead months")
          .means("Months between ordering and need");

  private SourceCells() {}

  static Source of(Row row) {
    return new Source(
        row.find(SUPPLIER).orElse(""),
        row.find(LEAD).map(OptionalInt::of).orElse(OptionalInt.empty()));
  }
}
