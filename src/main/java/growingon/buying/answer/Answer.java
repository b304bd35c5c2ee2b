package growingon.buying.answer;

import growingon.buying.answer.PlanValue.Kind;
import growingon.buying.limit.Limits;
import growingon.buying.question.Candidate;
import growingon.buying.question.Question;
import growingon.buying.question.Spread;
import growingon.buying.question.Wish;
import growingon.buying.search.Found;
import growingon.nursery.Inputs;
import growingon.nursery.Plan;
import growingon.nursery.Scenario;
import growingon.nursery.lot.Lot;
import growingon.nursery.market.HorizonValue;
import java.util.List;
import java.util.Optional;

/**
 * What to buy and to hold, and what it is worth.
 *
 * @param inputs what was asked about
 * @param question what was decided
 * @param wish how it was asked
 * @param withLuck whether anything is left to luck; else the plan's line stands for all draws
 * @param draws draws it was judged on; 0 for the plan's line alone
 * @param limits what it keeps within
 * @param found what the search found
 * @param plans the plans side by side
 * @param leftOutGain what the changes left out would bring together
 * @param offers what is said of each offer
 * @param holds what is said of each lot, changes first, that which brings most first
 * @param limitsWorth what holds the nursery back, the dearest first
 * @param unsoldShare share of all plants that stand unsold at the end as recommended, on the plan's
 *     line
 * @param otherEnd what it comes to where plants unsold at the end count otherwise than the plan
 *     says; empty where few are left and the plan counts them for nothing
 */
public record Answer(
    Inputs inputs,
    Question question,
    Wish wish,
    boolean withLuck,
    int draws,
    Limits limits,
    Found found,
    List<PlanValue> plans,
    Spread leftOutGain,
    List<OfferAnswer> offers,
    List<HoldAnswer> holds,
    List<LimitWorth> limitsWorth,
    double unsoldShare,
    Optional<OtherEnd> otherEnd) {
  /** From so many unsold plants on it matters what they count for. */
  public static final double MANY_UNSOLD = 1.0 / 3;

  /**
   * The answer where what is unsold at the end counts otherwise.
   *
   * @param value what it counts for
   * @param gain what the recommended gains over as given then
   * @param candidate what would be done then
   */
  public record OtherEnd(HorizonValue value, Spread gain, Candidate candidate) {}

  public Answer {
    plans = List.copyOf(plans);
    offers = List.copyOf(offers);
    holds = List.copyOf(holds);
    limitsWorth = List.copyOf(limitsWorth);
  }

  /** One of the plans, where it is shown. */
  public Optional<PlanValue> plan(Kind kind) {
    return plans.stream().filter(each -> each.kind() == kind).findFirst();
  }

  /** The recommended. */
  public PlanValue recommended() {
    return plan(Kind.RECOMMENDED).orElseThrow();
  }

  /** The recommended plan as a scenario that can be planned. */
  public Scenario recommendedScenario() {
    return RecommendedPlan.of(question, found.recommended(), draws);
  }

  /** Lots of a candidate. */
  public List<Lot> lots(Candidate candidate) {
    return question.lots(candidate);
  }

  /** The plan asked about. */
  public Plan plan() {
    return inputs.scenario().plan();
  }
}
