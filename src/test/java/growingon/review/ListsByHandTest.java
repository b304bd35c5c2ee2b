package growingon.review;

import static growingon.nursery.record.DaybookLine.What.ARRIVED;
import static growingon.nursery.record.DaybookLine.What.COUNTED;
import static growingon.nursery.record.DaybookLine.What.DIED;
import static growingon.nursery.record.DaybookLine.What.SPLIT;
import static org.assertj.core.api.Assertions.assertThat;

import growingon.nursery.Inputs;
import growingon.nursery.lot.Lot;
import growingon.nursery.lot.Offer;
import growingon.nursery.record.DaybookLine;
import growingon.nursery.record.PastRecords;
import growingon.nursery.record.StockList;
import growingon.problem.Problem;
import growingon.problem.Where;
import growingon.project.Lots;
import growingon.project.Nurseries;
import growingon.review.written.ListedLots;
import growingon.review.written.WrittenDown;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Later stock lists as counts, by hand. The plan begins in November 2026 with the lot A of 100. */
class ListsByHandTest {
  private static final YearMonth TODAY = YearMonth.of(2027, 6);

  /** Stock lists to be written in a test; rows are of the month of their list unless said. */
  private static final class Lists {
    final List<StockList> all = new ArrayList<>();
    private final List<StockList.Row> rows = new ArrayList<>();
    private YearMonth month;

    Lists of(int year, int number) {
      close();
      month = YearMonth.of(year, number);
      return this;
    }

    /** Counted and measured. */
    Lists row(Lots lot) {
      return row(lot, month, true, true);
    }

    Lists row(Lots lot, boolean isCounted, boolean isMeasured) {
      return row(lot, month, isCounted, isMeasured);
    }

    Lists row(Lots lot, YearMonth counted, boolean isCounted, boolean isMeasured) {
      Lot built = lot.counted(counted.getYear(), counted.getMonthValue()).build();
      Where where = new Where("stock " + month, "", rows.size() + 2, "");
      rows.add(new StockList.Row(built, isCounted, isMeasured, OptionalInt.empty(), where));
      return this;
    }

    List<StockList> close() {
      if (month != null) {
        all.add(new StockList("stock " + month, month, rows));
      }
      rows.clear();
      month = null;
      return all;
    }
  }

  private static Lots lot(String name, int plants) {
    return Lots.lot(name).arrived(2025, 3).quantity(plants);
  }

  /** The list that the plan begins with. */
  private static Lists november() {
    return new Lists().of(2026, 11).row(lot("A", 100));
  }

  private static Inputs inputs(Diary diary, List<Offer> offers, Lots... lots) {
    Nurseries nursery = Nurseries.bare().species(Nurseries.bareSpecies("oak", "one"));
    for (Lots each : lots) {
      nursery.lot(each.build());
    }
    return new Inputs(
        nursery.scenario(),
        offers,
        List.of(),
        0,
        Optional.empty(),
        diary.lines(),
        Optional.empty());
  }

  private static Inputs inputs(Diary diary) {
    return inputs(diary, List.of(), lot("A", 100));
  }

  private static WrittenDown written(Inputs inputs, Lists lists, YearMonth today) {
    PastRecords past =
        new PastRecords(lists.close(), List.of(), Map.of(), Map.of(), Map.of(), List.of());
    return WrittenDown.of(inputs, past, today);
  }

  private static WrittenDown written(Diary diary, Lists lists) {
    return written(inputs(diary), lists, TODAY);
  }

  /** As in "2027-02-28 A counted 90, 12.0 mm, 0.1". */
  private static List<String> lines(WrittenDown written) {
    return written.inputs().daybook().stream().map(ListsByHandTest::told).toList();
  }

  private static String told(DaybookLine line) {
    return "%s %s %s %s, %s mm, %s"
        .formatted(
            line.date(),
            line.lot(),
            line.what(),
            told(line.quantity()),
            told(line.trunkMm()),
            told(line.trunkSpread()));
  }

