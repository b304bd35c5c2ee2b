package growingon.buying;

import growingon.buying.answer.Answer;
import growingon.buying.answer.HoldAnswer;
import growingon.buying.answer.OfferAnswer;
import growingon.buying.question.Aim;
import growingon.buying.question.Question;
import growingon.buying.question.Wish;
import growingon.nursery.Inputs;
import growingon.nursery.Plan;
import growingon.nursery.Plan.PlannedHold;
import growingon.nursery.Scenario;
import growingon.nursery.lot.Hold;
import growingon.nursery.lot.Lot;
import growingon.nursery.lot.Offer;
import growingon.project.Lots;
import growingon.project.Nurseries;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;

/** A question of what to buy, to be built up in a test. */
public final class Asked {
  static final YearMonth DECEMBER = YearMonth.of(2026, 12);

  private final Nurseries nursery;
  private final List<Offer> offers = new ArrayList<>();
  private final Map<String, Integer> take = new LinkedHashMap<>();
  private final Map<String, PlannedHold> holds = new LinkedHashMap<>();
  private int draws;
  private long seed = 1;

  private Asked(Nurseries nursery) {
    this.nursery = nursery;
  }

  public static Asked of(Nurseries nursery) {
    return new Asked(nursery);
  }

  /** An offer of a lot that arrives in December 2026, in ones up to a most. */
  Asked offer(Lots lot, double price, int least, int most) {
    return offer(lot, 0, 1, least, most, new Offer.PriceBreak(least, price));
  }

  /** The same with carriage, a multiple and price breaks. */
  public Asked offer(
      Lots lots, double carriage, int multiple, int least, int most, Offer.PriceBreak... breaks) {
    Lot lot = lots.quantity(0).arrived(2026, 12).build();
    offers.add(
        Offer.named(lot.name(), lot)
            .currency("EUR")
            .breaks(List.of(breaks))
            .multiple(multiple)
            .most(most > 0 ? OptionalInt.of(most) : OptionalInt.empty())
            .arrival(DECEMBER)
            .carriage(carriage)
            .build());
    return this;
  }

  Asked takes(String offer, int number) {
    take.put(offer, number);
    return this;
  }

  /** The plan says that nothing of an offer is held. */
  public Asked holdsNothingOf(String offer) {
    holds.put(offer, new PlannedHold(Optional.empty(), false));
    return this;
  }

  Asked seed(long number) {
    seed = number;
    return this;
  }

  public Asked draws(int number) {
    draws = number;
    return this;
  }

  public Inputs inputs() {
    Scenario base = nursery.scenario();
    Plan plan = base.plan();
    Plan planned =
        new Plan(
            plan.name(),
            plan.firstMonth(),
            plan.seasons(),
            take,
            plan.slices(),
            draws,
            seed,
            plan.horizonValue(),
            holds,
            Set.of());
    List<Lot> lots = new ArrayList<>(base.lots());
    for (Offer offer : offers) {
      int number = planned.taken(offer.name(), offer.name());
      if (number > 0) {
        lots.add(offer.taken(number));
      }
    }
    return new Inputs(
        new Scenario(base.nursery(), planned, lots), offers, List.of(), base.lots().size());
  }

  Answer answer() {
    return answer(new Wish(Question.Scope.ALL, Aim.MEAN, false, 0));
  }

  Answer answer(Wish wish) {
    return Buying.answer(inputs(), wish, 2, doing -> {});
  }

  /** What is bought: offers and numbers. */
  static Map<String, Integer> bought(Answer answer) {
    Map<String, Integer> bought = new LinkedHashMap<>();
    for (OfferAnswer offer : answer.offers()) {
      if (offer.advised() > 0) {
        bought.put(offer.take().name(), offer.advised());
      }
    }
    return bought;
  }

  /** What is held otherwise than as given. */
  static Map<String, Optional<Hold>> held(Answer answer) {
    Map<String, Optional<Hold>> held = new LinkedHashMap<>();
    for (HoldAnswer hold : answer.holds()) {
      if (hold.isChange()) {
        held.put(hold.name(), hold.advised());
      }
    }
    return held;
  }
}
