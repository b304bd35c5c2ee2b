package growingon.buying.engine;

import growingon.buying.question.Candidate;
import growingon.buying.question.Question;
import growingon.buying.question.Sample;
import growingon.chance.Workers;
import growingon.chance.luck.Draws;
import growingon.money.AllLadders;
import growingon.money.Finance;
import growingon.money.LadderRuns;
import growingon.money.LadderSums;
import growingon.money.Prices;
import growingon.nursery.Nursery;
import growingon.nursery.Scenario;
import growingon.nursery.market.Demand;
import growingon.project.Programme;
import growingon.project.ReadyLots;
import growingon.project.lot.Luck;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.IntFunction;

/**
 * Runs candidates on the real engine. Lots of two ladders meet only in packs, space, hours and
 * cash, which are sums; so each ladder runs by itself, and only those that a move touches run
 * again, side by side with the candidate that the moves are from, so that a lot runs again only
 * where it fares otherwise. What was run is kept for a while. None of this changes a digit.
 */
public final class Engine {
  /** So many sums of the plan's line are kept; of many lots fewer, as each takes more. */
  private static final int KEPT = 2000;

  /** So many programmes are kept: those run now, beside which others will be run. */
  private static final int MADE = 600;

  /** So many candidates are run in one run beside the one that they differ from. */
  private static final int AT_ONCE = 12;

  /** With fewer, a second run beside costs more than it saves. */
  private static final int FEW = 4;

  /** Of so many candidates all that they cause is held at once. */
  private static final int MOST_AT_ONCE = 500;

  /** Of each draw the sums of so many candidates are kept: those that many are compared with. */
  private static final int KEPT_OF_A_DRAW = 3;

  /** Draws to choose by are numbered apart from those on which the answer is judged. */
  private static final int FIRST_TO_CHOOSE_BY = 1_000_000;

  private final Question question;
  private final int threads;
  private final int keptOfADraw;
  private final ReadyLots ready;
  private final Prices prices;
  private final Draws draws;
  private final double rate;
  private final double opening;
  private final Scenario scenario;
  private final Map<Key, LadderSums> line;
  private final Map<Integer, Map<Key, LadderSums>> drawn = new ConcurrentHashMap<>();
  private final AtomicLong runs = new AtomicLong();
  private final AtomicLong laddersRun = new AtomicLong();
  private final AtomicLong laddersKept = new AtomicLong();
  private final Map<Key, Programme> programmes = Collections.synchronizedMap(new Recent<>(MADE));
  private final ThreadLocal<AllLadders> allLadders;
  private Optional<Extra> extra = Optional.empty();
  private final ThreadLocal<LadderRuns> ladderRuns;

  /** Which lots of a ladder run. */
  private record Key(String ladder, List<Integer> values) {}

  /** What was used last. */
  private static final class Recent<V> extends LinkedHashMap<Key, V> {
    private static final long serialVersionUID = 1L;

    private final int most;

    Recent(int most) {
      super(16, 0.75f, true);
      this.most = most;
    }

    @Override
    protected boolean removeEldestEntry(Map.Entry<Key, V> eldest) {
      return size() > most;
    }
  }

  public Engine(Question question, int threads) {
    this(question, question.scenario(), threads);
  }

  /**
   * The same lots in a nursery with other demand or places, or under another plan.
   *
   * @param scenario the nursery and plan
   */
  public Engine(Question question, Scenario scenario, int threads) {
    this.question = question;
    this.scenario = scenario;
    this.threads = threads;
    this.line = Collections.synchronizedMap(new Recent<>((int) (KEPT * question.shareOfFew())));
    this.keptOfADraw = KEPT_OF_A_DRAW * Math.max(1, question.ladders().size());
    this.ready = new ReadyLots(scenario);
    this.prices = new Prices(scenario.nursery(), scenario.horizon());
    this.draws = new Draws(scenario);
    this.rate = scenario.nursery().settings().discountRate();
    this.opening = scenario.nursery().settings().openingCash();
    this.allLadders = ThreadLocal.withInitial(() -> new AllLadders(scenario));
    this.ladderRuns = ThreadLocal.withInitial(() -> new LadderRuns(scenario, prices));
    if (Extra.isToBeHad(scenario)) {
      this.extra = Optional.of(Extra.of(scenario, line(question.asGiven())));
    }
  }

  /**
   * The same lots where buyers of one ladder want something else: what lots of the other ladders
   * cause on the plan's line is taken over.
   */
  public Engine withDemand(List<Demand> demand, String ladder) {
    Nursery nursery = scenario.nursery().withDemand(demand);
    Engine other =
        new Engine(question, new Scenario(nursery, scenario.plan(), scenario.lots()), threads);
    synchronized (line) {
      line.forEach((key, sums) -> other.takeOver(key, sums, ladder));
    }
    return other;
  }