  private static String told(OptionalDouble value) {
    return value.isPresent() ? Double.toString(value.getAsDouble()) : "-";
  }

  private static List<String> lots(WrittenDown written) {
    return written.inputs().scenario().lots().stream()
        .map(each -> each.name() + " " + each.quantity() + " of " + each.counted())
        .toList();
  }

  private static List<String> sentences(WrittenDown written) {
    return written.problems().stream().map(Problem::toString).toList();
  }

  @Test
  void rowsOfALaterList_areCountsAtTheEndOfTheMonthBefore_ofWhatWasCountedAndMeasured() {
    Inputs inputs =
        inputs(
            new Diary().on("2026-12-01", "A", DIED, 3),
            List.of(),
            lot("A", 100),
            lot("B", 10),
            lot("C", 10),
            lot("D", 10));
    WrittenDown written =
        written(
            inputs,
            november()
                .row(lot("B", 10))
                .row(lot("C", 10))
                .row(lot("D", 10))
                .of(2027, 3)
                .row(lot("A", 90).trunks(12, 0.1))
                .row(lot("B", 8), true, false)
                .row(lot("C", 9).sizeClass(12, 14), false, true)
                .row(lot("D", 9), false, false),
            TODAY);

    assertThat(lines(written))
        .containsExactly(
            "2026-12-01 A died 3.0, - mm, -",
            "2027-02-28 A counted 90.0, 12.0 mm, 0.1",
            "2027-02-28 B counted 8.0, - mm, -",
            "2027-02-28 C counted -, 13.0 mm, -");
    assertThat(written.problems()).isEmpty();
    assertThat(written.withoutAPrice()).isEmpty();
    assertThat(lots(written)).hasSize(4).contains("A 100 of 2026-11");
    assertThat(written.ownLines()).extracting(DaybookLine::what).containsExactly(DIED);
  }

  @Test
  void lists_areReadFromTheOneThatThePlanBeginsWith_toThatOfNextMonth() {
    Lists lists =
        new Lists()
            .of(2027, 8)
            .row(lot("A", 60))
            .of(2027, 7)
            .row(lot("A", 70))
            .of(2026, 5)
            .row(lot("A", 120))
            .of(2026, 9)
            .row(lot("A", 110));
    WrittenDown written = written(new Diary(), lists);

    assertThat(written.listMonths()).containsExactly(YearMonth.of(2026, 9), YearMonth.of(2027, 7));
    assertThat(lines(written)).containsExactly("2027-06-30 A counted 70.0, 10.0 mm, 0.0");
  }

  @Test
  void oneListAlone_andLinesOfLaterMonths_sayNothing() {
    Diary later = new Diary().on("2027-06-30", "A", DIED, 1).on("2027-07-01", "A", DIED, 1);
    WrittenDown written = written(later, new Lists().of(2027, 3).row(lot("A", 90)));

    assertThat(lines(written)).hasSize(2);
    assertThat(written.listMonths()).containsExactly(YearMonth.of(2027, 3));
    assertThat(written.ownLines()).hasSize(1);
  }

  /** A list may still show what was counted for the one before it. */
  @ParameterizedTest
  @CsvSource({"90, 12, 0", "89, 12, 1", "90, 13, 1"})
  void rowOfACountThatAListHasAlready_isNone_andAnotherForItsMonthIsAskedAbout(
      int plants, double trunk, int asked) {
    YearMonth march = YearMonth.of(2027, 3);
    WrittenDown written =
        written(
            new Diary(),
            november()
                .of(2027, 3)
                .row(lot("A", 90).trunks(12, 0.1))
                .of(2027, 5)
                .row(lot("A", plants).trunks(trunk, 0.1), march, true, true));

    assertThat(lines(written)).containsExactly("2027-02-28 A counted 90.0, 12.0 mm, 0.1");
    assertThat(sentences(written))
        .hasSize(asked)
        .allMatch(
            each ->
                each.startsWith(
                    "stock 2027-05, row 2: another list has other plants or trunks of A for the"
                        + " same month"));
  }

