package growingon.report.model;

import static org.assertj.core.api.Assertions.assertThat;

import growingon.project.LotHistory;
import growingon.project.Lots;
import growingon.project.Nurseries;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Rows made as they are asked for, against the loop that would make them all. */
class LazyRowsTest {
  private static List<LotHistory> lots() {
    return Nurseries.working()
        .lot(Lots.pottedElms("unsold at first").notBefore(2040, 1).build())
        .lot(Lots.pottedElms("sold").build())
        .lot(Lots.pottedElms("unsold").notBefore(2040, 1).build())
        .lot(Lots.pottedElms("unsold too").notBefore(2040, 1).build())
        .lot(Lots.boughtMaples("sold as well").build())
        .lot(Lots.pottedElms("unsold at last").notBefore(2040, 1).build())
        .project()
        .lots();
  }

  private static FixedRow row(LotHistory lot, int sale) {
    return new FixedRow(lot.lot().name(), lot.sales().get(sale).month());
  }

  @Test
  void rowsOfLots_someOfThemWithoutAny_areThoseOfTheLoop() {
    List<LotHistory> lots = lots();
    List<List<Object>> all = new ArrayList<>();
    for (LotHistory lot : lots) {
      for (int sale = 0; sale < lot.sales().size(); sale++) {
        all.add(row(lot, sale));
      }
    }
    assertThat(all).hasSizeGreaterThan(10);
    assertThat(lots).anyMatch(lot -> lot.sales().isEmpty());
    assertThat(LazyRows.byLot(lots, lot -> lot.sales().size(), LazyRowsTest::row)).isEqualTo(all);
  }

  @Test
  void noLots_haveNoRows() {
    assertThat(LazyRows.byLot(List.of(), lot -> 1, LazyRowsTest::row)).isEmpty();
  }
}
