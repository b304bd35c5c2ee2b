package growingon.command;

import growingon.command.folder.SpeciesFolder;
import growingon.load.LoadOptions;
import growingon.load.Loader;
import growingon.nursery.Inputs;
import growingon.nursery.number.Writing;
import growingon.problem.Loaded;
import growingon.problem.MarkedText;
import growingon.problem.Problem;
import growingon.problem.Severity;
import growingon.report.model.Report;
import growingon.write.folder.FolderName;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.function.Function;

/** The reading that all commands share, and how its problems are shown. */
final class Reading {
  private Reading() {}

  static Loaded<Inputs> read(Path what, Clock clock) {
    return Loader.load(what, new LoadOptions(LocalDate.now(clock)));
  }

  /** The same with the species of another folder, if one is named. */
  static Loaded<Inputs> read(Path what, SpeciesFolder species, Clock clock) {
    return Loader.load(what, species.options(clock));
  }

  /** Prints every problem of at least a severity, errors first, its numbers plainly. */
  static void print(List<Problem> problems, Severity least, PrintWriter to) {
    print(problems, least, MarkedText::toString, to);
  }

  /** The same with its numbers as the nursery writes them. */
  static void print(List<Problem> problems, Severity least, Writing writing, PrintWriter to) {
    print(problems, least, writing::told, to);
  }

  private static void print(
      List<Problem> problems, Severity least, Function<MarkedText, String> how, PrintWriter to) {
    lines(problems, least, how).forEach(to::println);
  }

  /** Every problem of at least a severity, errors first. */
  static List<String> lines(
      List<Problem> problems, Severity least, Function<MarkedText, String> how) {
    return Arrays.stream(Severity.values())
        .filter(severity -> severity.compareTo(least) <= 0)
        .flatMap(
            severity ->
                problems.stream()
                    .filter(problem -> problem.severity() == severity)
                    .map(problem -> severity + ": " + how.apply(problem.line())))
        .toList();
  }

  /** Says on the error stream why nothing was written; gives the exit code. */
  static int refuse(List<Problem> problems, PrintWriter err) {
    print(problems, Severity.NOTICE, err);
    err.println(count(problems) + ". Nothing was written; put the errors right first.");
    return ExitCode.BAD_INPUT;
  }

  /** Where a plan's report goes if nobody says: where the plan says, else reports/<plan name>. */
  static Path usualFolder(Inputs inputs) {
    String name = FolderName.of(inputs.scenario().plan().name());
    return inputs.reportFolder().orElse(ReportTarget.USUAL.resolve(name));
  }

  /**
   * Says where a report is, and what is to be known of its folder.
   *
   * @param problems everything found while reading; of an edition, which does not hold them, they
   *     are only counted
   */
  static void tell(
      Path folder, Report report, List<Problem> problems, List<String> notices, PrintWriter to) {
    String issue = report.issue().orElseThrow();
    String found = report.writing().told(count(problems));
    to.println(
        report.reader().isPresent()
            ? "Edition: %s, %s (%s while reading; they are not in it)"
                .formatted(folder, issue, found)
            : "Report: %s, %s (%s: problems.txt)".formatted(folder, issue, found));
    notices.forEach(to::println);
  }

  /** A folder beside another, whose name begins with that of the other. */
  static Path beside(Path usual, String ending) {
    // A root has no name; it is refused wherever a report is to go there.
    return usual.getFileName() == null ? usual : usual.resolveSibling(usual.getFileName() + ending);
  }

  /** 3 errors, 1 warning, 12 notices. */
  static MarkedText count(List<Problem> problems) {
    StringBuilder text = new StringBuilder();
    for (Severity severity : Severity.values()) {
      long number = problems.stream().filter(each -> each.severity() == severity).count();
      text.append(text.length() > 0 ? ", " : "")
          .append(MarkedText.number(number))
          .append(' ')
          .append(severity)
          .append(number == 1 ? "" : "s");
    }
    return new MarkedText(text.toString());
  }
}