  @Test
  void countOfTheDaybookOnTheDay_holds_andTheRowIsLeftOut() {
    WrittenDown written =
        written(
            new Diary().on("2027-02-28", "A", COUNTED, 88),
            november().of(2027, 3).row(lot("A", 90)).of(2027, 5).row(lot("A", 85)));

    assertThat(lines(written))
        .containsExactly(
            "2027-02-28 A counted 88.0, - mm, -", "2027-04-30 A counted 85.0, 10.0 mm, 0.0");
    assertThat(sentences(written))
        .singleElement()
        .asString()
        .startsWith("stock 2027-03, row 2: the daybook has a count of A on that day");
  }

  @Test
  void lotThatAListLacks_wasGoneAtTheEndOfTheMonthBefore() {
    Lists lists =
        november().row(lot("B", 10)).of(2027, 3).row(lot("B", 9)).of(2027, 5).row(lot("B", 9));
    Inputs inputs =
        inputs(new Diary().on("2027-02-28", "A", DIED, 5), List.of(), lot("A", 100), lot("B", 10));

    assertThat(lines(written(inputs, lists, TODAY)))
        .contains("2027-02-28 A counted 0.0, - mm, -")
        .hasSize(4);
  }

  @Test
  void lotThatAListLacks_isThereStill_ifALineSpeaksOfItLater_andWasGoneIfNoneWereCounted() {
    Lists forgotten = november().of(2027, 3).row(lot("B", 9));
    WrittenDown later = written(new Diary().on("2027-03-01", "A", DIED, 5), forgotten);
    WrittenDown none =
        written(new Diary(), november().of(2027, 3).row(lot("A", 0)).of(2027, 5).row(lot("B", 9)));

    assertThat(lines(later)).noneMatch(each -> each.contains("A counted"));
    assertThat(lines(none)).filteredOn(each -> each.contains("A counted")).hasSize(1);
  }

  /** One new lot like the one that is gone may be it; of two nobody knows. */
  @ParameterizedTest
  @CsvSource({"ash, 2025, '', 1", "oak, 2025, '', 0", "ash, 2024, '', 0", "ash, 2025, ash, 0"})
  void newLotLikeOneThatIsGone_mayBeItByAnotherName(
      String species, int year, String other, int asked) {
    Lists lists = november().of(2027, 3).row(lot("B", 90).species(species).arrived(year, 3));
    if (!other.isEmpty()) {
      lists.row(lot("C", 90).species(other));
    }

    assertThat(sentences(written(new Diary(), lists)))
        .filteredOn(each -> each.contains("this lot is not on the next list"))
        .hasSize(asked)
        .allMatch(each -> each.startsWith("stock 2026-11, row 2: ") && each.contains("if it is B"));
  }

  @Test
  void lotThatIsNewOnAList_standsAtTheEndOfTheMonthBefore_ifItCameByThen() {
    WrittenDown written =
        written(
            new Diary(),
            november()
                .of(2027, 3)
                .row(lot("A", 100))
                .row(lot("stood", 12))
                .row(lot("came", 13).arrived(2027, 3))
                .row(lot("potted", 14).pot("any").potted(2027, 3))
                .row(lot("cut back", 15).rootWork(2027, 3))
                .row(lot("trained", 16).trainingSince(2027, 3)));

    assertThat(lots(written))
        .containsExactly(
            "A 100 of 2026-11",
            "stood 12 of 2027-02",
            "came 13 of 2027-03",
            "potted 14 of 2027-03",
            "cut back 15 of 2027-03",
            "trained 16 of 2027-03");
    assertThat(lines(written))
        .containsExactly(
            "2027-02-28 stood counted 12.0, 10.0 mm, 0.0",
            "2027-02-28 A counted 100.0, 10.0 mm, 0.0");
    assertThat(written.withoutAPrice())
        .containsExactly("stood", "came", "potted", "cut back", "trained");
    assertThat(sentences(written))
        .hasSize(5)
        .first()
        .asString()
        .startsWith("stock 2027-03, row 3: the plan does not have stood, and no line says how");
  }

