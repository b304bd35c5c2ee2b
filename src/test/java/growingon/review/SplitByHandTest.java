package growingon.review;

import static growingon.nursery.record.DaybookLine.What.COUNTED;
import static growingon.nursery.record.DaybookLine.What.CULLED;
import static growingon.nursery.record.DaybookLine.What.RETURNED;
import static growingon.nursery.record.DaybookLine.What.SOLD;
import static growingon.nursery.record.DaybookLine.What.SPENT;
import static growingon.nursery.record.DaybookLine.What.SPLIT;
import static growingon.nursery.record.DaybookLine.What.USED;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import growingon.nursery.market.Quality;
import growingon.project.Lots;
import growingon.project.Nurseries;
import java.time.YearMonth;
import java.util.Optional;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/** A lot that is split after much has happened to it, by hand. */
class SplitByHandTest {
  private static final Offset<Double> TINY = within(1e-9);

  private static LotReview lot(Review review, String name) {
    return review.lots().stream()
        .filter(each -> each.lot().name().equals(name))
        .findFirst()
        .orElseThrow();
  }

  private static Review review(Diary diary) {
    Nurseries nursery =
        Nurseries.bare()
            .seasons(2)
            .sellsAll("one", "any", 20)
            .lot(Lots.lot("ash").notBefore(2030, 1).quality(0.5, 0.5, true).build());
    return Review.of(diary.of(nursery.scenario()), YearMonth.of(2028, 6), Optional.empty());
  }

  /** 100 − 10 − 30 + 6 = 66, of which a half is split off: what was booked stays where it was. */
  @Test
  void plantsThatWentBeforeASplit_stayWithTheLotThatTheyWereBookedOn() {
    Review review =
        review(
            new Diary()
                .on("2026-11-05", "ash", USED, 10)
                .on("2026-11-08", "ash", SOLD, 30)
                .amount(600)
                .on("2026-11-15", "ash", RETURNED, 6)
                .amount(120)
                .on("2026-12-01", "ash", SPLIT, 33)
                .to("half"));

    assertThat(lot(review, "ash").balance())
        .usingRecursiveComparison()
        .withComparatorForType((a, b) -> Math.abs(a - b) < 1e-9 ? 0 : 1, Double.class)
        .isEqualTo(new Whereabouts(100, 0, 6, 0, 0, 0, 30, 10, 33, 0, 33));
    assertThat(lot(review, "half").balance())
        .usingRecursiveComparison()
        .withComparatorForType((a, b) -> Math.abs(a - b) < 1e-9 ? 0 : 1, Double.class)
        .isEqualTo(new Whereabouts(0, 33, 0, 0, 0, 0, 0, 0, 0, 0, 33));
    assertThat(lot(review, "half").part()).isCloseTo(0.5, TINY);
    assertThat(lot(review, "ash").unitsSold().real()).isCloseTo(24, TINY);
    assertThat(lot(review, "half").unitsSold().real()).isCloseTo(0, TINY);
  }

  /** 60 firsts and 40 seconds of 12 mm are split by half; of one half all seconds are culled. */
  @Test
  void countBeforeASplit_isOfBothParts_andCullsAreOfTheirOwn() {
    Review review =
        review(
            new Diary()
                .on("2026-11-05", "ash", COUNTED, 60)
                .quality(Quality.FIRST)
                .trunks(12, 0.1)
                .on("2026-11-05", "ash", COUNTED, 40)
                .quality(Quality.SECOND)
                .trunks(12, 0.1)
                .on("2026-11-20", "ash", SPLIT, 50)
                .to("half")
                .on("2026-11-25", "half", CULLED, 20)
                .quality(Quality.SECOND)
                .on("2026-12-05", "ash", SPENT)
                .amount(10));
    LotReview ash = lot(review, "ash");
    LotReview half = lot(review, "half");

    assertThat(ash.alive().real()).isCloseTo(50, TINY);
    assertThat(ash.qualities().get(Quality.FIRST).real()).isCloseTo(30, TINY);
    assertThat(ash.qualities().get(Quality.SECOND).real()).isCloseTo(20, TINY);
    assertThat(half.alive().real()).isCloseTo(30, TINY);
    assertThat(half.qualities().get(Quality.FIRST).real()).isCloseTo(30, TINY);
    assertThat(half.qualities().get(Quality.SECOND).real()).isCloseTo(0, TINY);
    assertThat(half.trunkMm().isReal()).isTrue();
    assertThat(half.trunkMm().real()).isCloseTo(12.5, TINY);
    assertThat(ash.trunkMm().real()).isCloseTo(12.5, TINY);
    assertThat(half.trunkSpread().isReal()).isTrue();
    assertThat(half.balance().difference()).isCloseTo(0, TINY);
    assertThat(half.balance().culled()).isCloseTo(20, TINY);
  }

  @Test
  void countThatFindsMoreOrFewer_saysThatTheyWereFoundOrLost() {
    Review more = review(new Diary().on("2026-11-05", "ash", COUNTED, 104));
    Review fewer = review(new Diary().on("2026-11-05", "ash", COUNTED, 97));

    assertThat(lot(more, "ash").balance().found()).isCloseTo(4, TINY);
    assertThat(lot(more, "ash").balance().lost()).isZero();
    assertThat(lot(fewer, "ash").balance().lost()).isCloseTo(3, TINY);
    assertThat(lot(fewer, "ash").balance().found()).isZero();
    assertThat(lot(more, "ash").trunkMm().isReal()).isFalse();
  }
}
