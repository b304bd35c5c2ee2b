package growingon.demo;

import static org.assertj.core.api.Assertions.assertThat;

import growingon.load.LoadOptions;
import growingon.load.Loader;
import growingon.nursery.Inputs;
import growingon.project.Projection;
import growingon.project.Projector;
import growingon.project.lot.LotHistory;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** Steps that the demonstration's stock list dates by what it states. */
class DemoWorkTest {
  private static Projection projection;

  @BeforeAll
  static void plan() {
    Inputs inputs =
        Loader.load(Path.of("plans/as-it-stands.json"), new LoadOptions(LocalDate.of(2026, 11, 1)))
            .value()
            .orElseThrow();
    projection = Projector.project(inputs.scenario());
  }

  private static YearMonth first(String lot, String job) {
    return projection.lot(lot).happenings().stream()
        .filter(each -> each.job().equals(job))
        .map(each -> projection.horizon().month(each.month()))
        .findFirst()
        .orElseThrow();
  }

  /** Potted in March 2024, so 32 months after that. */
  @Test
  void hornbeam2018_getsItsSecondWiringInNovember2026() {
    assertThat(first("Hornbeam 2018", "second wiring")).isEqualTo(YearMonth.of(2026, 11));
  }

  @Test
  void lotsInTraining_getTheirPruningAndTrimmingIn2027() {
    List<String> lots =
        List.of(
            "Field maple 2019",
            "Hornbeam 2018",
            "Hawthorn 2018",
            "Larch 2019",
            "Trident field 2019",
            "Scots pine 2017",
            "Zelkova field 2019");
    for (String lot : lots) {
      assertThat(first(lot, "winter pruning")).as(lot).isEqualTo(YearMonth.of(2027, 2));
      assertThat(first(lot, "summer trim")).as(lot).isEqualTo(YearMonth.of(2027, 7));
    }
  }

  @Test
  void noLot_doesAStepTwiceInAMonth() {
    for (LotHistory lot : projection.lots()) {
      assertThat(lot.happenings().stream().map(each -> each.month() + each.job()))
          .as(lot.lot().name())
          .doesNotHaveDuplicates();
    }
    assertThat(projection.lots()).flatExtracting(LotHistory::happenings).hasSizeGreaterThan(100);
  }
}
