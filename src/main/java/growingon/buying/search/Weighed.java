package growingon.buying.search;

import growingon.buying.question.Candidate;
import growingon.buying.question.Move;
import java.util.List;
import java.util.stream.IntStream;

/** A move with what it is worth. */
public record Weighed(Move move, Judged judged) {
  double gain() {
    return judged.gain();
  }

  /** Moves from a candidate, in order. */
  public static List<Weighed> by(Judge judge, Candidate from, List<Move> some) {
    List<Judged> judged = judge.judge(from, some);
    return IntStream.range(0, some.size())
        .mapToObj(i -> new Weighed(some.get(i), judged.get(i)))
        .toList();
  }
}
