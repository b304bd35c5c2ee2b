package growingon.project;

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

  LotFacts of(LotPlan plan) {
    return byLot.getOrDefault(plan.lot.name(), LotFacts.NONE);
  }
}
