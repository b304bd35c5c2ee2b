package growingon.load.own;

import java.util.Objects;
import java.util.OptionalInt;

/**
 * On what terms plants are offered.
 *
 * @param size as the supplier writes it
 * @param least that can be bought
 * @param multiple in which they are sold
 */
record Terms(String size, OptionalInt least, OptionalInt multiple) {
  Terms {
    Objects.requireNonNull(size);
    Objects.requireNonNull(least);
    Objects.requireNonNull(multiple);
  }
}
