package growingon.command;

import growingon.problem.Problem;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import picocli.CommandLine.Option;

/** The option by which every command that reads inputs prints all that is wrong with them. */
final class Problems {
  @Option(names = "--all", description = "Print every problem, not only each kind once.")
  private boolean all;

  /** Says why nothing was written, in a dozen lines or in full; gives the exit code. */
  int refuse(List<Problem> problems, PrintWriter err) {
    return Refusal.of(all, err).tell(problems);
  }

  /**
   * The same, and keeps them in a file beside the report.
   *
   * @param what was to be planned
   * @param writes whether a report would have been written
   */
  int refuse(Path what, boolean writes, List<Problem> problems, PrintWriter err) {
    return Refusal.keeping(what, all, writes, err).tell(problems);
  }
}
