package growingon.money;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import growingon.nursery.lot.Lot;
import growingon.nursery.market.Demand;
import growingon.nursery.market.Grade;
import growingon.nursery.market.Quality;
import growingon.nursery.time.MonthSpan;
import growingon.project.Lots;
import growingon.project.Nurseries;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** Which of several rows of demand gives the list price of a plant. */
class ListPricesTest {
  private static Demand row(String species, String ladder, String grade, double price) {
    return new Demand(
        Optional.ofNullable(species),
        ladder,
        grade,
        Optional.empty(),
        MonthSpan.ALL_YEAR,
        OptionalDouble.of(5),
        price,
        0,
        0,
        0);
  }

  private static Nurseries nursery() {
    return Nurseries.bare()
        .ladder("hedge", grade("small", 1), grade("middle", 2), grade("large", 3))
        .ladder("street", grade("small", 1))
        .ladder("unsold", grade("small", 1))
        .species(Nurseries.bareSpecies("hornbeam", "hedge"))
        .species(Nurseries.bareSpecies("beech", "hedge"))
        .species(Nurseries.bareSpecies("rowan", "unsold"))
        .demand(row(null, "hedge", "small", 10))
        .demand(row(null, "hedge", "small", 12))
        .demand(row("hornbeam", "hedge", "small", 9))
        .demand(row("hornbeam", "hedge", "small", 8))
        .demand(row("yew", "hedge", "small", 50))
        .demand(row(null, "hedge", "middle", 20))
        .demand(row("yew", "hedge", "large", 60))
        .demand(row(null, "street", "small", 70));
  }

  private static Grade grade(String name, int rank) {
    return new Grade(name, rank, 10 * rank, 0, 12);
  }

  private static Lot of(String species) {
    return Lots.lot("lot of " + species).species(species).build();
  }

  /** Own rows come first though others are dearer; of several the dearest; never another's. */
  @Test
  void price_isTheDearestOfTheOwnRows_elseOfThoseForAnySpecies() {
    ListPrices prices = new ListPrices(nursery().nursery());

    assertThat(prices.of(of("hornbeam"), "small")).hasValue(9);
    assertThat(prices.of(of("hornbeam"), "middle")).hasValue(20);
    assertThat(prices.of(of("hornbeam"), "large")).isEmpty();
    assertThat(prices.of(of("beech"), "small")).hasValue(12);
  }

  @Test
  void price_ofSeconds_isTheirShare_andLessWhatSellingCosts() {
    ListPrices prices = new ListPrices(nursery().selling(0.25, 0).nursery());
    int second = Quality.SECOND.ordinal();

    assertThat(prices.gross(of("hornbeam"))[second])
        .containsExactly(new double[] {0, 9 * 0.6, 20 * 0.6, 0}, within(1e-12));
    assertThat(prices.net(of("hornbeam"))[second])
        .containsExactly(new double[] {0, 9 * 0.6 * 0.75, 20 * 0.6 * 0.75, 0}, within(1e-12));
  }

  @Test
  void topPricedGrade_isTheHighestThatHasAPrice() {
    Lot hornbeam = of("hornbeam");
    Lot rowan = of("rowan");
    Accounts accounts = Accounts.of(nursery().lot(hornbeam).lot(rowan).project());

    assertThat(accounts.topPricedGrade(hornbeam)).hasValue(1);
    assertThat(accounts.topPricedGrade(rowan)).isEmpty();
  }
}
