package growingon.load.row;

import growingon.load.cell.Range;
import growingon.nursery.place.Spacing;
import java.util.Optional;

/** The columns "gap mm" and "plants per m2". */
public final class Spacings {
  public static final Heading<Double> GAP =
      Heading.number("gap mm", As.number(Range.FROM_ZERO))
          .expert()
          .means("Free space between pots or crowns; empty: from the last step done, else 0");
  public static final Heading<Double> PLANTS =
      Heading.number("plants per m2", As.number(Range.OVER_ZERO))
          .means("How many stand on a square metre, in place of the gap; needed in the ground");

  private Spacings() {}

  /** The spacing that a row states; empty if it states none. */
  public static Optional<Spacing> find(Row row) {
    Optional<Double> gap = row.find(GAP);
    Optional<Double> plants = row.find(PLANTS);
    return gap.isEmpty() && plants.isEmpty()
        ? Optional.empty()
        : Optional.of(new Spacing(gap.orElse(0.0), As.optional(plants)));
  }
}
