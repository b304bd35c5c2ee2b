package growingon.report.plan.supply;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import growingon.money.CashFlow;
import growingon.money.CashItem;
import growingon.nursery.number.Writing;
import growingon.project.history.Use;
import growingon.report.Cells;
import growingon.report.SmallNursery;
import growingon.report.figures.Context;
import growingon.report.model.Column;
import growingon.report.model.Report;
import growingon.report.model.Sheet;
import growingon.report.text.Phrases;
import java.time.YearMonth;
import java.util.List;
import org.junit.jupiter.api.Test;

class OrderSheetTest {
  private final Context context = SmallNursery.context();
  private final CashFlow cash = context.accounts().cash();
  private final Sheet sheet = OrderSheet.of(context);
  private final Cells orders = Cells.of(sheet, "orders");
  private final Sheet enquiries = SupplierOrders.sheet(context);
  private final Cells plants = Cells.of(sheet, "orders-plants");

  @Test
  void orders_allTogether_costWhatCashPays() {
    double paid =
        -cash.total(CashItem.POTS)
            - cash.total(CashItem.SUBSTRATE)
            - cash.total(CashItem.MATERIALS);

    assertThat(paid).isGreaterThan(0);
    assertThat(orders.sum("cost")).isCloseTo(paid, within(1e-9));
    assertThat(plants.sum("in all"))
        .isCloseTo(-cash.total(CashItem.PLANTS) - cash.total(CashItem.CARRIAGE), within(1e-9));
    assertThat(Cells.of(sheet, "orders-by-season").sum("in all"))
        .isCloseTo(orders.sum("cost") + plants.sum("in all"), within(1e-9));
  }

  @Test
  void orders_twoMonthsLead_areDueTwoMonthsBeforeTheNeed() {
    List<Object> pumice = orders.row("item", "pumice");

    assertThat(orders.get(pumice, "needed in")).isEqualTo(YearMonth.of(2027, 3));
    assertThat(orders.get(pumice, "order in")).isEqualTo(YearMonth.of(2027, 1));
    assertThat(orders.get(pumice, "note")).isNull();
  }

  @Test
  void orders_netOfStockOnHand_areInWholeBags() {
    // 304 l of bark needed, 200 l there, 60 l a bag (worked by hand from the fixture's steps)
    double used = context.accounts().supplies().item(Use.Kind.COMPONENT, "bark").used()[4];
    long bags = (long) Math.ceil((used - 200) / 60);

    assertThat(orders.get(orders.row("item", "bark"), "packs")).isEqualTo(bags);
    assertThat(bags).isBetween(2L, 5L);
  }

  @Test
  void plants_arrivingSoonerThanTheLead_areLate() {
    List<Object> larch = plants.row("offer", "far larch");

    assertThat(plants.get(larch, "order in")).isEqualTo(SmallNursery.FIRST);
    assertThat(plants.get(larch, "arrives in")).isEqualTo(YearMonth.of(2026, 12));
    assertThat(plants.get(larch, "note")).isEqualTo("order now: late; EUR 3.00 each");
  }

  @Test
  void plants_pricedInAnotherCurrency_areShownInThePlansWithTheRateSaid() {
    List<Object> larch = plants.row("offer", "far larch");

    assertThat(sheet.sentences()).contains("1 EUR = 0.86 GBP.");
    assertThat((Double) plants.get(larch, "price each")).isCloseTo(3 * 0.86, within(1e-9));
    assertThat((Double) plants.get(larch, "carriage")).isCloseTo(45 * 0.86, within(1e-9));
    assertThat((Double) plants.get(larch, "in all"))
        .isCloseTo((40 * 3 + 45 + 12) * 0.86, within(1e-9));
  }

  @Test
  void orders_areInOrderOfTheMonthToOrderIn() {
    List<Object> months = orders.all("order in");
    assertThat(months).isSortedAccordingTo((a, b) -> ((YearMonth) a).compareTo((YearMonth) b));
  }

  @Test
  void supplierNamed_hasABlockOfItsOwn_orderedByItsOwnLeadMonths() {
    Cells block =
        enquiries.tables().stream()
            .filter(table -> table.title().startsWith("To Fen Supplies"))
            .map(table -> Cells.of(enquiries, table.name()))
            .findFirst()
            .orElseThrow();
    List<Object> ordered = orders.row("item", "bark");

    assertThat(block.table().title()).isEqualTo("To Fen Supplies, by the end of Dec 2026");
    assertThat(block.rows()).hasSize(1);
    List<Object> line = block.rows().get(0);
    assertThat(block.get(line, "what")).isEqualTo("bark");
    assertThat(block.get(line, "of")).isEqualTo("packs of 60 litres");
    assertThat(block.get(line, "order in")).isEqualTo(YearMonth.of(2026, 12));
    assertThat(block.get(line, "needed in")).isEqualTo(YearMonth.of(2027, 3));
    // from bags to money by hand: so many bags at 8.40
    assertThat((Long) block.get(line, "number") * (Double) block.get(line, "each"))
        .isCloseTo((Double) orders.get(ordered, "cost"), within(1e-9));
    assertThat(block.get(line, "each")).isEqualTo(8.4);
  }

  @Test
  void enquiries_withoutPrices_lackThatColumnAlone() {
    Report report =
        Report.of("p", "n", new Phrases("EUR", Writing.USUAL), "2026-11")
            .sheets(List.of(enquiries, sheet))
            .build();
    Sheet shown = SupplierOrders.withoutPrices(report).sheets().get(0);

    assertThat(Cells.of(shown, "enquiry-1").table().columns())
        .extracting(Column::heading)
        .containsExactly("order in", "what", "number", "of", "needed in");
  }
}
