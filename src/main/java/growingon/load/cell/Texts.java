package growingon.load.cell;

import java.text.Normalizer;
import java.util.Locale;
import java.util.regex.Pattern;

/** Texts as typed, brought into the form in which they are kept or compared. */
public final class Texts {
  /** Marks that are not seen: zero-width space, byte order mark, and those that turn the line. */
  private static final Pattern UNSEEN =
      Pattern.compile("[\\u200B\\u200E\\u200F\\u202A-\\u202E\\u2060\\u2066-\\u2069\\uFEFF]");

  private static final Pattern SPACES = Pattern.compile("[\\s\\p{Z}\\p{Cc}]+");
  private static final Pattern PERCENT = Pattern.compile("\\s*%\\s*");
  private static final Pattern JOINTS = Pattern.compile("[-_\\u2010-\\u2015()\\[\\]:]");
  private static final Pattern REMARKS = Pattern.compile("\\([^)]*\\)|\\[[^]]*\\]");

  private Texts() {}

  /** Without unseen marks, outer spaces and runs of spaces. */
  public static String clean(String typed) {
    if (isClean(typed)) {
      return typed;
    }
    return SPACES.matcher(UNSEEN.matcher(typed).replaceAll("")).replaceAll(" ").strip();
  }

  /** Nearly every cell is plain and tidy, and need not be searched for unseen marks. */
  private static boolean isClean(String text) {
    boolean space = true;
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (c < ' ' || c > '~' || (c == ' ' && space)) {
        return false;
      }
      space = c == ' ';
    }
    return !space || text.isEmpty();
  }

  /** As names are compared. */
  public static String key(String name) {
    if (isClean(name)) {
      return name.toLowerCase(Locale.ROOT);
    }
    return Normalizer.normalize(clean(name), Normalizer.Form.NFC).toLowerCase(Locale.ROOT);
  }

  /**
   * As headings are compared: "Trunk (mm)" is "trunk mm", "first-year loss%" "first year loss %".
   */
  public static String headingKey(String heading) {
    String joined = JOINTS.matcher(key(heading).replace('²', '2')).replaceAll(" ");
    return clean(PERCENT.matcher(joined).replaceAll(" % "));
  }

  /** The same without what stands in brackets: "price (one pot)" is "price". */
  public static String headingKeyWithoutRemarks(String heading) {
    return headingKey(REMARKS.matcher(heading).replaceAll(" "));
  }
}
