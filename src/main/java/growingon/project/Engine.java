package growingon.project;

import growingon.nursery.Horizon;
import growingon.nursery.Nursery;
import growingon.nursery.PlaceKind;
import growingon.nursery.Scenario;
import growingon.problem.Problem;
import java.util.ArrayList;
import java.util.List;

/** A scenario made ready to run: what all lots share. */
final class Engine {
  private final Scenario scenario;
  private final Horizon horizon;
  private final Calendar calendar;
  private final Lattice lattice;
  private final CareRates care;
  private final List<Problem> remarks = new ArrayList<>();

  Engine(Scenario scenario) {
    this.scenario = scenario;
    this.horizon = scenario.horizon();
    this.calendar = new Calendar(horizon);
    this.lattice = Lattice.of(scenario.plan().slices());
    this.care = new CareRates(scenario.nursery().care());
  }

  Nursery nursery() {
    return scenario.nursery();
  }

  Horizon horizon() {
    return horizon;
  }

  Calendar calendar() {
    return calendar;
  }

  Lattice lattice() {
    return lattice;
  }

  CareRates care() {
    return care;
  }

  void remark(Problem problem) {
    remarks.add(problem);
  }

  /** Runs the months and gives what happened. */
  Projection run() {
    List<LotState> lots = new ArrayList<>();
    scenario.lots().forEach(lot -> lots.add(take(new LotPlan(lot, nursery(), horizon))));
    Market market = new Market(this, lots);
    for (int month = 0; month < horizon.months(); month++) {
      runMonth(month, lots, market);
    }
    List<LotHistory> histories = lots.stream().map(lot -> lot.history).toList();
    return new Projection(scenario, horizon, histories, market.missed(), remarks);
  }

  private LotState take(LotPlan plan) {
    boolean quarantine =
        nursery().places().values().stream()
            .anyMatch(place -> place.kind() == PlaceKind.QUARANTINE);
    boolean hasPlaces = !nursery().places().isEmpty();
    if (plan.apartUntil > plan.start && hasPlaces && !quarantine) {
      remark(Remarks.noQuarantine(plan.lot.name()));
    }
    return new LotState(plan, this);
  }

  /** The order of a month (design section 6.4). */
  private void runMonth(int month, List<LotState> lots, Market market) {
    for (LotState lot : lots) {
      if (month < lot.plan.start) {
        continue;
      }
      if (month == lot.plan.start) {
        lot.sortOnArrival(month);
      }
      lot.work(month, this);
      lot.stand(month);
      lot.grow(month);
      lot.lose(month);
    }
    market.sell(month);
    for (LotState lot : lots) {
      if (month >= lot.plan.start) {
        lot.endMonth(month);
      }
    }
  }
}
