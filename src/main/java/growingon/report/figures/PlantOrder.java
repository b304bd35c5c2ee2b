package growingon.report.figures;

import growingon.nursery.Inputs;
import growingon.nursery.Scenario;
import growingon.nursery.lot.Lot;
import growingon.nursery.lot.Offer;
import growingon.nursery.time.Horizon;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Young plants to be ordered.
 *
 * @param lot the lot bought
 * @param offer the offer it comes from, if it is known
 * @param orderMonth offset of the month by whose end it must be ordered; before the plan: too late
 */
public record PlantOrder(Lot lot, Optional<Offer> offer, int orderMonth) {
  /** All of a plan, by the month of order. */
  public static List<PlantOrder> of(Inputs inputs) {
    Scenario scenario = inputs.scenario();
    Horizon horizon = scenario.horizon();
    int lead = scenario.nursery().settings().orderLeadMonths();
    return scenario.lots().stream()
        .filter(lot -> lot.purchase().isPresent() && lot.quantity() > 0)
        .map(lot -> of(lot, inputs, horizon, lead))
        .sorted(
            Comparator.comparingInt(PlantOrder::orderMonth)
                .thenComparing(order -> order.lot().arrived()))
        .toList();
  }

  private static PlantOrder of(Lot lot, Inputs inputs, Horizon horizon, int lead) {
    Optional<Offer> offer =
        inputs.offers().stream().filter(each -> each.name().equals(lot.name())).findFirst();
    int month =
        offer
            .flatMap(Offer::orderBy)
            .map(horizon::offset)
            .orElse(horizon.offset(lot.arrived()) - lead);
    return new PlantOrder(lot, offer, month);
  }

  /** The month to order in, at the earliest the plan's first. */
  public int orderIn() {
    return Math.max(0, orderMonth);
  }

  /** Whether it should have been ordered before the plan. */
  public boolean isLate() {
    return orderMonth < 0;
  }

  /** What the plants cost landed, plan currency. */
  public double landed() {
    return lot.purchase().get().landed(lot.quantity());
  }
}
