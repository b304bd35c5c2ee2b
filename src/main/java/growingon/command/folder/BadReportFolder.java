package growingon.command.folder;

import growingon.problem.Problem;
import java.io.IOException;

/** A plan's file names a folder for the report that cannot be one. */
public final class BadReportFolder extends IOException {
  private static final long serialVersionUID = 1L;

  private final transient Problem problem;

  BadReportFolder(Problem problem) {
    super(problem.toString());
    this.problem = problem;
  }

  public Problem problem() {
    return problem;
  }
}
