package growingon.review;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import growingon.nursery.Scenario;
import growingon.nursery.market.Quality;
import growingon.nursery.record.DaybookLine.What;
import growingon.project.Lots;
import growingon.project.Nurseries;
import growingon.project.Projection;
import growingon.project.Projector;
import growingon.project.history.Happening;
import growingon.project.history.MonthStock;
import growingon.project.history.Sale;
import growingon.project.lot.Facts;
import growingon.project.lot.LotHistory;
import growingon.review.bought.BoughtReview;
import growingon.review.bought.CausePart;
import java.time.YearMonth;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A daybook in which everything came as the plan expected. */
class AsExpectedTest {
  private static final String GAMBLE = "field maples";

  private static Scenario scenario() {
    return Nurseries.working()
        .lot(Lots.boughtMaples(GAMBLE).hold("branched", 0.3).build())
        .lot(Lots.pottedElms("elms").build())
        .scenario();
  }

  private static Diary diary(Projection expected, int through) {
    Diary diary = new Diary().on("2027-02-01", GAMBLE, What.ARRIVED, 120);
    LotHistory history = expected.lot(GAMBLE);
    for (int month = history.start(); month <= through; month++) {
      write(diary, history, expected.horizon().month(month), month);
    }
    count(diary, history, expected.horizon().month(through), through);
    return diary;
  }

  private static void write(Diary diary, LotHistory history, YearMonth name, int month) {
    double died = history.died(month);
    for (Happening step : history.happenings()) {
      if (step.month() == month) {
        diary.on(name.atDay(2).toString(), GAMBLE, What.DIED, step.died());
        diary.on(name.atDay(3).toString(), GAMBLE, What.CULLED, step.culled());
        died -= step.died();
      }
    }
    diary.on(name.atDay(20).toString(), GAMBLE, What.DIED, died);
    for (Sale sale : history.sales()) {
      if (sale.month() == month) {
        diary
            .on(name.atDay(27).toString(), GAMBLE, What.SOLD, sale.units())
            .grade(history.grades().get(sale.grade()).name())
            .quality(sale.quality())
            .amount(sale.money());
      }
    }
  }

  private static void count(Diary diary, LotHistory history, YearMonth name, int month) {
    String day = name.atDay(28).toString();
    MonthStock stock = history.monthStock(month);
    for (Quality quality : Quality.values()) {
      diary.on(day, GAMBLE, What.COUNTED, stock.standing().of(quality)).quality(quality);
    }
    diary.on(day, GAMBLE, What.COUNTED).trunks(stock.meanTrunkMm(), stock.trunkSpread());
  }

  @ParameterizedTest
  @ValueSource(ints = {4, 14, 27})
  void review_ofWhatWasExpected_findsNoCause(int through) {
    Scenario scenario = scenario();
    Projection expected = Projector.project(scenario, Facts.NONE);
    YearMonth today = expected.horizon().month(through);
    Review review = Review.of(diary(expected, through).of(scenario), today, Optional.empty());
    assertThat(review.faults()).isEmpty();
    assertThat(review.through()).isEqualTo(today);
    BoughtReview gamble = review.bought().get(0);
    for (CausePart part : gamble.causes()) {
      assertThat(part.cents()).as("%s", part.cause()).isZero();
    }
    LotReview lot = review.lots().get(0);
    assertThat(lot.alive().isReal()).isTrue();
    assertSame(lot.alive());
    assertSame(lot.trunkMm());
    assertSame(lot.trunkSpread());
    assertSame(lot.unitsSold());
    assertSame(lot.sales());
    lot.qualities().values().forEach(AsExpectedTest::assertSame);
    lot.grades().forEach(grade -> assertSame(grade.plants()));
  }

  private static void assertSame(Compared figure) {
    assertThat(figure.real()).isCloseTo(figure.planned(), within(1e-7));
  }
}
