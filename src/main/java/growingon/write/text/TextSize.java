package growingon.write.text;

/**
 * How much room text takes in the workbook's font, in characters of a column's width; measuring
 * with real fonts costs too much time.
 */
public final class TextSize {
  /** Thousandths of the font's size for the characters from space to tilde: Helvetica and Arial. */
  private static final int[] WIDTHS = {
    278, 278, 355, 556, 556, 889, 667, 191, 333, 333, 389, 584, 278, 333, 278, 278, //
    556, 556, 556, 556, 556, 556, 556, 556, 556, 556, 278, 278, 584, 584, 584, 556, //
    1015, 667, 667, 722, 722, 667, 611, 778, 722, 278, 500, 667, 556, 833, 722, 778, //
    667, 778, 722, 667, 611, 722, 667, 944, 667, 667, 611, 278, 278, 278, 469, 556, //
    333, 556, 556, 500, 556, 556, 278, 556, 556, 222, 222, 500, 222, 833, 556, 556, //
    556, 556, 333, 500, 278, 556, 500, 722, 500, 500, 500, 334, 260, 334, 584
  };

  /** A digit of 556 takes a little more than a column's character, which is rounded to pixels. */
  private static final double CHARACTER = 535;

  private static final double SPACE = 278 / CHARACTER;
  private static final int WIDE = 589;
  private static final int WIDEST = 1016;
  private static final int FIRST_IDEOGRAPH = 0x2E80;

  private TextSize() {}

  /** Width in characters of a column. */
  public static double width(String text) {
    int width = 0;
    for (int i = 0; i < text.length(); i++) {
      width += width(text.charAt(i));
    }
    return width / CHARACTER;
  }

  private static int width(char character) {
    int index = character - ' ';
    if (index >= 0 && index < WIDTHS.length) {
      return WIDTHS[index];
    }
    return character < FIRST_IDEOGRAPH ? WIDE : WIDEST;
  }

  /** Whether a text is surely no wider, told by its length alone; most are, and so need no more. */
  public static boolean surelyFits(String text, double width) {
    return text.length() * WIDEST <= width * CHARACTER;
  }

  /** Width of the longest word. */
  public static double longestWord(String text) {
    double longest = 0;
    for (String word : text.split("\\s+")) {
      longest = Math.max(longest, width(word));
    }
    return longest;
  }

  /** Lines that a text takes when it wraps within a width. */
  public static int lines(String text, double width) {
    int lines = 0;
    for (String paragraph : text.split("\n", -1)) {
      lines += width(paragraph) <= width ? 1 : wrapped(paragraph, width);
    }
    return lines;
  }

  private static int wrapped(String paragraph, double width) {
    int lines = 1;
    double used = 0;
    for (String word : paragraph.split(" ")) {
      double needed = width(word);
      if (used > 0 && used + SPACE + needed > width) {
        lines++;
        used = 0;
      }
      lines += (int) (Math.max(0, needed - 0.001) / width);
      used += (used > 0 ? SPACE : 0) + needed % width;
    }
    return lines;
  }
}
