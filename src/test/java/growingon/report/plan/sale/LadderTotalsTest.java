package growingon.report.plan.sale;

import static org.assertj.core.api.Assertions.assertThat;

import growingon.nursery.lot.Lot;
import growingon.nursery.market.Grade;
import growingon.project.Lots;
import growingon.project.Nurseries;
import growingon.report.MapleNursery;
import growingon.report.figures.Context;
import growingon.report.model.Kind;
import java.util.List;
import org.junit.jupiter.api.Test;

/** No figure of a bank's tables stands for a single lot. */
class LadderTotalsTest {
  private static Lot lot(String name, String species, int quantity) {
    return Lots.lot(name).species(species).quantity(quantity).trunks(20, 0.1).build();
  }

  private static Context sellingAll(Lot... lots) {
    Nurseries nursery = Nurseries.bare().seasons(1);
    for (String ladder : List.of("one", "two", "three")) {
      nursery
          .ladder(ladder, new Grade("any of " + ladder, 1, 1, 0, 12))
          .species(Nurseries.bareSpecies("species of " + ladder, ladder))
          .sellsAll(ladder, "any of " + ladder, 10);
    }
    return MapleNursery.context(nursery.lots(List.of(lots)).scenario());
  }

  private static List<String> rows(Context context) {
    return LadderTotals.sold(context).rows().stream()
        .map(row -> row.name() + " " + Math.round(row.value(0)))
        .toList();
  }

  @Test
  void ladder_ofTwoLots_isTold() {
    assertThat(rows(sellingAll(lot("a", "species of one", 30), lot("b", "species of one", 20))))
        .containsExactly("one 50");
  }

  @Test
  void ladder_ofOneLot_isMergedWithTheSmallestOther() {
    Context context =
        sellingAll(
            lot("a", "species of one", 30),
            lot("b", "species of one", 20),
            lot("c", "species of two", 8),
            lot("d", "species of two", 9),
            lot("e", "species of three", 40));
    assertThat(rows(context)).containsExactly("one 50", "other 57");
  }

  @Test
  void twoLadders_ofOneLotEach_areOneRow() {
    assertThat(rows(sellingAll(lot("a", "species of one", 30), lot("b", "species of two", 20))))
        .containsExactly("other 50");
  }

  @Test
  void nursery_ofOneLot_tellsNothing() {
    LadderTotals totals = LadderTotals.receipts(sellingAll(lot("a", "species of one", 30)));
    assertThat(totals.rows()).hasSize(1);
    assertThat(totals.rows().get(0).value(0)).isNaN();
    assertThat(totals.total(0)).isNaN();
    assertThat(totals.table("sold", "Sold", "", "", Kind.MONEY).rows().get(0).get(1)).isNull();
    assertThat(totals.table("sold", "Sold", "", "", Kind.MONEY).notes())
        .containsExactly(
            "A ladder with a single lot behind a figure is merged into other; empty where even that"
                + " would tell of one lot.");
  }
}
