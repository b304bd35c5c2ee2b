package growingon.load.cell;

import growingon.problem.Problem;
import growingon.problem.Where;
import java.util.function.Function;

/** A cell does not hold what it should; carries the problem but for its place. */
public final class CellFault extends RuntimeException {
  private static final long serialVersionUID = 1;

  private final transient Function<Where, Problem> problem;

  public CellFault(Function<Where, Problem> problem) {
    super("a cell fault was not caught", null, false, false);
    this.problem = problem;
  }

  public Problem at(Where where) {
    return problem.apply(where);
  }
}
