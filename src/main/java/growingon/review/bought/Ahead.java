package growingon.review.bought;

import growingon.chance.LotDraws;
import growingon.nursery.Plan;
import growingon.nursery.Scenario;
import growingon.nursery.lot.Lot;
import growingon.nursery.lot.Purchase;
import growingon.project.lot.Facts;
import growingon.review.kept.Range;
import java.util.List;
import java.util.Optional;

/** What luck may still do, from what is there on: what has happened is the same in every draw. */
public final class Ahead {
  /** More draws do not make P10 and P90 much surer. */
  private static final int MOST_DRAWS = 200;

  /** With fewer draws P10 and P90 are too unsure to be told. */
  private static final int LEAST_DRAWS = 100;

  /** So many lots times draws take some seconds. */
  private static final int MOST_WORK = 100_000;

  private final Optional<LotDraws> draws;
  private final int through;

  private Ahead(Optional<LotDraws> draws, int through) {
    this.draws = draws;
    this.through = through;
  }

  /**
   * Draws a plan from what is there; not where it has no draws, or so many lots that it would take
   * too long.
   *
   * @param through last month of which anything is known
   * @param threads how many threads draw; their number changes nothing but the time
   */
  public static Ahead of(Scenario scenario, Facts known, int through, int threads) {
    int lots = Math.max(1, scenario.lots().size());
    int number = Math.min(Math.min(scenario.plan().draws(), MOST_DRAWS), MOST_WORK / lots);
    if (number < Math.max(1, Math.min(LEAST_DRAWS, scenario.plan().draws()))) {
      return new Ahead(Optional.empty(), through);
    }
    Plan plan = scenario.plan().withDraws(number);
    List<Lot> come = scenario.lots().stream().map(lot -> asCome(lot, scenario, through)).toList();
    Scenario asItIs = scenario.withLots(come).withPlan(plan);
    return new Ahead(Optional.of(LotDraws.draw(asItIs, known, threads, done -> {})), through);
  }

  /** A consignment that has come did not fail. */
  private static Lot asCome(Lot lot, Scenario scenario, int through) {
    boolean hasCome = scenario.horizon().offset(lot.arrived()) <= through;
    return hasCome ? lot.withPurchase(lot.purchase().map(Ahead::withoutFailure)) : lot;
  }

  private static Purchase withoutFailure(Purchase of) {
    return new Purchase(
        of.unitPrice(), of.carriage(), of.importCharges(), of.currency(), of.lossSure(), 0);
  }

  /**
   * What some lots together may still bring.
   *
   * @param lots their indexes
   */
  Optional<Range> resultToCome(List<Integer> lots) {
    return draws.map(
        each -> {
          LotDraws.Tenths tenths = each.resultAfter(lots, through);
          return new Range(tenths.p10(), tenths.p50(), tenths.p90());
        });
  }
}