  private void takeOver(Key key, LadderSums sums, String but) {
    if (!key.ladder().equals(but)) {
      line.put(key, sums);
    }
  }

  /** What may be chosen. */
  public Question question() {
    return question;
  }

  /** The nursery and plan that candidates are run on. */
  public Scenario scenario() {
    return scenario;
  }

  /** How many threads run candidates. */
  public int threads() {
    return threads;
  }

  /** Candidates run so far, on the plan's line or on a draw. */
  public long runs() {
    return runs.get();
  }

  /** Ladders run so far, and those that were kept from a run before. */
  long laddersRun() {
    return laddersRun.get();
  }

  long laddersKept() {
    return laddersKept.get();
  }

  /** The plan's line of a candidate. */
  public Outcome line(Candidate candidate) {
    return lines(candidate, List.of(candidate)).get(0);
  }

  /**
   * The plan's lines of candidates, on all threads.
   *
   * @param from a candidate from which they differ little: it is run beside them
   */
  public List<Outcome> lines(Candidate from, List<Candidate> candidates) {
    Outcome[] outcomes = new Outcome[candidates.size()];
    for (int begin = 0; begin < outcomes.length; begin += MOST_AT_ONCE) {
      int first = begin;
      int some = Math.min(MOST_AT_ONCE, outcomes.length - begin);
      Map<Key, LadderSums> sums = runLine(from, candidates.subList(first, first + some));
      each(some, i -> outcomes[first + i] = outcome(candidates.get(first + i), sums));
    }
    return Arrays.asList(outcomes);
  }

  private Map<Key, LadderSums> runLine(Candidate from, List<Candidate> candidates) {
    Map<Key, LadderSums> sums = new ConcurrentHashMap<>();
    List<Together> together = together(from, candidates, line, sums, threads);
    each(together.size(), i -> together.get(i).run(Luck.NONE, sums));
    keep(from, sums, line);
    return sums;
  }

  /** What is done with a number. */
  private interface Doing {
    void with(int number);
  }

  private void each(int number, Doing doing) {
    if (number < 2 || threads < 2) {
      for (int i = 0; i < number; i++) {
        doing.with(i);
      }
      return;
    }
    Workers.draw(number, Math.min(threads, number), () -> doing::with, done -> {});
  }

  /**
   * Candidates on draws.
   *
   * @param by a candidate from which they differ little: it is run beside them
   * @param from number of the first draw
   * @param to number of the last, not counted in
   * @return [candidate][draw]
   */
  public Sample[] on(Candidate by, List<Candidate> candidates, int from, int to) {
    Sample[] samples = new Sample[candidates.size()];
    for (int i = 0; i < samples.length; i++) {
      samples[i] = new Sample(new double[to - from], new double[to - from]);
    }
    each(to - from, draw -> onDraw(from + draw, by, candidates, draw, samples));
    return samples;
  }

  /**
   * Candidates on draws to choose by, as {@link #on}.
   *
   * @param from number of the first of these draws
   * @param to number of the last, not counted in
   */
  public Sample[] toChoose(Candidate by, List<Candidate> candidates, int from, int to) {
    return on(by, candidates, FIRST_TO_CHOOSE_BY + from, FIRST_TO_CHOOSE_BY + to);
  }

  private void onDraw(
      int number, Candidate by, List<Candidate> candidates, int at, Sample[] samples) {
    Luck luck = draws.luck(number);
    // Those that are chosen on come up again and again, those that are judged on once.
    boolean keeps = number >= FIRST_TO_CHOOSE_BY;
    Map<Key, LadderSums> kept =
        keeps ? drawn.computeIfAbsent(number, any -> new Recent<>(keptOfADraw)) : Map.of();
    for (int begin = 0; begin < samples.length; begin += MOST_AT_ONCE) {
      int end = Math.min(samples.length, begin + MOST_AT_ONCE);
      Map<Key, LadderSums> sums = new LinkedHashMap<>();
      together(by, candidates.subList(begin, end), kept, sums, 1)
          .forEach(each -> each.run(luck, sums));
      if (keeps) {
        keep(by, sums, kept);
      }
      for (int i = begin; i < end; i++) {
        Outcome outcome = outcome(candidates.get(i), sums);
        samples[i].values()[at] = outcome.value();
        samples[i].lowest()[at] = outcome.lowestCash();
      }
    }
  }

  /** Forgets what was kept of draws, which takes memory. */
  public void forgetDraws() {
    drawn.clear();
  }

  /** What was run last is kept; the candidate that others were run beside counts as used last. */
  private void keep(Candidate by, Map<Key, LadderSums> sums, Map<Key, LadderSums> kept) {
    kept.putAll(sums);
    question.ladders().forEach(ladder -> kept.get(key(ladder, by)));
  }

