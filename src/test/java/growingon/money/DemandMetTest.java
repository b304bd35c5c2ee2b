package growingon.money;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import growingon.project.Lots;
import growingon.project.Nurseries;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class DemandMetTest {
  private static Nurseries nursery(OptionalDouble units) {
    return Nurseries.bare()
        .seasons(2)
        .demand(Nurseries.demandRow("one", "any", units, 12.5))
        .lot(Lots.lot("lot").quantity(100).build());
  }

  @Test
  void demand_moreWantedThanThere_isMissedInItsSeason() {
    List<DemandMet> met = DemandMet.of(nursery(OptionalDouble.of(60)).project());

    assertThat(met).extracting(DemandMet::season).containsExactly(0, 1);
    assertThat(met.get(0).sold()).isCloseTo(60, within(1e-9));
    assertThat(met.get(0).missed()).isZero();
    assertThat(met.get(1).sold()).isCloseTo(40, within(1e-9));
    assertThat(met.get(1).missed()).isCloseTo(20, within(1e-6));
    assertThat(met.get(1).wanted()).isCloseTo(60, within(1e-6));
    assertThat(met.get(1).missedAtList()).isCloseTo(250, within(1e-4));
    assertThat(met.get(1).receipts()).isCloseTo(500, within(1e-6));
  }

  @Test
  void demand_allThatIsReady_missesNothing() {
    List<DemandMet> met = DemandMet.of(nursery(OptionalDouble.empty()).project());

    assertThat(met).hasSize(1);
    assertThat(met.get(0).sold()).isCloseTo(100, within(1e-9));
    assertThat(met.get(0).missed()).isZero();
  }

  @Test
  void demand_nothingWanted_givesNoLine() {
    assertThat(DemandMet.of(nursery(OptionalDouble.of(0)).project())).isEmpty();
  }
}
