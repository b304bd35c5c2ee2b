package growingon.project;

import growingon.nursery.Plan;
import growingon.nursery.Scenario;
import growingon.nursery.lot.Lot;
import java.util.ArrayList;
import java.util.List;

/** A large nursery to measure with: lots of three species that arrive over five years. */
public final class LargeNursery {
  private LargeNursery() {}

  /** So many lots over ten seasons, drawn so many times. */
  public static Scenario of(int lotCount, int draws) {
    return of(lotCount, 0, draws);
  }

  /** The same with lots bought in the first months of the plan besides. */
  public static Scenario of(int lotCount, int bought, int draws) {
    String[] species = {"maple", "elm", "larch"};
    List<Lot> lots = new ArrayList<>();
    for (int i = 0; i < lotCount; i++) {
      int month = i % 60 - 60;
      var arrived = Nurseries.NOV_2026.plusMonths(month);
      lots.add(
          Lots.lot("lot " + i)
              .species(species[i % 3])
              .arrived(arrived.getYear(), arrived.getMonthValue())
              .trunks(10 + i % 25, 0.18)
              .quality(0.6, 0.3, true)
              .place("ground")
              .plantsPerM2(8)
              .route(i % 2 == 0 ? "field tree" : "liner")
              .build());
    }
    for (int i = 0; i < bought; i++) {
      var month = Nurseries.NOV_2026.plusMonths(2 + i);
      lots.add(
          Lots.lot("bought " + i)
              .species(species[i % 3])
              .arrived(month.getYear(), month.getMonthValue())
              .trunks(12, 0.18)
              .quality(0.6, 0.3, true)
              .place("ground")
              .plantsPerM2(8)
              .route("liner")
              .bought(4, 50)
              .build());
    }
    Scenario scenario = Nurseries.working().seasons(10).lots(lots).scenario();
    Plan plan = scenario.plan().withDraws(draws);
    return new Scenario(scenario.nursery(), plan, scenario.lots());
  }
}
