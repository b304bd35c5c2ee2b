package growingon.review;

import static growingon.nursery.record.DaybookLine.What.ARRIVED;
import static growingon.nursery.record.DaybookLine.What.SOLD;
import static growingon.nursery.record.DaybookLine.What.SPENT;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import growingon.nursery.lot.Lot;
import growingon.nursery.record.PastRecords;
import growingon.nursery.record.StockList;
import growingon.problem.Where;
import growingon.project.Lots;
import growingon.project.Nurseries;
import growingon.review.book.GonePriced;
import growingon.review.bought.BoughtReview;
import growingon.review.bought.Cause;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/** Plants that a later stock list lacks and of which no line says what became of them, by hand. */
class GoneWithoutALineTest {
  private static final Offset<Double> TINY = within(1e-6);
  private static final YearMonth TODAY = YearMonth.of(2028, 6);

  private static StockList list(YearMonth month, int row, Lots... lots) {
    List<StockList.Row> rows = new ArrayList<>();
    for (Lots each : lots) {
      Lot lot = each.counted(month.getYear(), month.getMonthValue()).build();
      rows.add(
          new StockList.Row(
              lot,
              true,
              false,
              OptionalInt.empty(),
              new Where("stock " + month, "", row + rows.size(), "")));
    }
    return new StockList("stock " + month, month, rows);
  }

  private static Lots ash() {
    return Lots.lot("ash").arrived(2025, 3).notBefore(2030, 1).quality(0.5, 0.5, true);
  }

  private static Review review(Nurseries nursery, Diary diary, StockList later) {
    PastRecords lists =
        new PastRecords(
            List.of(list(YearMonth.of(2026, 11), 2, ash()), later),
            List.of(),
            Map.of(),
            Map.of(),
            Map.of(),
            List.of());
    return Review.of(diary.of(nursery.scenario()), lists, TODAY, Optional.empty(), 1);
  }

  private static Nurseries nursery() {
    return Nurseries.bare().seasons(2).sellsAll("one", "any", 20).lot(ash().build());
  }

  /**
   * 88 of 100 are on the list of March: 12 are gone by the end of February, firsts at 20 at most.
   */
  @Test
  void plantsThatAListLacks_areWorthWhatTheirSaleWouldHaveBrought() {
    Review review =
        review(
            nursery(),
            new Diary().on("2026-12-01", "ash", SPENT).amount(5),
            list(YearMonth.of(2027, 3), 2, ash().quantity(88)));

    assertThat(review.gone()).hasSize(1);
    GonePriced gone = review.gone().get(0);
    assertThat(gone.root()).isEqualTo("ash");
    assertThat(gone.species()).isEqualTo("ash");
    assertThat(gone.gone().plants()).isCloseTo(12, TINY);
    assertThat(gone.gone().counted()).isEqualTo(LocalDate.of(2027, 2, 28));
    assertThat(gone.worth()).isCloseTo(240, TINY);
    assertThat(gone.planned()).contains(new GonePriced.Planned(0, 0));
  }

  /** 15 were sold for 1,149, two months apart: 85 were there, and 12 more firsts are gone. */
  @Test
  void plantsThatAListLacks_areWorthTheirOwnSaleAlone_whateverElseWasSold() {
    Review review =
        review(
            nursery(),
            new Diary()
                .on("2026-12-10", "ash", SOLD, 5)
                .amount(999)
                .on("2027-02-10", "ash", SOLD, 10)
                .amount(150),
            list(YearMonth.of(2027, 3), 2, ash().quantity(73)));

    assertThat(review.gone()).hasSize(1);
    assertThat(review.gone().get(0).gone().plants()).isCloseTo(12, TINY);
    assertThat(review.gone().get(0).worth()).isCloseTo(240, TINY);
  }

  @Test
  void listThatHasAll_lacksNothing() {
    Review review =
        review(
            nursery(),
            new Diary().on("2026-12-01", "ash", SPENT).amount(5),
            list(YearMonth.of(2027, 3), 2, ash().quantity(100)));

    assertThat(review.gone()).isEmpty();
  }

  /** Of a bought lot 15 of 100 are gone: no loss, but 300 that it may have brought. */
  @Test
  void plantsGoneOfABoughtLot_areAPartOfTheirOwn() {
    Lots bought = Lots.lot("gamble").arrived(2026, 12).notBefore(2030, 1).bought(8, 50);
    Review review =
        review(
            nursery().lot(bought.build()),
            new Diary().on("2026-12-03", "gamble", ARRIVED, 100),
            list(YearMonth.of(2027, 3), 2, ash(), bought.quantity(85)));
    BoughtReview gamble = review.bought().get(0);

    assertThat(gamble.missing().plants()).isCloseTo(15, TINY);
    assertThat(gamble.missing().worth()).isCloseTo(300, TINY);
    assertThat(gamble.steps())
        .filteredOn(each -> each.cause() == Cause.LOSSES || each.cause() == Cause.NO_LINE)
        .satisfiesExactly(
            losses -> assertThat(losses.difference()).isCloseTo(0, TINY),
            noLine -> assertThat(noLine.difference()).isCloseTo(-15, TINY));
  }
}
