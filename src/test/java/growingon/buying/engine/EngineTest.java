package growingon.buying.engine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import growingon.buying.Asked;
import growingon.buying.Buying;
import growingon.buying.answer.Answer;
import growingon.buying.question.Aim;
import growingon.buying.question.Candidate;
import growingon.buying.question.Question;
import growingon.buying.question.Sample;
import growingon.buying.question.Wish;
import growingon.money.Finance;
import growingon.money.GradeNumbers;
import growingon.money.Tally;
import growingon.nursery.Inputs;
import growingon.nursery.lot.Offer;
import growingon.nursery.market.Demand;
import growingon.nursery.market.Grade;
import growingon.nursery.time.MonthSpan;
import growingon.project.Lots;
import growingon.project.Nurseries;
import growingon.project.Programme;
import growingon.project.lot.Luck;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** Running one ladder at a time, and keeping what was run, is speed only. */
class EngineTest {
  /** Lots at work on two ladders, with an offer on each. */
  private static Inputs inputs() {
    Nurseries nursery =
        Nurseries.working()
            .ladder("hedges", new Grade("hedge", 1, 12, 0, 12), new Grade("tall", 2, 24, 0, 12))
            .species(Nurseries.bareSpecies("yew", "hedges"))
            .sellsAll("hedges", "hedge", 9)
            .demand(
                new Demand(
                    Optional.empty(),
                    "hedges",
                    "tall",
                    Optional.empty(),
                    MonthSpan.ALL_YEAR,
                    OptionalDouble.of(12),
                    30,
                    0.7,
                    0.2,
                    0.1))
            .lot(Lots.pottedElms("elms").build())
            .lot(Lots.lot("yews").species("yew").quantity(60).place("ground").gap(100).build());
    return Asked.of(nursery)
        .offer(Lots.boughtMaples("maples"), 40, 10, 10, 200, new Offer.PriceBreak(10, 12))
        .offer(
            Lots.lot("small yews").species("yew").place("ground").gap(60),
            5,
            5,
            5,
            100,
            new Offer.PriceBreak(5, 2))
        .draws(3)
        .inputs();
  }

  private static final Question QUESTION = Question.of(inputs(), Question.Scope.ALL);

  private static List<Candidate> candidates() {
    Candidate given = QUESTION.asGiven();
    int maples = QUESTION.takeOf("maples");
    int yews = QUESTION.takeOf("small yews");
    int held = QUESTION.holdingOf("yews");
    return List.of(
        given,
        given.with(maples, 50),
        given.with(yews, 40),
        given.with(held, 2),
        given.with(maples, 50).with(yews, 40).with(held, 2),
        given.with(maples, 50).with(yews, 45).with(held, 2));
  }

  @Test
  void candidateRunAfterOthers_isTheSameToTheLastDigitAsRunAlone() {
    Engine warm = new Engine(QUESTION, 2);
    List<Outcome> lines = warm.lines(QUESTION.asGiven(), candidates());
    Sample[] drawn = warm.on(QUESTION.asGiven(), candidates(), 0, 3);

    for (int i = 0; i < candidates().size(); i++) {
      Candidate each = candidates().get(i);
      Outcome alone = new Engine(QUESTION, 1).line(each);
      Sample aloneDrawn = new Engine(QUESTION, 1).on(each, List.of(each), 0, 3)[0];
      assertThat(lines.get(i)).usingRecursiveComparison().isEqualTo(alone);
      assertThat(drawn[i].values()).containsExactly(aloneDrawn.values());
      assertThat(drawn[i].lowest()).containsExactly(aloneDrawn.lowest());
    }
    assertThat(warm.laddersKept()).isGreaterThan(10);
  }

  @Test
  void candidate_comesToWhatThePlanOfItsLotsComesTo() {
    Engine engine = new Engine(QUESTION, 1);
    for (Candidate each : candidates()) {
      Programme programme = Programme.of(QUESTION.scenario().withLots(QUESTION.lots(each)));
      Tally tally = new Tally(programme, new GradeNumbers(QUESTION.nursery()));
      tally.run(Luck.NONE);
      double rate = QUESTION.nursery().settings().discountRate();
      double value = Finance.presentValue(tally.flows(), rate);

      Outcome line = engine.line(each);

      assertThat(line.value()).isCloseTo(value, within(1e-6));
      assertThat(line.hours()).containsExactly(tally.hours(), within(1e-9));
      for (int place = 0; place < line.space().length; place++) {
        assertThat(line.space()[place]).containsExactly(tally.space()[place], within(1e-9));
      }
    }
  }

  @Test
  void oneThreadAndTwo_giveTheSameAnswer() {
    Wish quick = new Wish(Question.Scope.ALL, Aim.MEAN, true, 0);

    Answer one = Buying.answer(inputs(), quick, 1, doing -> {});
    Answer two = Buying.answer(inputs(), quick, 2, doing -> {});

    assertThat(two.found()).usingRecursiveComparison().isEqualTo(one.found());
    assertThat(two.offers()).usingRecursiveComparison().isEqualTo(one.offers());
    assertThat(two.limitsWorth()).usingRecursiveComparison().isEqualTo(one.limitsWorth());
  }
}
