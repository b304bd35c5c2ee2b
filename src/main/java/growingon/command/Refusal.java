package growingon.command;

import growingon.problem.Problem;
import growingon.problem.ProblemGroup;
import growingon.problem.Severity;
import growingon.write.folder.FolderName;
import growingon.write.folder.ProblemsFile;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/** Why a plan cannot be made: in a dozen lines here, and in full in a file. */
final class Refusal {
  private static final int MOST_LINES = 12;

  private final Optional<Path> what;
  private final boolean all;
  private final boolean writes;
  private final PrintWriter err;

  /** One that is told and not kept, of a command that would have written something. */
  static Refusal of(boolean all, PrintWriter err) {
    return new Refusal(Optional.empty(), all, true, err);
  }

  /**
   * One whose problems stand in a file beside the report.
   *
   * @param what was to be planned
   * @param all whether every problem is printed
   * @param writes whether a report would have been written
   */
  static Refusal keeping(Path what, boolean all, boolean writes, PrintWriter err) {
    return new Refusal(Optional.of(what), all, writes, err);
  }

  private Refusal(Optional<Path> what, boolean all, boolean writes, PrintWriter err) {
    this.what = what;
    this.all = all;
    this.writes = writes;
    this.err = err;
  }

  /** Tells the problems; gives the exit code. */
  int tell(List<Problem> problems) {
    if (!all && problems.stream().filter(Problem::isError).count() == 1) {
      return tellOne(problems);
    }
    List<ProblemGroup> groups = ProblemGroup.of(problems);
    Optional<Path> file = what.map(Refusal::fileOf).filter(kept -> write(kept, groups, problems));
    if (all) {
      Reading.print(problems, Severity.NOTICE, err);
    } else {
      inShort(groups);
    }
    long errors = problems.stream().filter(Problem::isError).count();
    long kinds = errorGroups(groups).size();
    err.println(
        "%s of %s; nothing was written%s."
            .formatted(
                counted(errors, "problem"),
                counted(kinds, "kind"),
                file.map(kept -> "; all in " + kept)
                    .orElse(all || what.isPresent() ? "" : "; --all prints every one")));
    return ExitCode.BAD_INPUT;
  }

  /** One error needs no order and no file. */
  private int tellOne(List<Problem> problems) {
    Reading.print(problems, Severity.ERROR, err);
    String written = writes ? " Nothing was written; put the errors right first." : "";
    err.println(Reading.count(problems) + "." + written);
    return ExitCode.BAD_INPUT;
  }

  private static List<ProblemGroup> errorGroups(List<ProblemGroup> groups) {
    return groups.stream().filter(group -> group.problems().get(0).isError()).toList();
  }

  private void inShort(List<ProblemGroup> groups) {
    List<ProblemGroup> errors = errorGroups(groups);
    int shown = Math.min(errors.size(), MOST_LINES - 3);
    for (int i = 0; i < shown; i++) {
      err.println((i == 0 ? "Do this first: " : "") + errors.get(i).line());
    }
    if (shown < errors.size()) {
      long more =
          errors.subList(shown, errors.size()).stream()
              .mapToLong(each -> each.problems().size())
              .sum();
      err.println(
          "and %s (%s)"
              .formatted(counted(errors.size() - shown, "more kind"), counted(more, "problem")));
    }
    long others =
        groups.stream()
            .flatMap(group -> group.problems().stream())
            .filter(problem -> !problem.isError())
            .count();
    if (others > 0) {
      err.println(
          "and %s that would not stop it"
              .formatted(others == 1 ? "1 warning or notice" : others + " warnings and notices"));
    }
  }

  private static String counted(long number, String what) {
    return number + " " + what + (number == 1 ? "" : "s");
  }

  /** The problems of a plan stand beside its report. */
  static Path fileOf(Path what) {
    Path named = what.toAbsolutePath().normalize().getFileName();
    String name = named == null ? "plan" : named.toString().replaceFirst("\\.(json|xlsx|csv)$", "");
    return ReportTarget.USUAL.resolve(FolderName.of(name) + "-problems.txt");
  }

  private static boolean write(Path file, List<ProblemGroup> groups, List<Problem> problems) {
    try {
      ProblemsFile.write(file, groups, problems);
      return true;
    } catch (IOException noRoom) {
      return false;
    }
  }

  /** A good run leaves no old problems. */
  static void clear(Path what) throws IOException {
    ProblemsFile.remove(fileOf(what));
  }
}
