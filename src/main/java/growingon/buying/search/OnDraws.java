package growingon.buying.search;

import growingon.buying.engine.Engine;
import growingon.buying.engine.Outcome;
import growingon.buying.limit.Change;
import growingon.buying.limit.Limits;
import growingon.buying.question.Aim;
import growingon.buying.question.Candidate;
import growingon.buying.question.Choice.Holding;
import growingon.buying.question.Move;
import growingon.buying.question.Sample;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;

/**
 * Judges moves by the same draws with and without them; whether they fit, by the plan's line. A
 * move that after a few draws lags behind by more than luck is dropped.
 *
 * @param draws on so many draws
 * @param least a move that surely gains less is dropped
 * @param seesAll whether it looks at all moves to the end, else at the likeliest until one helps
 * @param amongMany whether there are very many moves: then it looks at all that are likely, once
 */
record OnDraws(
    Engine engine,
    Limits limits,
    Aim aim,
    int draws,
    double least,
    boolean seesAll,
    boolean amongMany)
    implements Judge {
  /** After so many draws a move that lags behind is dropped. */
  private static final int[] STAGES = {8, 24, 72};

  /** So many moves, those that promise most, are drawn to the end; more only if none helps. */
  private static final int AT_ONCE = 40;

  private static final double WORTH_A_MOVE = Climb.WORTH_A_ROUND;

  private static final double STANDARD_ERRORS = 3;

  /** Where a move is to be taken though it loses, it is dropped sooner: to stay costs nothing. */
  private static final double ERRORS_OF_UNDOING = 1;

  /** A hold that on the plan's line costs more than this share of sales is not looked at. */
  private static final double TOO_DEAR = 0.01;

  /** The same where there are many moves; of very many less, as each is less of the whole. */
  private static final double TOO_DEAR_OF_MANY = 0.003;

  /** Of very many moves so many of each choice are drawn to the end before others. */
  private static final int OF_A_CHOICE = 2;

  /** A candidate on all the draws. */
  Sample sample(Candidate candidate) {
    return engine.toChoose(candidate, List.of(candidate), 0, draws)[0];
  }

  @Override
  public List<Judged> judge(Candidate from, List<Move> moves) {
    Outcome line = engine.line(from);
    List<Candidate> moved = moves.stream().map(move -> move.from(from)).toList();
    List<Outcome> lines = engine.lines(from, moved);
    Judged[] judged = new Judged[moves.size()];
    double tooDear = tooDear(moves.size()) * line.sales();
    List<Integer> open = new ArrayList<>();
    for (int i = 0; i < judged.length; i++) {
      double gain = lines.get(i).value() - line.value();
      boolean fits = limits.allow(lines.get(i));
      boolean isTooDear = gain < -tooDear && isHold(moves.get(i));
      judged[i] = new Judged(gain, fits, true, Change.between(line, lines.get(i)));
      if (fits && !isTooDear) {
        open.add(i);
      }
    }
    Sample before = sample(from);
    int[] ends = ends();
    Stage first =
        drawOn(from, new Stage(open, new Sample[open.size()]), ends[0], before, moved, judged);
    for (Stage part : parts(first, moves, judged)) {
      Stage some = part;
      for (int i = 1; i < ends.length; i++) {
        some = drawOn(from, some, ends[i], before, moved, judged);
      }
      if (!seesAll && some.open().stream().anyMatch(i -> judged[i].helps(WORTH_A_MOVE))) {
        break;
      }
    }
    return Arrays.asList(judged);
  }

  private double tooDear(int moves) {
    if (moves <= Climb.FEW_MOVES) {
      return TOO_DEAR;
    }
    return amongMany ? TOO_DEAR_OF_MANY * engine.question().shareOfFew() : TOO_DEAR_OF_MANY;
  }

  private boolean isHold(Move move) {
    return move.changes().size() <= 2
        && engine.question().choice(move.only().choice()) instanceof Holding;
  }

  /** What is drawn to the end, one part after another until a move of one helps. */
  private List<Stage> parts(Stage all, List<Move> moves, Judged[] judged) {
    if (seesAll) {
      return List.of(all);
    }
    if (amongMany) {
      return List.of(likely(all, moves, judged));
    }
    List<Stage> parts = new ArrayList<>();
    for (int begin = 0; begin < all.open().size(); begin += AT_ONCE) {
      parts.add(all.part(begin, Math.min(all.open().size(), begin + AT_ONCE)));
    }
    return parts;
  }

  /** Of each choice the best moves that promise to help, and some others if these are few. */
  private Stage likely(Stage all, List<Move> moves, Judged[] judged) {
    List<Integer> likely = new ArrayList<>();
    List<Integer> others = new ArrayList<>();
    Map<Integer, Integer> met = new HashMap<>();
    for (int i = 0; i < all.open().size(); i++) {
      int index = all.open().get(i);
      boolean isLikely =
          judged[index].gain() > Math.max(0, least)
              && met.merge(moves.get(index).only().choice(), 1, Integer::sum) <= OF_A_CHOICE;
      (isLikely ? likely : others).add(i);
    }
    int more = Math.max(0, Math.min(others.size(), AT_ONCE - likely.size()));
    likely.addAll(others.subList(0, more));
    return all.those(likely);
  }

  private int[] ends() {
    return IntStream.concat(
            Arrays.stream(STAGES).filter(stage -> stage < draws), IntStream.of(draws))
        .toArray();
  }

  /**
   * Moves that are not dropped yet.
   *
   * @param open their indexes
   * @param samples what they came to so far
   */
  private record Stage(List<Integer> open, Sample[] samples) {
    Stage part(int from, int to) {
      return new Stage(open.subList(from, to), Arrays.copyOfRange(samples, from, to));
    }

    Stage those(List<Integer> of) {
      return new Stage(
          of.stream().map(open::get).toList(),
          of.stream().map(i -> samples[i]).toArray(Sample[]::new));
    }
  }

  private Stage drawOn(
      Candidate by, Stage stage, int end, Sample before, List<Candidate> moved, Judged[] judged) {
    if (stage.open().isEmpty()) {
      return stage;
    }
    List<Integer> left = new ArrayList<>();
    List<Sample> kept = new ArrayList<>();
    boolean last = end == draws;
    Sample[] drawn = drawn(by, stage, end, moved);
    Sample compared = before.first(end);
    for (int i = 0; i < drawn.length; i++) {
      int index = stage.open().get(i);
      judged[index] = judged(drawn[i], compared, last, judged[index].change());
      if (last || !isHopeless(drawn[i].over(compared))) {
        left.add(index);
        kept.add(drawn[i]);
      }
    }
    return promising(left, kept, judged);
  }

  private boolean isHopeless(double[] gains) {
    double errors = amongMany && least < 0 ? ERRORS_OF_UNDOING : STANDARD_ERRORS;
    return Sample.mean(gains) + errors * Sample.error(gains) < least;
  }

  private Sample[] drawn(Candidate by, Stage stage, int end, List<Candidate> moved) {
    Sample known = stage.samples()[0];
    int done = known == null ? 0 : known.values().length;
    List<Candidate> candidates = stage.open().stream().map(moved::get).toList();
    Sample[] more = engine.toChoose(by, candidates, done, end);
    for (int i = 0; i < more.length && known != null; i++) {
      more[i] = stage.samples()[i].and(more[i]);
    }
    return more;
  }

  private Judged judged(Sample sample, Sample before, boolean last, Change line) {
    double gain = aim.of(sample.values()) - aim.of(before.values());
    boolean fits = sample.below(limits.lowestCash()) <= limits.chanceBelow();
    return new Judged(gain, !last || fits, !last, line.withValue(gain));
  }

  /** Those that promise most first. */
  private static Stage promising(List<Integer> open, List<Sample> samples, Judged[] judged) {
    List<Integer> order = new ArrayList<>(IntStream.range(0, open.size()).boxed().toList());
    order.sort(Comparator.comparingDouble(i -> -judged[open.get(i)].gain()));
    return new Stage(
        order.stream().map(open::get).toList(),
        order.stream().map(samples::get).toArray(Sample[]::new));
  }

  @Override
  public boolean isOneRun() {
    return false;
  }

  @Override
  public ToDoubleFunction<Change> promises(Candidate from) {
    return Change::value;
  }
}