  /**
   * What is still to be run of candidates: of each ladder those that differ, beside each other.
   *
   * @param kept what was run before
   * @param sums takes what of it is wanted
   * @param atLeast into so many runs it is divided if there is enough of it
   */
  private List<Together> together(
      Candidate by,
      List<Candidate> candidates,
      Map<Key, LadderSums> kept,
      Map<Key, LadderSums> sums,
      int atLeast) {
    List<Together> together = new ArrayList<>();
    for (String ladder : question.ladders()) {
      Map<Key, Candidate> open = new LinkedHashMap<>();
      for (Candidate candidate : candidates) {
        Key key = key(ladder, candidate);
        boolean isMet = sums.containsKey(key) || open.containsKey(key);
        LadderSums known = isMet ? null : kept.get(key);
        if (known != null) {
          sums.put(key, known);
        } else if (!isMet) {
          open.put(key, candidate);
        }
        laddersKept.addAndGet(isMet || known != null ? 1 : 0);
      }
      divide(ladder, by, open, atLeast, together);
    }
    return together;
  }

  private void divide(
      String ladder, Candidate by, Map<Key, Candidate> open, int atLeast, List<Together> together) {
    Key beside = key(ladder, by);
    boolean isOpen = open.remove(beside) != null;
    List<Key> keys = List.copyOf(open.keySet());
    if (keys.isEmpty() && !isOpen) {
      return;
    }
    if (keys.size() == 1 && !isOpen) {
      together.add(new Together(keys, List.of(programme(ladder, keys.get(0), open))));
      return;
    }
    open.put(beside, by);
    Programme first = programme(ladder, beside, open);
    int most = (keys.size() + AT_ONCE - 1) / AT_ONCE;
    int runs = Math.max(1, Math.max(most, Math.min(atLeast, keys.size() / FEW)));
    for (int i = 0; i < runs; i++) {
      List<Key> some = new ArrayList<>(List.of(beside));
      some.addAll(keys.subList(i * keys.size() / runs, (i + 1) * keys.size() / runs));
      List<Programme> programmes = new ArrayList<>(List.of(first));
      some.subList(1, some.size()).forEach(key -> programmes.add(programme(ladder, key, open)));
      together.add(new Together(some, programmes));
    }
  }

  private Programme programme(String ladder, Key key, Map<Key, Candidate> of) {
    Programme known = programmes.get(key);
    if (known == null) {
      known = ready.programme(question.lots(ladder, of.get(key)));
      programmes.put(key, known);
    }
    return known;
  }

  private Key key(String ladder, Candidate candidate) {
    return new Key(ladder, question.key(ladder, candidate));
  }

  /** Programmes that are run at once, the first of which the others differ little from. */
  private final class Together {
    private final List<Key> keys;
    private final List<Programme> of;

    Together(List<Key> keys, List<Programme> of) {
      this.keys = keys;
      this.of = of;
    }

    void run(Luck luck, Map<Key, LadderSums> into) {
      LadderRuns counted = ladderRuns.get();
      List<LadderSums> found;
      try {
        found =
            of.size() == 1
                ? List.of(counted.of(of.get(0), luck))
                : counted.of(of.get(0), of.subList(1, of.size()), luck);
      } catch (IllegalStateException unbalanced) {
        throw named(unbalanced, luck);
      }
      laddersRun.addAndGet(keys.size());
      for (int i = 0; i < keys.size(); i++) {
        into.put(keys.get(i), found.get(i));
      }
    }

    /** The fault with the lots of the programme in which it comes up. */
    private IllegalStateException named(IllegalStateException unbalanced, Luck luck) {
      for (Programme each : of) {
        try {
          ladderRuns.get().of(each, luck);
        } catch (IllegalStateException alone) {
          return new IllegalStateException(
              alone.getMessage() + ", with " + CandidateNames.of(each.scenario().lots()), alone);
        }
      }
      return unbalanced;
    }
  }

  private Outcome outcome(Candidate candidate, Map<Key, LadderSums> sums) {
    runs.incrementAndGet();
    List<LadderSums> ladders = new ArrayList<>();
    for (String ladder : question.ladders()) {
      ladders.add(sums.get(key(ladder, candidate)));
    }
    AllLadders.Sum sum = allLadders.get().of(ladders);
    double[][] space = sum.space();
    double[] hours = sum.hours();
    double cost = extra.map(each -> each.cost(space, hours)).orElse(0.0);
    return new Outcome(
        sum.presentValue(rate) - cost,
        Finance.presentValue(sum.sales(), rate),
        space,
        hours,
        sum.balances(opening),
        cost);
  }

  /** Makes something of each number, on all threads, in order. */
  <T> List<T> forEach(int number, IntFunction<T> make) {
    List<T> made = new ArrayList<>(Collections.nCopies(number, null));
    each(number, i -> made.set(i, make.apply(i)));
    return made;
  }
}
