package growingon.buying.answer;

import growingon.buying.question.Spread;
import growingon.nursery.lot.Hold;
import java.util.Optional;

/**
 * What is said of what is held of a lot.
 *
 * @param name of the lot or offer
 * @param given what is held as given
 * @param advised what is advised
 * @param brings what the change brings beside all else recommended; nil where nothing changes
 */
public record HoldAnswer(String name, Optional<Hold> given, Optional<Hold> advised, Spread brings) {
  /** Whether anything is to be changed. */
  public boolean isChange() {
    return !given.equals(advised);
  }
}
