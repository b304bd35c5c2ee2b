package growingon.buying.search;

import static org.assertj.core.api.Assertions.assertThat;

import growingon.buying.engine.Engine;
import growingon.buying.limit.Change;
import growingon.buying.limit.Limits;
import growingon.buying.question.Aim;
import growingon.buying.question.Candidate;
import growingon.buying.question.Move;
import growingon.buying.question.Question;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class TakingTest {
  /** A judge by the plan's line that counts, and may say that each move costs it many runs. */
  private record Counting(Judge line, boolean isOneRun, Map<Integer, Integer> asked)
      implements Judge {
    @Override
    public List<Judged> judge(Candidate from, List<Move> moves) {
      asked.merge(moves.size(), 1, Integer::sum);
      return line.judge(from, moves);
    }

    @Override
    public ToDoubleFunction<Change> promises(Candidate from) {
      return line.promises(from);
    }

    int most() {
      return asked.keySet().stream().mapToInt(Integer::intValue).max().orElse(0);
    }
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10})
  void valuingAhead_takesWhatIsTakenOneByOne(int nursery) {
    Question question = Question.of(BruteForceTest.nursery(nursery).inputs(), Question.Scope.ALL);
    Engine engine = new Engine(question, 2);
    Candidate given = question.asGiven();
    Limits limits = Limits.of(engine.scenario(), engine.line(given), Limits.ALLOWED);
    Moves moves = new Search(engine, limits, Aim.MEAN, false, doing -> {}).moves();
    Judge line = OnTheLine.within(engine, limits);
    // Without limits more seems to help than does.
    List<Weighed> singles =
        Weighed.by(OnTheLine.atAPrice(engine, limits, 0), given, moves.singles(given));
    Counting one = new Counting(line, false, new HashMap<>());
    Counting ahead = new Counting(line, true, new HashMap<>());

    Taking.Round oneByOne = new Taking(question, one, false, 1).theBest(given, singles);
    Taking.Round several = new Taking(question, ahead, false, 1).theBest(given, singles);

    assertThat(several).isEqualTo(oneByOne);
    assertThat(oneByOne.gain()).isPositive();
    assertThat(one.most()).isEqualTo(1);
    assertThat(ahead.most()).isGreaterThan(1);
  }
}
