package growingon.buying.search;

import static org.assertj.core.api.Assertions.assertThat;

import growingon.buying.engine.Engine;
import growingon.buying.limit.Limits;
import growingon.buying.question.Aim;
import growingon.buying.question.Candidate;
import growingon.buying.question.Question;
import growingon.buying.question.Sample;
import growingon.nursery.Inputs;
import growingon.nursery.Scenario;
import growingon.nursery.market.Grade;
import growingon.nursery.place.PlaceKind;
import growingon.project.Lots;
import growingon.project.Nurseries;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** A question of so many moves that under luck only the roughest way is taken. */
class VeryManyMovesTest {
  private static final int LOTS = 8;
  private static final int GRADES = 80;
  private static final int JUDGED_ON = 200;

  /** Lots that grow unlike, of a ladder with a grade for each quarter of a millimetre. */
  private static Inputs inputs() {
    Nurseries nursery =
        Nurseries.bare()
            .ladder(
                "one",
                IntStream.range(0, GRADES)
                    .mapToObj(i -> new Grade("grade " + i, 1 + i, 9 + 0.25 * i, 0, 12))
                    .toArray(Grade[]::new))
            .place(Nurseries.place("bench", PlaceKind.BENCH, 40))
            .seasons(2)
            .discountRate(0.05)
            .slices(16)
            .lotSpread(0.2);
    for (int i = 0; i < GRADES; i++) {
      OptionalDouble units = OptionalDouble.of(9 - 0.1 * i);
      nursery.demand(Nurseries.demandRow("one", "grade " + i, units, 5 + 0.15 * i + i % 3));
    }
    for (int i = 0; i < LOTS; i++) {
      nursery.lot(
          Lots.lot("lot " + i)
              .quantity(20 + 7 * i % 30)
              .arrived(2025, 1 + i % 12)
              .trunks(13 + 0.5 * i, 0.2)
              .place("bench")
              .plantsPerM2(5 + i % 4)
              .build());
    }
    Scenario scenario = nursery.scenario();
    return new Inputs(scenario, List.of(), List.of(), LOTS);
  }

  @Test
  void luckAmongVeryManyMoves_isClimbedOn() {
    Question question = Question.of(inputs(), Question.Scope.ALL);
    Engine engine = new Engine(question, 2);
    Candidate given = question.asGiven();
    Limits limits = Limits.of(engine.scenario(), engine.line(given), Limits.ALLOWED);
    Search search = new Search(engine, limits, Aim.MEAN, true, doing -> {});
    assertThat(search.moves().areMany()).isTrue();

    Found found = search.find();

    List<Candidate> both = List.of(found.recommended(), found.onTheLine(), given);
    Sample[] judged = engine.on(given, both, 0, JUDGED_ON);
    double[] overTheLine = judged[0].over(judged[1]);
    assertThat(limits.allow(engine.line(found.recommended()))).isTrue();
    assertThat(Sample.mean(overTheLine)).isGreaterThan(2 * Sample.error(overTheLine));
    assertThat(found.certificate().holds()).isTrue();
    assertThat(found.gainOnChosen()).isPositive();
  }
}
