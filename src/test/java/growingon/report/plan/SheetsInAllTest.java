package growingon.report.plan;

import static org.assertj.core.api.Assertions.assertThat;

import growingon.nursery.lot.Lot;
import growingon.project.Lots;
import growingon.project.Nurseries;
import growingon.report.Cells;
import growingon.report.SmallNursery;
import growingon.report.figures.Context;
import growingon.report.model.Column;
import growingon.report.model.Kind;
import growingon.report.model.Sheet;
import growingon.report.model.Table;
import growingon.report.plan.cash.LotAccountsSheet;
import growingon.report.plan.stock.CountSheet;
import growingon.report.plan.stock.StockSheet;
import growingon.report.plan.work.JobsSheet;
import growingon.report.text.Sentences;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** What holds for all sheets of this package made from the nursery's year. */
class SheetsInAllTest {
  private static List<Sheet> sheets(Context context) {
    return PlanReport.sheets(context);
  }

  private static List<Sheet> filled(Context context) {
    return sheets(context).stream().filter(sheet -> !sheet.isEmpty()).toList();
  }

  /** The reconciliation stands on two sheets; it is the same on both. */
  @Test
  void tables_namesAndKeys_areUnique() {
    List<Table> tables =
        sheets(SmallNursery.context()).stream()
            .flatMap(sheet -> sheet.tables().stream())
            .distinct()
            .toList();

    assertThat(tables)
        .extracting(Table::name)
        .doesNotHaveDuplicates()
        .allMatch(name -> name.matches("[a-z]+(-[a-z]+)*(-[0-9]+)?"));
    assertThat(tables)
        .allSatisfy(
            table -> assertThat(table.columns()).extracting(Column::key).doesNotHaveDuplicates());
  }

  @Test
  void moneySheets_sayThatVatIsNotIn() {
    List<Sheet> money =
        sheets(SmallNursery.context()).stream().filter(SheetsInAllTest::hasMoney).toList();

    assertThat(money).hasSizeGreaterThan(10);
    assertThat(money.stream().filter(sheet -> !saysThatVatIsNotIn(sheet)).map(Sheet::name))
        .isEmpty();
  }

  private static boolean saysThatVatIsNotIn(Sheet sheet) {
    return Stream.concat(
            sheet.sentences().stream(),
            sheet.tables().stream().flatMap(table -> table.notes().stream()))
        .anyMatch(text -> text.contains(Sentences.WITHOUT_VAT));
  }

  private static boolean hasMoney(Sheet sheet) {
    return sheet.tables().stream()
        .flatMap(table -> table.columns().stream())
        .anyMatch(c -> c.kind() == Kind.MONEY || c.kind() == Kind.MONEY_EACH);
  }

  @Test
  void sheets_ofANurseryWithoutLots_areEmptyButForCashAndNotes() {
    assertThat(filled(SmallNursery.context(Nurseries.bare())))
        .extracting(Sheet::name)
        .containsExactly("Summary", "Cash", "Notes", "Cash by month");
  }

  @Test
  void sheets_ofALotWithoutPotPlaceWorkOrDemand_showWhatThereIs() {
    Nurseries nursery = Nurseries.bare().lot(Lots.lot("heeled in").plantsPerM2(10).build());

    List<Sheet> filled = filled(SmallNursery.context(nursery));

    assertThat(filled)
        .extracting(Sheet::name)
        .containsExactly(
            "Summary",
            "Cash",
            "Notes",
            "Cash by month",
            "Lots",
            "Stock by season",
            "Saleable",
            "Lot accounts",
            "Stock value",
            "Count sheet",
            "Labels");
    assertThat(Cells.of(filled.get(9), "count-sheet").all("place")).containsExactly("no place");
  }

  @Test
  void sheets_ofALotOfNone_doNotFail() {
    Nurseries nursery = Nurseries.bare().lot(Lots.lot("gone").quantity(0).plantsPerM2(9).build());

    assertThat(filled(SmallNursery.context(nursery)))
        .extracting(Sheet::name)
        .containsExactly("Summary", "Cash", "Notes", "Cash by month", "Lots", "Lot accounts");
  }

  @Test
  void sheets_ofAPartSeason_labelItSo() {
    Nurseries nursery =
        SmallNursery.nursery().firstMonth(2027, 2).lots(withoutBought(SmallNursery.nursery()));

    Cells stock = Cells.of(StockSheet.of(SmallNursery.context(nursery)), "stock-by-species");

    assertThat(stock.table().columns())
        .extracting(Column::heading)
        .contains("2026/27 from Feb", "2027/28");
  }

  private static List<Lot> withoutBought(Nurseries nursery) {
    return nursery.scenario().lots().stream()
        .filter(lot -> lot.purchase().isEmpty())
        .collect(Collectors.toList());
  }

  @Test
  void sheets_ofAThousandLotsOverTenSeasons_haveALineForEveryLotAndJob() {
    List<Lot> few = withoutBought(SmallNursery.nursery());
    List<Lot> many = new ArrayList<>();
    for (int i = 0; i < 1000; i++) {
      Lot one = few.get(i % few.size());
      many.add(one.withQuantity(one.name() + " " + i, one.quantity() + i % 7, one.kept()));
    }
    Context context = SmallNursery.context(SmallNursery.nursery().seasons(10).lots(many));
    int jobs =
        context.accounts().projection().lots().stream().mapToInt(l -> l.happenings().size()).sum();

    Sheet list = JobsSheet.of(context);

    assertThat(list.tables().stream().mapToInt(table -> table.rows().size()).sum()).isEqualTo(jobs);
    assertThat(Cells.of(CountSheet.of(context), "count-sheet").rows()).hasSize(1000);
    assertThat(Cells.of(LotAccountsSheet.of(context), "lot-accounts").rows()).hasSize(1000);
    assertThat(sheets(context)).hasSize(sheets(SmallNursery.context()).size());
  }
}
