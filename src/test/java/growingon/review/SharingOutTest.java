package growingon.review;

import static growingon.nursery.record.DaybookLine.What.ARRIVED;
import static growingon.nursery.record.DaybookLine.What.COUNTED;
import static growingon.nursery.record.DaybookLine.What.RETURNED;
import static growingon.nursery.record.DaybookLine.What.SOLD;
import static growingon.nursery.record.DaybookLine.What.SPLIT;
import static org.assertj.core.api.Assertions.assertThat;

import growingon.nursery.market.Grade;
import growingon.nursery.market.Quality;
import growingon.nursery.record.DaybookLine;
import growingon.nursery.record.DaybookLine.What;
import growingon.nursery.record.Receipt;
import growingon.problem.Problem;
import growingon.problem.Where;
import growingon.project.Lots;
import growingon.project.Nurseries;
import growingon.review.written.SharedReceipt;
import growingon.review.written.SharingOut;
import growingon.review.written.WrittenDown;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** Receipts shared out to lots, by hand. Amounts are 10 a plant unless said. */
class SharingOutTest {
  private static final YearMonth TODAY = YearMonth.of(2027, 6);

  /** Receipts of a till to be written in a test. */
  private static final class Till {
    final List<Receipt> rows = new ArrayList<>();

    /** Lot, species or grade may be empty. */
    Till on(String day, String lot, String species, String grade, int plants, double amount) {
      LocalDate date = LocalDate.parse(day);
      rows.add(
          new Receipt(
              YearMonth.from(date),
              Optional.of(date),
              said(lot),
              said(species),
              said(grade),
              plants,
              amount,
              new Where("receipts.csv", "", rows.size() + 2, "")));
      return this;
    }

    Till ash(String day, int plants) {
      return on(day, "", "ash", "", plants, 10 * plants);
    }

    private static Optional<String> said(String name) {
      return Optional.of(name).filter(each -> !each.isEmpty());
    }
  }

  private static SharingOut share(Nurseries nursery, Diary diary, Till till, YearMonth today) {
    return SharingOut.of(till.rows, Diary.inputs(nursery.scenario(), diary.lines()), today);
  }

  private static SharingOut share(Nurseries nursery, Diary diary, Till till) {
    return share(nursery, diary, till, TODAY);
  }

  /** As in "SHARED old 20 for 200". */
  private static List<String> told(SharingOut sharing) {
    return sharing.shared().stream().map(SharingOutTest::told).toList();
  }

  private static String told(SharedReceipt part) {
    return "%s %s %.0f for %.0f"
        .formatted(part.how().name(), part.lot().orElse("-"), part.plants(), part.amount());
  }

  /** As in "2026-12-04 old sold 20 for 200 by a receipt". */
  private static List<String> lines(SharingOut sharing) {
    return sharing.lines().stream()
        .map(
            line ->
                "%s %s %s %.0f for %.0f %s"
                    .formatted(
                        line.date(),
                        line.lot(),
                        line.what(),
                        line.quantity().orElseThrow(),
                        line.amount().orElse(-1),
                        line.note())
                    .strip())
        .toList();
  }

  private static List<String> sentences(SharingOut sharing) {
    return sharing.problems().stream().map(Problem::toString).toList();
  }

  private static Nurseries lotOf100() {
    return Nurseries.bare().lot(Lots.lot("lot").arrived(2024, 3).build());
  }

  private static Nurseries oldAndYoung() {
    return Nurseries.bare()
        .lot(Lots.lot("young").quantity(30).arrived(2025, 3).build())
        .lot(Lots.lot("old").quantity(20).arrived(2024, 3).build());
  }

  @Test
  void saleOfTheDaybookPaidInPart_isTwoLinesAndItsHoursStandOnce() {
    Diary diary = new Diary().on("2026-12-04", "old", SOLD, 8).hours(3);

    List<DaybookLine> lines =
        share(oldAndYoung(), diary, new Till().on("2026-12-04", "old", "", "", 5, 100)).lines();

    assertThat(lines)
        .extracting(DaybookLine::quantity)
        .containsExactly(OptionalDouble.of(5), OptionalDouble.of(3));
    assertThat(lines)
        .extracting(DaybookLine::amount)
        .containsExactly(OptionalDouble.of(100), OptionalDouble.empty());
    assertThat(lines.stream().mapToDouble(line -> line.hours().orElse(0)).sum()).isEqualTo(3);
  }

