package growingon.project;

import growingon.nursery.Scenario;
import growingon.nursery.lot.Lot;
import growingon.project.lot.Alike;
import growingon.project.lot.LotPlan;
import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;

/**
 * Lots made ready for one nursery and plan, each once, whatever programmes they run in: each as an
 * object, not by what it says. It may be used by several threads at once.
 */
public final class ReadyLots {
  private final Programme like;
  private final Alike alike;
  private final Map<Lot, LotPlan> ready = Collections.synchronizedMap(new IdentityHashMap<>());

  /** No lots yet, of the nursery and plan of a scenario. */
  public ReadyLots(Scenario like) {
    this.alike = new Alike(like.nursery(), like.horizon(), like.plan().slices());
    this.like = Programme.of(like.withLots(List.of()));
  }

  /** Makes a programme of lots ready; those that were made ready before serve again. */
  public Programme programme(List<Lot> lots) {
    List<LotPlan> plans = new ArrayList<>(lots.size());
    for (Lot lot : lots) {
      LotPlan known = ready.get(lot);
      plans.add(known != null ? known : ready.computeIfAbsent(lot, this::make));
    }
    return like.with(lots, plans);
  }

  private LotPlan make(Lot lot) {
    return new LotPlan(lot, alike);
  }
}
