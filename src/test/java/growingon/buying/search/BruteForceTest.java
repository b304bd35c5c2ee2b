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
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Ten small nurseries made by a row of numbers: two offers, two lots with holds, and limits on
 * room, hours and cash. Every combination is run; the search must find a value as high as the
 * highest.
 */
public class BruteForceTest {
  /** Numbers of a nursery, the same in every run: the minimal standard generator. */
  private static final class Row {
    private long state;

    Row(int number) {
      state = 7919L * number + 1;
      next(1);
    }

    double between(double low, double high) {
      return low + (high - low) * next(1_000_000) / 1_000_000.0;
    }

    int next(int most) {
      state = state * 48271 % 2147483647;
      return (int) (state % most);
    }
  }

  static Asked nursery(int number) {
    return nursery(number, 0);
  }

  /** The same with luck: lots grow unlike. */
  public static Asked nursery(int number, double lotSpread) {
    Row row = new Row(number);
    Nurseries nursery =
        Nurseries.bare()
            .ladder(
                "one",
                new Grade("thin", 1, 9, 0, 12),
                new Grade("middle", 2, 16, 0, 12),
                new Grade("thick", 3, 24, 0, 12))
            .place(Nurseries.place("bench", PlaceKind.BENCH, row.between(6, 14)))
            .route("work", Steps.every("prune", 1, Month.JULY).minutes(row.between(4, 20)).build())
            .labour(10, 0.5)
            .hoursAvailable(row.between(8, 20))
            .openingCash(row.between(100, 500))
            .lowestCash(0)
            .discountRate(0.05)
            .slices(16)
            .lotSpread(lotSpread);
    String[] grades = {"thin", "middle", "thick"};
    double price = row.between(8, 14);
    for (String grade : grades) {
      OptionalDouble units = OptionalDouble.of(row.between(10, 40));
      nursery.demand(Nurseries.demandRow("one", grade, units, price));
      price *= row.between(1.3, 2.6);
    }
    for (String lot : new String[] {"first", "second"}) {
      nursery.lot(
          standing(lot, row).quantity(20 + row.next(40)).arrived(2025, 1 + row.next(12)).build());
    }
    Asked asked = Asked.of(nursery).holdsNothingOf("A").holdsNothingOf("B");
    for (String offer : new String[] {"A", "B"}) {
      int multiple = 5 + row.next(10);
      double asks = row.between(3, 9);
      asked.offer(
          standing(offer, row),
          row.between(0, 30),
          multiple,
          multiple,
          7 * multiple,
          new Offer.PriceBreak(multiple, asks),
          new Offer.PriceBreak(4 * multiple, 0.9 * asks));
    }
    return asked;
  }

  private static Lots standing(String name, Row row) {
    return Lots.lot(name)
        .route("work")
        .trunks(row.between(8, 14), 0.2)
        .place("bench")
        .plantsPerM2(row.between(4, 9));
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10})
  void search_findsTheBestOfAllCombinations(int number) {
    Question question = Question.of(nursery(number).inputs(), Question.Scope.ALL);
    Engine engine = new Engine(question, 2);
    Limits limits = Limits.of(engine.scenario(), engine.line(question.asGiven()), Limits.ALLOWED);
    Search search = new Search(engine, limits, Aim.MEAN, false, doing -> {});

    Candidate found = search.climbed();

    double best = Double.NEGATIVE_INFINITY;
    List<Candidate> all = all(question, search.moves());
    for (Outcome outcome : engine.lines(question.asGiven(), all)) {
      best = limits.allow(outcome) ? Math.max(best, outcome.value()) : best;
    }
    assertThat(all.size()).isGreaterThan(1000);
    assertThat(limits.allow(engine.line(found))).isTrue();
    assertThat(engine.line(found).value()).isCloseTo(best, within(1.0));
  }

  /** Every combination; what is held of the offers the plan says. */
  static List<Candidate> all(Question question, Moves moves) {
    List<Candidate> all = new ArrayList<>(List.of(question.asGiven()));
    for (int choice = 0; choice < question.choices().size(); choice++) {
      List<Candidate> longer = new ArrayList<>();
      for (Candidate each : all) {
        for (int value : moves.values(choice)) {
          longer.add(each.with(choice, value));
        }
      }
      all = longer;
    }
    return all;
  }
}
