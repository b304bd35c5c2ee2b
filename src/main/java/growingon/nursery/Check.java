package growingon.nursery;

/** Argument checks of the records in this package. */
final class Check {
  private Check() {}

  static void that(boolean holds, String what, Object found) {
    if (!holds) {
      throw new IllegalArgumentException(what + ", but found " + found);
    }
  }

  static void share(double value, String what) {
    that(value >= 0 && value <= 1, what + " must lie between 0 and 1", value);
  }

  static void notNegative(double value, String what) {
    that(value >= 0 && value < Double.POSITIVE_INFINITY, what + " must be 0 or more", value);
  }

  static void positive(double value, String what) {
    that(value > 0 && value < Double.POSITIVE_INFINITY, what + " must be more than 0", value);
  }

  static void named(String name, String what) {
    that(name != null && !name.isBlank(), what + " needs a name", name);
  }
}
