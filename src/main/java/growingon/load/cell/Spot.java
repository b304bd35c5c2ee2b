package growingon.load.cell;

import growingon.problem.Problem;
import growingon.problem.Where;
import java.util.function.Function;

/** The cell that is being read, as far as a value needs to know it. */
public interface Spot {
  /** Heading of its column. */
  String heading();

  /** How numbers are written in its file. */
  NumberStyle style();

  /** Notes something that does not stop the value from being used. */
  void remark(Function<Where, Problem> problem);
}