  @Test
  void lotThatIsNewOnAList_hasTheTrunksOfTheFirstTimeThatTheyWereMeasured() {
    WrittenDown written =
        written(
            new Diary(),
            november()
                .of(2027, 3)
                .row(lot("A", 100))
                .row(lot("B", 12), true, false)
                .row(lot("C", 12), true, false)
                .of(2027, 5)
                .row(lot("A", 100))
                .row(lot("B", 12).trunks(17, 0.2))
                .row(lot("C", 12), true, false)
                .of(2027, 6)
                .row(lot("A", 100))
                .row(lot("B", 12).trunks(19, 0.2))
                .row(lot("C", 12), true, false));

    assertThat(written.inputs().scenario().lots())
        .extracting(each -> each.name() + " " + each.trunks().meanMm())
        .containsExactly("A 10.0", "B 17.0", "C 10.0");
    assertThat(sentences(written))
        .filteredOn(each -> each.contains("no list has measured"))
        .singleElement()
        .asString()
        .startsWith("stock 2027-03, row 4: no list has measured trunks of C, so 10 mm are taken");
  }

  @Test
  void lotThatIsNewWithoutANumber_beginsWhenItHasOne_ifOnlyAboutSo() {
    WrittenDown written =
        written(
            new Diary(),
            november()
                .of(2027, 3)
                .row(lot("A", 100))
                .row(lot("B", 0), false, true)
                .of(2027, 5)
                .row(lot("A", 100))
                .row(lot("B", 12), false, true));

    assertThat(lots(written)).containsExactly("A 100 of 2026-11", "B 12 of 2027-04");
    assertThat(sentences(written))
        .filteredOn(each -> each.contains("no number"))
        .singleElement()
        .asString()
        .startsWith("stock 2027-03, row 3: no number of plants of B, with which the lot could");
  }

  private static Offer offer(String name) {
    return Offer.named(name, lot(name, 0).arrived(2027, 2).build())
        .currency("GBP")
        .breaks(List.of(new Offer.PriceBreak(1, 2)))
        .arrival(YearMonth.of(2027, 2))
        .build();
  }

  @Test
  void offerThatThePlanDoesNotTake_cameAsItIsListed_unlessALineSaysSo() {
    Inputs inputs =
        inputs(
            new Diary().on("2027-02-05", "told", ARRIVED, 38),
            List.of(offer("listed"), offer("told"), offer("left")),
            lot("A", 100));
    WrittenDown written =
        written(
            inputs,
            november()
                .of(2027, 3)
                .row(lot("A", 100))
                .row(lot("listed", 0).arrived(2027, 2), false, true)
                .row(lot("told", 37).arrived(2027, 2))
                .of(2027, 4)
                .row(lot("A", 100))
                .row(lot("listed", 40).arrived(2027, 2))
                .row(lot("told", 37).arrived(2027, 2)),
            TODAY);

    assertThat(lines(written))
        .contains(
            "2027-02-05 told arrived 38.0, - mm, -",
            "2027-02-01 listed arrived 40.0, - mm, -",
            "2027-03-31 listed counted 40.0, 10.0 mm, 0.0")
        .filteredOn(each -> each.contains("arrived"))
        .hasSize(2);
    assertThat(lots(written)).containsExactly("A 100 of 2026-11");
    assertThat(sentences(written))
        .singleElement()
        .asString()
        .startsWith("stock 2027-04, row 3: the plan does not take the offer listed, but it is");
    assertThat(written.withoutAPrice()).isEmpty();
  }

  private static Lots gamble() {
    return Lots.lot("gamble").arrived(2027, 2).bought(8, 50);
  }

