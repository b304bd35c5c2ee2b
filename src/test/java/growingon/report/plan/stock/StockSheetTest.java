package growingon.report.plan.stock;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import growingon.project.Projection;
import growingon.project.lot.LotHistory;
import growingon.report.Cells;
import growingon.report.SmallNursery;
import growingon.report.figures.Context;
import growingon.report.model.Sheet;
import growingon.report.text.Plants;
import java.util.List;
import org.junit.jupiter.api.Test;

class StockSheetTest {
  private final Context context = SmallNursery.context();
  private final Projection projection = context.accounts().projection();
  private final Sheet sheet = StockSheet.of(context);
  private final Cells bySpecies = Cells.of(sheet, "stock-by-species");
  private final Cells byLot = Cells.of(sheet, "stock-by-lot");

  @Test
  void stock_everySeason_isWhatStandsAtItsEnd() {
    for (int season = 0; season < projection.horizon().seasons(); season++) {
      int month = projection.horizon().seasonLast(season);
      double standing =
          projection.lots().stream().mapToDouble((LotHistory lot) -> lot.standing(month)).sum();
      String label = projection.horizon().seasonLabel(season);

      assertThat(bySpecies.sum(label)).isCloseTo(standing, within(1e-6));
      assertThat(byLot.sum(label)).isCloseTo(standing, within(1e-6));
      assertThat(bySpecies.wholeSum(label)).isEqualTo(Math.round(standing));
      assertThat(byLot.wholeSum(label)).isEqualTo(bySpecies.wholeSum(label));
    }
  }

  @Test
  void stock_keptPlants_standApart() {
    List<List<Object>> kept = byLot.rows(row -> byLot.get(row, "grade").equals("kept"));

    assertThat(kept).hasSize(1);
    assertThat(byLot.get(kept.get(0), "lot")).isEqualTo("hb-older");
    assertThat(((Plants) kept.get(0).get(kept.get(0).size() - 1)).exact())
        .isCloseTo(projection.lot("hb-older").keptAtEnd(), within(1e-9));
  }

  @Test
  void stock_gradesOfASpecies_goFromNoneUpwards() {
    List<List<Object>> hornbeam =
        bySpecies.rows(row -> bySpecies.get(row, "species").equals("Hornbeam"));

    assertThat(hornbeam)
        .extracting(row -> bySpecies.get(row, "grade"))
        .containsExactly("no grade yet", "starter", "shaped", "kept");
  }
}
