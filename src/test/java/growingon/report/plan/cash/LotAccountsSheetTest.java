package growingon.report.plan.cash;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import growingon.money.CashItem;
import growingon.report.Cells;
import growingon.report.SmallNursery;
import growingon.report.figures.Context;
import growingon.report.model.Sheet;
import growingon.report.text.Plants;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

class LotAccountsSheetTest {
  private final Context context = SmallNursery.context();
  private final Sheet sheet = LotAccountsSheet.of(context);
  private final Cells results = Cells.of(sheet, "lot-accounts");
  private final Cells costs = Cells.of(sheet, "lot-costs");

  @Test
  void reconciliation_allLines_comeToTheChangeOfCash() {
    Cells lines = Cells.of(sheet, "reconciliation");
    double change = Arrays.stream(context.accounts().cash().flows()).sum();

    assertThat(lines.all("line"))
        .containsExactly(
            "results of all lots",
            "space not used",
            "packs and stock on hand",
            "hours not paid",
            "other cash");
    assertThat(lines.sum("amount")).isCloseTo(change, within(0.005));
    assertThat((Double) lines.get(lines.rows().get(0), "amount"))
        .isCloseTo(results.sum("result"), within(0.005));
  }

  @Test
  void accounts_allLots_comeToTheNurserysCash() {
    assertThat(results.sum("sales"))
        .isCloseTo(context.accounts().cash().total(CashItem.SALES), within(0.005));
    assertThat(costs.sum("plants bought"))
        .isCloseTo(-context.accounts().cash().total(CashItem.PLANTS), within(0.005));
    assertThat(costs.sum("costs")).isCloseTo(results.sum("costs"), within(1e-9));
  }

  @Test
  void plants_ofEveryLot_addUpToThoseStarted() {
    for (List<Object> row : results.rows()) {
      long sum = 0;
      for (String what : List.of("lost", "sold", "standing")) {
        sum += ((Plants) results.get(row, what)).whole();
      }
      assertThat(sum).isEqualTo(((Integer) results.get(row, "started")).longValue());
    }
    assertThat(results.wholeSum("sold")).isEqualTo(Math.round(results.sum("sold")));
  }

  @Test
  void costs_ofEveryKind_addUpToTheLotsCosts() {
    for (List<Object> row : costs.rows()) {
      double sum = 0;
      for (String kind :
          List.of(
              "plants bought",
              "carriage, charges",
              "pots",
              "substrate",
              "materials",
              "labour",
              "care",
              "place")) {
        sum += (Double) costs.get(row, kind);
      }
      assertThat((Double) costs.get(row, "costs")).isCloseTo(sum, within(1e-9));
    }
  }

  @Test
  void result_ofAStandingLot_isShownWithAndWithoutItsCostToDate() {
    List<Object> older = results.row("lot", "hb-older");

    assertThat(results.get(older, "cost to date")).isEqualTo(61 * 6.0);
    assertThat((Double) results.get(older, "result with cost to date"))
        .isCloseTo((Double) results.get(older, "result") - 366, within(1e-9));
  }
}
