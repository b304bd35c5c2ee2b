package growingon.project;

import growingon.nursery.Scenario;
import growingon.nursery.time.Horizon;
import growingon.problem.Problem;
import growingon.project.history.Missed;
import growingon.project.lot.Balance;
import growingon.project.lot.LotHistory;
import java.util.List;

/**
 * What a projection yields.
 *
 * @param scenario what was projected
 * @param horizon the months of the plan
 * @param lots a history for each lot, in the order of the scenario
 * @param missed demand that could not be met
 * @param remarks late steps and the like, as notices and warnings
 */
public record Projection(
    Scenario scenario,
    Horizon horizon,
    List<LotHistory> lots,
    List<Missed> missed,
    List<Problem> remarks) {
  public Projection {
    lots = List.copyOf(lots);
    missed = List.copyOf(missed);
    remarks = List.copyOf(remarks);
    lots.forEach(lot -> Balance.check(lot, horizon));
  }

  /** The history of a lot. */
  public LotHistory lot(String name) {
    return lots.stream()
        .filter(each -> each.lot().name().equals(name))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("no lot " + name));
  }
}
