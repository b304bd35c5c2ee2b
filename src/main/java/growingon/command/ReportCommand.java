package growingon.command;

import growingon.command.folder.Destination;
import growingon.load.PlanSources;
import growingon.problem.Problem;
import growingon.report.model.Report;
import io.soabase.recordbuilder.core.RecordBuilder;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ParentCommand;
import picocli.CommandLine.Spec;

/** What all commands share that write a report. */
abstract class ReportCommand implements Callable<Integer> {
  static final int THREADS = Runtime.getRuntime().availableProcessors();

  @ParentCommand GrowingOn program;
  @Spec CommandSpec spec;
  @Mixin ReportTarget target;
  @Mixin Problems problemsShown;

  /**
   * What became of a run: a report, or only problems.
   *
   * @param folder where the report is
   * @param notices what is to be known of its folder
   * @param problems found while reading
   * @param headlines told before where the report is
   * @param last told after it
   */
  @RecordBuilder
  record Outcome(
      Optional<Report> report,
      Path folder,
      List<String> notices,
      List<Problem> problems,
      List<String> headlines,
      List<String> last)
      implements ReportCommandOutcomeBuilder.With {
    /** A report as written into its folder. */
    static Outcome written(
        Report report, Path folder, List<String> notices, List<Problem> problems) {
      return new Outcome(
          Optional.of(report), folder, notices, problems, report.headlines(), List.of());
    }

    static Outcome refused(List<Problem> problems) {
      return new Outcome(Optional.empty(), Path.of(""), List.of(), problems, List.of(), List.of());
    }
  }

  /** What a command does, telling how far it is. */
  interface Work {
    Outcome done(Progress progress) throws IOException;
  }

  /** Does the work on a plan, once reports that were stopped are put back. */
  Outcome watched(Path what, Work work) throws IOException {
    target.putBack(List.of(PlanSources.of(what)), err());
    try (Progress progress = Progress.on(err())) {
      return progress.watch(() -> work.done(progress));
    }
  }

  /** Says what became of it; gives the exit code. */
  int tell(Outcome outcome) {
    if (outcome.report().isEmpty()) {
      return problemsShown.refuse(outcome.problems(), err());
    }
    outcome.headlines().forEach(out()::println);
    Report report = outcome.report().get();
    Reading.tell(outcome.folder(), report, outcome.problems(), outcome.notices(), out());
    outcome.last().forEach(out()::println);
    return ExitCode.DONE;
  }

  /**
   * Where the command line says, else the usual folder.
   *
   * @param kept the plan as it was kept, which is read too
   */
  Destination destination(Path what, Path kept, Path usual) {
    PlanSources plan = PlanSources.of(what).with(kept);
    return target.of(usual, plan.files(), plan.report(), program);
  }

  Report issued(Report report) {
    return report.madeOn(LocalDate.now(program.clock()));
  }

  ParameterException wrong(String sentence) {
    return new ParameterException(spec.commandLine(), sentence);
  }

  PrintWriter out() {
    return spec.commandLine().getOut();
  }

  PrintWriter err() {
    return spec.commandLine().getErr();
  }
}
