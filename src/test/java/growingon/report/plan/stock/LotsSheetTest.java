package growingon.report.plan.stock;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import growingon.nursery.lot.Form;
import growingon.nursery.lot.Papers;
import growingon.nursery.market.Grade;
import growingon.nursery.place.PlaceKind;
import growingon.project.Lots;
import growingon.project.Nurseries;
import growingon.project.Steps;
import growingon.report.Cells;
import growingon.report.SmallNursery;
import growingon.report.model.Sheet;
import growingon.report.model.Table;
import java.time.Month;
import java.time.YearMonth;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** What the Lots sheet tells of a lot; ash grows half a millimetre a month and loses nothing. */
class LotsSheetTest {
  private static Sheet sheet(Nurseries nursery) {
    return LotsSheet.of(SmallNursery.context(nursery));
  }

  private static Nurseries twoGrades() {
    return Nurseries.bare()
        .ladder("one", new Grade("thin", 1, 10, 0, 12), new Grade("thick", 2, 20, 0, 12))
        .place(Nurseries.place("bench", PlaceKind.BENCH, 50))
        .place(Nurseries.place("ground", PlaceKind.STANDING_GROUND, 50))
        .place(Nurseries.place("nook", PlaceKind.QUARANTINE, 50));
  }

  @Test
  void lineOfLife_aBoughtLot_isToldInOrderOfTime() {
    // Of 100, 5 are lost and 19 culled at potting; one thin is sold a month from August 2027 on;
    // the trunks, 12.1 mm on arrival in February 2027, pass 20 mm in the 16th month.
    Nurseries nursery =
        twoGrades()
            .pot(Nurseries.litrePot("3 litres", 3, 190))
            .route(
                "potted",
                Steps.in("pot", Month.MARCH, 0)
                    .pot("3 litres", null)
                    .minutes(6)
                    .loss(0.05)
                    .cull(0.2)
                    .place("ground")
                    .build())
            .lot(
                Lots.lot("new")
                    .form(Form.BARE_ROOT)
                    .trunks(12.1, 0)
                    .arrived(2027, 2)
                    .apart(1)
                    .notBefore(2027, 8)
                    .plantsPerM2(8)
                    .place("bench")
                    .route("potted")
                    .bought(4, 50)
                    .build())
            .demand(Nurseries.demandRow("one", "thin", OptionalDouble.of(12), 9))
            .seasons(2);

    Cells life = Cells.of(sheet(nursery), "line-of-life");

    assertThat(life.all("month"))
        .containsExactly(
            YearMonth.of(2027, 2),
            YearMonth.of(2027, 2),
            YearMonth.of(2027, 3),
            YearMonth.of(2027, 10),
            YearMonth.of(2028, 5),
            YearMonth.of(2028, 10));
    assertThat(life.all("event"))
        .containsExactly("arrives", "grade", "pot", "season end", "grade", "end of plan");
    assertThat(life.all("what happens"))
        .containsExactly(
            "bare root; trunk 12 mm on average; GBP 4.00 each, GBP 450 landed; stands apart to Feb"
                + " 2027 and not sold before Aug 2027",
            "nine tenths have reached thin",
            "into pot 3 litres; 5 plants lost by it; 19 plants culled; from bench to ground",
            "2026/27; 3 plants sold (3 thin); 5 plants died; 19 plants culled; 73 stand, mean trunk"
                + " 16.6 mm; 73 ready to sell",
            "nine tenths have reached thick",
            "2027/28; 6 plants sold (6 thin); 67 stand, mean trunk 22.6 mm; 67 ready to sell");
    assertThat(life.all("stands in"))
        .containsExactly("nook", "nook", "ground", "ground", "ground", "ground");
    assertThat(life.sum("received")).isEqualTo(9 * (3 + 6), within(1e-9));
  }

  @Test
  void lineOfLife_aMoveThatNoStepMakes_isTold() {
    Nurseries nursery =
        twoGrades()
            .lot(Lots.lot("new").arrived(2027, 2).apart(2).plantsPerM2(8).place("bench").build());
    Cells life = Cells.of(sheet(nursery), "line-of-life");
    List<Object> move = life.row("event", "moves");
    assertThat(life.get(move, "month")).isEqualTo(YearMonth.of(2027, 4));
    assertThat(life.get(move, "what happens")).isEqualTo("from nook to its own place");
    assertThat(life.get(move, "stands in")).isEqualTo("bench");
  }

  @Test
  void lots_middlePlantBelowTheDearestGrade_isWarnedOf() {
    Nurseries nursery =
        twoGrades()
            .lot(Lots.lot("thin ones").trunks(1.1, 0).build())
            .lot(Lots.lot("thick ones").trunks(18.1, 0).build())
            .sellsAll("one", "thick", 20);
    Sheet sheet = sheet(nursery);
    assertThat(sheet.sentences())
        .containsExactly(
            "In 1 lot the middle plant does not reach the dearest grade by Oct 2029, the end of the"
                + " plan: thin ones. A longer plan shows more of what such lots earn.");
    Cells grades = Cells.of(sheet, "lot-grades");
    assertThat(grades.all("grade")).containsExactly("thin", "thick", "thin", "thick");
    assertThat(grades.all("remark"))
        .containsExactly(null, "dearest; after the plan", null, "dearest");
    assertThat(grades.all("middle plant"))
        .containsExactly(
            YearMonth.of(2028, 4), null, YearMonth.of(2026, 11), YearMonth.of(2027, 2));
  }

  @Test
  void papers_areShownWhereAnyAreStated() {
    Papers papers = new Papers("Hill plants", "XX-1", "here", "mother", "checked");
    Nurseries nursery =
        twoGrades()
            .lot(Lots.lot("plain").build())
            .lot(Lots.lot("with papers").papers(papers).build());
    Cells table = Cells.of(sheet(nursery), "lot-papers");
    assertThat(table.rows()).hasSize(1);
    assertThat(table.rows().get(0))
        .containsExactly(
            "with papers",
            "ash",
            YearMonth.of(2026, 11),
            "Hill plants",
            "XX-1",
            "here",
            "mother",
            "container",
            "checked");
    assertThat(sheet(twoGrades().lot(Lots.lot("plain").build())).tables())
        .extracting(Table::name)
        .doesNotContain("lot-papers");
  }
}
