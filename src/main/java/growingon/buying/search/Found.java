package growingon.buying.search;

import growingon.buying.question.Candidate;
import java.util.List;

/**
 * What the search found.
 *
 * @param recommended what is recommended
 * @param beforeLeavingOut the same with changes that are not worth saying
 * @param leftOut choices that were left as given because they bring little
 * @param onTheLine the best end of the climb on the plan's line alone
 * @param gainOnChosen what the recommended gains over as given on the draws that it was chosen on
 * @param certificate what was tried about it
 */
public record Found(
    Candidate recommended,
    Candidate beforeLeavingOut,
    List<Integer> leftOut,
    Candidate onTheLine,
    double gainOnChosen,
    Certificate certificate) {
  public Found {
    leftOut = List.copyOf(leftOut);
  }
}
