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
import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;
import picocli.CommandLine.Spec;

/** What to buy, how many, and sell now or grow on: read, search, judge, describe, write. */
@Command(
    name = "buying",
    mixinStandardHelpOptions = true,
    description = {
      "Finds what to buy, how many, and what to hold to a better grade, so that the whole nursery",
      "earns most and everything still fits."
    })
final class BuyingCommand implements Callable<Integer> {
  private static final int THREADS = Runtime.getRuntime().availableProcessors();
  private static final String ENDING = "-buying";
  private static final String RECOMMENDED = "recommended-plan.json";

  /** What is asked for. */
  enum Only {
    PURCHASES,
    HOLDS
  }

  @ParentCommand private GrowingOn program;
  @Spec private CommandSpec spec;

  @Parameters(paramLabel = "WHAT", description = "A plan.json, a nursery folder, or one workbook.")
  private Path what;

  @Mixin private ReportTarget target;
  @Mixin private Problems problemsShown;

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

  /**
   * What became of a run.
   *
   * @param isPlan whether what is recommended can be planned: a quick sheet has no plan
   * @param writing how numbers are written
   */
  private record Outcome(
      Optional<Report> report,
      Path folder,
      List<String> notices,
      List<Problem> problems,
      boolean isPlan,
      Writing writing) {
    static Outcome without(Path what, List<Problem> problems, Writing writing) {
      return new Outcome(Optional.empty(), what, List.of(), problems, false, writing);
    }
  }

  @Override
  public Integer call() throws IOException {
    DrawsOption.check(draws, spec);
    if (draws != null && draws == 0) {
      throw new CommandLine.ParameterException(
          spec.commandLine(), "without draws there is no luck to be judged on: use --quick");
    }
    target.putBack(List.of(PlanSources.of(what)), spec.commandLine().getErr());
    Outcome outcome;
    try (Progress progress = Progress.on(spec.commandLine().getErr())) {
      outcome = progress.watch(() -> run(progress));
    }
    PrintWriter out = spec.commandLine().getOut();
    if (outcome.report().isEmpty() && outcome.problems().stream().anyMatch(Problem::isError)) {
      return problemsShown.refuse(outcome.problems(), spec.commandLine().getErr());
    }
    if (outcome.report().isEmpty()) {
      out.println(
          "There is nothing to decide: no offer that comes within the plan and is not ordered yet,"
              + " and no lot that could be held to a better grade.");
      Reading.print(outcome.problems(), Severity.WARNING, outcome.writing(), out);
      return ExitCode.DONE;
    }
    Report report = outcome.report().get();
    report.headlines().forEach(out::println);
    Reading.tell(outcome.folder(), report, report.problems(), outcome.notices(), out);
    if (outcome.isPlan()) {
      out.println("To run: plan \"" + outcome.folder().resolve(RECOMMENDED) + "\"");
    }
    return ExitCode.DONE;
  }

  private Outcome run(Progress progress) throws IOException {
    progress.phase("Reading " + what);
    ReportFolder.prepare();
    Loaded<Inputs> loaded = Reading.read(what, program.clock());
    if (loaded.value().isEmpty()) {
      return Outcome.without(what, loaded.problems(), Writing.USUAL);
    }
    Inputs inputs = asked(loaded.value().get());
    Writing writing = inputs.scenario().nursery().settings().writing();
    if (inputs.quick().filter(quick -> quick.freeM2().isEmpty()).isPresent()) {
      List<Problem> problems = new ArrayList<>(loaded.problems());
      problems.add(DaybookAdvice.quickWithoutRoom(Where.file(what.toString())));
      return Outcome.without(what, problems, writing);
    }
    Path usual = Reading.beside(Reading.usualFolder(inputs), ENDING);
    PlanSources sources = PlanSources.of(what);
    Destination destination = target.of(usual, sources.files(), sources.report(), program);
    destination.check(BuyingReport.title(inputs.scenario().plan().name()), Optional.empty());
    if (Buying.isNothingToDecide(inputs, scope(inputs))) {
      return Outcome.without(what, loaded.problems(), writing);
    }
    Answer answer = Buying.answer(inputs, wish(inputs), THREADS, progress::phase);
    progress.phase("Planning what is recommended");
    Report planned = planned(inputs, answer);
    Report report =
        BuyingReport.of(answer, loaded.problems(), planned).madeOn(LocalDate.now(program.clock()));
    progress.phase("Writing " + destination.folder());
    boolean isPlan = inputs.quick().isEmpty();
    Map<String, String> texts =
        isPlan ? Map.of(RECOMMENDED, planFile(answer, destination)) : Map.of();
    List<String> notices = destination.write(report, new Beside("buying.xlsx", texts));
    return new Outcome(
        Optional.of(report), destination.folder(), notices, report.problems(), isPlan, writing);
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
    Inputs recommended =
        new Inputs(
            scenario,
            inputs.offers(),
            inputs.assumptions(),
            inputs.stockRows(),
            inputs.reportFolder(),
            inputs.daybook(),
            inputs.quick());
    Planned plan = Planned.drawn(recommended, new Planned.Drawing(false, THREADS, phase -> {}));
    return PlanReport.of(plan, List.of());
  }

  private String planFile(Answer answer, Destination destination) {
    Path folder = destination.folder().toAbsolutePath().normalize();
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
