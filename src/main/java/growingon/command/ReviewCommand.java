package growingon.command;

import growingon.load.FrozenReader;
import growingon.nursery.Inputs;
import growingon.problem.Advice;
import growingon.problem.Loaded;
import growingon.problem.Problem;
import growingon.problem.Where;
import growingon.report.Report;
import growingon.report.ReviewReport;
import growingon.review.KeptPlan;
import growingon.review.Review;
import growingon.write.ReportFolder;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** What really happened against the plan: read, compare the daybook with the kept plan, write. */
@Command(
    name = "review",
    mixinStandardHelpOptions = true,
    description = {
      "Compares the daybook with the plan kept by plan --keep, and says which bought lots paid.",
      "Without a kept plan it compares with the plan as the files give it now."
    })
final class ReviewCommand implements Callable<Integer> {
  private static final String ENDING = "-review";

  @Spec private CommandSpec spec;

  @Parameters(paramLabel = "WHAT", description = "A plan.json, a nursery folder, or one workbook.")
  private Path what;

  @Option(
      names = "--out",
      paramLabel = "FOLDER",
      description = "Where the report goes (else reports/<plan name>-review).")
  private Path out;

  @Option(
      names = "--force",
      description = "Replace the folder of --out even if it is no report of this program.")
  private boolean force;

  /** What became of a run: a report and its folder, or only problems. */
  private record Outcome(Optional<Report> report, Path folder, List<Problem> problems) {}

  @Override
  public Integer call() throws IOException {
    Outcome outcome;
    try (Progress progress = Progress.on(spec.commandLine().getErr())) {
      outcome = run(Clock.systemDefaultZone(), progress);
    }
    return outcome.report().isPresent()
        ? tell(outcome)
        : Reading.refuse(outcome.problems(), spec.commandLine().getErr());
  }

  private Outcome run(Clock clock, Progress progress) throws IOException {
    progress.phase("Reading " + what);
    ReportFolder.prepare();
    Loaded<Inputs> loaded = Reading.read(what, clock);
    List<Problem> problems = new ArrayList<>(loaded.problems());
    if (loaded.value().isEmpty()) {
      return new Outcome(Optional.empty(), what, problems);
    }
    Inputs inputs = loaded.value().get();
    if (inputs.daybook().isEmpty()) {
      problems.add(Advice.noDaybook(Where.file(what.toString())));
      return new Outcome(Optional.empty(), what, problems);
    }
    Path keptFile = KeptFile.of(what, inputs.scenario().plan());
    Optional<Loaded<KeptPlan>> kept = kept(keptFile);
    kept.ifPresent(read -> problems.addAll(read.problems()));
    if (kept.isPresent() && kept.get().value().isEmpty()) {
      return new Outcome(Optional.empty(), what, problems);
    }
    progress.phase("Comparing " + inputs.daybook().size() + " lines with the plan");
    Review review = Review.of(inputs, YearMonth.now(clock), kept.flatMap(Loaded::value));
    Report report = ReviewReport.of(inputs, problems, review);
    Path folder = folder(inputs);
    progress.phase("Writing " + folder);
    ReportFolder.write(report, folder, force);
    return new Outcome(Optional.of(report), folder, report.problems());
  }

  private static Optional<Loaded<KeptPlan>> kept(Path file) {
    return Files.exists(file)
        ? Optional.of(FrozenReader.read(file, KeptPlan.class))
        : Optional.empty();
  }

  private int tell(Outcome outcome) {
    PrintWriter to = spec.commandLine().getOut();
    outcome.report().get().headlines().forEach(to::println);
    to.println(
        "Report: %s (%s: problems.txt)"
            .formatted(outcome.folder(), Reading.count(outcome.problems())));
    return ExitCode.DONE;
  }

  /**
   * Where the command line says, else beside the plan's report, else reports/<plan name>-review.
   */
  private Path folder(Inputs inputs) {
    Path usual = Reading.usualFolder(inputs);
    return out != null ? out : usual.resolveSibling(usual.getFileName() + ENDING);
  }
}
