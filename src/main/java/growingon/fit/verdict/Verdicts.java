package growingon.fit.verdict;

import growingon.fit.past.Past;
import growingon.fit.value.Value.Verdict;
import growingon.nursery.species.Species;
import java.util.Comparator;
import java.util.List;

/** Which values the records contradict, which they bear out, and which they say too little of. */
public final class Verdicts {
  private static final double HALF = 0.5;

  private Verdicts() {}

  /**
   * What records say of an assumption.
   *
   * @param weight share of the value that rests on the records, 0 to 1
   * @param agrees whether the assumption lies within what they leave open
   */
  public static Verdict verdict(double weight, boolean agrees) {
    if (!isEnough(weight)) {
      return Verdict.TOO_THIN;
    }
    return agrees ? Verdict.AGREES : Verdict.CHANGED;
  }

  /** Whether half of a value or more rests on the records. */
  public static boolean isEnough(double weight) {
    return weight >= HALF;
  }

  /** Species by name, as they were assumed first. */
  public static List<Species> inOrder(Past past) {
    return past.assumed().values().stream().sorted(Comparator.comparing(Species::name)).toList();
  }
}
