package growingon.review;

import static growingon.nursery.record.DaybookLine.What.ARRIVED;
import static growingon.nursery.record.DaybookLine.What.SOLD;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import growingon.load.LoadOptions;
import growingon.load.Loader;
import growingon.nursery.Inputs;
import growingon.nursery.Scenario;
import growingon.project.Lots;
import growingon.project.Nurseries;
import growingon.review.bought.BoughtReview;
import growingon.review.kept.Range;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What the result of a bought lot may become from now on. */
class AheadTest {
  private static final YearMonth TODAY = YearMonth.of(2027, 6);
  private static final double CENT = 0.01;

  private static List<BoughtReview> demonstration(int threads) {
    LocalDate day = LocalDate.of(2024, 10, 31);
    Inputs inputs =
        Loader.load(Path.of("plans", "two-seasons-on.json"), new LoadOptions(day))
            .value()
            .orElseThrow();
    return Review.of(inputs, YearMonth.from(day), Optional.empty(), threads).bought();
  }

  @Test
  void nothingLeftToLuck_allDrawsEndAsExpected() {
    Scenario sure =
        Nurseries.bare()
            .sure(1)
            .sellsAll("one", "any", 20)
            .lot(Lots.lot("maples").quantity(60).arrived(2026, 12).bought(3, 30).build())
            .scenario();
    Scenario scenario = sure.withPlan(sure.plan().withDraws(100));
    Inputs inputs =
        new Diary()
            .on("2026-12-08", "maples", ARRIVED, 60)
            .on("2027-06-02", "maples", SOLD, 10)
            .amount(230)
            .of(scenario);

    BoughtReview maples = Review.of(inputs, TODAY, Optional.empty()).bought().get(0);

    Range likely = maples.likely().orElseThrow();
    assertThat(maples.resultToCome()).isPositive();
    assertThat(likely.p10()).isCloseTo(maples.expected(), within(CENT));
    assertThat(likely.p90()).isCloseTo(maples.expected(), within(CENT));
  }

  @Test
  void draws_spreadWhatIsToCome_andTheNumberOfThreadsChangesNothing() {
    List<BoughtReview> bought = demonstration(1);

    for (BoughtReview each : bought) {
      Range likely = each.likely().orElseThrow();
      assertThat(likely.p10()).as(each.lot().name()).isLessThan(likely.p50());
      assertThat(likely.p50()).isLessThan(likely.p90());
    }
    assertThat(demonstration(3)).isEqualTo(bought);
  }
}
