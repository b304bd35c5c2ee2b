package growingon.load;

import growingon.problem.Problem;
import growingon.problem.Where;
import java.util.function.Function;

/** A cell does not hold what it should; carries the problem but for its place. */
final class CellFault extends RuntimeException {
  private static final long serialVersionUID = 1;

  private final transient Function<Where, Problem> problem;

  CellFault(Function<Where, Problem> problem) {
    super("a cell fault was not caught", null, false, false);
    this.problem = problem;
  }

  Problem at(Where where) {
    return problem.apply(where);
  }
}
