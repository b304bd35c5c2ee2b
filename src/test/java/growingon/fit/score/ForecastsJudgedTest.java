package growingon.fit.score;

import static org.assertj.core.api.Assertions.assertThat;

import growingon.review.kept.AcrossDraws.Inside;
import growingon.review.kept.KeptBands;
import growingon.review.kept.KeptChances;
import growingon.review.kept.KeptPlan;
import growingon.review.kept.KeptPlan.Figure;
import growingon.review.kept.Range;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Whether the bands of a kept plan were as wide as they should be. */
class ForecastsJudgedTest {
  private static final String NOT_KNOWING = "luck and not knowing";

  private static KeptPlan plan(Optional<KeptBands> bands) {
    return new KeptPlan("plan", "2026-11", 3, 20, 1, List.of(), KeptChances.NONE, bands, List.of());
  }

  private static Optional<KeptBands> bands(String of) {
    return Optional.of(new KeptBands(of, Map.of()));
  }

  /** Twenty figures of three seasons, so many of them inside. */
  private static List<Scored> figures(int inside, Optional<String> within) {
    List<Scored> figures = new ArrayList<>();
    for (int i = 0; i < 20; i++) {
      figures.add(
          new Scored(
              "plan",
              Figure.PLANTS,
              "lot " + i,
              "Larch",
              YearMonth.of(2027, 10),
              i % 3 + 1,
              new Range(40, 50, 60),
              55,
              i < inside,
              1,
              within));
    }
    return figures;
  }

  private static ForecastScore all(KeptPlan plan, List<Scored> figures) {
    return Scores.summed(plan, figures).get(0);
  }

  @Test
  void figuresThatAreBadTogether_nearlyAllOutside_areNoFaultOfTheBands() {
    // In four of twenty draws all lie outside, in the others all inside.
    ForecastScore score = all(plan(bands(NOT_KNOWING)), figures(3, Optional.of("3fffc")));
    assertThat(score.verdict()).isEqualTo("as wide as they should be");
    assertThat(score.low()).isZero();
    assertThat(score.high()).isEqualTo(1);
  }

  @Test
  void figuresOfWhichDrawsHadAllInside_oneOutside_areOfBandsTooNarrow() {
    ForecastScore score = all(plan(bands(NOT_KNOWING)), figures(19, Optional.of("fffff")));
    assertThat(score.verdict()).isEqualTo("bands too narrow");
  }

  @Test
  void figuresOfWhichDrawsHadNoneInside_oneInside_areOfBandsTooWide() {
    ForecastScore score = all(plan(bands(NOT_KNOWING)), figures(1, Optional.of("00000")));
    assertThat(score.verdict()).isEqualTo("bands too wide");
  }

  @Test
  void olderFile_ofLuckAlone_isJudgedAsIfFiguresWereIndependent() {
    for (Optional<KeptBands> bands : List.of(Optional.<KeptBands>empty(), bands("luck"))) {
      assertThat(all(plan(bands), figures(12, Optional.empty())).verdict())
          .isEqualTo("bands too narrow");
      assertThat(all(plan(bands), figures(13, Optional.empty())).verdict())
          .isEqualTo("as wide as they should be");
      assertThat(all(plan(bands), figures(19, Optional.empty())).verdict())
          .isEqualTo("bands too wide");
    }
  }

  @Test
  void olderFile_ofLuckAndNotKnowing_isNotJudged() {
    ForecastScore score = all(plan(bands(NOT_KNOWING)), figures(3, Optional.empty()));
    assertThat(score.verdict())
        .isEqualTo("not to be judged: kept without its draws; keep the next plan");
    assertThat(score.low()).isNaN();
  }

  @Test
  void few_whateverTheDrawsSay_areTooFewToJudge() {
    List<Scored> few = figures(3, Optional.of("fffff")).subList(0, 19);
    assertThat(all(plan(bands(NOT_KNOWING)), few).verdict())
        .isEqualTo("3 of 19 inside; too few to judge");
  }

  /**
   * Numbers for which 0.8 lies from the 5 to the 95 % quantile of the beta distribution with k + ½
   * and n − k + ½: the Jeffreys interval of Brown, Cai and DasGupta, Statistical Science 16 (2001),
   * 101–133; quantiles by SciPy 1.
   */
  @Test
  void independentFigures_twentyToFifty_mayHaveSoManyInside() {
    assertThat(Scores.independent(20)).isEqualTo(new Inside(13, 18, 20));
    assertThat(Scores.independent(30)).isEqualTo(new Inside(21, 27, 30));
    assertThat(Scores.independent(50)).isEqualTo(new Inside(36, 44, 50));
  }
}
