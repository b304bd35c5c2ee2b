package growingon.report.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import growingon.money.CashItem;
import growingon.nursery.market.Quality;
import growingon.project.Projection;
import growingon.project.history.SeasonStock;
import growingon.project.lot.LotHistory;
import growingon.report.Cells;
import growingon.report.SmallNursery;
import growingon.report.figures.Context;
import growingon.report.model.Sheet;
import growingon.report.plan.sale.SaleableSheet;
import growingon.report.plan.sale.SalesSheet;
import growingon.report.text.Plants;
import java.time.YearMonth;
import java.util.List;
import org.junit.jupiter.api.Test;

class SalesSheetsTest {
  private final Context context = SmallNursery.context();
  private final Projection projection = context.accounts().projection();
  private final Sheet sales = SalesSheet.of(context);
  private final Sheet saleable = SaleableSheet.of(context);

  private static double sold(LotHistory lot) {
    return lot.sales().stream().mapToDouble(sale -> sale.units()).sum();
  }

  @Test
  void receipts_inEveryTable_areTheCashOfSalesToTheCent() {
    double cash = context.accounts().cash().total(CashItem.SALES);

    for (String table : List.of("sales-by-season", "sales", "sales-by-lot")) {
      assertThat(Cells.of(sales, table).sum("receipts")).isCloseTo(cash, within(0.005));
    }
  }

  @Test
  void plantsSold_inEveryTable_showTheSameTotals() {
    long whole = Cells.of(sales, "sales-by-season").wholeSum("plants sold");

    assertThat(Cells.of(sales, "sales").wholeSum("plants")).isEqualTo(whole);
    assertThat(Cells.of(sales, "sales-by-lot").wholeSum("plants")).isEqualTo(whole);
    assertThat(Cells.of(sales, "demand-met").wholeSum("sold")).isEqualTo(whole);
    assertThat(Cells.of(saleable, "saleable").wholeSum("sold")).isEqualTo(whole);
    assertThat(Cells.of(sales, "sales").sum("plants"))
        .isCloseTo(
            projection.lots().stream().mapToDouble(SalesSheetsTest::sold).sum(), within(1e-6));
  }

  @Test
  void saleable_ofASeason_isSoldInItAndReadyAtItsEnd() {
    Cells bySeason = Cells.of(saleable, "saleable-by-season");
    double ready = 0;
    for (LotHistory lot : projection.lots()) {
      for (SeasonStock stock : lot.seasons()) {
        ready += stock.ready().sum();
      }
    }

    assertThat(ready).isGreaterThan(1);
    assertThat(bySeason.sum("left unsold")).isCloseTo(ready, within(1e-6));
    assertThat(bySeason.sum("in all"))
        .isCloseTo(ready + Cells.of(sales, "sales").sum("plants"), within(1e-6));
  }

  @Test
  void saleable_everyRow_addsUpAcross() {
    for (String table : List.of("saleable-by-season", "saleable", "saleable-by-lot")) {
      Cells cells = Cells.of(saleable, table);
      for (List<Object> row : cells.rows()) {
        long all = whole(cells, row, "in all");
        assertThat(
                whole(cells, row, "firsts")
                    + whole(cells, row, "seconds")
                    + whole(cells, row, "thirds"))
            .isEqualTo(all);
        assertThat(whole(cells, row, "sold") + whole(cells, row, "left unsold")).isEqualTo(all);
      }
    }
  }

  private static long whole(Cells cells, List<Object> row, String heading) {
    return ((Plants) cells.get(row, heading)).whole();
  }

  @Test
  void saleable_bySpeciesAndByLot_comeToTheSeasonsNumbers() {
    Cells bySeason = Cells.of(saleable, "saleable-by-season");
    for (List<Object> season : bySeason.rows()) {
      for (String table : List.of("saleable", "saleable-by-lot")) {
        Cells cells = Cells.of(saleable, table);
        long whole =
            cells.rows(row -> row.get(0).equals(season.get(0))).stream()
                .mapToLong(row -> whole(cells, row, "in all"))
                .sum();
        assertThat(whole).isEqualTo(whole(bySeason, season, "in all"));
      }
    }
  }

  @Test
  void saleable_soldInTheSeason_namesTheFirstMonthOfASale() {
    Cells byLot = Cells.of(saleable, "saleable-by-lot");
    List<List<Object>> liners =
        byLot.rows(
            row -> byLot.get(row, "lot").equals("far larch") && row.get(0).equals("2026/27"));

    assertThat(liners).hasSize(1);
    assertThat(byLot.get(liners.get(0), "first month")).isEqualTo(YearMonth.of(2027, 9));
    assertThat(byLot.get(liners.get(0), "list price")).isEqualTo(28.0);
  }

  @Test
  void sales_seconds_fetchTheirShareOfTheListPrice() {
    Cells byQuality = Cells.of(sales, "sales");
    List<List<Object>> seconds =
        byQuality.rows(
            row ->
                byQuality.get(row, "quality").equals(Quality.SECOND.toString())
                    && byQuality.get(row, "grade").equals("shaped"));

    assertThat(seconds).isNotEmpty();
    assertThat(seconds)
        .allSatisfy(
            row ->
                assertThat((Double) byQuality.get(row, "mean price"))
                    .isCloseTo(118 * 0.6, within(1e-9)));
  }

  @Test
  void missed_everyRow_isWantedLessSold() {
    Cells demand = Cells.of(sales, "demand-met");
    List<List<Object>> limited = demand.rows(row -> demand.get(row, "wanted") != null);

    assertThat(limited).isNotEmpty();
    for (List<Object> row : limited) {
      assertThat(whole(demand, row, "sold") + whole(demand, row, "missed"))
          .isEqualTo(whole(demand, row, "wanted"));
    }
    assertThat(demand.wholeSum("missed"))
        .isEqualTo(Cells.of(sales, "sales-by-season").wholeSum("plants missed"));
    assertThat(demand.sum("missed"))
        .isCloseTo(projection.missed().stream().mapToDouble(m -> m.units()).sum(), within(1e-6));
  }

  @Test
  void missed_whereAllThatIsReadySells_isEmpty() {
    Cells demand = Cells.of(sales, "demand-met");
    List<List<Object>> all = demand.rows(row -> demand.get(row, "grade").equals("small"));

    assertThat(all).isNotEmpty();
    assertThat(all).allSatisfy(row -> assertThat(demand.get(row, "missed")).isNull());
  }
}
