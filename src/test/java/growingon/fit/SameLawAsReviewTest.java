package growingon.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import growingon.fit.evidence.Evidence;
import growingon.fit.past.FitRecords;
import growingon.fit.past.Past;
import growingon.load.LoadOptions;
import growingon.load.Loader;
import growingon.nursery.Inputs;
import growingon.nursery.Scenario;
import growingon.nursery.record.DaybookLine;
import growingon.nursery.record.DaybookLine.What;
import growingon.nursery.record.StockList;
import growingon.problem.Where;
import growingon.project.Projector;
import growingon.project.history.BeforeCount;
import growingon.project.lot.LotHistory;
import growingon.review.LotReview;
import growingon.review.Review;
import growingon.review.book.Bookkeeping;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

/**
 * What a fit expects at the speeds assumed is what a review says of lots whose trunks nobody read.
 */
class SameLawAsReviewTest {
  private static final YearMonth TODAY = YearMonth.of(2024, 11);

  private static Inputs withoutTrunks() {
    Inputs read =
        Loader.load(
                Path.of("plans", "two-seasons-on.json"),
                new LoadOptions(LocalDate.of(2024, 11, 20)))
            .value()
            .orElseThrow();
    List<DaybookLine> lines =
        read.daybook().stream()
            .filter(line -> line.what() != What.COUNTED || line.quantity().isPresent())
            .map(SameLawAsReviewTest::withoutTrunk)
            .toList();
    return new Inputs(
        read.scenario(),
        read.offers(),
        read.assumptions(),
        read.stockRows(),
        Optional.empty(),
        lines,
        Optional.empty());
  }

  private static DaybookLine withoutTrunk(DaybookLine line) {
    return line.with().trunkMm(OptionalDouble.empty()).trunkSpread(OptionalDouble.empty()).build();
  }

  @Test
  void meansExpected_ofTheDemonstration_areThoseOfItsReview() {
    Inputs inputs = withoutTrunks();
    YearMonth first = inputs.scenario().plan().firstMonth();
    List<StockList.Row> rows =
        inputs.scenario().lots().stream()
            .filter(lot -> lot.purchase().isEmpty())
            .map(
                lot ->
                    new StockList.Row(lot, true, true, OptionalInt.empty(), Where.file(lot.name())))
            .toList();
    Past past =
        Past.of(
            new FitRecords(
                inputs,
                List.of(new StockList("stock", first, rows)),
                List.of(),
                Map.of(),
                Map.of(),
                TODAY));
    Evidence evidence = Evidence.of(past);
    int compared = 0;
    for (LotReview lot : Review.of(inputs, TODAY, Optional.empty()).lots()) {
      Optional<BeforeCount> counted =
          evidence.histories().get(lot.lot().name()).beforeCount(past.through());
      if (counted.isPresent() && lot.alive().real() > 0) {
        assertThat(counted.get().meanTrunkMm())
            .as(lot.lot().name())
            .isCloseTo(lot.trunkMm().real(), within(1e-9));
        compared++;
      }
    }
    assertThat(compared).isGreaterThan(3);
  }

  /** The quick run that a fit asks again and again is the run with all particulars. */
  @Test
  void counts_ofTheQuickRun_areThoseOfTheHistories_toTheLastDigit() {
    Inputs inputs =
        Loader.load(
                Path.of("plans", "two-seasons-on.json"),
                new LoadOptions(LocalDate.of(2024, 11, 20)))
            .value()
            .orElseThrow();
    Bookkeeping daybook = Bookkeeping.of(inputs, TODAY);
    Scenario scenario = inputs.scenario().withLots(daybook.lots());
    Map<String, Map<Integer, BeforeCount>> quick = Projector.countsKnown(scenario, daybook.facts());
    int compared = 0;
    for (LotHistory lot : Projector.projectKnown(scenario, daybook.facts()).lots()) {
      for (int month = 0; month < lot.months(); month++) {
        Optional<BeforeCount> full = lot.beforeCount(month);
        assertThat(Optional.ofNullable(quick.get(lot.lot().name()).get(month))).isEqualTo(full);
        compared += full.isPresent() ? 1 : 0;
      }
    }
    assertThat(compared).isGreaterThan(10);
  }
}
