package growingon.load.cell;

import growingon.nursery.Spacing;
import java.util.Optional;

/** The columns "gap mm" and "plants per m2". */
public final class Spacings {
  public static final String GAP = "gap mm";
  public static final String PLANTS = "plants per m2";

  private Spacings() {}

  /** The spacing that a row states; empty if it states none. */
  public static Optional<Spacing> find(Row row) {
    Optional<Double> gap = row.find(GAP, As.number(Range.FROM_ZERO));
    Optional<Double> plants = row.find(PLANTS, As.number(Range.OVER_ZERO));
    return gap.isEmpty() && plants.isEmpty()
        ? Optional.empty()
        : Optional.of(new Spacing(gap.orElse(0.0), As.optional(plants)));
  }
}
