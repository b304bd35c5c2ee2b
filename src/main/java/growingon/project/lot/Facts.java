package growingon.project.lot;

import growingon.project.known.LotFacts;
import java.util.Collection;
import java.util.HashMap;
import java.util.Map;

/**
 * What is known to have happened to the lots of a programme: a run that is given it starts from
 * what is there.
 *
 * @param byLot what is known of each lot, by name; nothing of those left out
 */
public record Facts(Map<String, LotFacts> byLot) {
  /** Nothing happened yet. */
  public static final Facts NONE = new Facts(Map.of());

  public Facts {
    byLot = Map.copyOf(byLot);
  }

  /**
   * The same where everything sold up to a month is known of every lot: the market sells none of
   * them before.
   *
   * @param lots names of all lots
   * @param through offset of the last month of which the sales are known
   */
  public Facts soldOnlyAsKnown(Collection<String> lots, int through) {
    Map<String, LotFacts> known = new HashMap<>();
    lots.forEach(
        lot -> known.put(lot, byLot.getOrDefault(lot, LotFacts.NONE).soldOnlyAsKnown(through)));
    return new Facts(known);
  }

  /** The same where every trunk that was measured is thicker by a factor. */
  public Facts withTrunks(double factor) {
    Map<String, LotFacts> other = new HashMap<>();
    byLot.forEach((lot, known) -> other.put(lot, known.withTrunks(factor)));
    return new Facts(other);
  }

  /** Share of a lot's plants that is spoken of; 1 for one of which nothing is known. */
  public double part(String lot) {
    return byLot.getOrDefault(lot, LotFacts.NONE).part();
  }

  /** What is known of a lot; nothing if it is not named. */
  public LotFacts of(LotPlan plan) {
    return byLot.getOrDefault(plan.lot.name(), LotFacts.NONE);
  }
}
