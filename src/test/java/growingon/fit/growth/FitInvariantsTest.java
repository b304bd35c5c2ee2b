package growingon.fit.growth;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import growingon.fit.Books;
import growingon.fit.Fit;
import growingon.fit.RecordRow;
import growingon.fit.evidence.Evidence;
import growingon.fit.evidence.Interval;
import growingon.fit.past.FitRecords;
import growingon.fit.past.Past;
import growingon.fit.value.Lacking;
import growingon.fit.value.Value;
import growingon.nursery.lot.Lot;
import growingon.nursery.market.Grade;
import growingon.nursery.record.StockList;
import growingon.nursery.species.Curve;
import growingon.nursery.species.Species;
import growingon.nursery.species.Sure;
import growingon.project.Lots;
import growingon.project.Nurseries;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What must hold of every fit, whatever the nursery. */
class FitInvariantsTest {
  private static final Kind OAK = new Kind("oak", "pot");

  private static Nurseries nursery(Curve curve) {
    return Nurseries.bare()
        .ladder("one", new Grade("stout", 1, 24, 0, 12))
        .species(Books.species("oak", curve))
        .lotSpread(Books.LOT_SPREAD)
        .firstMonth(2026, 11);
  }

  private static Nurseries levelling() {
    return nursery(new Curve.Levelling(95, 0.036));
  }

  private static Lot row(int lot, int year, double trunk) {
    return Lots.lot("lot " + lot)
        .species("oak")
        .quantity(90 + lot - (year - 2023))
        .trunks(trunk, 0.15)
        .arrived(2022, 10)
        .counted(year, 11)
        .build();
  }

  /** Counts that are the engine's own, at a speed. */
  private static Books books(int lots, double speed, int measured) {
    double[] first = new double[lots];
    double[] second = new double[lots];
    for (int lot = 0; lot < lots; lot++) {
      first[lot] = 15.3 + lot;
      second[lot] = first[lot] + 3;
    }
    Past past = Past.of(books(first, second, measured).records());
    List<Interval> intervals = Evidence.of(past).intervals();
    double[] means =
        new Expectations(past, intervals, List.of(OAK), past.assumed())
            .means(new Speeds(Map.of(OAK, Math.log(speed))));
    for (int i = 0; i < means.length; i++) {
      second[Integer.parseInt(intervals.get(i).subject().substring(4))] = means[i];
    }
    return books(first, second, measured);
  }

  private static Books books(double[] first, double[] second, int measured) {
    List<Object> before = new ArrayList<>();
    List<Object> after = new ArrayList<>();
    Books books = Books.of(levelling());
    for (int lot = 0; lot < first.length; lot++) {
      before.addAll(List.of(row(lot, 2023, first[lot]), measured));
      after.addAll(List.of(row(lot, 2024, second[lot]), measured));
      books.sold("2024-05-20", "lot " + lot, 4, "stout");
    }
    return books.list(2023, 11, before.toArray()).list(2024, 11, after.toArray());
  }

  private static Value speed(FitRecords records) {
    return Fit.of(records, List.of()).values().stream()
        .filter(each -> each.what() == Value.What.GROWTH && each.species().equals("oak"))
        .findFirst()
        .orElseThrow();
  }

  @Property(tries = 20)
  void counts_thatAreTheEnginesOwn_giveTheSpeedAssumed(
      @ForAll @IntRange(min = 1, max = 6) int lots,
      @ForAll @IntRange(min = 5, max = 80) int measured) {
    assertThat(speed(books(lots, 1, measured).records()).value()).isCloseTo(1, within(1e-6));
  }

  @Property(tries = 20)
  void counts_ofAFasterNursery_giveASpeedBetween_thatRisesWithTheirNumber(
      @ForAll @DoubleRange(min = 1.05, max = 1.5) double truth,
      @ForAll @IntRange(min = 1, max = 3) int few,
      @ForAll @IntRange(min = 1, max = 5) int besides,
      @ForAll @IntRange(min = 10, max = 80) int measured) {
    double ofFew = speed(books(few, truth, measured).records()).value();
    double ofMore = speed(books(few + besides, truth, measured).records()).value();

    assertThat(ofFew).isBetween(1.0, truth);
    assertThat(ofMore).isBetween(ofFew, truth);
  }

