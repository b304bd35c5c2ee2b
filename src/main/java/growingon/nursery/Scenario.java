package growingon.nursery;

import growingon.nursery.lot.Lot;
import growingon.nursery.lot.Trunks;
import growingon.nursery.market.MarketSure;
import growingon.nursery.number.Check;
import growingon.nursery.species.Species;
import growingon.nursery.species.Sure;
import growingon.nursery.time.Horizon;
import java.util.List;
import java.util.Objects;
import java.util.function.UnaryOperator;

/**
 * All that a projection needs: the nursery, the plan, and the lots standing or bought in it.
 *
 * @param nursery the nursery and its assumptions
 * @param plan the plan
 * @param lots stock rows in order, then offers taken
 */
public record Scenario(Nursery nursery, Plan plan, List<Lot> lots) {
  public Scenario {
    Objects.requireNonNull(nursery);
    Objects.requireNonNull(plan);
    lots = List.copyOf(lots);
    Check.that(
        lots.stream().map(Lot::name).distinct().count() == lots.size(),
        "lot names must differ",
        lots.size());
  }

  /** The months of the plan. */
  public Horizon horizon() {
    return new Horizon(plan.firstMonth(), plan.seasons(), nursery.settings().seasonStart());
  }

  /** The same with growth, losses, trunks that are usual, prices and demand taken as known. */
  public Scenario known() {
    return new Scenario(
        nursery.withSure(
            each -> each.withSure(Sure.known(each.growth().keySet())), MarketSure.KNOWN),
        plan,
        lots.stream()
            .map(lot -> isUsual(lot) ? lot.withTrunks(lot.trunks().takenAsKnown()) : lot)
            .toList());
  }

  /** Whether growth, losses, trunks, prices and demand are all taken as known. */
  public boolean isKnown() {
    return nursery.settings().market().equals(MarketSure.KNOWN)
        && lots.stream().noneMatch(Scenario::isUsual)
        && lots.stream().map(nursery::speciesOf).allMatch(each -> each.sure().isKnown());
  }

  private static boolean isUsual(Lot lot) {
    return lot.trunks() instanceof Trunks.Usual;
  }

  /** The same as sure of each species as said. */
  public Scenario withSure(UnaryOperator<Species> bySpecies) {
    return new Scenario(nursery.withSure(bySpecies, nursery.settings().market()), plan, lots);
  }

  /** The same with another plan for the same nursery and lots. */
  public Scenario withPlan(Plan other) {
    return new Scenario(nursery, other, lots);
  }

  /** The same without one lot. */
  public Scenario without(String lot) {
    return new Scenario(
        nursery, plan, lots.stream().filter(each -> !each.name().equals(lot)).toList());
  }

  /** The same lots and plan in a nursery with other assumptions. */
  public Scenario in(Nursery other) {
    return new Scenario(other, plan, lots);
  }

  /** The same with other lots. */
  public Scenario withLots(List<Lot> others) {
    return new Scenario(nursery, plan, others);
  }
}
