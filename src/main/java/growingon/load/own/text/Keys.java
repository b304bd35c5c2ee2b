package growingon.load.own.text;

import com.google.common.base.CharMatcher;
import java.text.Normalizer;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;

/** Texts in the form in which headings and names are compared. */
public final class Keys {
  private static final Pattern BLANKS = Pattern.compile(" +");
  private static final Pattern ACCENTS = Pattern.compile("\\p{M}+");
  private static final Pattern UNSEEN = Pattern.compile("[\\p{Cf}\\u00AD]");
  private static final Pattern MARKS =
      Pattern.compile("[_\\-/\\\\.,:;()\\[\\]\"!?\\u2010-\\u2015„“”«»\\s\\p{Z}\\p{Cc}]+");
  private static final Pattern TRAILING =
      Pattern.compile("(?:\\s*(?:[*†‡¹²³]|\\([0-9]\\)|\\[[0-9]]))+\\s*$");
  private static final Pattern INNER_CAPITAL = Pattern.compile("(?<=\\p{Ll})(?=\\p{Lu})");
  private static final Pattern PERCENT = Pattern.compile("\\s*%\\s*");

  private static final Remembered<String> KNOWN = new Remembered<>();

  /** What a list's author puts around a heading and means nothing else by. */
  private static final Pattern FILLERS =
      Pattern.compile(
          "(?<= )(?:the|it|its|is|us|to|we|i|our|my|they|of|at|in|on|now|today|current|currently|aktuell|jetzt|"
              + "actuel|actuelle|nu|huidige?|attuale|actual|ahora) ");

  private Keys() {}

  /** Lower case, no accents, marks as spaces. */
  public static String of(String text) {
    return KNOWN.get(text, each -> fold(each.replace("ß", "ss")));
  }

  /** The same with ä, ö and ü as ae, oe and ue. */
  public static String withUmlautsSpelt(String text) {
    String composed = Normalizer.normalize(text, Normalizer.Form.NFC);
    return fold(
        composed
            .replace("ß", "ss")
            .replaceAll("[äÄ]", "ae")
            .replaceAll("[öÖ]", "oe")
            .replaceAll("[üÜ]", "ue"));
  }

  private static String fold(String text) {
    String seen = isPlain(text) ? text : unaccented(UNSEEN.matcher(text).replaceAll(""));
    String bare = seen.toLowerCase(Locale.ROOT);
    String spaced = MARKS.matcher(bare.replace('’', '\'')).replaceAll(" ");
    return BLANKS.matcher(PERCENT.matcher(spaced).replaceAll(" % ").strip()).replaceAll(" ");
  }

  private static String unaccented(String text) {
    return ACCENTS.matcher(Normalizer.normalize(text, Normalizer.Form.NFKD)).replaceAll("");
  }

  private static boolean isPlain(String text) {
    return CharMatcher.ascii().matchesAllOf(text);
  }

  /** Lower case, no accents, with its points, between spaces. */
  public static String withPoints(String text) {
    return " " + unaccented(text).toLowerCase(Locale.ROOT) + " ";
  }

  /** A heading without the marks that point to a footnote. */
  public static String withoutFootnotes(String heading) {
    String bare = TRAILING.matcher(heading).replaceAll("").strip();
    // "m²" ends in a mark that belongs to it.
    return bare.isEmpty() || heading.strip().endsWith("m²") ? heading.strip() : bare;
  }

  /** A heading whose words run together, as DateBought, parted at its capitals. */
  public static String parted(String heading) {
    return INNER_CAPITAL.matcher(heading).replaceAll(" ");
  }

  /** The words of a key. */
  public static List<String> words(String key) {
    return key.isEmpty() ? List.of() : new ArrayList<>(List.of(key.split(" ")));
  }

  /** A key without words that say nothing: paid for paid for it. */
  public static String withoutFillers(String key) {
    return FILLERS.matcher(" " + key + " ").replaceAll("").strip();
  }

  /** A name as it is, and as the singular of an English plural. */
  public static List<String> withAndWithoutPlural(String key) {
    List<String> all = new ArrayList<>(List.of(key));
    if (key.endsWith("ies") && key.length() > 5) {
      all.add(key.substring(0, key.length() - 3) + "y");
    }
    if (key.endsWith("es") && key.length() > 4) {
      all.add(key.substring(0, key.length() - 2));
    }
    if (key.endsWith("s") && key.length() > 3) {
      all.add(key.substring(0, key.length() - 1));
    }
    return all;
  }
}
