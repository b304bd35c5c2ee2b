package growingon.load.cell;

import growingon.problem.MarkedText;
import growingon.problem.advice.ValueAdvice;

/**
 * What a number may be.
 *
 * @param least least value allowed
 * @param most greatest value allowed
 * @param open whether the least value itself is not allowed
 * @param usualLeast less than this is most likely a slip, and warned of
 * @param usualMost more than this is most likely a slip, and warned of
 */
public record Range(double least, double most, boolean open, double usualLeast, double usualMost) {
  /** Nothing that a nursery counts, measures or pays is more. */
  private static final double LIMIT = 1e9;

  /** What must be more than nil is at least this: less is a slip, and would overflow counts. */
  private static final double TINY = 1e-6;

  public static final Range ANY = of(-LIMIT, LIMIT);
  public static final Range FROM_ZERO = from(0);
  public static final Range OVER_ZERO = new Range(0, LIMIT, true);

  /** Of a share in percent. */
  public static final Range SHARE = of(0, 100);

  /** Of what one thing costs, in any currency. */
  public static final Range PRICE = FROM_ZERO.usually(0, 1e6);

  /** Of a trunk in mm. */
  public static final Range TRUNK = OVER_ZERO.usually(1, 1000);

  /** Of a pot in litres. */
  public static final Range POT = OVER_ZERO.usually(0, 2000);

  public Range(double least, double most, boolean open) {
    this(least, most, open, least, most);
  }

  public static Range from(double least) {
    return of(least, LIMIT);
  }

  public static Range of(double least, double most) {
    return new Range(least, most, false);
  }

  /** The same, with a warning outside what is usual. */
  public Range usually(double from, double to) {
    return new Range(least, most, open, from, to);
  }

  /** The value again, or a fault that says what is allowed; a slip is remarked upon. */
  public double check(double value, String shown, Spot spot) {
    checkUsual(check(value, shown), shown, spot);
    return value;
  }

  private void checkUsual(double value, String shown, Spot spot) {
    if (value < usualLeast || value > usualMost) {
      String how =
          value < usualLeast
              ? "less than " + hundredths(usualLeast)
              : "more than " + hundredths(usualMost);
      spot.remark(where -> ValueAdvice.looksLikeASlip(where, shown, how));
    }
  }

  private static String hundredths(double value) {
    return MarkedText.number(Math.rint(value * 100) / 100);
  }

  /** The value again, or a fault that says what is allowed. */
  public double check(double value, String shown) {
    if (value > most) {
      throw new CellFault(
          where -> ValueAdvice.outOfRange(where, shown, most == LIMIT ? atMost() : words()));
    }
    if (value < least || (open && value == least)) {
      throw new CellFault(where -> ValueAdvice.outOfRange(where, shown, words()));
    }
    if (open && value < least + TINY) {
      throw new CellFault(
          where ->
              ValueAdvice.outOfRange(where, shown, "at least " + MarkedText.number(least + TINY)));
    }
    return value;
  }

  private String atMost() {
    return "at most " + MarkedText.number(most);
  }

  /** As in "it must be 0 or more". */
  private String words() {
    String low = MarkedText.number(least);
    if (most == LIMIT) {
      return open ? "more than " + low : low + " or more";
    }
    return open
        ? "more than " + low + " and " + atMost()
        : "between " + low + " and " + MarkedText.number(most);
  }
}
