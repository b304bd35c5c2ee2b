package growingon.command;

import growingon.command.folder.Destination;
import growingon.command.folder.SpeciesFolder;
import growingon.load.PlanSources;
import growingon.nursery.Inputs;
import growingon.nursery.Plan;
import growingon.plan.Planned;
import growingon.problem.Loaded;
import growingon.problem.Problem;
import growingon.report.compare.CompareReport;
import growingon.report.compare.CompareReport.Side;
import growingon.report.model.Report;
import growingon.write.folder.FolderName;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Two plans side by side: read both, project both, describe what differs, write. */
@Command(
    name = "compare",
    mixinStandardHelpOptions = true,
    description = "Sets two plans side by side: only what differs, largest first, and why.")
final class CompareCommand extends ReportCommand {
  @Parameters(index = "0", paramLabel = "PLAN", description = "A plan, nursery folder or workbook.")
  private Path first;

  @Parameters(index = "1", paramLabel = "PLAN", description = "The one to set against it.")
  private Path second;

  @Mixin private Reader reader;
  @Mixin private SpeciesFolder species;

  @Option(
      names = "--draws",
      paramLabel = "N",
      description = "Draws for chances, 0 for none (else as the plan that is drawn more often).")
  private Integer draws;

  @Override
  public Integer call() throws IOException {
    DrawsOption.check(draws, spec);
    reader.check(spec);
    List<PlanSources> sources = List.of(PlanSources.of(first), PlanSources.of(second));
    target.putBack(sources, err());
    Clock clock = program.clock();
    Loaded<Inputs> one = Reading.read(first, species, clock);
    Loaded<Inputs> other = Reading.read(second, species, clock);
    if (one.value().isEmpty() || other.value().isEmpty()) {
      return refuse(one, other);
    }
    List<String> labels = labels(name(one), name(other));
    String title = CompareReport.title(labels.get(0), labels.get(1));
    Destination destination = destination(title, sources);
    destination.check(
        reader
            .edition()
            .map(edition -> edition.compareTitle(labels.get(0), labels.get(1)))
            .orElse(title),
        reader.audience());
    Side before = side(labels.get(0), one, luck(one, other));
    Side after = side(labels.get(1), other, luck(one, other));
    Report whole = CompareReport.of(before, after);
    Report report =
        issued(reader.edition().map(edition -> edition.compare(before, after)).orElse(whole));
    List<String> notices = destination.write(report);
    return tell(Outcome.written(report, destination.folder(), notices, whole.problems()));
  }

  private Destination destination(String title, List<PlanSources> sources) {
    List<Path> inputs = sources.stream().flatMap(each -> each.files().stream()).toList();
    Path usual = ReportTarget.USUAL.resolve(FolderName.of(title) + reader.folderEnding());
    return target.of(usual, inputs, Optional.empty(), program);
  }

  /** Both plans are drawn as often as the one that is drawn more, on the luck of the first. */
  private UnaryOperator<Plan> luck(Loaded<Inputs> one, Loaded<Inputs> other) {
    Plan first = one.value().orElseThrow().scenario().plan();
    Plan second = other.value().orElseThrow().scenario().plan();
    int times = draws != null ? draws : Math.max(first.draws(), second.draws());
    return plan -> plan.withDraws(times).withSeed(first.seed());
  }

  private static Side side(String label, Loaded<Inputs> loaded, UnaryOperator<Plan> luck) {
    Inputs read = loaded.value().orElseThrow();
    Inputs inputs = read.withPlan(luck.apply(read.scenario().plan()));
    Planned plan = Planned.drawn(inputs, new Planned.Drawing(false, THREADS, phase -> {}));
    return new Side(label, plan, loaded.problems());
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
    List<Problem> problems = new ArrayList<>(one.problems());
    problems.addAll(other.problems());
    return tell(Outcome.refused(problems));
  }
}
