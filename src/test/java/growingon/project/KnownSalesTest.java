package growingon.project;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;

import growingon.nursery.market.Demand;
import growingon.nursery.market.Quality;
import growingon.nursery.time.MonthSpan;
import growingon.project.history.Sale;
import growingon.project.known.LotFacts;
import growingon.project.known.MonthFacts;
import growingon.project.known.MonthFacts.Change;
import growingon.project.known.MonthFacts.Leaving;
import growingon.project.known.MonthFacts.Way;
import growingon.project.lot.Facts;
import growingon.project.lot.LotHistory;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** What is known to have been sold and culled, on 100 ash of 10 mm that grow 0.5 mm a month. */
class KnownSalesTest {
  private static Demand demand(double price, double morePerMm) {
    return new Demand(
        Optional.empty(),
        "one",
        "any",
        Optional.empty(),
        MonthSpan.ALL_YEAR,
        OptionalDouble.of(60),
        price,
        morePerMm,
        0,
        0);
  }

  private static LotHistory run(Nurseries nursery, List<Change> changes, List<Leaving> leaving) {
    MonthFacts first = new MonthFacts(changes, leaving, Optional.empty());
    LotFacts known = new LotFacts(1, 11, 11, OptionalDouble.empty(), Map.of(0, first));
    return Projector.project(nursery.scenario(), new Facts(Map.of("a", known))).lot("a");
  }

  private static Leaving sold(Optional<Quality> quality, double plants) {
    return new Leaving(true, Optional.of("any"), quality, plants, OptionalDouble.empty());
  }

  private static LotHistory cull(Optional<Quality> quality, double plants) {
    Nurseries nursery =
        Nurseries.bare().seasons(1).lot(Lots.lot("a").kept(20).quality(0.5, 0.5, true).build());
    return run(nursery, List.of(new Change(Way.CULLED, quality, plants)), List.of());
  }

  /** 10.5 mm at the month's end are 9.5 above the least of the grade: 20 + 9.5 × 2 = 39 a plant. */
  @Test
  void saleWithoutAnAmount_bringsTheListPriceWithItsShareForEachMm() {
    Nurseries nursery = Nurseries.bare().seasons(1).demand(demand(20, 2));
    LotHistory lot =
        run(
            nursery.lot(Lots.lot("a").build()),
            List.of(),
            List.of(sold(Optional.of(Quality.FIRST), 10)));

    assertThat(lot.sales()).hasSize(1);
    assertThat(lot.sales().get(0).money()).isCloseTo(390, within(1e-9));
  }

  /** Seconds bring 0.6 of 20 + 9.5 × 2. */
  @Test
  void saleOfSecondsWithoutAnAmount_bringsTheirShareOfThePrice() {
    Nurseries nursery = Nurseries.bare().seasons(1).demand(demand(20, 2));
    LotHistory lot =
        run(
            nursery.lot(Lots.lot("a").quality(0.5, 0.5, true).build()),
            List.of(),
            List.of(sold(Optional.of(Quality.SECOND), 10)));

    assertThat(lot.sales().get(0).money()).isCloseTo(234, within(1e-9));
  }

  /** A kept plan may have sold by a name that the grade has no more: it is as if none were said. */
  @Test
  void saleOfAGradeThatTheLadderDoesNotHave_isOfWhatIsReady_forItsMoney() {
    Leaving sold =
        new Leaving(true, Optional.of("saleable"), Optional.empty(), 10, OptionalDouble.of(190));
    LotHistory lot =
        run(Nurseries.bare().seasons(1).lot(Lots.lot("a").build()), List.of(), List.of(sold));

    assertThat(lot.sales())
        .extracting(Sale::grade, Sale::units, Sale::money)
        .containsExactly(tuple(0, 10.0, 190.0));
  }

  @Test
  void cullOfTheWorst_takesKeptPlantsOnlyWhenNoOtherIsLeft() {
    LotHistory some = cull(Optional.empty(), 70);
    assertThat(some.culled(0)).isCloseTo(70, within(1e-9));
    assertThat(some.standing(0)).isCloseTo(30, within(1e-9));
    assertThat(some.keptAtEnd()).isCloseTo(20, within(1e-9));

    LotHistory most = cull(Optional.empty(), 95);
    assertThat(most.culled(0)).isCloseTo(95, within(1e-9));
    assertThat(most.standing(0)).isCloseTo(5, within(1e-9));
    assertThat(most.keptAtEnd()).isCloseTo(5, within(1e-9));
  }

  @Test
  void cullOfAQuality_leavesKeptPlants() {
    LotHistory lot = cull(Optional.of(Quality.SECOND), 30);

    assertThat(lot.culled(0)).isCloseTo(30, within(1e-9));
    assertThat(lot.keptAtEnd()).isCloseTo(20, within(1e-9));
    assertThat(lot.monthStock(0).standing().of(Quality.SECOND)).isCloseTo(10, within(1e-9));
  }

  /** 60 a season are 5 a month: what the first row cannot take of 8 sold goes to the second. */
  @Test
  void salesOfEqualPrice_meetTheRowsInTheirOrder() {
    Nurseries nursery = Nurseries.bare().seasons(1).demand(demand(20, 0)).demand(demand(20, 0));
    LotHistory lot = nursery.lot(Lots.lot("a").quantity(8).build()).project().lot("a");

    assertThat(lot.sales())
        .extracting(Sale::month, Sale::row, Sale::units)
        .containsExactly(tuple(0, 0, 5.0), tuple(0, 1, 3.0));
  }
}
