package growingon.load;

import java.util.Collection;
import java.util.Optional;
import org.apache.commons.text.similarity.LevenshteinDistance;

/** The known name that a mistyped one was most likely meant to be. */
final class Nearest {
  /** Beyond this no name is a slip of the finger, and the search would take long. */
  private static final int LONGEST = 200;

  private Nearest() {}

  /** The nearest by edit distance, if at most a third of the letters differ. */
  static Optional<String> to(String typed, Collection<String> known) {
    String key = Texts.key(typed);
    if (key.length() > LONGEST) {
      return Optional.empty();
    }
    int limit = Math.max(1, key.length() / 3);
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
