package growingon.buying;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import growingon.buying.answer.Answer;
import growingon.buying.answer.LimitWorth.What;
import growingon.buying.question.Aim;
import growingon.buying.question.Question;
import growingon.buying.question.Wish;
import growingon.nursery.market.Demand;
import growingon.nursery.market.Grade;
import growingon.nursery.place.Place;
import growingon.nursery.place.PlaceKind;
import growingon.nursery.time.MonthSpan;
import growingon.project.Lots;
import growingon.project.Nurseries;
import growingon.project.Steps;
import java.time.Month;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.apache.commons.math3.distribution.BetaDistribution;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.junit.jupiter.api.Test;

/** Questions whose best answer has a formula. */
class ClosedFormTest {
  private static final double PRICE = 15;
  private static final double COST = 9;
  private static final Wish QUICK = new Wish(Question.Scope.ALL, Aim.MEAN, true, 0);

  /** So many are wanted in December alone, which is when the offer comes. */
  private static Demand december(double units, double unitsSpread, double priceSpread) {
    return new Demand(
        Optional.empty(),
        "one",
        "any",
        Optional.of("2026/27"),
        new MonthSpan(12, 12),
        OptionalDouble.of(units),
        PRICE,
        0,
        unitsSpread,
        priceSpread);
  }

  /**
   * The newsvendor: of a lognormal demand of mean D and spread s the best number is D exp(σ z −
   * σ²/2), σ² = ln(1 + s²), z = Φ⁻¹((p − c)/p), and p E[min(q, D)] − c q is earned. Textbook
   * formula, from memory. On the plan's line alone D would be bought.
   */
  @Test
  void newsvendor_buysTheQuantileAndNotTheMean() {
    double mean = 100;
    double spread = 0.5;
    double sigma = Math.sqrt(Math.log1p(spread * spread));
    NormalDistribution normal = new NormalDistribution();
    double z = normal.inverseCumulativeProbability((PRICE - COST) / PRICE);
    double best = mean * Math.exp(sigma * z - sigma * sigma / 2);

    Answer answer =
        Asked.of(Nurseries.bare().demand(december(mean, spread, 0)))
            .offer(Lots.lot("A"), COST, 1, 300)
            .answer(new Wish(Question.Scope.ALL, Aim.MEAN, false, 2000));

    int advised = Asked.bought(answer).get("A");
    assertThat((double) advised).isCloseTo(best, within(0.1 * best));
    assertThat(advised).isLessThan(90);
    assertThat(answer.recommended().gain().mean())
        .isCloseTo(earned(advised, mean, sigma), within(4 * answer.recommended().gain().error()));
  }

  /** p E[min(q, D)] − c q of a lognormal demand. */
  private static double earned(double number, double mean, double sigma) {
    NormalDistribution normal = new NormalDistribution();
    double at = (Math.log(number / mean) + sigma * sigma / 2) / sigma;
    double met =
        mean * normal.cumulativeProbability(at - sigma)
            + number * (1 - normal.cumulativeProbability(at));
    return PRICE * met - COST * number;
  }

  @Test
  void priceLuck_leavesTheNumberAlone() {
    Answer answer =
        Asked.of(Nurseries.bare().demand(december(100, 0.5, 0.4)))
            .offer(Lots.lot("A"), COST, 1, 300)
            .answer(new Wish(Question.Scope.ALL, Aim.MEAN, false, 0));

    assertThat((double) Asked.bought(answer).get("A")).isCloseTo(79.8, within(12.0));
  }