  /** 27 take all of the older two and 2 of the youngest; of the next 40 there are 28. */
  @Test
  void receiptOfASpecies_isOfTheOldestLots_ofOneAgeByName_andWhatIsLeftFitsNone() {
    Nurseries nursery = oldAndYoung().lot(Lots.lot("elder").quantity(5).arrived(2024, 3).build());
    SharingOut sharing =
        share(
            nursery,
            new Diary(),
            new Till()
                .on("2026-12-05", "", "ash", "any", 40, 800)
                .on("2026-12-04", "", "ash", "any", 27, 270));

    assertThat(told(sharing))
        .containsExactly(
            "SHARED elder 5 for 50",
            "SHARED old 20 for 200",
            "SHARED young 2 for 20",
            "SHARED young 28 for 560",
            "NONE - 12 for 240");
    assertThat(WrittenDown.ofNoLot(sharing.shared())).isEqualTo(240);
    assertThat(lines(sharing))
        .containsExactly(
            "2026-12-04 elder sold 5 for 50 by a receipt, shared out",
            "2026-12-04 old sold 20 for 200 by a receipt, shared out",
            "2026-12-04 young sold 2 for 20 by a receipt, shared out",
            "2026-12-05 young sold 28 for 560 by a receipt, shared out");
    assertThat(sharing.lines()).extracting(DaybookLine::grade).containsOnly(Optional.of("any"));
    assertThat(sentences(sharing))
        .singleElement()
        .asString()
        .startsWith("receipts.csv, row 2, column number: fits no lot: so many of the species")
        .contains("(12 plants)");
  }

  private static Nurseries thinAndThick() {
    return Nurseries.bare()
        .ladder("two", new Grade("small", 1, 8, 0, 12), new Grade("big", 2, 20, 0, 12))
        .species(Nurseries.bareSpecies("oak", "two"))
        .lot(Lots.lot("thin").species("oak").quantity(10).arrived(2023, 3).build())
        .lot(Lots.lot("thick").species("oak").quantity(10).trunks(25, 0).arrived(2024, 3).build())
        .lot(Lots.lot("ash").quantity(10).arrived(2022, 3).build());
  }

  @Test
  void receiptOfAGrade_isOfTheLotsThatHadItOrAHigherOne() {
    SharingOut sharing =
        share(
            thinAndThick(),
            new Diary(),
            new Till()
                .on("2026-12-04", "", "oak", "big", 4, 400)
                .on("2026-12-05", "", "oak", "small", 12, 120)
                .on("2026-12-06", "", "oak", "big", 5, 500)
                .on("2026-12-07", "", "oak", "huge", 1, 10));

    assertThat(told(sharing))
        .containsExactly(
            "SHARED thick 4 for 400",
            "SHARED thin 10 for 100",
            "SHARED thick 2 for 20",
            "SHARED thick 4 for 400",
            "NONE - 1 for 100",
            "NONE - 1 for 10");
  }

  /** None stand at the end of December: they were sold in it, and none are there in January. */
  @Test
  void gradeThatALotHadAtTheLastMonthsEnd_isSoldInTheMonth_andNotLater() {
    Diary none = new Diary().on("2026-12-31", "thick", COUNTED, 0);
    SharingOut sharing =
        share(
            thinAndThick(),
            none,
            new Till()
                .on("2026-12-10", "", "oak", "big", 3, 30)
                .on("2027-01-10", "", "oak", "big", 3, 30)
                .on("2026-11-10", "", "oak", "big", 3, 30));

    assertThat(told(sharing))
        .containsExactly("SHARED thick 3 for 30", "SHARED thick 3 for 30", "NONE - 3 for 30");
  }

  /** By its plan all would be sold in November; only what is known to be sold has left. */
  @Test
  void plantsThatThePlanWouldHaveSold_areThereUntilSomethingSaysThatTheyLeft() {
    SharingOut sharing =
        share(
            lotOf100().sellsAll("one", "any", 20),
            new Diary(),
            new Till().on("2027-03-10", "", "ash", "any", 90, 900));

    assertThat(told(sharing)).containsExactly("SHARED lot 90 for 900");
  }

  @Test
  void lotThatHasNotCome_hasNoGrade_andSellsNothing() {
    Nurseries nursery =
        Nurseries.bare().lot(Lots.lot("gamble").arrived(2027, 2).bought(8, 0).build());
    SharingOut sharing =
        share(
            nursery,
            new Diary(),
            new Till()
                .on("2027-01-10", "", "ash", "any", 3, 30)
                .on("2027-01-11", "", "ash", "", 3, 30)
                .on("2027-02-11", "", "ash", "any", 3, 30));

    assertThat(told(sharing))
        .containsExactly("NONE - 3 for 30", "NONE - 3 for 30", "SHARED gamble 3 for 30");
  }