  @Property(tries = 20)
  void moreTrunksMeasured_neverWidenARange(
      @ForAll @IntRange(min = 1, max = 5) int lots,
      @ForAll @IntRange(min = 5, max = 40) int few,
      @ForAll @IntRange(min = 1, max = 40) int besides) {
    double ofFew = width(speed(books(lots, 1, few).records()));
    double ofMore = width(speed(books(lots, 1, few + besides).records()));

    assertThat(ofMore).isLessThan(ofFew);
  }

  @Property(tries = 20)
  void secondCount_neverWidensARange(
      @ForAll @IntRange(min = 1, max = 5) int lots,
      @ForAll @IntRange(min = 5, max = 60) int measured) {
    Books once = books(lots, 1, measured);
    double before = width(speed(once.records()));
    List<Object> third = new ArrayList<>();
    for (int lot = 0; lot < lots; lot++) {
      third.addAll(List.of(row(lot, 2025, 20.9 + lot), measured));
    }
    assertThat(width(speed(once.list(2025, 11, third.toArray()).records()))).isLessThan(before);
  }

  /** A lot that stands on one list only tells nothing. */
  @Test
  void lotWithoutRecords_changesNoDigit() {
    List<Value> without = Fit.of(books(3, 1.1, 20).records(), List.of()).values();
    Books with = books(3, 1.1, 20);
    Lot alone =
        Lots.lot("lot 9")
            .species("oak")
            .quantity(40)
            .trunks(19, 0.15)
            .arrived(2022, 10)
            .counted(2024, 11)
            .build();
    with.list(2024, 11, alone, 20);

    assertThat(Fit.of(with.records(), List.of()).values()).isEqualTo(without);
  }

  @Test
  void spreadBetweenSeasons_saysOnlyWhatItLacks() {
    assertThat(SpreadJudging.thinYears(3, 12))
        .isEqualTo(
            "3 of 6 seasons and 12 of 20 counts needed before the spread between seasons can be"
                + " told.");
    assertThat(SpreadJudging.thinYears(4, 30))
        .isEqualTo("4 of 6 seasons needed before the spread between seasons can be told.");
    assertThat(SpreadJudging.thinYears(7, 12))
        .isEqualTo("12 of 20 counts needed before the spread between seasons can be told.");
  }

  @Test
  void lacking_ofThree_isListedWithoutWhatIsThere() {
    Lacking growths = new Lacking(36, 120, "growths");
    Lacking lots = new Lacking(19, 30, "plants or lots");
    assertThat(Lacking.of(growths, lots, new Lacking(2, 3, "seasons")))
        .isEqualTo("36 of 120 growths, 19 of 30 plants or lots and 2 of 3 seasons");
    assertThat(Lacking.of(new Lacking(150, 120, "growths"), lots))
        .isEqualTo("19 of 30 plants or lots");
    assertThat(Lacking.of(new Lacking(3, 3, "seasons"))).isEmpty();
  }

  private static double width(Value value) {
    return value.p90() / value.p10();
  }

  /**
   * The prior is what the nursery's files say of each figure; the setting stands in for silence.
   */
  @Test
  void prior_isAsSureAsTheSpeciesSays() {
    FitRecords records = books(3, 1.2, 20).records();
    Value good = speed(records);
    Value book = speed(asSureAs(records, 0.5));
    Value known = speed(asSureAs(records, 1));

    assertThat(good.sureOld()).isEqualTo(0.8);
    assertThat(book.sureOld()).isEqualTo(0.5);
    assertThat(book.weight()).isGreaterThan(good.weight());
    assertThat(book.value()).isGreaterThan(good.value());
    assertThat(known.verdict()).isEqualTo(Value.Verdict.KNOWN);
    assertThat(known.inFile()).isEqualTo(known.old());
    assertThat(speed(records.asSureAs(0.5))).isEqualTo(book);
    assertThat(speed(asSureAs(records, 0.6).asSureAs(0.5)).sureOld()).isEqualTo(0.6);
  }

