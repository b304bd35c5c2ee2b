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
  static final Range ANY = new Range(Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY, false);
  static final Range FROM_ZERO = from(0);
  static final Range OVER_ZERO = new Range(0, Double.POSITIVE_INFINITY, true);

  static Range from(double least) {
    return new Range(least, Double.POSITIVE_INFINITY, false);
  }

  static Range of(double least, double most) {
    return new Range(least, most, false);
  }

  /** The value again, or a fault that says what is allowed. */
  double check(double value, String shown) {
    if (value > most || value < least || (open && value == least)) {
      throw new CellFault(where -> Advice.outOfRange(where, shown, toString()));
    }
    return value;
  }

  /** As in "it must be 0 or more". */
  @Override
  public String toString() {
    String low = Cell.Number.plain(least);
    String high = Cell.Number.plain(most);
    if (most == Double.POSITIVE_INFINITY) {
      return open ? "more than " + low : low + " or more";
    }
    return open ? "more than " + low + " and at most " + high : "between " + low + " and " + high;
  }
}
