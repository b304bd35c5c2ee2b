package growingon.project;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;

import growingon.nursery.market.Demand;
import growingon.nursery.market.Grade;
import growingon.nursery.time.MonthSpan;
import growingon.project.history.Freed;
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
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/** What is known to have happened to 100 ash of 10 mm takes the place of what was expected. */
class KnownPastTest {
  private static final Offset<Double> EXACTLY = within(1e-9);

  private static LotHistory run(Nurseries nursery, LotFacts known) {
    return Projector.project(nursery.scenario(), new Facts(Map.of("a", known))).lot("a");
  }

  private static LotHistory run(Nurseries nursery, int month, MonthFacts known) {
    return run(nursery, new LotFacts(1, 11, 11, OptionalDouble.empty(), Map.of(month, known)));
  }

  private static MonthFacts left(Leaving... leaving) {
    return new MonthFacts(List.of(), List.of(leaving), Optional.empty());
  }

  private static Leaving sold(String grade, double plants, OptionalDouble money) {
    return new Leaving(true, Optional.ofNullable(grade), Optional.empty(), plants, money);
  }

  private static Nurseries ash() {
    return Nurseries.bare().seasons(1).lot(Lots.lot("a").build());
  }

  private static Change change(Way way, double plants) {
    return new Change(way, Optional.empty(), plants);
  }

  /** 100 + 10 − 5 − 3 − 2 = 100, and 105 are counted at the end of the month. */
  @Test
  void plantsThatComeAndGo_areBookedAsWhatTheyDid() {
    MonthFacts.Count count =
        new MonthFacts.Count(
            OptionalDouble.of(105), Map.of(), OptionalDouble.empty(), OptionalDouble.empty());
    LotHistory lot =
        run(
            ash(),
            0,
            new MonthFacts(
                List.of(
                    change(Way.CAME, 10),
                    change(Way.DIED, 5),
                    change(Way.CULLED, 2),
                    change(Way.WENT, 3)),
                List.of(),
                Optional.of(count)));

    assertThat(lot.came(0)).isCloseTo(15, EXACTLY);
    assertThat(lot.died(0)).isCloseTo(5, EXACTLY);
    assertThat(lot.culled(0)).isCloseTo(2, EXACTLY);
    assertThat(lot.went(0)).isCloseTo(3, EXACTLY);
    assertThat(lot.standing(0)).isCloseTo(105, EXACTLY);
  }

  @Test
  void oldPotsOfTheCulled_comeBack() {
    Nurseries nursery =
        Nurseries.bare()
            .seasons(1)
            .pot(Nurseries.roundPot("seven").with().reuseShare(0.5).build())
            .lot(Lots.lot("a").pot("seven").build());
    MonthFacts culled =
        new MonthFacts(List.of(change(Way.CULLED, 20)), List.of(), Optional.empty());

    assertThat(run(nursery, 3, culled).freed()).containsExactly(new Freed(4, "seven", 10));
  }

  /** Counted in August, known to be 90 when the plan begins in November. */
  @Test
  void plantsThatDiedBeforeThePlan_areThoseThatAreKnownToBeMissing() {
    Nurseries nursery =
        Nurseries.bare().seasons(1).lot(Lots.lot("a").arrived(2025, 3).counted(2026, 8).build());
    LotHistory lot = run(nursery, new LotFacts(1, -1, -1, OptionalDouble.of(90), Map.of()));

    assertThat(lot.diedBefore()).isCloseTo(10, EXACTLY);
    assertThat(lot.standingAtStart()).isCloseTo(90, EXACTLY);
    assertThat(lot.standing(0)).isCloseTo(90, EXACTLY);
  }

  @Test
  void plantsThatWereUsed_wentAndAreNoSale() {
    Leaving used =
        new Leaving(false, Optional.empty(), Optional.empty(), 10, OptionalDouble.empty());
    LotHistory lot = run(ash(), 0, left(used));

    assertThat(lot.went(0)).isCloseTo(10, EXACTLY);
    assertThat(lot.sales()).isEmpty();
    assertThat(lot.standing(0)).isCloseTo(90, EXACTLY);
  }

  @Test
  void morePlantsSoldThanThereWere_wereFoundFirst() {
    LotHistory lot = run(ash(), 0, left(sold("any", 120, OptionalDouble.of(600))));

    assertThat(lot.came(0)).isCloseTo(20, EXACTLY);
    assertThat(lot.sold(0)).isCloseTo(120, EXACTLY);
    assertThat(lot.standing(0)).isZero();
  }

  /** Ten plants for 300, whatever they sort as: 30 for each. */
  @Test
  void moneyOfASale_isSharedByItsPlants() {
    Nurseries nursery =
        Nurseries.bare().seasons(1).lot(Lots.lot("a").quality(0.5, 0.5, true).build());
    List<Sale> sales = run(nursery, 0, left(sold(null, 60, OptionalDouble.of(1800)))).sales();

    assertThat(sales).hasSizeGreaterThan(1);
    assertThat(sales)
        .allSatisfy(each -> assertThat(each.money() / each.units()).isCloseTo(30, EXACTLY));
    assertThat(sales.stream().mapToDouble(Sale::units).sum()).isCloseTo(60, EXACTLY);
  }

  private static Demand row(MonthSpan months, double price) {
    return new Demand(
        Optional.empty(),
        "one",
        "any",
        Optional.empty(),
        months,
        OptionalDouble.of(60),
        price,
        0,
        0,
        0);
  }

  /** Dearer rows come first, but one that is closed prices nothing while another is open. */
  @Test
  void saleWithoutAnAmount_isPricedByTheFirstRowThatIsOpen_elseByTheFirst() {
    Demand june = row(new MonthSpan(6, 6), 30);
    Nurseries both = ash().demand(june).demand(row(MonthSpan.ALL_YEAR, 20));

    assertThat(run(both, 0, left(sold("any", 10, OptionalDouble.empty()))).sales())
        .extracting(Sale::row, Sale::money)
        .containsExactly(tuple(1, 200.0));
    assertThat(run(both, 7, left(sold("any", 10, OptionalDouble.empty()))).sales())
        .extracting(Sale::row, Sale::money)
        .containsExactly(tuple(0, 300.0));
    assertThat(run(ash().demand(june), 0, left(sold("any", 10, OptionalDouble.empty()))).sales())
        .extracting(Sale::row, Sale::money)
        .containsExactly(tuple(0, 300.0));
  }

  /** Small plants are dearer here, so a sale that names no grade is of them first. */
  @Test
  void saleWithoutAGrade_isOfTheDearestGradeFirst() {
    Nurseries nursery =
        Nurseries.bare()
            .seasons(1)
            .ladder("sizes", new Grade("small", 1, 5, 0, 12), new Grade("large", 2, 20, 0, 12))
            .species(Nurseries.bareSpecies("rowan", "sizes"))
            .demand(Nurseries.demandRow("sizes", "small", OptionalDouble.of(60), 50))
            .demand(Nurseries.demandRow("sizes", "large", OptionalDouble.of(60), 10))
            .lot(Lots.lot("a").species("rowan").trunks(20, 0.3).build());

    assertThat(run(nursery, 0, left(sold(null, 5, OptionalDouble.empty()))).sales())
        .extracting(Sale::grade, Sale::money)
        .containsExactly(tuple(0, 250.0));
  }
}
