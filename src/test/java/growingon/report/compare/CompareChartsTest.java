package growingon.report.compare;

import static org.assertj.core.api.Assertions.assertThat;

import growingon.nursery.market.Grade;
import growingon.nursery.place.PlaceKind;
import growingon.project.Lots;
import growingon.project.Nurseries;
import growingon.report.SmallNursery;
import growingon.report.model.Chart;
import growingon.report.model.Chart.Series;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The charts of two plans side by side. */
class CompareChartsTest {
  @Test
  void comparison_ofTwoPlans_drawsTheCashOfBothOverAllTheirMonths() {
    Nurseries nursery =
        Nurseries.bare()
            .seasons(1)
            .ladder("one", new Grade("grade 1", 1, 5, 0, 12))
            .place(Nurseries.place("bench", PlaceKind.BENCH, 10))
            .lot(Lots.lot("lot").trunks(4, 0.1).plantsPerM2(20).place("bench").build())
            .sellsAll("one", "grade 1", 10)
            .lowestCash(-200);
    CompareReport.Side first = side("one", nursery);
    CompareReport.Side second = side("two", nursery.firstMonth(2027, 5).openingCash(900));

    Chart cash = CompareCharts.of(first, second).get(0);
    assertThat(cash.categories()).startsWith("2026-11").endsWith("2027-10").hasSize(12);
    assertThat(cash.series())
        .extracting(Series::name)
        .containsExactly("one", "two", "lowest allowed");
    assertThat(cash.series().get(1).values().get(5)).isNaN();
    assertThat(cash.series().get(1).values().get(6))
        .isEqualTo(second.accounts().cash().balances()[0]);
    assertThat(cash.marks()).hasSize(2).allMatch(each -> each.label().startsWith("lowest: GBP "));
  }

  private static CompareReport.Side side(String label, Nurseries nursery) {
    return new CompareReport.Side(label, SmallNursery.context(nursery).plan(), List.of());
  }
}
