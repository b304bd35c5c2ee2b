package growingon.report.plan;

import static org.assertj.core.api.Assertions.assertThat;

import growingon.nursery.market.Demand;
import growingon.nursery.time.MonthSpan;
import growingon.project.Lots;
import growingon.project.Nurseries;
import growingon.report.MapleNursery;
import growingon.report.model.Table;
import growingon.report.plan.bought.BoughtLots;
import java.time.Month;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** The notes of the table of gains by season of ending. */
class GainByEndingTest {
  private static final String ENDS =
      "What is wanted in one named season only is not wanted again after it: any species as any.";

  private static List<String> notes(Optional<String> season) {
    Nurseries nursery =
        Nurseries.bare()
            .seasonStart(Month.JANUARY)
            .firstMonth(2027, 1)
            .seasons(3)
            .lot(Lots.lot("ridge").quantity(100).arrived(2027, 1).bought(20, 0).build());
    List<String> seasons = List.of("2029", "2030", "2031", "2032");
    for (String each : season.isPresent() ? seasons : List.of("every")) {
      nursery.demand(
          new Demand(
              Optional.empty(),
              "one",
              "any",
              season.map(any -> each),
              MonthSpan.ALL_YEAR,
              OptionalDouble.of(25),
              50,
              0,
              0,
              0));
    }
    return BoughtLots.later(MapleNursery.context(nursery.scenario())).stream()
        .filter(table -> table.name().equals("gain-by-ending"))
        .map(Table::notes)
        .findFirst()
        .orElseThrow();
  }

  @Test
  void demandOfNamedSeasons_isSaidToEnd_whereALotIsJudgedLater() {
    assertThat(notes(Optional.of("each"))).contains(ENDS);
    assertThat(notes(Optional.empty())).doesNotContain(ENDS).hasSize(2);
  }
}
