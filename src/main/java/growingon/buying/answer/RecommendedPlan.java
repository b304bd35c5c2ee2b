package growingon.buying.answer;

import growingon.buying.question.Candidate;
import growingon.buying.question.Choice.Holding;
import growingon.buying.question.Choice.Take;
import growingon.buying.question.Question;
import growingon.nursery.Plan;
import growingon.nursery.Plan.PlannedHold;
import growingon.nursery.Scenario;
import growingon.nursery.lot.Lot;
import growingon.nursery.lot.Offer;
import java.util.LinkedHashMap;
import java.util.Map;

/** A candidate as a plan: only what is bought, and only what is held otherwise than as given. */
final class RecommendedPlan {
  private RecommendedPlan() {}

  static Scenario of(Question question, Candidate candidate, int draws) {
    Plan asked = question.scenario().plan();
    Map<String, Integer> take = new LinkedHashMap<>();
    for (Lot lot : question.scenario().lots()) {
      if (lot.purchase().isPresent() && !question.decides(lot.name())) {
        take.put(lot.name(), lot.quantity());
      }
    }
    Map<String, PlannedHold> holds = new LinkedHashMap<>(asked.holds());
    for (int i = 0; i < candidate.size(); i++) {
      int value = candidate.value(i);
      if (question.choice(i) instanceof Take order) {
        boolean whole = order.orders().get(0).name().equals(order.name());
        for (Offer each : order.orders()) {
          if (!whole || value > 0 && each.name().equals(order.name())) {
            take.put(each.name(), value);
          }
        }
      } else if (question.choice(i) instanceof Holding holding
          && value > 0
          && question.counts(candidate, i)) {
        holds.put(holding.name(), new PlannedHold(holding.hold(value), true));
      }
    }
    holds.keySet().removeIf(name -> question.isNotTaken(name, candidate));
    Plan plan =
        asked
            .with()
            .name(asked.name() + " recommended")
            .take(take)
            .draws(draws)
            .holds(holds)
            .build();
    return new Scenario(question.nursery(), plan, question.lots(candidate));
  }
}
