package growingon.buying.search;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import growingon.buying.Asked;
import growingon.buying.engine.Engine;
import growingon.buying.engine.Outcome;
import growingon.buying.limit.Limits;
import growingon.buying.question.Aim;
import growingon.buying.question.Candidate;
import growingon.buying.question.Question;
import growingon.nursery.lot.Offer;
import growingon.nursery.market.Grade;
import growingon.nursery.place.PlaceKind;
import growingon.project.Lots;
import growingon.project.Nurseries;
import growingon.project.Steps;
import java.time.Month;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Nurseries with one or two ladders and places, two or three lots and offers, of which every
 * combination is run. All but the first need two holds changed at once, or one given up for two
 * others: six of the first 140 to which no single change leads.
 */
class BruteForceOnTwoLaddersTest {
  private static final String[] LADDERS = {"one", "other"};

  /** Draws what a nursery consists of, the same in every run. */
  private static final class Made {
    private final Random random;
    private final int ladders;
    private final int places;

    Made(int number) {
      random = new Random(number * 77L + 5);
      next(4);
      ladders = 1 + next(2);
      places = 1 + next(2);
    }

    double between(double low, double high) {
      return low + (high - low) * random.nextDouble();
    }

    int next(int most) {
      return random.nextInt(most);
    }

    Lots lot(String name) {
      Lots lot = Lots.lot(name);
      if (next(ladders) == 1) {
        lot.species("Other");
      }
      return lot.route("work")
          .trunks(between(6, 15), 0.2)
          .place("bench" + next(places))
          .plantsPerM2(between(2, 9));
    }
  }

  static Asked nursery(int number) {
    Made made = new Made(number);
    int offers = 2 + made.next(2);
    int lots = 2 + made.next(2);
    Nurseries nursery = Nurseries.bare().species(Nurseries.bareSpecies("Other", LADDERS[1]));
    for (int place = 0; place < made.places; place++) {
      nursery.place(Nurseries.place("bench" + place, PlaceKind.BENCH, made.between(4, 14)));
    }
    nursery
        .route("work", Steps.every("prune", 1, Month.JULY).minutes(made.between(4, 20)).build())
        .labour(10, 0.5)
        .hoursAvailable(made.between(6, 24))
        .openingCash(made.between(100, 500))
        .lowestCash(0)
        .discountRate(0.05)
        .slices(16)
        .lotSpread(0);
    for (String ladder : LADDERS) {
      wanted(nursery, ladder, made);
    }
    for (int i = 0; i < lots; i++) {
      nursery.lot(
          made.lot("lot " + i)
              .quantity(10 + made.next(40))
              .arrived(2025, 1 + made.next(12))
              .build());
    }
    Asked asked = Asked.of(nursery);
    for (int i = 0; i < offers; i++) {
      offered(asked, "offer " + i, made);
    }
    return asked;
  }

  private static void wanted(Nurseries nursery, String ladder, Made made) {
    Grade[] grades = {
      new Grade("thin", 1, 9, 0, 12),
      new Grade("middle", 2, 16, 0, 12),
      new Grade("thick", 3, 24, 0, 12)
    };
    nursery.ladder(ladder, grades);
    double price = made.between(8, 14);
    for (Grade grade : grades) {
      OptionalDouble units = OptionalDouble.of(made.between(5, 40));
      nursery.demand(Nurseries.demandRow(ladder, grade.name(), units, price));
      price *= made.between(1.1, 2.6);
    }
  }

  private static void offered(Asked asked, String name, Made made) {
    asked.holdsNothingOf(name);
    int multiple = 5 + made.next(10);
    double asks = made.between(3, 9);
    asked.offer(
        made.lot(name),
        made.between(0, 60),
        multiple,
        multiple * (1 + made.next(3)),
        7 * multiple,
        new Offer.PriceBreak(multiple, asks),
        new Offer.PriceBreak(4 * multiple, made.between(0.7, 1) * asks));
  }

  private static double best(Engine engine, Limits limits, List<Candidate> all) {
    double best = Double.NEGATIVE_INFINITY;
    int most = 5000;
    for (int from = 0; from < all.size(); from += most) {
      List<Candidate> some = all.subList(from, Math.min(all.size(), from + most));
      for (Outcome outcome : engine.lines(engine.question().asGiven(), some)) {
        best = limits.allow(outcome) ? Math.max(best, outcome.value()) : best;
      }
    }
    return best;
  }

  @ParameterizedTest
  @ValueSource(ints = {2, 24, 36, 43, 132, 138})
  void search_findsWhatOnlyTwoChangesAtOnceLeadTo(int number) {
    Question question = Question.of(nursery(number).inputs(), Question.Scope.ALL);
    Engine engine = new Engine(question, 2);
    Limits limits = Limits.of(engine.scenario(), engine.line(question.asGiven()), Limits.ALLOWED);
    Search search = new Search(engine, limits, Aim.MEAN, false, doing -> {});

    Candidate found = search.climbed();

    double best = best(engine, limits, BruteForceTest.all(question, search.moves()));
    assertThat(limits.allow(engine.line(found))).isTrue();
    assertThat(engine.line(found).value()).isCloseTo(best, within(1.0));
  }
}
