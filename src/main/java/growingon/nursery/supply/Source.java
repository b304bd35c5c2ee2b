package growingon.nursery.supply;

import java.util.Objects;
import java.util.OptionalInt;

/**
 * From whom something is bought.
 *
 * @param supplier empty if it is not stated
 * @param leadMonths months between ordering and need; empty for those of the settings
 */
public record Source(String supplier, OptionalInt leadMonths) {
  /** Nothing stated. */
  public static final Source UNSTATED = new Source("", OptionalInt.empty());

  public Source {
    Objects.requireNonNull(supplier);
    Objects.requireNonNull(leadMonths);
  }
}