  /** Of 100 alive 60 are counted on 20 January: 40 left, of which a line may explain some. */
  @ParameterizedTest
  @CsvSource({
    "DIED, 2026-12-05, 36, 60",
    "CULLED, 2026-12-05, 36, 60",
    "USED, 2026-12-05, 36, 60",
    "LOST, 2026-12-05, 36, 60",
    "FOUND, 2026-12-05, 44, 60",
    "RETURNED, 2026-12-05, 44, 60",
    "ARRIVED, 2026-12-05, 44, 60",
    "SPENT, 2026-12-05, 40, 60",
    "DIED, 2027-01-20, 36, 60",
    "DIED, 2027-01-21, 40, 56",
    "FOUND, 2027-01-21, 40, 64",
    "DIED, 2026-10-30, 40, 60"
  })
  void plantsThatCanHaveLeft_areThoseThatNoLineExplains(
      What what, String day, int before, int after) {
    Diary diary =
        new Diary()
            .on(day, "lot", what, 4)
            .hours(1)
            .on("2027-01-20", "lot", COUNTED, 45)
            .quality(Quality.FIRST)
            .on("2027-01-20", "lot", COUNTED, 15)
            .quality(Quality.SECOND);

    assertThat(
            told(share(lotOf100(), diary, new Till().ash("2027-01-20", 90).ash("2027-01-21", 90))))
        .contains(
            "SHARED lot %d for %d".formatted(before, 10 * before),
            "SHARED lot %d for %d".formatted(after, 10 * after));
  }

  @ParameterizedTest
  @EnumSource(names = {"SPLIT", "MOVED"})
  void plantsThatWentToAnotherLot_canHaveLeftThatOne(What what) {
    Nurseries nursery = lotOf100().lot(Lots.lot("next").quantity(50).arrived(2025, 3).build());
    Diary diary =
        new Diary()
            .on("2026-12-05", "lot", what, 30)
            .to("next")
            .on("2026-12-06", "next", SPLIT, 10)
            .to("own");

    assertThat(told(share(nursery, diary, new Till().ash("2026-12-20", 155))))
        .containsExactly(
            "SHARED lot 70 for 700",
            "SHARED next 70 for 700",
            "SHARED own 10 for 100",
            "NONE - 5 for 50");
  }

  /** 60 and 40 came in the month in which the first came; 10 more came later. */
  @Test
  void plantsOfABoughtLot_areThoseThatCame_howeverManyLinesSaySo() {
    Nurseries nursery =
        Nurseries.bare().lot(Lots.lot("gamble").arrived(2027, 2).bought(8, 0).build());
    Diary diary =
        new Diary()
            .on("2027-02-03", "gamble", ARRIVED, 60)
            .on("2027-02-10", "gamble", ARRIVED, 40)
            .on("2027-03-10", "gamble", ARRIVED, 10);

    assertThat(told(share(nursery, diary, new Till().ash("2027-03-20", 150))))
        .containsExactly("SHARED gamble 110 for 1100", "NONE - 40 for 400");
  }

  /** Plants that came back can be sold again. */
  @Test
  void creditNote_goesToTheLotLastSoldFrom_andItsPlantsCanBeSoldAgain() {
    SharingOut sharing =
        share(
            oldAndYoung(),
            new Diary(),
            new Till()
                .ash("2026-12-01", 3)
                .on("2026-12-02", "young", "ash", "", 5, 50)
                .ash("2026-12-10", -2)
                .ash("2026-12-11", -4)
                .ash("2026-12-12", -4)
                .ash("2026-12-13", 20));

    assertThat(told(sharing))
        .containsExactly(
            "SHARED old 3 for 30",
            "NAMED young 5 for 50",
            "SHARED young -2 for -20",
            "SHARED young -3 for -30",
            "SHARED old -1 for -10",
            "SHARED old -2 for -20",
            "NONE - -2 for -20",
            "SHARED old 20 for 200");
    assertThat(lines(sharing))
        .contains(
            "2026-12-02 young sold 5 for 50 by a receipt",
            "2026-12-10 young returned 2 for 20 by a receipt, shared out");
    assertThat(sentences(sharing))
        .singleElement()
        .asString()
        .startsWith(
            "receipts.csv, row 6, column number: fits no lot: no receipt before it sold so many")
        .contains("(2 plants)");
  }

  @Test
  void creditNote_ofAnotherGradeOrSpeciesThanWasSold_fitsNone_andOneThatNamesItsLotIsOfIt() {
    SharingOut sharing =
        share(
            thinAndThick(),
            new Diary(),
            new Till()
                .on("2026-12-04", "", "oak", "big", 4, 40)
                .on("2026-12-05", "", "oak", "small", -1, -10)
                .on("2026-12-06", "", "ash", "big", -1, -10)
                .on("2026-12-07", "", "oak", "", -1, -10)
                .on("2026-12-08", "", "oak", "big", -1, -10)
                .on("2026-12-09", "ash", "ash", "", -1, -10));

    assertThat(told(sharing))
        .containsExactly(
            "SHARED thick 4 for 40",
            "NONE - -1 for -10",
            "NONE - -1 for -10",
            "SHARED thick -1 for -10",
            "SHARED thick -1 for -10",
            "NAMED ash -1 for -10");
  }

