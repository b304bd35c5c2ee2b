package growingon.fit;

import growingon.fit.Value.Verdict;
import growingon.nursery.Species;
import java.util.Comparator;
import java.util.List;

/** Which values the records contradict, which they bear out, and which they say too little of. */
final class Judging {
  /** Standard deviations from the middle to P10 and to P90. */
  static final double TO_P90 = 1.2816;

  private static final double HALF = 0.5;

  private Judging() {}

  static Verdict verdict(double weight, boolean agrees) {
    if (weight < HALF) {
      return Verdict.TOO_THIN;
    }
    return agrees ? Verdict.AGREES : Verdict.CHANGED;
  }

  static Value told(Value value, String why) {
    return new Value(
        value.species(),
        value.condition(),
        value.what(),
        value.old(),
        value.value(),
        value.p10(),
        value.p90(),
        value.mmOld(),
        value.mmNew(),
        value.trunkMm(),
        value.counts(),
        value.lots(),
        value.seasons(),
        value.weight(),
        value.verdict(),
        value.inFile(),
        value.sureOld(),
        value.sureNew(),
        why);
  }

  static List<Species> inOrder(Past past) {
    return past.assumed().values().stream().sorted(Comparator.comparing(Species::name)).toList();
  }
}
