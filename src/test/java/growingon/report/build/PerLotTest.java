package growingon.report.build;

import static org.assertj.core.api.Assertions.assertThat;

import growingon.project.Lots;
import growingon.project.Nurseries;
import growingon.project.lot.LotHistory;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Things of lots made as they are asked for, against the loop that would make them all. */
class PerLotTest {
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

  private static String sale(LotHistory lot, int sale) {
    return lot.lot().name() + " " + lot.sales().get(sale).month();
  }

  @Test
  void thingsOfLots_someOfThemWithoutAny_areThoseOfTheLoop() {
    List<LotHistory> lots = lots();
    List<String> all = new ArrayList<>();
    for (LotHistory lot : lots) {
      for (int sale = 0; sale < lot.sales().size(); sale++) {
        all.add(sale(lot, sale));
      }
    }
    assertThat(all).hasSizeGreaterThan(10);
    assertThat(lots).anyMatch(lot -> lot.sales().isEmpty());
    assertThat(new PerLot<>(lots, lot -> lot.sales().size(), PerLotTest::sale)).isEqualTo(all);
  }

  @Test
  void noLots_haveNone() {
    assertThat(new PerLot<>(List.of(), lot -> 1, PerLotTest::sale)).isEmpty();
  }
}
