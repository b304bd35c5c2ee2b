package growingon.buying.answer;

import growingon.buying.answer.OfferAnswer.LeastLack;
import growingon.buying.answer.OfferAnswer.Tried;
import growingon.buying.answer.OfferAnswer.Verdict;
import growingon.buying.engine.Engine;
import growingon.buying.engine.Outcome;
import growingon.buying.limit.Lack;
import growingon.buying.limit.Limits;
import growingon.buying.question.Aim;
import growingon.buying.question.Candidate;
import growingon.buying.question.Choice.Holding;
import growingon.buying.question.Choice.Take;
import growingon.buying.question.Question;
import growingon.buying.question.Sample;
import growingon.buying.question.Spread;
import growingon.buying.search.Found;
import growingon.buying.search.Moves;
import growingon.nursery.lot.Offer;
import growingon.nursery.lot.Purchase;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;

/** Says of every offer whether and how many to buy, each beside all else that is recommended. */
public final class Offers {
  /** Numbers of an offer are set against each other on so many draws. */
  private static final int DRAWS_OF_NUMBERS = 100;

  /** Among very many choices about so many numbers of an offer are set against each other. */
  private static final int NUMBERS = 13;

  /** What is within a hundredth of the best does as well. */
  private static final double AS_GOOD = 0.01;

  private static final double TWO_ERRORS = 2;

  private final Engine engine;
  private final Question question;
  private final Limits limits;
  private final PlanDraws planDraws;
  private final Moves moves;
  private final Found found;
  private final Aim aim;
  private final Map<Integer, Engine> endings = new HashMap<>();

  public Offers(
      Engine engine, Limits limits, PlanDraws planDraws, Moves moves, Found found, Aim aim) {
    this.engine = engine;
    this.question = engine.question();
    this.limits = limits;
    this.planDraws = planDraws;
    this.moves = moves;
    this.found = found;
    this.aim = aim;
  }

  /** One for each offer, in the order of the offers. */
  public List<OfferAnswer> answers() {
    List<OfferAnswer> answers = new ArrayList<>();
    for (int i = 0; i < question.choices().size(); i++) {
      if (question.choice(i) instanceof Take take && moves.values(i).size() > 1) {
        answers.add(answer(i, take));
      }
    }
    return answers;
  }

  private OfferAnswer answer(int choice, Take take) {
    Candidate without = question.tidy(found.recommended().with(choice, 0));
    int advised = found.recommended().value(choice);
    Numbers numbers = numbers(choice, advised, without);
    int at = advised > 0 ? advised : numbers.best();
    Candidate with = with(choice, at);
    Ends ends = new Ends(engine, planDraws, with, without, take, endings);
    Sample[] both = planDraws.on(List.of(with, without));
    Spread atEnd = Spread.of(both[0].over(both[1]));
    double worst = Aim.CAREFUL.of(both[0].values()) - Aim.CAREFUL.of(both[1].values());
    Spread gain = ends.judgedAt() == ends.planEnd() ? atEnd : ends.gain();
    Offer order = take.orders().get(0);
    Purchase purchase = order.taken(at).purchase().orElseThrow();
    Verdict verdict =
        advised == 0 && aim == Aim.CAREFUL && atEnd.mean() > 0 && worst < 0
            ? Verdict.RISKS_TOO_MUCH
            : verdict(choice, advised, at, numbers, atEnd, ends);
    return new OfferAnswer(
        take,
        verdict,
        advised,
        question.asPlanned().value(choice),
        at,
        numbers.tried(),
        numbers.goodFrom(at),
        numbers.goodTo(at),
        gain,
        atEnd,
        worst,
        ends.judgedAt(),
        ends.paysFrom(),
        ends.unsold(ends.planEnd()),
        ends.unsoldAtList(),
        ends.isSold(),
        ends.unsold(ends.judgedAt()),
        ends.mostLanded(at, gain.mean()),
        purchase.landed(at) / at,
        lack(choice, at),
        least(choice, numbers),
        ends.payback(),
        ends.yieldPerM2Year(gain.mean()));
  }

  /** As recommended but for the number of one offer. */
  private Candidate with(int choice, int number) {
    return question.tidy(found.recommended().with(choice, number));
  }

  /** What was tried of an offer. */
  private record Numbers(List<Tried> tried, int best) {
    int goodFrom(int at) {
      int from = at;
      for (int i = index(at); i >= 0 && isGood(i); i--) {
        from = tried.get(i).number();
      }
      return from;
    }

    int goodTo(int at) {
      int to = at;
      for (int i = index(at); i < tried.size() && isGood(i); i++) {
        to = tried.get(i).number();
      }
      return to;
    }

    private boolean isGood(int i) {
      return tried.get(i).isGood() && tried.get(i).fits();
    }

    private int index(int at) {
      for (int i = 0; i < tried.size(); i++) {
        if (tried.get(i).number() == at) {
          return i;
        }
      }
      throw new IllegalStateException("not tried: " + at);
    }
  }

