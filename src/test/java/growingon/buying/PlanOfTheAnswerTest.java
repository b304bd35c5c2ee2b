package growingon.buying;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import growingon.buying.answer.Answer;
import growingon.buying.engine.Engine;
import growingon.buying.question.Aim;
import growingon.buying.question.Candidate;
import growingon.buying.question.Question;
import growingon.buying.question.Sample;
import growingon.buying.question.Spread;
import growingon.buying.search.BruteForceTest;
import growingon.buying.search.Moves;
import growingon.buying.search.Search;
import growingon.chance.luck.Draws;
import growingon.money.Finance;
import growingon.money.GradeNumbers;
import growingon.money.Tally;
import growingon.nursery.Scenario;
import growingon.project.Programme;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * What is recommended, run once more as a plan by itself: it comes to what the answer says, and no
 * plan that differs from it in one thing gains more than is worth saying.
 */
class PlanOfTheAnswerTest {
  private static final int DRAWS = 200;

  private static Answer answer(int number) {
    return BruteForceTest.nursery(number, 0.1).draws(DRAWS).answer();
  }

  /** Present value of each draw, by a plan's own run. */
  private static double[] values(Scenario scenario) {
    Tally tally = new Tally(Programme.of(scenario), new GradeNumbers(scenario.nursery()));
    Draws draws = new Draws(scenario);
    double rate = scenario.nursery().settings().discountRate();
    return IntStream.range(0, DRAWS)
        .mapToDouble(
            draw -> {
              tally.run(draws.luck(draw));
              return Finance.presentValue(tally.flows(), rate);
            })
        .toArray();
  }

  private static double[] gains(double[] values, double[] over) {
    return IntStream.range(0, DRAWS).mapToDouble(i -> values[i] - over[i]).toArray();
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 2, 3, 4, 5})
  void answer_isWhatThePlanComesTo(int number) {
    Answer answer = answer(number);

    Spread planned = Spread.of(values(answer.recommendedScenario()));

    Spread said = answer.recommended().value();
    assertThat(planned.mean()).isCloseTo(said.mean(), within(1e-9 * Math.abs(said.mean())));
    assertThat(planned.p10()).isCloseTo(said.p10(), within(1e-9 * Math.abs(said.p10())));
    assertThat(planned.p90()).isCloseTo(said.p90(), within(1e-9 * Math.abs(said.p90())));
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 2, 3, 4, 5})
  void planWithOneThingChanged_gainsNoMoreThanIsWorthSaying(int number) {
    Answer answer = answer(number);
    Question question = answer.question();
    Candidate recommended = answer.found().recommended();
    Engine engine = new Engine(question, 2);
    Moves moves = new Search(engine, answer.limits(), Aim.MEAN, true, doing -> {}).moves();
    double[] before = values(answer.recommendedScenario());
    List<Candidate> beside =
        moves.singles(recommended).stream()
            .map(move -> move.from(recommended))
            .filter(each -> answer.limits().allow(engine.line(each)))
            .toList();
    assertThat(beside).hasSizeGreaterThan(2);
    double threshold = answer.found().certificate().threshold();

    for (Candidate each : beside) {
      double[] gains = gains(values(question.scenario().withLots(question.lots(each))), before);

      assertThat(Sample.mean(gains))
          .as("%s", each)
          .isLessThanOrEqualTo(threshold + 2 * Sample.error(gains));
    }
  }
}
