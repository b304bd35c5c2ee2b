package growingon.nursery;

import java.util.Map;

/** Argument checks of the records in this package and in the library of species. */
public final class Check {
  private Check() {}

  /** The condition holds. */
  public static void that(boolean holds, String what, Object found) {
    if (!holds) {
      throw new IllegalArgumentException(what + ", but found " + found);
    }
  }

  /** A share of 0 to 1. */
  public static void share(double value, String what) {
    that(value >= 0 && value <= 1, what + " must lie between 0 and 1", value);
  }

  /** A number of 0 or more. */
  public static void notNegative(double value, String what) {
    that(value >= 0 && value < Double.POSITIVE_INFINITY, what + " must be 0 or more", value);
  }

  /** A number over 0. */
  public static void positive(double value, String what) {
    that(value > 0 && value < Double.POSITIVE_INFINITY, what + " must be more than 0", value);
  }

  /** A name that is not blank. */
  public static void named(String name, String what) {
    that(name != null && !name.isBlank(), what + " needs a name", name);
  }

  /** The value of a name; the checks of {@code load} make sure that it is there. */
  public static <V> V known(Map<String, V> map, String name, String what) {
    V value = map.get(name);
    that(value != null, "unknown " + what, name);
    return value;
  }
}
