package growingon.project.lot;

import static org.assertj.core.api.Assertions.assertThat;

import growingon.nursery.Scenario;
import growingon.nursery.place.Spacing;
import growingon.project.Lots;
import growingon.project.Nurseries;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class AlikeTest {
  private final Scenario scenario =
      Nurseries.working()
          .lot(Lots.lot("one").species("maple").crown(300).place("ground").build())
          .lot(Lots.lot("like it").species("maple").crown(300).place("ground").quantity(7).build())
          .lot(Lots.lot("wider").species("maple").crown(500).place("ground").build())
          .lot(Lots.lot("other species").species("elm").crown(300).place("ground").build())
          .scenario();
  private final Alike alike = new Alike(scenario.nursery(), scenario.horizon(), 64);

  private Spot spot(int lot, double gapMm) {
    return spot(lot, new Spacing(gapMm, OptionalDouble.empty()));
  }

  private Spot spot(int lot, Spacing spacing) {
    LotPlan plan = new LotPlan(scenario.lots().get(lot), alike);
    var ground = Optional.of(scenario.nursery().places().get("ground"));
    return plan.spot(Optional.empty(), ground, spacing);
  }

  @Test
  void lots_thatStandAlike_shareHowTheyStand() {
    assertThat(spot(1, 100)).isSameAs(spot(0, 100));
  }

  @Test
  void crowns_ofPlantsSetOutByTheSquareMetre_makeNoDifference() {
    Spacing eight = new Spacing(0, OptionalDouble.of(8));
    assertThat(spot(2, eight)).isSameAs(spot(0, eight));
  }

  @Test
  void lots_ofAnotherCrownSpeciesOrSpacing_standOtherwise() {
    assertThat(spot(2, 100).m2Each()).isGreaterThan(spot(0, 100).m2Each());
    assertThat(spot(0, 200).m2Each()).isGreaterThan(spot(0, 100).m2Each());
    assertThat(spot(3, 100).curve()).isNotEqualTo(spot(0, 100).curve());
    assertThat(spot(2, 100).placeName()).isSameAs(spot(0, 100).placeName());
  }
}
