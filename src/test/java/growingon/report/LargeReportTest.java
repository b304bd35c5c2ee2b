package growingon.report;

import static org.assertj.core.api.Assertions.assertThat;

import growingon.nursery.Scenario;
import growingon.nursery.lot.Lot;
import growingon.report.figures.Context;
import growingon.report.model.Report;
import growingon.report.plan.PlanReport;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A nursery of 1,000 lots over ten seasons is reported whole. */
class LargeReportTest {
  @Test
  void report_thousandLotsTenSeasons_hasALineForEveryLotAndMonth() {
    List<Lot> lots = new ArrayList<>();
    List<Lot> stock = MapleNursery.stock();
    for (int i = 0; i < 1000; i++) {
      Lot lot = stock.get(i % stock.size());
      lots.add(lot.withQuantity(lot.name() + " no " + i, lot.quantity(), lot.kept()));
    }
    Scenario large = MapleNursery.nursery().seasons(10).lots(lots).scenario();
    Context context = MapleNursery.context(large);
    Report report = PlanReport.of(context.plan(), List.of());
    assertThat(report.extra().get(0).rows()).hasSize(1000 * large.horizon().months());
  }
}
