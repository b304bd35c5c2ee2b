package growingon.buying;

import java.util.List;

/** Says what moves from a candidate are worth: on the plan's line, or on draws. */
interface Judge {
  /** Each move judged, in order. */
  List<Judged> judge(Candidate from, List<Move> moves);

  /** Whether a move costs it no more than one run, so that many can be looked at. */
  boolean isOneRun();
}
