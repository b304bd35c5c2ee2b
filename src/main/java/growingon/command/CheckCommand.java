package growingon.command;

import growingon.command.folder.SpeciesFolder;
import growingon.load.Loader;
import growingon.load.PlanSources;
import growingon.nursery.Inputs;
import growingon.nursery.number.Writing;
import growingon.problem.Loaded;
import growingon.problem.Problem;
import growingon.problem.Severity;
import growingon.project.Projection;
import growingon.project.Projector;
import growingon.project.history.Happening;
import growingon.project.history.Work;
import growingon.project.lot.LotHistory;
import growingon.project.need.SpaceUse;
import growingon.report.plan.space.RoomSlips;
import growingon.report.text.Phrases;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;
import picocli.CommandLine.Spec;

/** Reads and checks, shows every problem and when each step of each lot falls; writes no report. */
@Command(
    name = "check",
    mixinStandardHelpOptions = true,
    description = "Reads and checks only: every problem, and the month of each step of each lot.")
final class CheckCommand implements Callable<Integer> {
  /** Work that is no step of a route. */
  private static final Set<String> NO_STEPS = Set.of(Work.WINTER_MOVE, Work.SELLING);

  @ParentCommand private GrowingOn program;
  @Spec private CommandSpec spec;

  @Parameters(
      paramLabel = "WHAT",
      description = "A plan.json, a nursery folder, one workbook, or your own stock list.")
  private Path what;

  @Mixin private Problems problemsShown;

  @Mixin private SpeciesFolder species;

  @Override
  public Integer call() throws IOException {
    PrintWriter out = spec.commandLine().getOut();
    ReportTarget.putBack(
        Optional.empty(), List.of(PlanSources.of(what)), spec.commandLine().getErr());
    Loaded<Inputs> loaded = Loader.load(what, species.options(program.clock()).takingLists());
    List<Problem> problems = new ArrayList<>(loaded.problems());
    if (loaded.value().isEmpty()) {
      return problemsShown.refuse(what, false, problems, spec.commandLine().getErr());
    }
    Refusal.clear(what);
    loaded.value().get().own().ifPresent(own -> own.sentences().forEach(out::println));
    if (isListAlone(loaded.value().get())) {
      Reading.print(problems, Severity.NOTICE, writing(loaded.value().get()), out);
      return told(loaded.value().get(), loaded.value().get().stockRows(), problems);
    }
    Projection projection = Projector.project(loaded.value().get().scenario());
    problems.addAll(projection.remarks());
    problems.addAll(
        RoomSlips.of(
            SpaceUse.of(projection), projection.horizon(), Phrases.of(projection.scenario())));
    out.println("Steps of each lot:");
    projection.lots().forEach(lot -> out.println("  " + steps(lot, projection)));
    Reading.print(problems, Severity.NOTICE, writing(loaded.value().get()), out);
    return told(loaded.value().get(), projection.lots().size(), problems);
  }

  private int told(Inputs inputs, int lots, List<Problem> problems) {
    Writing writing = writing(inputs);
    spec.commandLine()
        .getOut()
        .println(
            "%s stock rows and %s lots read; %s."
                .formatted(
                    writing.whole(inputs.stockRows()),
                    writing.whole(lots),
                    writing.told(Reading.count(problems))));
    return ExitCode.DONE;
  }

  private static Writing writing(Inputs inputs) {
    return inputs.scenario().nursery().settings().writing();
  }

  /** Of a list by itself only its reading is the grower's; steps and room would be usual ones. */
  private boolean isListAlone(Inputs inputs) {
    return Files.isRegularFile(what)
        && inputs
            .own()
            .filter(own -> own.files().contains(what.getFileName().toString()))
            .isPresent();
  }

  private static String steps(LotHistory lot, Projection projection) {
    String steps =
        lot.happenings().stream()
            .filter(each -> !NO_STEPS.contains(each.job()))
            .map(each -> each.job() + " " + month(each, projection))
            .collect(Collectors.joining(", "));
    return lot.lot().name() + ": " + (steps.isEmpty() ? "no step within the plan" : steps);
  }

  private static String month(Happening step, Projection projection) {
    return Phrases.of(projection.scenario()).month(projection.horizon(), step.month());
  }
}
