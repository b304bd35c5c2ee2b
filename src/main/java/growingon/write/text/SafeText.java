package growingon.write.text;

import java.util.regex.Pattern;

/** Text from the input, made safe for the files it goes to. */
public final class SafeText {
  /** Most characters a spreadsheet cell holds. */
  static final int MOST_IN_CELL = 32_767;

  private static final String CUT = " … (cut)";
  private static final char REPLACEMENT = '\uFFFD';
  private static final Pattern CHARACTER_CODE = Pattern.compile("_(?=x[0-9A-Fa-f]{4}_)");

  private SafeText() {}

  /** What a formula begins with, also in the full width of East Asian keyboards. */
  private static final String FORMULA = "=+-@\uFF1D\uFF0B\uFF0D\uFF20";

  /** A formula in the middle of a text, where a program parts columns by semicolons. */
  private static final Pattern AFTER_SEMICOLON =
      Pattern.compile(";(?=[" + Pattern.quote(FORMULA) + "])");

  /**
   * Whether a spreadsheet might take the text for a formula: it begins with = + - @ or, where a
   * program drops white space in front of these, with a tab or a line break.
   */
  public static boolean looksLikeFormula(String text) {
    return !text.isEmpty() && (FORMULA + "\t\r\n").indexOf(text.charAt(0)) >= 0;
  }

  /** Whether a text was cut to become what {@link #forCell} gave. */
  public static boolean isCut(String text, String cell) {
    return cell.endsWith(CUT) && !text.endsWith(CUT);
  }

  /**
   * Text as a workbook can hold it: no characters that XML forbids, nothing that reads as a coded
   * character, no more than a cell holds.
   */
  public static String forCell(String text) {
    String legal = forXml(text);
    String clean =
        legal.contains("_x") ? CHARACTER_CODE.matcher(legal).replaceAll("_x005F_") : legal;
    if (clean.length() <= MOST_IN_CELL) {
      return clean;
    }
    int end = MOST_IN_CELL - CUT.length();
    boolean splitsPair = Character.isHighSurrogate(clean.charAt(end - 1));
    return clean.substring(0, splitsPair ? end - 1 : end) + CUT;
  }

  /** Text with each character that XML 1.0 forbids replaced. */
  public static String forXml(String text) {
    return isLegal(text) ? text : replaceIllegal(text);
  }

  /**
   * Text as a CSV cell: what a spreadsheet might take for a formula, at its beginning or behind a
   * semicolon, gets an apostrophe in front, which shows it as text.
   */
  public static String forCsv(String text) {
    String whole = looksLikeFormula(text) ? "'" + text : text;
    return whole.indexOf(';') < 0 ? whole : AFTER_SEMICOLON.matcher(whole).replaceAll(";'");
  }

  /** Text on one line of the terminal, without letters that hide or turn what stands around it. */
  public static String forLine(String text) {
    return text.replaceAll("[\\p{Cc}\\p{Zl}\\p{Zp}]+", " ").replaceAll("\\p{Cf}", "");
  }

  private static boolean isLegal(String text) {
    for (int i = 0; i < text.length(); i += Character.charCount(text.codePointAt(i))) {
      if (!isLegal(text.codePointAt(i))) {
        return false;
      }
    }
    return true;
  }

  private static boolean isLegal(int point) {
    return point == '\t'
        || point == '\n'
        || point == '\r'
        || (point >= 0x20 && point <= 0xD7FF)
        || (point >= 0xE000 && point <= 0xFFFD)
        || point >= 0x10000;
  }

  private static String replaceIllegal(String text) {
    StringBuilder clean = new StringBuilder(text.length());
    text.codePoints()
        .map(point -> isLegal(point) ? point : REPLACEMENT)
        .forEach(clean::appendCodePoint);
    return clean.toString();
  }
}
