package growingon.project.need;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import growingon.nursery.lot.Lot;
import growingon.nursery.place.PlaceKind;
import growingon.project.Lots;
import growingon.project.Nurseries;
import growingon.project.need.SpaceUse.PlaceMonth;
import java.util.Optional;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/**
 * Room and load of a place with several lots, by hand. A pot of 10 litres, of whose filling nothing
 * is known, weighs 10 kg; the wood of a trunk of 10 mm and 600 mm π/4 · 10² · 600/10⁶ = 0.0471 kg.
 */
class SpaceUseTest {
  private static final Offset<Double> EXACTLY = within(1e-9);
  private static final double PLANT_KG = 10 + Math.PI / 4 * 100 * 600 / 1e6;

  private static PlaceMonth november(double squareMetres, Lot... lots) {
    Nurseries nursery =
        Nurseries.bare()
            .seasons(1)
            .pot(Nurseries.litrePot("ten", 10, 250))
            .place(Nurseries.place("bench", PlaceKind.BENCH, squareMetres));
    for (Lot lot : lots) {
      nursery.lot(lot);
    }
    return SpaceUse.of(nursery.project()).months(Optional.of("bench")).get(0);
  }

  private static Lot lot(String name, int plants, double perM2) {
    return Lots.lot(name).quantity(plants).pot("ten").place("bench").plantsPerM2(perM2).build();
  }

  /** 40 plants at 4 to the square metre take 10 m², 20 at 10 take 2 m²: 60 plants on 12 m². */
  @Test
  void room_isWhatLotsLeaveOfAPlace() {
    PlaceMonth wide = november(15, lot("wide", 40, 4), lot("tight", 20, 10));

    assertThat(wide.plants()).isCloseTo(60, EXACTLY);
    assertThat(wide.neededM2()).isCloseTo(12, EXACTLY);
    assertThat(wide.roomM2()).isCloseTo(3, EXACTLY);
    assertThat(wide.overflowM2()).isZero();
  }

  @Test
  void overflow_isWhatLotsTakeMoreThanAPlaceHas() {
    PlaceMonth small = november(8, lot("wide", 40, 4), lot("tight", 20, 10));

    assertThat(small.overflowM2()).isCloseTo(4, EXACTLY);
    assertThat(small.roomM2()).isZero();
  }

  /** The load is greatest where plants stand closest, whichever lot comes first. */
  @Test
  void load_isTheMeanOfThePlace_andThatOfTheLotThatStandsClosest() {
    Lot wide = lot("wide", 40, 4);
    Lot tight = lot("tight", 20, 10);
    for (PlaceMonth month :
        new PlaceMonth[] {november(15, wide, tight), november(15, tight, wide)}) {
      assertThat(month.kg()).isCloseTo(60 * PLANT_KG, EXACTLY);
      assertThat(month.meanKgPerM2()).isCloseTo(5 * PLANT_KG, EXACTLY);
      assertThat(month.heaviestKgPerM2()).isCloseTo(10 * PLANT_KG, EXACTLY);
      assertThat(month.heaviestLot()).isEqualTo("tight");
    }
  }

  @Test
  void load_ofAnEmptyPlace_isNil() {
    PlaceMonth empty = november(15);

    assertThat(empty.meanKgPerM2()).isZero();
    assertThat(empty.heaviestLot()).isEmpty();
    assertThat(empty.roomM2()).isCloseTo(15, EXACTLY);
  }
}
