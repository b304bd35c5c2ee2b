package growingon.buying.search;

import growingon.buying.engine.Engine;
import growingon.buying.question.Choice.Take;
import growingon.buying.question.Quantities;
import growingon.buying.question.Question;
import growingon.nursery.lot.Offer;
import java.util.LinkedHashMap;
import java.util.Map;

/** The greatest number of an offer that is tried: the most that it names, else what is enough. */
final class MostTried {
  private MostTried() {}

  /** Plants of each offer, by the number of its choice. */
  static Map<Integer, Integer> of(Engine engine) {
    Question question = engine.question();
    Map<Integer, Integer> most = new LinkedHashMap<>();
    for (int i = 0; i < question.choices().size(); i++) {
      if (question.choice(i) instanceof Take take) {
        most.put(i, take.offer().most().orElse(-1));
      }
    }
    most.replaceAll((choice, known) -> known >= 0 ? known : enough(engine, choice));
    return most;
  }

  /** Doubles the number of an offer that names no most until its value has fallen twice running. */
  private static int enough(Engine engine, int choice) {
    Question question = engine.question();
    Offer offer = ((Take) question.choice(choice)).offer();
    int multiple = offer.multiple();
    int number = (offer.least() + multiple - 1) / multiple * multiple;
    double last = engine.line(question.asGiven()).value();
    int falls = 0;
    while (falls < 2 && 2 * number <= Quantities.MOST) {
      double value = engine.line(question.asGiven().with(choice, number)).value();
      falls = value < last ? falls + 1 : 0;
      last = value;
      number = falls < 2 ? 2 * number : number;
    }
    return number;
  }
}