  @Test
  void boughtLot_thatALaterListLacks_neverCame_unlessALineOrAListSpeaksOfIt() {
    Lists lacked = november().of(2027, 3).row(lot("A", 100));
    Lists beforeIt = november().of(2027, 2).row(lot("A", 100));
    Lists listed = november().of(2027, 3).row(lot("A", 100)).row(gamble());
    Diary told = new Diary().on("2027-02-05", "gamble", ARRIVED, 100);
    Inputs untold = inputs(new Diary(), List.of(), lot("A", 100), gamble());

    WrittenDown never = written(untold, lacked, TODAY);
    assertThat(lots(never)).containsExactly("A 100 of 2026-11");
    assertThat(sentences(never))
        .singleElement()
        .asString()
        .startsWith("stock 2027-03: by the plan gamble came in 2027-02, but this list lacks it");
    for (WrittenDown there :
        List.of(
            written(untold, beforeIt, TODAY),
            written(untold, listed, TODAY),
            written(inputs(told, List.of(), lot("A", 100), gamble()), lacked, TODAY))) {
      assertThat(lots(there)).containsExactly("A 100 of 2026-11", "gamble 100 of 2027-02");
      assertThat(there.problems()).isEmpty();
    }
  }

  /** A lot that the daybook splits off before a list has it starts with the split. */
  @ParameterizedTest
  @CsvSource({"2026-11-20, 0", "2026-12-05, 1"})
  void rowsOfALotThatWasSplitOff_areCounts_unlessAListHadItBefore(String day, int asNew) {
    WrittenDown written =
        written(
            new Diary().on(day, "A", SPLIT, 30).to("B"),
            november()
                .of(2026, 12)
                .row(lot("A", 70))
                .row(lot("B", 30))
                .of(2027, 3)
                .row(lot("A", 70))
                .row(lot("B", 28)));

    assertThat(written.withoutAPrice()).hasSize(asNew);
    assertThat(lots(written)).hasSize(1 + asNew);
    assertThat(lines(written))
        .contains(
            "2026-11-30 B counted 30.0, 10.0 mm, 0.0", "2027-02-28 B counted 28.0, 10.0 mm, 0.0");
  }

  @Test
  void rowOfAnotherSpecies_isNoCount_andTheNextOneIs() {
    WrittenDown written =
        written(
            new Diary(),
            november().of(2027, 3).row(lot("A", 90).species("oak")).of(2027, 5).row(lot("A", 80)));

    assertThat(lines(written)).containsExactly("2027-04-30 A counted 80.0, 10.0 mm, 0.0");
    assertThat(sentences(written))
        .singleElement()
        .asString()
        .startsWith("stock 2027-03, row 2: this lot was of the species ash on the list before");
  }

  /** What a fit does not look at: rows from before its time, and counts after it. */
  @Test
  void rowsFromBeforeOrAfterWhatIsLookedAt_areNoCounts() {
    Lists lists =
        november()
            .of(2027, 3)
            .row(lot("A", 90))
            .of(2027, 5)
            .row(lot("A", 80))
            .of(2027, 7)
            .row(lot("B", 80));
    ListedLots listed =
        ListedLots.of(
            lists.close(), List.of(), YearMonth.of(2027, 3), YearMonth.of(2027, 3), Set.of());

    assertThat(listed.counts()).isEmpty();
    assertThat(listed.firstRows().get("A").lot().quantity()).isEqualTo(90);
    assertThat(listed.unused())
        .containsExactly(
            new ListedLots.Unused(
                "A",
                new Where("stock 2026-11", "", 2, ""),
                YearMonth.of(2026, 10),
                ListedLots.Why.TOO_OLD,
                "ash"));
    assertThat(listed.problems())
        .singleElement()
        .asString()
        .contains("records from before this month are too old to be learnt from (2027-03)");
    assertThat(listed.rows().get("A")).hasSize(3);
  }
}
