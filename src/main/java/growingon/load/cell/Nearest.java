package growingon.load.cell;

import java.util.Collection;
import java.util.Optional;
import java.util.regex.Pattern;
import org.apache.commons.text.similarity.LevenshteinDistance;

/** The known name that a mistyped one was most likely meant to be. */
public final class Nearest {
  /** Beyond this no name is a slip of the finger, and the search would take long. */
  private static final int LONGEST = 200;

  /** From this length on two letters may differ by a slip. */
  private static final int LONG = 8;

  private static final int LONG_OF_UNUSED = 5;

  /** What tells the parts of a lot from each other: digits, and letters that stand alone. */
  private static final Pattern LABEL = Pattern.compile("\\p{N}+|(?<!\\p{L})\\p{L}(?!\\p{L})");

  private static final Pattern SPACES = Pattern.compile("[^\\p{L}]+");

  private Nearest() {}

  /** The nearest by edit distance, if at most a third of the letters differ. */
  public static Optional<String> to(String typed, Collection<String> known) {
    String key = Texts.key(typed);
    if (key.length() > LONGEST) {
      return Optional.empty();
    }
    return within(Math.max(1, key.length() / 3), key, known);
  }

  /**
   * The one that a new name may have been meant for by a slip of one or two letters. Names that
   * differ in a number or a single letter only, such as Yews A and Yews B, are no slips.
   */
  public static Optional<String> slip(String typed, Collection<String> known) {
    return slip(typed, known, LONG);
  }

  /** The same where nothing uses the name, so that more speaks for a slip. */
  public static Optional<String> slipOfUnused(String typed, Collection<String> known) {
    return slip(typed, known, LONG_OF_UNUSED);
  }

  private static Optional<String> slip(String typed, Collection<String> known, int twoFrom) {
    String key = Texts.key(typed);
    if (key.length() > LONGEST) {
      return Optional.empty();
    }
    String word = withoutLabels(key);
    return within(key.length() < twoFrom ? 1 : 2, key, known)
        .filter(near -> !withoutLabels(Texts.key(near)).equals(word));
  }

  private static String withoutLabels(String key) {
    return SPACES.matcher(LABEL.matcher(key).replaceAll(" ")).replaceAll(" ").strip();
  }

  private static Optional<String> within(int limit, String key, Collection<String> known) {
    LevenshteinDistance distance = new LevenshteinDistance(limit);
    String best = null;
    int least = limit + 1;
    for (String name : known) {
      int far = distance.apply(key, Texts.key(name));
      if (far >= 0 && far < least) {
        least = far;
        best = name;
      }
    }
    return Optional.ofNullable(best);
  }
}
