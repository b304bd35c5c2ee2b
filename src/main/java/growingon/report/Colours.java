package growingon.report;

/**
 * Which palette colour a thing has, the same in every chart. The palette has eight colours, then
 * the same lighter, then darker; the last two of each eight are kept: vermilion for what lies over
 * a limit, black and grey for the rest.
 */
final class Colours {
  /** Grey: what has no grade yet, or all the rest. */
  static final int REST = 15;

  /** Black: plants never for sale. */
  static final int KEPT = 7;

  /** Sky blue: square metres needed. */
  static final int SPACE = 4;

  /** Blue: cash. */
  static final int CASH = 0;

  /** Dark blue: edges of what draws need of space. */
  static final int EDGE = 16;

  /** Orange: what does not pay, an assumption at its low end. */
  static final int LOSS = 1;

  private static final int EIGHT = 8;
  private static final int FREE = 6;

  private Colours() {}

  /**
   * Colour of the n-th thing of a kind, 0 = first. Each further round of the palette starts one
   * colour later, so that a lighter blue does not follow on sky blue.
   */
  static int of(int n) {
    int round = n / FREE;
    return round * EIGHT + (n + round) % FREE;
  }
}
