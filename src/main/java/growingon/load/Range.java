package growingon.load;

import growingon.problem.Advice;

/**
 * What a number may be.
 *
 * @param least least value allowed
 * @param most greatest value allowed
 * @param open whether the least value itself is not allowed
 */
record Range(double least, double most, boolean open) {
  /** Nothing that a nursery counts, measures or pays is more. */
  private static final double LIMIT = 1e9;

  static final Range ANY = new Range(-LIMIT, LIMIT, false);
  static final Range FROM_ZERO = from(0);
  static final Range OVER_ZERO = new Range(0, LIMIT, true);

  /** Of a share in percent. */
  static final Range SHARE = of(0, 100);

  static Range from(double least) {
    return new Range(least, LIMIT, false);
  }

  static Range of(double least, double most) {
    return new Range(least, most, false);
  }

  /** The value again, or a fault that says what is allowed. */
  double check(double value, String shown) {
    if (value > most) {
      throw new CellFault(
          where -> Advice.outOfRange(where, shown, most == LIMIT ? atMost() : words()));
    }
    if (value < least || (open && value == least)) {
      throw new CellFault(where -> Advice.outOfRange(where, shown, words()));
    }
    return value;
  }

  private String atMost() {
    return "at most " + Cell.Number.plain(most);
  }

  /** As in "it must be 0 or more". */
  private String words() {
    String low = Cell.Number.plain(least);
    if (most == LIMIT) {
      return open ? "more than " + low : low + " or more";
    }
    return open
        ? "more than " + low + " and " + atMost()
        : "between " + low + " and " + Cell.Number.plain(most);
  }
}
