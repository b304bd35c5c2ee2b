package growingon.command;

import growingon.money.Accounts;
import growingon.money.BoughtLot;
import growingon.nursery.Inputs;
import growingon.problem.Loaded;
import growingon.problem.Problem;
import growingon.problem.Severity;
import growingon.project.Projector;
import growingon.report.CompareReport;
import growingon.report.CompareReport.Side;
import growingon.report.Report;
import growingon.write.ReportFolder;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Two plans side by side: read both, project both, describe what differs, write. */
@Command(
    name = "compare",
    mixinStandardHelpOptions = true,
    description = "Sets two plans side by side: only what differs, largest first, and why.")
final class CompareCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;

  @Parameters(index = "0", paramLabel = "PLAN", description = "A plan, nursery folder or workbook.")
  private Path first;

  @Parameters(index = "1", paramLabel = "PLAN", description = "The one to set against it.")
  private Path second;

  @Option(
      names = "--out",
      paramLabel = "FOLDER",
      description = "Where the report goes (else reports/<a> against <b>).")
  private Path out;

  @Option(
      names = "--force",
      description = "Replace the folder of --out even if it is no report of this program.")
  private boolean force;

  @Override
  public Integer call() throws IOException {
    Clock clock = Clock.systemDefaultZone();
    Loaded<Inputs> one = Reading.read(first, clock);
    Loaded<Inputs> other = Reading.read(second, clock);
    if (one.value().isEmpty() || other.value().isEmpty()) {
      return refuse(one, other);
    }
    List<String> labels = labels(name(one), name(other));
    Report report = CompareReport.of(side(labels.get(0), one), side(labels.get(1), other));
    Path folder = out != null ? out : Path.of("reports").resolve(FolderName.of(report.plan()));
    ReportFolder.write(report, folder, force);
    PrintWriter to = spec.commandLine().getOut();
    report.headlines().forEach(to::println);
    to.println("Report: %s (%s: problems.txt)".formatted(folder, Reading.count(report.problems())));
    return ExitCode.DONE;
  }

  private static Side side(String label, Loaded<Inputs> loaded) {
    Inputs inputs = loaded.value().orElseThrow();
    Accounts accounts = Accounts.of(Projector.project(inputs.scenario()));
    return new Side(label, inputs, loaded.problems(), accounts, BoughtLot.weigh(accounts));
  }

  private static String name(Loaded<Inputs> loaded) {
    return loaded.value().orElseThrow().scenario().plan().name();
  }

  /** Two plans of one name are told apart by number. */
  private static List<String> labels(String one, String other) {
    return one.equalsIgnoreCase(other)
        ? List.of(one + " (1)", other + " (2)")
        : List.of(one, other);
  }

  private int refuse(Loaded<Inputs> one, Loaded<Inputs> other) {
    PrintWriter err = spec.commandLine().getErr();
    List<Problem> problems = new ArrayList<>(one.problems());
    problems.addAll(other.problems());
    Reading.print(problems, Severity.NOTICE, err);
    err.println(Reading.count(problems) + ". Nothing was written; put the errors right first.");
    return ExitCode.BAD_INPUT;
  }
}
