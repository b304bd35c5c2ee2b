package growingon.report.model;

/**
 * Which palette colour a thing has, the same in every chart. Things that are stacked have the five
 * steps at the palette's end, which differ in lightness too.
 */
public final class Colours {
  /** Blue: cash, the upper end of an assumption. */
  public static final int CASH = 0;

  /** Orange: what does not pay, what is worse. */
  public static final int LOSS = 1;

  /** Green: what is better. */
  public static final int BETTER = 2;

  /** Sky blue: square metres needed, the lower end of an assumption. */
  public static final int SPACE = 4;

  /** Black: plants never for sale, limits. */
  public static final int KEPT = 7;

  /** Light grey: what has no grade yet, or all the rest. */
  public static final int REST = 8;

  /** Dark blue: edges of what draws need of space. */
  public static final int EDGE = 9;

  /** As many things as eyes of every kind tell apart in one stack. */
  public static final int STEPS = 5;

  private static final int DARKEST = 10;

  /** Steps in an order in which neighbours differ more than by one. */
  private static final int[] APART = {1, 3, 0, 2, 4};

  private Colours() {}

  /** Colour of the n-th thing of a stack, 0 = first. */
  public static int of(int n) {
    return DARKEST + APART[n % STEPS];
  }

  /** Colour of a grade by its place on its ladder, 0 = lowest; the higher, the darker. */
  public static int grade(int index) {
    return DARKEST + STEPS - 1 - index % STEPS;
  }
}
