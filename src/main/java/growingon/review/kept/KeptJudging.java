package growingon.review.kept;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * How a lot of a kept plan is to be judged.
 *
 * @param all what the plan's draws said, with luck and with what was not known
 * @param luck the same with luck alone; empty where the two were not told apart
 * @param died plants that die by the plan's line up to each month's end
 * @param list list prices when it was kept, by "grade, quality"
 * @param within which draws were within what the others had; empty in older files
 * @param luckWithin the same with luck alone; empty where the two were not told apart
 */
public record KeptJudging(
    KeptJudged all,
    Optional<KeptJudged> luck,
    List<Double> died,
    Map<String, Double> list,
    Optional<KeptWithin> within,
    Optional<KeptWithin> luckWithin) {
  public KeptJudging {
    died = List.copyOf(died);
    list = Collections.unmodifiableMap(new LinkedHashMap<>(list));
  }

  /** Key of a list price. */
  public static String key(String grade, String quality) {
    return grade + ", " + quality;
  }
}