  @Test
  void creditNote_ofAReturnOfTheDaybook_givesItItsMoney() {
    SharingOut sharing =
        share(
            oldAndYoung(),
            new Diary().on("2027-01-05", "old", RETURNED, 2).on("2027-01-05", "old", SOLD, 2),
            new Till().on("2027-01-31", "old", "", "", -3, -30));

    assertThat(told(sharing)).containsExactly("IN_DAYBOOK old -2 for -20", "NAMED old -1 for -10");
    assertThat(lines(sharing))
        .containsExactly(
            "2027-01-31 old returned 1 for 10 by a receipt",
            "2027-01-05 old returned 2 for 20",
            "2027-01-05 old sold 2 for -1");
  }

  @Test
  void receiptFromBeforeThePlan_ofNoPlants_orOfNoneOfOurs_isOfNoLot_andAsksNothing() {
    SharingOut sharing =
        share(
            oldAndYoung(),
            new Diary(),
            new Till()
                .on("2026-10-31", "", "ash", "", 4, 40)
                .on("2026-12-01", "old", "ash", "", 0, 7)
                .on("2026-12-02", "", "", "", 5, 50)
                .on("2026-12-03", "", "", "", -5, -50));

    assertThat(told(sharing))
        .containsExactly(
            "BEFORE - 4 for 40", "NONE old 0 for 7", "NONE - 5 for 50", "NONE - -5 for -50");
    assertThat(sharing.lines()).isEmpty();
    assertThat(sharing.problems()).isEmpty();
    assertThat(WrittenDown.ofNoLot(sharing.shared())).isEqualTo(7);
  }

  @Test
  void receiptFromAfterThePlan_isOfTheLotThatItNames_elseOfNone() {
    SharingOut sharing =
        share(
            oldAndYoung().seasons(1),
            new Diary(),
            new Till()
                .on("2027-10-31", "", "ash", "", 1, 10)
                .on("2027-11-01", "", "ash", "", 1, 10)
                .on("2027-11-02", "old", "ash", "", 1, 10),
            YearMonth.of(2027, 12));

    assertThat(told(sharing))
        .containsExactly("SHARED old 1 for 10", "NONE - 1 for 10", "NAMED old 1 for 10");
  }

  /** Two receipts pay the 8 of one sale; what is more is shared out, also of another month. */
  @Test
  void receiptsOfASaleOfTheDaybook_giveItTheirMoney_andWhatIsMoreIsAnotherSale() {
    SharingOut sharing =
        share(
            oldAndYoung(),
            new Diary().on("2026-12-04", "young", SOLD, 8),
            new Till()
                .on("2026-11-30", "", "ash", "", 1, 10)
                .on("2026-12-10", "", "ash", "", 5, 100)
                .on("2026-12-31", "young", "", "", 4, 88));

    assertThat(told(sharing))
        .containsExactly(
            "SHARED old 1 for 10",
            "IN_DAYBOOK young 5 for 100",
            "IN_DAYBOOK young 3 for 66",
            "NAMED young 1 for 22");
    assertThat(lines(sharing))
        .containsExactly(
            "2026-11-30 old sold 1 for 10 by a receipt, shared out",
            "2026-12-31 young sold 1 for 22 by a receipt",
            "2026-12-04 young sold 8 for 166");
  }

  @Test
  void saleOfTheDaybook_keepsItsOwnMoney_andIsNoneOfAnotherLotSpeciesOrGrade() {
    SharingOut sharing =
        share(
            thinAndThick(),
            new Diary().on("2026-12-04", "thick", SOLD, 2).grade("big").amount(55),
            new Till()
                .on("2026-12-10", "thin", "", "", 1, 10)
                .on("2026-12-11", "", "ash", "", 1, 10)
                .on("2026-12-12", "", "oak", "small", 1, 10)
                .on("2026-12-13", "", "oak", "big", 2, 20));

    assertThat(told(sharing))
        .containsExactly(
            "NAMED thin 1 for 10",
            "SHARED ash 1 for 10",
            "SHARED thin 1 for 10",
            "IN_DAYBOOK thick 2 for 20");
    assertThat(lines(sharing)).contains("2026-12-04 thick sold 2 for 55").hasSize(4);
  }
}
