package growingon.report.words;

import static org.assertj.core.api.Assertions.assertThat;

import growingon.chance.Chances;
import growingon.nursery.Scenario;
import growingon.project.Lots;
import growingon.project.Nurseries;
import growingon.report.MapleNursery;
import growingon.report.figures.Context;
import growingon.report.model.Table;
import java.util.List;
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

  @Test
  void knownNursery_hasNothingToTellApart() {
    Context context = drawn(1, 120);
    assertThat(new NotKnownTables(context).tables()).isEmpty();
    assertThat(new NotKnownTables(context).summary()).isEmpty();
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
