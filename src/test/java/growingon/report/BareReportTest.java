package growingon.report;

import static org.assertj.core.api.Assertions.assertThat;

import growingon.nursery.Scenario;
import growingon.nursery.place.PlaceKind;
import growingon.problem.Problem;
import growingon.project.Lots;
import growingon.project.Nurseries;
import growingon.project.Steps;
import growingon.report.figures.Context;
import growingon.report.model.Chart;
import growingon.report.model.Report;
import growingon.report.model.Sheet;
import growingon.report.model.Table;
import growingon.report.plan.PlanReport;
import java.time.Month;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Where there is little or nothing to report, a sheet is left out or says so; nothing fails. */
class BareReportTest {
  private static Report report(Nurseries nursery) {
    return MapleNursery.report(nursery.scenario());
  }

  private static List<String> sheets(Report report) {
    return report.sheets().stream().filter(sheet -> !sheet.isEmpty()).map(Sheet::name).toList();
  }

  private static List<String> charts(Report report) {
    return report.charts().stream().map(Chart::name).toList();
  }

  @Test
  void report_noLots_hasSummaryAndCashOnly() {
    Report report = report(Nurseries.bare());
    assertThat(sheets(report)).contains("Summary", "Cash");
    assertThat(sheets(report)).doesNotContain("Bench space", "Lots", "Hours", "Sales", "Jobs");
    assertThat(charts(report)).containsExactly("cash");
    assertThat(report.headlines())
        .containsExactly(
            "Test nursery, test plan: Nov 2026 to Oct 2029, 0 lots, 0 plants.",
            "Saleable in 2026/27: nothing.",
            "Expected sales: 2026/27 GBP 0, 2027/28 GBP 0 and 2028/29 GBP 0.",
            "Space: not known, the nursery has no places table.",
            "Hours: none needed.",
            "Order: nothing.",
            "Cash: lowest GBP 0 at the end of Nov 2026; GBP 0 at the end of the plan.");
  }

  @Test
  void report_aLotButNoPlacesDemandHoursOrRoutes_hasNoSuchSheets() {
    Report report = report(Nurseries.bare().lot(Lots.lot("a").build()));
    assertThat(sheets(report)).contains("Summary", "Cash", "Lots");
    assertThat(sheets(report)).doesNotContain("Bench space", "Hours", "Sales");
    assertThat(charts(report)).containsExactly("cash", "stock-by-grade");
  }

  @Test
  void report_everythingFits_hasNoOverflowRow() {
    Nurseries nursery =
        Nurseries.bare()
            .place(Nurseries.place("bench", PlaceKind.BENCH, 50))
            .lot(Lots.lot("a").plantsPerM2(8).place("bench").build());
    Report report = report(nursery);
    Table overflow =
        report.sheets().stream()
            .flatMap(sheet -> sheet.tables().stream())
            .filter(table -> table.name().equals("space-overflow"))
            .findFirst()
            .orElseThrow();
    assertThat(overflow.rows()).isEmpty();
    assertThat(report.headlines()).contains("Space: everything fits.");
  }

  @Test
  void report_noHoursStated_asksForThem() {
    Nurseries nursery =
        Nurseries.bare()
            .route("busy", Steps.in("wire", Month.MARCH, 0).minutes(60).build())
            .lot(Lots.lot("a").route("busy").build());
    Report report = report(nursery);
    assertThat(report.headlines())
        .contains(
            "Hours: 100 needed in the busiest month, Mar 2027; the nursery does not say how many it"
                + " has.");
    Sheet hours =
        report.sheets().stream().filter(each -> each.name().equals("Hours")).findFirst().get();
    assertThat(hours.tables().stream().map(Table::name))
        .containsExactly("hours", "hours-by-season");
  }

  @Test
  void report_anEmptyLotAndALotThatArrivesLate_areReported() {
    Nurseries nursery =
        Nurseries.bare()
            .seasons(1)
            .lot(Lots.lot("none left").quantity(0).build())
            .lot(Lots.lot("late").arrived(2027, 10).bought(3, 20).build())
            .sellsAll("one", "any", 5);
    Report report = report(nursery);
    assertThat(sheets(report)).contains("Lots");
    assertThat(report.headlines())
        .contains("Late pays: GBP 180 gained; you can pay GBP 5.00 a plant landed.");
  }

  @Test
  void report_oneMonth_isMade() {
    Nurseries nursery =
        Nurseries.bare()
            .firstMonth(2026, 11)
            .seasonStart(Month.DECEMBER)
            .seasons(1)
            .lot(Lots.lot("a").build())
            .sellsAll("one", "any", 5);
    assertThat(report(nursery).headlines()).contains("Sold of them: 100 plants, for GBP 500.");
  }

  @Test
  void problems_areThoseReadAndThoseRemarked_eachOnce() {
    Scenario late =
        Nurseries.bare()
            .route("potted", Steps.in("wire", Month.MARCH, 0).build())
            .lot(Lots.lot("new").arrived(2027, 2).apart(3).route("potted").build())
            .place(Nurseries.place("bench", PlaceKind.BENCH, 50))
            .scenario();
    Context context = MapleNursery.context(late);
    List<Problem> remarks = context.accounts().projection().remarks();
    assertThat(remarks).isNotEmpty();
    Report report = PlanReport.of(context.plan(), remarks);
    assertThat(report.problems()).containsExactlyElementsOf(remarks);
  }
}
