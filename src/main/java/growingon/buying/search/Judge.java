package growingon.buying.search;

import growingon.buying.limit.Change;
import growingon.buying.question.Candidate;
import growingon.buying.question.Move;
import java.util.List;
import java.util.function.ToDoubleFunction;

/** Says what moves from a candidate are worth: on the plan's line, or on draws. */
interface Judge {
  /** Each move judged, in order. */
  List<Judged> judge(Candidate from, List<Move> moves);

  /** Whether a move costs it no more than one run, so that many can be looked at. */
  boolean isOneRun();

  /**
   * What changes seen before, here or by another judge, promise if they still were the same.
   *
   * @param from the candidate that they would be made from
   */
  ToDoubleFunction<Change> promises(Candidate from);
}
