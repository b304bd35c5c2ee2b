package growingon.buying;

import static org.assertj.core.api.Assertions.assertThat;

import growingon.buying.answer.Answer;
import growingon.buying.answer.PlanDraws;
import growingon.buying.engine.Engine;
import growingon.buying.question.Aim;
import growingon.buying.question.Question;
import growingon.buying.question.Wish;
import growingon.buying.search.Found;
import growingon.load.SmallNursery;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/** What is advised for the demonstration, with luck. */
class DemoAdviceTest {
  private static final double OF_WHAT_WAS_CHOSEN_ON = 0.9;

  /** A climb on the plan's line alone is caught by luck; what was chosen on draws is not. */
  @Test
  void advice_keepsItsGainOnOtherDrawsAndBeatsAClimbWithoutLuck() {
    Wish wish = new Wish(Question.Scope.ALL, Aim.MEAN, false, 0);

    Answer answer =
        Buying.answer(
            SmallNursery.inputs(Path.of("plans", "what-to-buy.json")), wish, 2, doing -> {});

    double gain = answer.recommended().gain().mean();
    Found found = answer.found();
    assertThat(gain).isGreaterThan(OF_WHAT_WAS_CHOSEN_ON * found.gainOnChosen());
    PlanDraws planDraws = new PlanDraws(new Engine(answer.question(), 2), answer.draws());
    assertThat(planDraws.gain(found.recommended(), found.onTheLine()).mean()).isPositive();
    assertThat(found.certificate().holds()).isTrue();
  }
}
