package growingon.report.plan.stock;

import static org.assertj.core.api.Assertions.assertThat;

import growingon.nursery.lot.Lot;
import growingon.report.Cells;
import growingon.report.SmallNursery;
import growingon.report.figures.Context;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A label says what stands there: which lot, in which pot, how many. */
class LabelsSheetTest {
  private final Context context = SmallNursery.context();
  private final Cells labels = Cells.of(LabelsSheet.of(context), "bench-labels");

  @Test
  void labels_sayPotAndNumberOfEachLotOfTheStock() {
    List<Lot> stock =
        context.accounts().projection().scenario().lots().stream()
            .filter(lot -> lot.purchase().isEmpty() && lot.quantity() > 0)
            .toList();
    List<List<Object>> rows = labels.rows(row -> true);
    assertThat(rows).hasSameSizeAs(stock);
    for (int i = 0; i < stock.size(); i++) {
      Lot lot = stock.get(i);
      assertThat(labels.get(rows.get(i), "lot")).isEqualTo(lot.name());
      assertThat(labels.get(rows.get(i), "pot")).isEqualTo(lot.potting().pot().orElse(null));
      assertThat(((Number) labels.get(rows.get(i), "plants")).intValue()).isEqualTo(lot.quantity());
    }
  }
}
