package growingon.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import growingon.plan.Planned;
import growingon.project.Nurseries;
import growingon.report.build.Picked;
import growingon.report.edition.Edition;
import growingon.report.figures.Context;
import growingon.report.model.Audience;
import growingon.report.model.Column;
import growingon.report.model.Report;
import growingon.report.model.Sheet;
import growingon.report.model.Table;
import growingon.report.plan.SummarySheet;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Which tables and columns an edition shows: what it picks is there, and nothing else is. */
class EditionTablesTest {
  private static Sheet lots(Context context, boolean costs) {
    Edition edition = new Edition(Audience.PARTNER, costs, false);
    Report report =
        edition.report(Planned.weighed(edition.seen(context.inputs())), Optional.empty());
    return report.sheets().stream()
        .filter(sheet -> sheet.name().equals("Lots"))
        .findFirst()
        .orElseThrow();
  }

  private static List<String> keys(Sheet sheet, String table) {
    return Cells.of(sheet, table).table().columns().stream().map(Column::key).toList();
  }

  @Test
  void partnerWithoutCosts_seesOfLotsPlantsAndSales_butNoMoneyOfCosts() {
    Sheet lots = lots(SmallNursery.context(), false);

    assertThat(lots.tables()).extracting(Table::name).containsExactly("lot-accounts", "lot-grades");
    assertThat(keys(lots, "lot-accounts"))
        .containsExactly(
            "lot",
            "species",
            "form",
            "pot",
            "started",
            "lost",
            "sold",
            "standing",
            "of_these_kept",
            "sales");
  }

  @Test
  void partnerWithCosts_seesCostsOfLots_butNoHoursAndNoLimits() {
    Sheet lots = lots(SmallNursery.context(), true);

    assertThat(lots.tables())
        .extracting(Table::name)
        .containsExactly("lot-accounts", "lot-suppliers", "lot-costs", "lot-grades");
    assertThat(keys(lots, "lot-accounts")).endsWith("sales", "costs", "result");
    assertThat(keys(lots, "lot-costs"))
        .containsExactly(
            "lot",
            "species",
            "plants_bought",
            "carriage_charges",
            "pots",
            "substrate",
            "materials",
            "place",
            "costs",
            "cost_per_plant_started",
            "per_plant_alive",
            "per_plant_sold");
  }

  @Test
  void partnerOfANurseryWithoutLots_seesNoTableOfLots() {
    assertThat(lots(SmallNursery.context(Nurseries.bare()), true).tables()).isEmpty();
  }

  @Test
  void tableThatIsNotThere_isNotLeftOutInSilence() {
    assertThatThrownBy(() -> Picked.tables(SummarySheet.of(SmallNursery.context()), "season"))
        .hasMessage("the sheet Summary has no table season");
  }

  @Test
  void columnThatIsNotThere_isNotLeftOutInSilence() {
    Table seasons = SummarySheet.of(SmallNursery.context()).tables().get(0);

    assertThatThrownBy(() -> Picked.columns(seasons, List.of(), "season", "plants"))
        .hasMessage("the table seasons has no column plants");
  }
}
