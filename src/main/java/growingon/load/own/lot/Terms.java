package growingon.load.own.lot;

import java.util.Collections;
import java.util.Objects;
import java.util.OptionalInt;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * On what terms plants are offered.
 *
 * @param size as the supplier writes it
 * @param least that can be bought
 * @param multiple in which they are sold
 * @param breaks price of a plant by the number from which on it holds, beyond the first
 */
public record Terms(
    String size, OptionalInt least, OptionalInt multiple, SortedMap<Integer, Double> breaks) {
  public Terms {
    Objects.requireNonNull(size);
    Objects.requireNonNull(least);
    Objects.requireNonNull(multiple);
    breaks = Collections.unmodifiableSortedMap(new TreeMap<>(breaks));
  }
}