  /**
   * Of an unseen lot only the usable part U sells, Beta(a, b), to a demand D that is sure: at the
   * best q, E[U; U q ≤ D] = c/p, that is a/(a + b) I_{D/q}(a + 1, b) = c/p. Derived: the mean of
   * min(U q, D) has that slope. On the plan's line D over the mean share would be bought.
   */
  @Test
  void unseenQuality_buysLessThanTheMeanShareSays() {
    double sure = 0.5;
    double usable = 0.6;
    double seen = 10 * sure / (1 - sure);
    double a = seen * usable;
    double b = seen * (1 - usable);
    double wanted = 60;
    double cost = 6;
    double best = 0;
    BetaDistribution tilted = new BetaDistribution(a + 1, b);
    for (double q = wanted; q < 300; q += 0.1) {
      double slope = PRICE * usable * tilted.cumulativeProbability(Math.min(1, wanted / q)) - cost;
      best = slope >= 0 ? q : best;
    }
    Nurseries nursery =
        Nurseries.bare()
            .quality(growingon.nursery.market.Quality.SECOND, 0, true)
            .quality(growingon.nursery.market.Quality.THIRD, 0, true)
            .route("sorted", Steps.onArrival("sort").sort().build())
            .demand(december(wanted, 0, 0));

    Answer answer =
        Asked.of(nursery)
            .offer(Lots.lot("A").unseen(usable, 0, sure).route("sorted"), cost, 1, 300)
            .answer(new Wish(Question.Scope.ALL, Aim.MEAN, false, 0));

    double advised = Asked.bought(answer).get("A");
    assertThat(advised).isCloseTo(best, within(0.1 * best));
    assertThat(Math.abs(advised - wanted / usable)).isGreaterThan(3);
  }

  /**
   * Two products and three plants, times ten (Hillier and Lieberman's example, from memory): gains
   * 3 and 5; room A 40 at 1 m² of the first, B 120 at 2 m² of the second, later C 180 at 3 and 2
   * m²: 20 and 60 gain 360. A tenth more of B, 12 m², brings 18; a tenth more of C, 18 m², brings
   * 18.
   */
  @Test
  void productMix_isThatOfTheTextbookAndSoAreItsWorths() {
    Answer answer = productMix(120).answer();

    assertThat(Asked.bought(answer)).isEqualTo(Map.of("first", 20, "second", 60));
    assertThat(answer.recommended().gain().mean()).isCloseTo(360, within(0.01));
    assertThat(worth(answer, "B")).isCloseTo(18, within(0.01));
    assertThat(worth(answer, "C")).isCloseTo(18, within(0.01));
    assertThat(answer.limitsWorth()).noneMatch(limit -> limit.name().equals("A"));
  }

  /** What the table says of a larger place is what comes of one. */
  @Test
  void placeMadeLarger_bringsWhatItsWorthSaid() {
    double before = productMix(120).answer(QUICK).recommended().gain().mean();
    double worth = worth(productMix(120).answer(QUICK), "B");

    double after = productMix(132).answer(QUICK).recommended().gain().mean();

    assertThat(after).isCloseTo(before + worth, within(0.01 * after));
  }

  private static double worth(Answer answer, String place) {
    return answer.limitsWorth().stream()
        .filter(limit -> limit.what() == What.ROOM && limit.name().equals(place))
        .mapToDouble(limit -> limit.steps().get(0).worth())
        .findFirst()
        .orElse(0);
  }

  private static Asked productMix(double roomB) {
    Nurseries nursery = Nurseries.bare().seasons(2);
    String[] names = {"first", "second"};
    double[] now = {1, 2};
    double[] later = {3, 2};
    double[] gains = {3, 5};
    for (int i = 0; i < names.length; i++) {
      nursery.ladder(names[i], new Grade("any", 1, 1, 0, 12));
      nursery.species(Nurseries.bareSpecies(names[i], names[i]));
      nursery.sellsAll(names[i], "any", 10 + gains[i]);
      nursery.route(
          names[i], Steps.in("move", Month.MARCH, 0).place("C").plantsPerM2(1 / later[i]).build());
    }
    nursery.place(Nurseries.place("A", PlaceKind.BENCH, 40));
    nursery.place(Nurseries.place("B", PlaceKind.BENCH, roomB));
    nursery.place(place("C", 180));
    Asked asked = Asked.of(nursery);
    for (int i = 0; i < names.length; i++) {
      asked.offer(
          Lots.lot(names[i])
              .species(names[i])
              .route(names[i])
              .place(i == 0 ? "A" : "B")
              .plantsPerM2(1 / now[i])
              .notBefore(2027, 6),
          10,
          1,
          90);
    }
    return asked;
  }

  private static Place place(String name, double squareMetres) {
    return Nurseries.place(name, PlaceKind.STANDING_GROUND, squareMetres);
  }
}