  /** Some of many numbers: the advised, the least and the most, and others between. */
  private static List<Integer> few(List<Integer> some, int advised) {
    SortedSet<Integer> few = new TreeSet<>();
    int steps = Math.min(NUMBERS, some.size());
    for (int i = 0; i < steps; i++) {
      few.add(some.get(steps == 1 ? 0 : Math.round((float) i * (some.size() - 1) / (steps - 1))));
    }
    if (advised > 0) {
      few.add(advised);
      int at = some.indexOf(advised);
      few.addAll(some.subList(Math.max(0, at - 1), Math.min(some.size(), at + 2)));
    }
    return List.copyOf(few);
  }

  private Numbers numbers(int choice, int advised, Candidate without) {
    List<Integer> tried = moves.values(choice).stream().filter(number -> number > 0).toList();
    List<Integer> numbers = moves.areMany() ? few(tried, advised) : tried;
    List<Candidate> candidates = new ArrayList<>(List.of(without));
    numbers.forEach(number -> candidates.add(with(choice, number)));
    Sample[] samples = planDraws.on(candidates, DRAWS_OF_NUMBERS);
    int best = 1;
    for (int i = 2; i < samples.length; i++) {
      boolean better = Sample.mean(samples[i].values()) > Sample.mean(samples[best].values());
      best = better ? i : best;
    }
    int at = advised > 0 ? numbers.indexOf(advised) + 1 : best;
    List<Tried> told = new ArrayList<>();
    for (int i = 1; i < samples.length; i++) {
      boolean isGood = i == at || isAsGood(samples[i], samples[at], samples[0]);
      boolean fits = limits.allow(engine.line(candidates.get(i)));
      Spread spread = Spread.of(samples[i].over(samples[0]));
      told.add(new Tried(numbers.get(i - 1), spread, isGood, fits));
    }
    return new Numbers(told, numbers.get(best - 1));
  }

  /** Whether one is hardly behind the best by what is asked for: the mean or the worst fifth. */
  private boolean isAsGood(Sample one, Sample best, Sample without) {
    double gain = aim.of(best.values()) - aim.of(without.values());
    double[] behind = best.over(one);
    double error =
        Sample.error(
            Arrays.stream(aim.draws(best.values())).mapToDouble(draw -> behind[draw]).toArray());
    return aim.of(best.values()) - aim.of(one.values())
        <= Math.max(AS_GOOD * Math.abs(gain), TWO_ERRORS * error);
  }

  private Verdict verdict(
      int choice, int advised, int at, Numbers numbers, Spread atEnd, Ends ends) {
    if (advised > 0) {
      return Verdict.BUY;
    }
    if (atEnd.mean() > 0) {
      // A few plants that fit and bring little do not make the best number of them fit.
      if (limits.allow(engine.line(with(choice, at)))) {
        return Verdict.BRINGS_LITTLE;
      }
      return paysAsGiven(choice, at) ? Verdict.HOLDING_PAYS_MORE : Verdict.DOES_NOT_FIT;
    }
    if (ends.gain().mean() > 0 && ends.paysFrom().isPresent()) {
      return Verdict.PAYS_LATER;
    }
    if (paysAsGiven(choice, at)) {
      return Verdict.HOLDING_PAYS_MORE;
    }
    return ends.isSold() ? Verdict.DOES_NOT_PAY : Verdict.UNSOLD;
  }

  /** Whether it fits and gains beside the other purchases where all is held as given. */
  private boolean paysAsGiven(int choice, int at) {
    Candidate given = found.recommended().with(choice, 0);
    for (int i = 0; i < given.size(); i++) {
      given = question.choice(i) instanceof Holding ? given.with(i, 0) : given;
    }
    Candidate with = given.with(choice, at);
    Sample[] samples = planDraws.on(List.of(with, given), DRAWS_OF_NUMBERS);
    return limits.allow(engine.line(with)) && Sample.mean(samples[0].over(samples[1])) > 0;
  }

  /** The number that gains and is least over the limits. */
  private Optional<LeastLack> least(int choice, Numbers numbers) {
    LeastLack least = null;
    double shortest = Double.POSITIVE_INFINITY;
    for (Tried tried : numbers.tried()) {
      double shortage = limits.shortage(engine.line(with(choice, tried.number())));
      Optional<Lack> lack = lack(choice, tried.number());
      if (tried.gain().mean() > 0 && lack.isPresent() && shortage < shortest) {
        shortest = shortage;
        least = new LeastLack(tried.number(), tried.gain().mean(), lack.get());
      }
    }
    return Optional.ofNullable(least);
  }

  private Optional<Lack> lack(int choice, int at) {
    Outcome line = engine.line(with(choice, at));
    List<String> places = List.copyOf(question.nursery().places().keySet());
    return limits.lack(line, places);
  }
}
