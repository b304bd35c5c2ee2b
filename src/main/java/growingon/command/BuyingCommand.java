package growingon.command;

import growingon.buying.Buying;
import growingon.buying.answer.Answer;
import growingon.buying.question.Aim;
import growingon.buying.question.Question.Scope;
import growingon.buying.question.Wish;
import growingon.command.folder.Destination;
import growingon.load.PlanSources;
import growingon.load.PlanText;
import growingon.nursery.Inputs;
import growingon.nursery.Plan;
import growingon.nursery.Scenario;
import growingon.nursery.market.HorizonValue;
import growingon.nursery.number.Writing;
import growingon.plan.Planned;
import growingon.problem.Loaded;
import growingon.problem.Problem;
import growingon.problem.Severity;
import growingon.problem.Where;
import growingon.problem.advice.DaybookAdvice;
import growingon.report.buying.BuyingReport;
import growingon.report.model.Report;
import growingon.report.plan.PlanReport;
import growingon.write.Beside;
import growingon.write.ReportFolder;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** What to buy, how many, and sell now or grow on: read, search, judge, describe, write. */
@Command(
    name = "buying",
    mixinStandardHelpOptions = true,
    description = {
      "Finds what to buy, how many, and what to hold to a better grade, so that the whole nursery",
      "earns most and everything still fits."
    })
final class BuyingCommand extends ReportCommand {
  private static final String ENDING = "-buying";
  private static final String RECOMMENDED = "recommended-plan.json";

  /** What is asked for. */
  enum Only {
    PURCHASES,
    HOLDS
  }

  @Parameters(paramLabel = "WHAT", description = "A plan.json, a nursery folder, or one workbook.")
  private Path what;

  @Option(
      names = "--only",
      paramLabel = "WHICH",
      description = "Decide purchases or holds only, and leave the other as it is.")
  private Only only;

  @Option(
      names = "--careful",
      description = "Make the worst fifth of the draws as good as can be, not the mean.")
  private boolean careful;

  @Option(names = "--quick", description = "Without luck: on the plan's line alone.")
  private boolean quick;

  @Option(
      names = "--draws",
      paramLabel = "N",
      description = "Draws to judge on, at least 200 (else as the plan says).")
  private Integer draws;

  @Option(
      names = "--seed",
      paramLabel = "N",
      description = "Seed of the draws (else as the plan says).")
  private Long seed;

  @Override
  public Integer call() throws IOException {
    DrawsOption.check(draws, spec);
    if (draws != null && draws == 0) {
      throw wrong("without draws there is no luck to be judged on: use --quick");
    }
    Outcome outcome = watched(what, this::run);
    boolean decides =
        outcome.report().isPresent() || outcome.problems().stream().anyMatch(Problem::isError);
    if (decides) {
      return tell(outcome);
    }
    outcome.last().forEach(out()::println);
    return ExitCode.DONE;
  }

  private Outcome run(Progress progress) throws IOException {
    progress.phase("Reading " + what);
    ReportFolder.prepare();
    Loaded<Inputs> loaded = Reading.read(what, program.clock());
    if (loaded.value().isEmpty()) {
      return Outcome.refused(loaded.problems());
    }
    Inputs inputs = asked(loaded.value().get());
    if (inputs.quick().filter(quick -> quick.freeM2().isEmpty()).isPresent()) {
      List<Problem> problems = new ArrayList<>(loaded.problems());
      problems.add(DaybookAdvice.quickWithoutRoom(Where.file(what.toString())));
      return Outcome.refused(problems);
    }
    Path usual = Reading.beside(Reading.usualFolder(inputs), ENDING);
    PlanSources sources = PlanSources.of(what);
    Destination destination = target.of(usual, sources.files(), sources.report(), program);
    destination.check(BuyingReport.title(inputs.scenario().plan().name()), Optional.empty());
    if (Buying.isNothingToDecide(inputs, scope(inputs))) {
      return nothingToDecide(inputs, loaded.problems());
    }
    Answer answer = Buying.answer(inputs, wish(inputs), THREADS, progress::phase);
    progress.phase("Planning what is recommended");
    Report planned = planned(inputs, answer);
    Report report = issued(BuyingReport.of(answer, loaded.problems(), planned));
    Path folder = destination.folder();
    progress.phase("Writing " + folder);
    boolean isPlan = inputs.quick().isEmpty();
    Map<String, String> texts = isPlan ? Map.of(RECOMMENDED, planFile(answer, folder)) : Map.of();
    List<String> notices = destination.write(report, new Beside("buying.xlsx", texts));
    String toRun = "To run: plan \"" + folder.resolve(RECOMMENDED) + "\"";
    return Outcome.written(report, folder, notices, report.problems())
        .withLast(isPlan ? List.of(toRun) : List.of());
  }

  private static Outcome nothingToDecide(Inputs inputs, List<Problem> problems) {
    List<String> lines = new ArrayList<>();
    lines.add(
        "There is nothing to decide: no offer that comes within the plan and is not ordered yet,"
            + " and no lot that could be held to a better grade.");
    Writing writing = inputs.scenario().nursery().settings().writing();
    lines.addAll(Reading.lines(problems, Severity.WARNING, writing::told));
    return Outcome.refused(problems).withLast(lines);
  }

  /** A quick sheet has one lot, which is on offer. */
  private Scope scope(Inputs inputs) {
    if (inputs.quick().isPresent()) {
      return Scope.PURCHASES;
    }
    if (only == null) {
      return Scope.ALL;
    }
    return only == Only.PURCHASES ? Scope.PURCHASES : Scope.HOLDS;
  }

  private Wish wish(Inputs inputs) {
    return new Wish(
        scope(inputs), careful ? Aim.CAREFUL : Aim.MEAN, quick, draws == null ? 0 : draws);
  }

  /** The plan as read; where it does not say what unsold plants count for, at their stock value. */
  private Inputs asked(Inputs read) {
    Plan plan = read.scenario().plan();
    plan = seed == null ? plan : plan.withSeed(seed);
    boolean says =
        read.assumptions().stream()
            .filter(each -> each.table().equals("plan") && each.what().startsWith("horizon value"))
            .anyMatch(each -> !each.source().equals("default"));
    plan = says ? plan : plan.withHorizonValue(new HorizonValue.StockValue());
    return read.withPlan(plan);
  }

  /** The report that {@code plan} makes of what is recommended. */
  private Report planned(Inputs inputs, Answer answer) {
    Scenario scenario = answer.recommendedScenario();
    Inputs recommended = inputs.with().scenario(scenario).own(Optional.empty()).build();
    Planned plan = Planned.drawn(recommended, new Planned.Drawing(false, THREADS, phase -> {}));
    return PlanReport.of(plan, List.of());
  }

  private String planFile(Answer answer, Path into) {
    Path folder = into.toAbsolutePath().normalize();
    Path nursery = PlanSources.nurseryOf(what).toAbsolutePath().normalize();
    String path =
        folder.getRoot() != null && folder.getRoot().equals(nursery.getRoot())
            ? folder.relativize(nursery).toString()
            : nursery.toString();
    return PlanText.of(
        answer.recommendedScenario().plan(),
        path.replace('\\', '/'),
        List.of(
            "What buying recommends. It runs as it is: plan " + RECOMMENDED,
            "Copied elsewhere, put the path of the nursery right: it is seen from this file."));
  }
}
