package growingon.project;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import growingon.nursery.market.Demand;
import growingon.nursery.time.MonthSpan;
import java.util.Arrays;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** Rows of demand as they are met, by hand. The plan starts in November, month 0. */
class DemandRowTest {
  private static Demand row(
      String species, String season, MonthSpan months, OptionalDouble units, double price) {
    return new Demand(
        Optional.ofNullable(species),
        "one",
        "any",
        Optional.ofNullable(season),
        months,
        units,
        price,
        0,
        0,
        0);
  }

  private static Demand priced(String species, double price) {
    return row(species, null, MonthSpan.ALL_YEAR, OptionalDouble.of(5), price);
  }

  private static DemandRow[] rows(Nurseries nursery) {
    return Programme.of(nursery.lot(Lots.lot("a").build()).scenario()).rows();
  }

  @Test
  void rows_ofASpeciesComeFirst_thenTheDearer_thenTheEarlier() {
    DemandRow[] rows =
        rows(
            Nurseries.bare()
                .demand(priced(null, 10))
                .demand(priced("ash", 5))
                .demand(priced(null, 12))
                .demand(priced("ash", 9))
                .demand(priced(null, 12)));

    assertThat(Arrays.stream(rows).map(DemandRow::index)).containsExactly(3, 1, 2, 4, 0);
  }

  /**
   * Sales of June, July and August are as 1 to 2 to 1: a row of June and July has 10 and 20 of 30.
   */
  @Test
  void units_followTheSalesPattern_withinTheMonthsAndTheSeasonOfTheRow() {
    Nurseries nursery =
        Nurseries.bare().seasons(2).salesPattern(0, 0, 0, 0, 0, 1, 2, 1, 0, 0, 0, 0);
    MonthSpan juneAndJuly = new MonthSpan(6, 7);
    DemandRow[] rows =
        rows(
            nursery
                .demand(row(null, null, juneAndJuly, OptionalDouble.of(30), 3))
                .demand(row(null, "2027/28", juneAndJuly, OptionalDouble.of(30), 2))
                .demand(row(null, null, new MonthSpan(5, 6), OptionalDouble.empty(), 1)));

    double[] each = new double[24];
    each[7] = 10;
    each[8] = 20;
    each[19] = 10;
    each[20] = 20;
    assertThat(rows[0].units()).containsExactly(each, within(1e-9));
    each[7] = 0;
    each[8] = 0;
    assertThat(rows[1].units()).containsExactly(each, within(1e-9));
    assertThat(rows[2].units()[6]).isZero();
    assertThat(rows[2].units()[7]).isInfinite();
    assertThat(rows[2].units()[8]).isZero();
  }

  /** Lots that came together are one batch, in it by name; the oldest comes first. */
  @Test
  void batches_areTheLotsOfAMonth_theOldestFirst() {
    Nurseries nursery =
        Nurseries.bare()
            .species(Nurseries.bareSpecies("rowan", "one"))
            .demand(priced(null, 2))
            .demand(priced("ash", 1))
            .lot(Lots.lot("b").arrived(2026, 3).build())
            .lot(Lots.lot("old").arrived(2025, 1).build())
            .lot(Lots.lot("aa").arrived(2026, 3).build())
            .lot(Lots.lot("r").species("rowan").arrived(2026, 3).build());
    DemandRow[] rows = Programme.of(nursery.scenario()).rows();

    assertThat(rows[0].demand().species()).contains("ash");
    assertThat(rows[0].batches()).isDeepEqualTo(new int[][] {{1}, {2, 0}});
    assertThat(rows[1].batches()).isDeepEqualTo(new int[][] {{1}, {2, 0, 3}});
  }
}
