package growingon.report.review;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import growingon.report.Cells;
import growingon.report.SampleReview;
import growingon.report.model.Chart;
import growingon.report.model.Chart.ChartKind;
import growingon.report.model.Column;
import growingon.report.model.Report;
import growingon.report.model.Sheet;
import growingon.report.text.Plants;
import growingon.report.text.Sentences;
import growingon.review.Review;
import growingon.review.bought.BoughtReview;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** The report of a review: what stands where, and every word of its sentences. */
class ReviewReportTest {
  private final Report report =
      ReviewReport.of(SampleReview.inputs(), List.of(), SampleReview.review());

  private static Report of(Review review) {
    return ReviewReport.of(SampleReview.inputs(), List.of(), review);
  }

  private Sheet sheet(String name) {
    return report.sheets().stream()
        .filter(each -> each.name().equals(name))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void sheets_standInTheirOrder_andThoseWithNothingAreEmpty() {
    assertThat(report.sheets())
        .extracting(Sheet::name)
        .containsExactly(
            "Summary",
            "Lots against plan",
            "Did it pay",
            "Causes",
            "Gambles so far",
            "Sold or lost",
            "Losses",
            "Trace",
            "Faults");
    assertThat(sheet("Faults").isEmpty()).isTrue();
  }

  @Test
  void suspicion_thatMayHaveToBeNotified_standsOnTop() {
    Report suspected =
        of(SampleReview.review(List.of(SampleReview.suspicion()), Optional.empty(), List.of()));
    String sentence =
        "Ask the plant health service before moving plants: the daybook notes a suspicion that may"
            + " have to be notified, of far larch (passport XX-1, now in Ground).";

    assertThat(suspected.sheets().get(0).sentences().get(0)).isEqualTo(sentence);
    assertThat(suspected.headlines().subList(0, 2))
        .containsExactly(
            "Ask the plant health service before moving plants: the daybook notes a suspicion that"
                + " may have to be notified,",
            "  of far larch (passport XX-1, now in Ground).");
    assertThat(suspected.answers().get(0).sentences()).containsExactly(sentence);
  }

  @Test
  void keptPlan_orNone_isSaidPlainly() {
    assertThat(sheet("Summary").sentences().subList(0, 2))
        .containsExactly(
            "Compared with the plan kept as kept by hand.",
            "The daybook has 212 lines, 14 counts among them; figures are those of the end of Oct"
                + " 2027.");
    assertThat(
            of(SampleReview.review(List.of(), Optional.empty(), List.of()))
                .sheets()
                .get(0)
                .sentences()
                .get(0))
        .isEqualTo(
            "There is no kept plan: planned is what the files give now. Keep the next one with plan"
                + " --keep, before anything happens.");
  }

  @Test
  void verdicts_tellWhyAndWhatMakesEven() {
    String less =
        "Result so far GBP -200; over the whole plan GBP 51 expected, GBP 353 less than planned,"
            + " mostly by losses (-310) and quality (-52).";
    String open = less.replace("expected,", "expected (P10 -310, P50 40, P90 270),");

    assertThat(sheet("Did it pay").sentences())
        .containsExactly(
            "Of 6 bought lots, 2 paid: one and two; 2 did not pay: three and four; 2 undecided:"
                + " five and six.",
            "One paid: nothing is left to sell, and GBP 412 remain. "
                + less
                + " Its money was back in Apr 2028 (planned: Jan 2028).",
            "Two paid: its money is back and GBP 88 more, whatever becomes of the 5 plants that"
                + " stand. "
                + open
                + " Its money was back in Apr 2028 (planned: Jan 2028).",
            "Three did not pay: nothing is left to sell, and GBP 390 are missing. "
                + less
                + " Its money does not come back within the plan (planned: Jan 2028).",
            "Four did not pay: even if the 7 plants that stand sell, GBP 120 will be missing"
                + " with what they still cost. "
                + open
                + " Its money does not come back within the plan (planned: Jan 2028). To be even,"
                + " 9 more would have to sell at GBP 28.50, and only 7 stand.",
            "Five is undecided: GBP 260 must still be earned, by plants expected to sell until May 2028. "
                + open
                + " Its money is expected back in Apr 2028 (planned: Jan 2028). Sell 9 more at GBP"
                + " 28.50 to be even.",
            "Six is undecided: if it goes on as expected, GBP 75 will be missing at the end of the"
                + " plan. "
                + open
                + " Its money is expected back in Apr 2028 (planned: Jan 2028). Sell 9 more at GBP"
                + " 28.50 to be even.",
            Sentences.AS_BOOKED);
  }

  @Test
  void verdict_onALotThatTheDaybookDoesNotMention_saysSo() {
    Review silent =
        SampleReview.ofBought(
            new BoughtReview.Verdict(
                BoughtReview.Verdict.Kind.PAID,
                BoughtReview.Verdict.Why.ALL_SOLD_AHEAD,
                412,
                Optional.empty()));

    assertThat(of(silent).headlines())
        .contains(
            "One paid: nothing is left to sell, and GBP 412 remain. Nothing is written down of it:"
                + " this is the plan's",
            "  figure.");
  }

  @Test
  void causes_sumToTheResultExpectedNow() {
    BoughtReview first = SampleReview.review().bought().get(0);

    assertThat(Cells.of(sheet("Causes"), "causes-of-lot").sum("amount"))
        .isCloseTo(first.expected(), within(0.005));
    Cells all = Cells.of(sheet("Causes"), "causes");
    List<Object> row = all.row("lot", "one");
    double parts = 0;
    for (int cause = 1; cause <= 8; cause++) {
      parts += (Double) row.get(cause);
    }
    assertThat(parts).isCloseTo((Double) all.get(row, "difference"), within(1e-9));
  }

  @Test
  void bridge_leadsFromPlannedToExpected() {
    Chart bridge =
        report.charts().stream()
            .filter(each -> each.name().equals("lot-causes"))
            .findFirst()
            .orElseThrow();

    assertThat(bridge.kind()).isEqualTo(ChartKind.BRIDGE);
    double parts =
        bridge.series().stream()
            .skip(1)
            .flatMap(each -> each.values().stream())
            .filter(Double::isFinite)
            .mapToDouble(Double::doubleValue)
            .sum();
    List<Double> ends = bridge.series().get(0).values();
    assertThat(ends.get(0) + parts).isCloseTo(ends.get(10), within(0.005));
    assertThat(bridge.categories())
        .startsWith("planned", "cost", "hours")
        .endsWith("share that finds a buyer", "expected");
  }

  @Test
  void money_isRealUpToTheDaybooksLastMonthAndExpectedFromThere() {
    Chart money =
        report.charts().stream()
            .filter(each -> each.name().equals("lot-money"))
            .findFirst()
            .orElseThrow();
    int last = 11;

    assertThat(money.series())
        .extracting(Chart.Series::name)
        .containsExactly("plan's P10", "plan's P90", "real", "expected", "planned");
    assertThat(money.series().get(2).values().get(last)).isEqualTo(-120);
    assertThat(money.series().get(2).values().get(last + 1)).isNaN();
    assertThat(money.series().get(3).values().get(last - 1)).isNaN();
    assertThat(money.series().get(3).values().get(last)).isEqualTo(-120);
  }

  @Test
  void money_ofALot_hasThePlansBandAndToday() {
    Chart money =
        report.charts().stream()
            .filter(each -> each.name().equals("lot-money"))
            .findFirst()
            .orElseThrow();

    assertThat(money.series().get(0).values().get(11)).isEqualTo(-180.0 + 11);
    assertThat(money.series().get(1).values().get(11)).isEqualTo(-170.0 + 220);
    assertThat(money.marks()).containsExactly(Chart.Mark.upright("today: records to Oct 2027", 12));
    assertThat(money.subtitle())
        .isEqualTo(
            "Sales less all costs up to the end of each month; without VAT. In eight of ten of the"
                + " plan's draws it lay within the band.");
  }

  @Test
  void figures_areByTheDaybookOrAssumed_andLuckIsToldByDeathsGrowthAndPrice() {
    Cells alive = Cells.of(sheet("Lots against plan"), "lots-alive");
    List<Object> far = alive.row("lot", "far larch");
    List<Object> tall = alive.row("lot", "tall larch");

    assertThat(alive.get(far, "by the daybook")).isEqualTo(Plants.of(24, 24));
    assertThat(alive.get(far, "assumed")).isEqualTo(Plants.of(0, 0));
    assertThat(alive.get(tall, "by the daybook")).isEqualTo(Plants.of(0, 0));
    assertThat(alive.get(tall, "assumed")).isEqualTo(Plants.of(2, 2));
    assertThat(alive.get(tall, "difference")).isEqualTo(Plants.of(0, 0));
    Cells luck = Cells.of(sheet("Lots against plan"), "more-than-luck");
    assertThat(luck.all("how to take it"))
        .containsExactly("more than foreseen", "more than luck", "luck");
    assertThat(luck.get(luck.row("figure", "price"), "real")).isEqualTo(102.0);
    assertThat(sheet("Summary").sentences())
        .contains(
            "More than luck: 2 of 3 figures judged (deaths, growth, price); by luck alone about 0.5"
                + " would be: deaths of far larch (more than foreseen) and growth of far larch.");
  }

  @Test
  void rangesOfTheKeptPlan_ofFiguresThatHaveNone_haveNoColumn() {
    Sheet without = sheet("Lots against plan");

    assertThat(headings(without, "lots-alive")).contains("P10", "P90");
    assertThat(headings(without, "lots-costs")).doesNotContain("P10", "P90").contains("assumed");
    assertThat(Cells.of(without, "lots-costs").all("lot")).contains("far larch");
  }

  private static List<String> headings(Sheet sheet, String table) {
    return sheet.tables().stream()
        .filter(each -> each.name().equals(table))
        .flatMap(each -> each.columns().stream())
        .map(Column::heading)
        .toList();
  }

  @Test
  void note_tellsOfRangesOnlyWhereAPlanWasKept() {
    Report without = of(SampleReview.ofLots(0));

    assertThat(sheet("Lots against plan").sentences())
        .anyMatch(each -> each.contains("P10 to P90: what the kept plan itself had for likely."));
    assertThat(without.sheets().get(1).sentences())
        .contains(
            "Assumed: what the daybook does not say, by the plan for the plants that are there.")
        .noneMatch(each -> each.contains("P10"));
  }

  @Test
  void manyLots_thoseThatDifferMostAreShown_andAllStandInTheTables() {
    Report large = of(SampleReview.ofLots(302));
    Cells shown = Cells.of(large.sheets().get(1), "lots-result");

    assertThat(shown.rows()).hasSize(300);
    assertThat(shown.all("lot")).startsWith("lot 2", "lot 3").endsWith("lot 301");
    assertThat(large.sheets().get(1).sentences())
        .contains(
            "Shown are the 300 lots of 302 whose result differs most; all of them stand in"
                + " tables/.");
    assertThat(large.extra())
        .filteredOn(each -> each.name().equals("all-lots-result"))
        .singleElement()
        .satisfies(each -> assertThat(each.rows()).hasSize(302));
    assertThat(report.extra()).isEmpty();
  }

  @Test
  void losses_areAddedUpByReason() {
    Cells reasons = Cells.of(sheet("Losses"), "losses-by-reason");

    assertThat(reasons.all("reason")).containsExactly("frost", "no reason given");
    assertThat(reasons.wholeSum("plants")).isEqualTo(14);
    assertThat(sheet("Summary").sentences())
        .contains("Died, culled or lost: 14 plants (frost 12 and no reason given 2).");
  }

  @Test
  void moveBetweenTwoTracedLots_isToldOnce() {
    assertThat(Cells.of(sheet("Trace"), "trace-moves").rows()).hasSize(1);
    assertThat(Cells.of(sheet("Trace"), "trace-sales").all("customer code")).containsExactly("K7");
  }

  @Test
  void fault_standsOnItsSheetAndAmongTheProblems() {
    Report faulty =
        of(SampleReview.review(List.of(), Optional.empty(), List.of(SampleReview.fault())));

    assertThat(faulty.sheets().get(8).tables().get(0).rows())
        .extracting(row -> row.stream().map(Object::toString).toList())
        .containsExactly(
            List.of(
                "daybook.csv, row 9, column date",
                "the lot far larch is not there before 2026-12 (2026-01-03)",
                "correct the date, or the arrival of the lot"));
    assertThat(faulty.problems()).containsExactly(SampleReview.fault());
    assertThat(faulty.headlines()).contains("1 fault in the records: see the sheet Faults.");
  }
}
