package growingon.report.compare;

import static org.assertj.core.api.Assertions.assertThat;

import growingon.nursery.lot.Lot;
import growingon.project.Lots;
import growingon.project.Nurseries;
import growingon.report.SmallNursery;
import growingon.report.compare.CompareFigures.Pair;
import growingon.report.compare.CompareFigures.Topic;
import growingon.report.compare.CompareReport.Side;
import growingon.report.text.Shown;
import growingon.whole.RandomNurseries;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What differs between two plans. */
class CompareFiguresTest {
  private static final int NURSERIES = 40;

  private static Side side(String label, Nurseries nursery) {
    return new Side(label, SmallNursery.context(nursery).plan(), List.of());
  }

  /** The nursery with a lot before the others that is never sold. */
  private static Nurseries withAKeptLot(int number) {
    Nurseries nursery = RandomNurseries.of(number);
    List<Lot> lots = new ArrayList<>();
    lots.add(
        Lots.lot("kept")
            .quantity(9)
            .kept(9)
            .route("field tree")
            .place("ground")
            .plantsPerM2(9)
            .build());
    lots.addAll(nursery.scenario().lots());
    return nursery.lots(lots);
  }

  @Test
  void plantsSold_thatAreOnlyMadeWholeOtherwise_doNotDiffer() {
    int otherwise = 0;
    for (int number = 0; number < NURSERIES; number++) {
      Side first = side("one", RandomNurseries.of(number));
      Side second = side("two", withAKeptLot(number));
      Topic plants = new CompareFigures(first, second).topics().get(2);

      assertThat(plants.name()).isEqualTo("Plants sold");
      assertThat(plants.rows()).isEmpty();
      otherwise += soldByLot(first).equals(soldByLot(second)) ? 0 : 1;
    }
    assertThat(otherwise).isPositive();
  }

  private static List<String> soldByLot(Side side) {
    return side.whole().lots().stream()
        .flatMap(lot -> lot.sales().stream())
        .map(sale -> sale.month() + " " + sale.grade() + " " + sale.whole())
        .toList();
  }

  /** Hours that one plan has a row of zeros for, and the other no row, are the same hours. */
  @Test
  void nothing_besideNone_isNoDifference() {
    Shown none = new Shown(Double.NaN, Double.NaN);

    assertThat(new Pair("cut back", "", none, Shown.NOTHING).differsBy(0.05)).isFalse();
    assertThat(new Pair("cut back", "", none, new Shown(0.04, 0)).differsBy(0.05)).isFalse();
    assertThat(new Pair("cut back", "", none, new Shown(6, 6)).differsBy(0.05)).isTrue();
  }
}