  private static FitRecords asSureAs(FitRecords records, double sure) {
    Species oak = records.inputs().scenario().nursery().species().get("oak");
    Species said = oak.withSure(new Sure(Map.of("pot", sure), sure, sure));
    return new FitRecords(
        records.inputs(),
        records.lists(),
        records.readings(),
        records.measured(),
        Map.of("oak", FitRecords.Prior.asRead(said)),
        records.until());
  }

  @Test
  void orderOfListsRowsAndLines_changesNoDigit() {
    FitRecords records = books(4, 1.1, 20).records();
    List<StockList> lists = new ArrayList<>();
    for (StockList list : records.lists()) {
      List<StockList.Row> rows = new ArrayList<>(list.rows());
      Collections.reverse(rows);
      lists.add(new StockList(list.name(), list.month(), rows));
    }
    Collections.reverse(lists);
    FitRecords turned =
        new FitRecords(
            records.inputs(),
            lists,
            records.readings(),
            records.measured(),
            records.priors(),
            records.until());

    assertThat(Fit.of(turned, List.of()).values()).isEqualTo(Fit.of(records, List.of()).values());
  }

  @Test
  void list_copiedUnderAnotherName_changesNoDigit() {
    FitRecords records = books(3, 1.1, 20).records();
    List<StockList> lists = new ArrayList<>(records.lists());
    StockList last = lists.get(lists.size() - 1);
    lists.add(new StockList("copy of " + last.name(), last.month(), last.rows()));
    FitRecords copied =
        new FitRecords(
            records.inputs(),
            lists,
            records.readings(),
            records.measured(),
            records.priors(),
            records.until());

    assertThat(Fit.of(copied, List.of()).values()).isEqualTo(Fit.of(records, List.of()).values());
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 4})
  void intervals_areUsedOrRefused(int lots) {
    Fit fit = Fit.of(books(lots, 1, 20).records(), List.of());

    assertThat(fit.covers().used() + fit.covers().refused())
        .isEqualTo((int) fit.records().stream().filter(RecordRow::isInterval).count());
  }

  @Test
  void girth_inCm_isTheSameAsTheTrunk() {
    Books trunks = books(2, 1, 20);
    Books girths = books(2, 1, 20);
    double mmPerCm = 10 / Math.PI;
    for (int plant = 0; plant < 20; plant++) {
      double before = Math.round((4 + plant * 0.1) * 10) / 10.0;
      double after = Math.round((before + 0.9) * 10) / 10.0;
      trunks.tag("P" + plant, "lot 0", "2023-10-31", before * mmPerCm);
      trunks.tag("P" + plant, "lot 0", "2024-10-31", after * mmPerCm);
      girths.tag("P" + plant, "lot 0", "2023-10-31", before, mmPerCm);
      girths.tag("P" + plant, "lot 0", "2024-10-31", after, mmPerCm);
    }

    assertThat(speed(girths.records()).value())
        .isCloseTo(speed(trunks.records()).value(), within(1e-3));
  }

  @Test
  void slip_ofOneCount_isRefusedWithItsRow() {
    double[] first = {15, 16, 17};
    double[] second = {17.8, 61, 19.7};
    Fit fit = Fit.of(books(first, second, 20).records(), List.of());

    assertThat(fit.records())
        .filteredOn(row -> row.subject().equals("lot 1"))
        .singleElement()
        .satisfies(
            row -> {
              assertThat(row.used()).isFalse();
              assertThat(row.why())
                  .startsWith(
                      "looks like a slip: more than six times as far off as it may be (stock 2024,"
                          + " row ");
            });
  }
}
