package growingon.buying;

import growingon.chance.Draws;
import growingon.chance.Workers;
import growingon.money.Finance;
import growingon.money.Part;
import growingon.money.Prices;
import growingon.money.Tally;
import growingon.money.Whole;
import growingon.nursery.Lot;
import growingon.nursery.Scenario;
import growingon.project.Luck;
import growingon.project.ReadyLots;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.IntFunction;

/**
 * Runs candidates on the real engine. Lots of two ladders meet only in packs, space, hours and
 * cash, which are sums; so each ladder runs by itself, and only those that a move touches run
 * again. What was run is kept for a while, which changes no digit.
 */
final class Engine {
  /** So many parts of the plan's line are kept. */
  private static final int KEPT = 1500;

  /** Of each draw the parts of so many candidates are kept: those that many are compared with. */
  private static final int KEPT_OF_A_DRAW = 3;

  private final Question question;
  private final int threads;
  private final int keptOfADraw;
  private final ReadyLots ready;
  private final Prices prices;
  private final Draws draws;
  private final double rate;
  private final double opening;
  private final Scenario scenario;
  private final Map<Key, Part> line = Collections.synchronizedMap(new Recent<>(KEPT));
  private final Map<Integer, Map<Key, Part>> drawn = new ConcurrentHashMap<>();
  private final AtomicLong runs = new AtomicLong();
  private final AtomicLong partsRun = new AtomicLong();
  private final AtomicLong partsKept = new AtomicLong();
  private final ThreadLocal<Whole> whole;

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

  Engine(Question question, int threads) {
    this(question, question.scenario(), threads);
  }

  /**
   * The same lots in a nursery with other demand or places, or under another plan.
   *
   * @param scenario the nursery and plan
   */
  Engine(Question question, Scenario scenario, int threads) {
    this.question = question;
    this.scenario = scenario;
    this.threads = threads;
    this.keptOfADraw = KEPT_OF_A_DRAW * Math.max(1, question.ladders().size());
    this.ready = new ReadyLots(scenario);
    this.prices = new Prices(scenario.nursery(), scenario.horizon());
    this.draws = new Draws(scenario);
    this.rate = scenario.nursery().settings().discountRate();
    this.opening = scenario.nursery().settings().openingCash();
    this.whole = ThreadLocal.withInitial(() -> new Whole(scenario));
  }

  Question question() {
    return question;
  }

  Scenario scenario() {
    return scenario;
  }

  int threads() {
    return threads;
  }

  /** Candidates run so far, on the plan's line or on a draw. */
  long runs() {
    return runs.get();
  }

  /** Ladders run so far, and those that were kept from a run before. */
  long partsRun() {
    return partsRun.get();
  }

  long partsKept() {
    return partsKept.get();
  }

  /** The plan's line of a candidate. */
  Outcome line(Candidate candidate) {
    return outcome(candidate, Luck.NONE, line);
  }

  /** The plan's lines of candidates, on all threads. */
  List<Outcome> lines(List<Candidate> candidates) {
    Outcome[] outcomes = new Outcome[candidates.size()];
    each(candidates.size(), i -> outcomes[i] = line(candidates.get(i)));
    return Arrays.asList(outcomes);
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
   * @param from number of the first draw
   * @param to number of the last, not counted in
   * @return [candidate][draw]
   */
  Sample[] on(List<Candidate> candidates, int from, int to) {
    Sample[] samples = new Sample[candidates.size()];
    for (int i = 0; i < samples.length; i++) {
      samples[i] = new Sample(new double[to - from], new double[to - from]);
    }
    each(
        to - from,
        draw -> {
          Luck luck = draws.luck(from + draw);
          // Those that are chosen on come up again and again, those that are judged on once.
          Map<Key, Part> kept =
              from >= OnDraws.FIRST
                  ? drawn.computeIfAbsent(from + draw, any -> new Recent<>(keptOfADraw))
                  : new Recent<>(keptOfADraw);
          for (int i = 0; i < samples.length; i++) {
            Outcome outcome = outcome(candidates.get(i), luck, kept);
            samples[i].values()[draw] = outcome.value();
            samples[i].lowest()[draw] = outcome.lowestCash();
          }
        });
    return samples;
  }

  /** Forgets what was kept of draws, which takes memory. */
  void forgetDraws() {
    drawn.clear();
  }

  private Outcome outcome(Candidate candidate, Luck luck, Map<Key, Part> kept) {
    runs.incrementAndGet();
    List<Part> parts = new ArrayList<>();
    for (String ladder : question.ladders()) {
      Key key = new Key(ladder, question.key(ladder, candidate));
      Part part = kept.get(key);
      if (part == null) {
        part = run(question.lots(ladder, candidate), luck);
        kept.put(key, part);
        partsRun.incrementAndGet();
      } else {
        partsKept.incrementAndGet();
      }
      parts.add(part);
    }
    Whole.Sum sum = whole.get().of(parts);
    return new Outcome(
        sum.presentValue(rate),
        Finance.presentValue(sum.sales(), rate),
        sum.space(),
        sum.hours(),
        sum.balances(opening));
  }

  private Part run(List<Lot> lots, Luck luck) {
    try {
      return new Tally(ready.programme(lots), prices).part(luck);
    } catch (IllegalStateException unbalanced) {
      throw new IllegalStateException(
          unbalanced.getMessage() + ", with " + Words.of(lots), unbalanced);
    }
  }

  /** Makes something of each number, on all threads, in order. */
  <T> List<T> forEach(int number, IntFunction<T> make) {
    List<T> made = new ArrayList<>(Collections.nCopies(number, null));
    each(number, i -> made.set(i, make.apply(i)));
    return made;
  }
}
