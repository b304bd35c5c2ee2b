package growingon.report.words;

import static org.assertj.core.api.Assertions.assertThat;

import growingon.chance.Gamble;
import growingon.money.bought.Ending;
import growingon.nursery.Scenario;
import growingon.nursery.lot.Lot;
import growingon.report.MapleNursery;
import growingon.report.figures.Context;
import growingon.report.words.VerdictWords.Verdict;
import java.util.HashMap;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** What is said of a bought lot does not depend on where the plan happens to end. */
class VerdictOverSeasonsTest {
  private static final int DRAWS = 40;

  /** The verdict at a season of judging. */
  private record Said(int judgedAt, double pays, Verdict verdict) {}

  private static void planOfThreeToTwelveSeasons(Lot bought) {
    Scenario scenario = MapleNursery.nursery().lots(MapleNursery.stock()).lot(bought).scenario();
    Map<Integer, Said> byJudging = new HashMap<>();
    for (int seasons = 3; seasons <= 12; seasons++) {
      Scenario plan = scenario.withPlan(scenario.plan().withSeasons(seasons));
      Context context = MapleNursery.drawn(plan, DRAWS);
      Gamble gamble = context.chances().orElseThrow().gambles().get(0);
      Ending ending = gamble.bought().ending();
      Verdict verdict = VerdictWords.verdict(gamble);
      Said said = new Said(ending.judgedAt(), gamble.chancePays(), verdict);

      assertThat(byJudging.computeIfAbsent(ending.judgedAt(), at -> said))
          .as("%d seasons", seasons)
          .isEqualTo(said);
      if (ending.soldOut().isEmpty()) {
        assertThat(verdict).as("%d seasons", seasons).isNotEqualTo(Verdict.HOPELESS);
      } else {
        assertThat(ending.atJudged().saleable())
            .as("%d seasons", seasons)
            .isLessThanOrEqualTo(0.1 * bought.quantity());
      }
    }
  }

  @Test
  void lotThatIsSeen_isJudgedAlike_whereverThePlanEnds() {
    planOfThreeToTwelveSeasons(MapleNursery.ridgeLot());
  }

  @Test
  void lotBoughtUnseen_isJudgedAlike_whereverThePlanEnds() {
    planOfThreeToTwelveSeasons(MapleNursery.unseenRidgeLot());
  }
}
