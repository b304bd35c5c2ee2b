package growingon.report.words;

import static org.assertj.core.api.Assertions.assertThat;

import growingon.chance.Chances;
import growingon.chance.WorthMeasuring;
import growingon.nursery.Scenario;
import growingon.nursery.lot.Trunks;
import growingon.nursery.market.MarketSure;
import growingon.project.Lots;
import growingon.project.Nurseries;
import growingon.report.MapleNursery;
import growingon.report.figures.Context;
import growingon.report.model.Sheet;
import growingon.report.model.Table;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is said of luck and not knowing. */
class NotKnownTablesTest {
  @ParameterizedTest
  @CsvSource({
    "0, hardly any", "0.14, hardly any", "0.16, a third", "0.41, a third", "0.43, half",
    "0.58, half", "0.6, two thirds", "0.84, two thirds", "0.86, nearly all", "1, nearly all"
  })
  void share_inWords_isTheNearestOfAFew(double share, String words) {
    assertThat(NotKnownTables.share(share)).isEqualTo(words);
  }

  private static Context drawn(double sure, int draws) {
    Scenario scenario =
        Nurseries.working()
            .sure(sure)
            .lot(Lots.boughtMaples("ridge").build())
            .lot(Lots.pottedElms("elms").build())
            .scenario();
    Context context = MapleNursery.context(scenario.withPlan(scenario.plan().withDraws(draws)));
    Chances chances = Chances.draw(context.accounts(), context.bought(), 2, done -> {});
    return MapleNursery.with(context, chances);
  }

  @Test
  void unsureNursery_isToldApart() {
    Context context = drawn(0.6, 120);
    List<Table> tables = new NotKnownTables(context).tables();

    assertThat(tables).extracting(Table::name).containsExactly("not-known", "worth-measuring");
    Table notKnown = tables.get(0);
    assertThat(notKnown.rows()).hasSize(6 * 3 + 1);
    int share = notKnown.columns().size() - 1;
    assertThat(notKnown.rows())
        .allSatisfy(row -> assertThat((Double) row.get(share)).isBetween(0.0, 1.0));
    assertThat(new NotKnownTables(context).summary().get(0))
        .matches(
            "Cash at the end of 2031/32: GBP .* \\(P10 to P90\\)\\. With luck alone .*: (hardly"
                + " any|a third|half|two thirds|nearly all) of the spread is not knowing how fast"
                + " your trees grow\\.");
    assertThat(new NotKnownTables(context).summary()).hasSize(2);
  }

  private static String worth(
      Scenario scenario, double first, WorthMeasuring.Told told, double all, double luck) {
    Scenario few = scenario.withPlan(scenario.plan().withDraws(2));
    WorthMeasuring.Row row = new WorthMeasuring.Row("maple", "pot", 80, 4, 0.8, 0.91, first, told);
    WorthMeasuring.Row other =
        new WorthMeasuring.Row("elm", "pot", 80, 4, 0.8, 0.91, 0, WorthMeasuring.Told.ROUGH);
    return new NotKnownTables(MapleNursery.drawn(few, 2))
        .worth(new WorthMeasuring(List.of(row, other), OptionalDouble.of(all)), luck);
  }

  @Test
  void measuring_isAdvisedAsFarAsItBringsAnything() {
    Scenario growth = Nurseries.working().lot(Lots.pottedElms("elms").build()).scenario();
    assertThat(worth(growth, 0.07, WorthMeasuring.Told.DRAWN, 0.15, 0.3))
        .isEqualTo(
            "Worth measuring first: 20 marked trunks of maple in the condition pot, this October and"
                + " next (sure 80 → 91 %): 7 % off the spread of cash; all 2 of the table 15 %.");
    assertThat(worth(growth, 0.001, WorthMeasuring.Told.DRAWN, 0.3, 0.3))
        .isEqualTo(
            "Worth measuring: 20 marked trunks in each of the 2 rows of the table, this October and"
                + " next, 30 % off the spread of cash; one row alone brings little.");
    assertThat(worth(growth, 0.2, WorthMeasuring.Told.TOO_SMALL, 0.3, 0.3))
        .startsWith("Worth measuring: 20 marked trunks in each ");
    assertThat(worth(growth, 0.07, WorthMeasuring.Told.DRAWN, 0.15, 0.9))
        .isEqualTo("Measuring would change little: nine tenths of the spread of cash is luck.");
    assertThat(worth(growth, 0, WorthMeasuring.Told.DRAWN, 0.02, 0.3))
        .isEqualTo(
            "Measuring trunks would change little: all of the table 2 % off the spread of cash.");
  }

  @Test
  void firstPlan_saysThatItIsUnsureOfMoreThanGrowth() {
    Scenario first =
        Nurseries.working()
            .sure(0.6)
            .market(new MarketSure(0.5, 0.5))
            .lot(Lots.pottedElms("elms").build().withTrunks(new Trunks.Usual("no pot", 14, 0.3)))
            .scenario();
    assertThat(worth(first, 0, WorthMeasuring.Told.DRAWN, 0.02, 0))
        .isEqualTo(
            "Measuring trunks would change little: all of the table 2 % off the spread of cash; more"
                + " of it is how thick they are, how many are wanted and what they fetch.");
    Context context = MapleNursery.drawn(first, 120);
    assertThat(new NotKnownTables(context).cash().orElseThrow())
        .endsWith(
            " of the spread is not knowing how fast your trees grow, how thick they are, how many are"
                + " wanted and what they fetch.");
  }

  @Test
  void knownNursery_hasNothingToTellApart() {
    Context context = drawn(1, 120);
    assertThat(new NotKnownTables(context).tables()).isEmpty();
    assertThat(new NotKnownTables(context).summary()).isEmpty();
  }

  /** All that a plan without draws shows, sheet by sheet. */
  private static List<Object> shown(double sure) {
    Scenario scenario =
        Nurseries.working()
            .sure(sure)
            .lotSpread(sure == 1 ? 0 : 0.2)
            .lot(Lots.boughtMaples("ridge").build())
            .lot(Lots.pottedElms("elms").build())
            .scenario();
    List<Object> shown = new ArrayList<>();
    for (Sheet sheet : MapleNursery.report(scenario).sheets()) {
      shown.addAll(sheet.sentences());
      sheet.tables().forEach(table -> shown.addAll(List.of(table.name(), table.inFull())));
    }
    return shown;
  }

  @Test
  void plan_withoutDraws_doesNotMoveWithHowSureAnythingIs() {
    assertThat(shown(0.3)).hasSizeGreaterThan(50).isEqualTo(shown(1));
  }

  @Test
  void fewDraws_giveNoShare_andNothingToMeasure() {
    Context context = drawn(0.6, 40);
    List<Table> tables = new NotKnownTables(context).tables();
    assertThat(tables).extracting(Table::name).containsExactly("not-known");
    assertThat(tables.get(0).rows())
        .allSatisfy(row -> assertThat(row.get(row.size() - 1)).isNull());
  }
}
