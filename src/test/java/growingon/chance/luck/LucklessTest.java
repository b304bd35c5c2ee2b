package growingon.chance.luck;

import static org.assertj.core.api.Assertions.assertThat;

import growingon.nursery.Inputs;
import growingon.nursery.lot.Offer;
import growingon.nursery.market.Demand;
import growingon.nursery.market.MarketSure;
import growingon.nursery.species.SpeciesBuilder;
import growingon.project.Lots;
import growingon.project.Nurseries;
import java.time.YearMonth;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Each of the spreads of a nursery alone leaves something to luck. */
class LucklessTest {
  private static Nurseries nursery() {
    return Nurseries.bare().lot(Lots.lot("a").quality(0.5, 0.3, true).build());
  }

  private static boolean isLuckless(Nurseries nursery, Offer... offers) {
    return Luckless.is(new Inputs(nursery.scenario(), List.of(offers), List.of(), 1));
  }

  private static Demand row(double unitsSpread, double priceSpread) {
    return Nurseries.uncertainRow(Optional.empty(), unitsSpread, priceSpread);
  }

  private static SpeciesBuilder ash() {
    return Nurseries.bareSpecies("ash", "one").with();
  }

  private static Offer offer(double lossSure, double fails) {
    return Offer.named("liners", Lots.lot("liners").arrived(2027, 2).build())
        .breaks(List.of(new Offer.PriceBreak(10, 5)))
        .arrival(YearMonth.of(2027, 2))
        .lossSure(lossSure)
        .fails(fails)
        .build();
  }

  @Test
  void nothingHasASpread_isLuckless() {
    assertThat(isLuckless(nursery().demand(row(0, 0)), offer(1, 0))).isTrue();
  }

  @Test
  void anySpreadOfTheMarket_isLuck() {
    assertThat(isLuckless(nursery().demand(row(0.1, 0)))).isFalse();
    assertThat(isLuckless(nursery().demand(row(0, 0.1)))).isFalse();
    assertThat(isLuckless(nursery().market(new MarketSure(0.8, 1)))).isFalse();
    assertThat(isLuckless(nursery().labourSpread(0.1))).isFalse();
    assertThat(isLuckless(nursery().exchangeSpread(0.1))).isFalse();
  }

  @Test
  void anySpreadOfGrowthOrLoss_isLuck() {
    assertThat(isLuckless(nursery().lotSpread(0.1))).isFalse();
    assertThat(isLuckless(nursery().sure(0.8))).isFalse();
    assertThat(isLuckless(nursery().species(ash().yearSpread(0.1).build()))).isFalse();
    assertThat(isLuckless(nursery().species(ash().lossSpread(0.1).build()))).isFalse();
  }

  @Test
  void anyLotOrOfferThatIsNotSure_isLuck() {
    assertThat(isLuckless(nursery().lot(Lots.lot("b").unseen(0.5, 0.3, 0.8).build()))).isFalse();
    assertThat(isLuckless(nursery().lot(Lots.lot("b").unseen(0.5, 0.3, 1).build()))).isTrue();
    assertThat(isLuckless(nursery(), offer(0.8, 0))).isFalse();
    assertThat(isLuckless(nursery(), offer(1, 0.1))).isFalse();
  }
}
