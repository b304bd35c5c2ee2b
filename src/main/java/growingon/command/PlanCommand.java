package growingon.command;

import growingon.command.folder.Destination;
import growingon.command.folder.KeptFile;
import growingon.command.folder.SpeciesFolder;
import growingon.load.Loader;
import growingon.load.SpeciesTexts;
import growingon.nursery.Assumption;
import growingon.nursery.Inputs;
import growingon.nursery.Plan;
import growingon.nursery.record.OwnReading;
import growingon.plan.Planned;
import growingon.problem.Loaded;
import growingon.problem.Problem;
import growingon.problem.Where;
import growingon.problem.advice.ListAdvice;
import growingon.report.edition.Edition;
import growingon.report.model.Audience;
import growingon.report.model.Report;
import growingon.report.plan.PlanReport;
import growingon.report.plan.supply.SupplierOrders;
import growingon.report.quick.QuickAnswer;
import growingon.review.PlanKeeping;
import growingon.write.ReportFolder;
import growingon.write.folder.FrozenFile;
import growingon.write.folder.FrozenSpecies;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** The main job: read, check, project, account, describe, write. */
@Command(
    name = "plan",
    mixinStandardHelpOptions = true,
    description = "Projects a nursery and writes the plan: workbook, charts, tables and figures.")
final class PlanCommand extends ReportCommand {
  /** Lots of a list that a plan can take in minutes on two processors. */
  private static final int MOST_LOTS_OF_A_LIST = 10_000;

  /** Lines of the terminal for a list of the grower's own. */
  private static final int MOST_LINES = 12;

  @Parameters(
      paramLabel = "WHAT",
      description = "A plan.json, a nursery folder, one workbook, or your own stock list.")
  private Path what;

  @Mixin private SpeciesFolder species;

  @Option(
      names = "--stock",
      paramLabel = "LIST",
      description = "Your own stock list of this month, in place of the one that own words name.")
  private Path stock;

  @Option(
      names = "--keep",
      description =
          "Also freeze figures, offers and species in plans/kept/<plan>-<first month>.json, which review"
              + " compares with; with --force in place of one that says otherwise.")
  private boolean keep;

  @Option(
      names = "--draws",
      paramLabel = "N",
      description = "Draws for chances, 0 for none (else as the plan says).")
  private Integer draws;

  @Option(
      names = "--seed",
      paramLabel = "N",
      description = "Seed of the draws (else as the plan says).")
  private Long seed;

  @Option(
      names = "--worth",
      description =
          "Tell luck and not knowing apart, and what is worth measuring, however long it takes.")
  private boolean worth;

  @Option(
      names = "--for",
      paramLabel = "WHO",
      description =
          "An edition for a partner, bank or customer, in reports/<plan name>-for-<who>, without"
              + " what they are not to see.")
  private Audience audience;

  @Option(
      names = "--with-costs",
      description = "Show a partner suppliers, what plants cost, and offers not taken.")
  private boolean withCosts;

  @Option(names = "--with-prices", description = "Show a customer list prices.")
  private boolean withPrices;

  @Option(
      names = "--without-prices",
      description = "Leave what you pay out of the enquiries to suppliers on the sheet To order.")
  private boolean withoutPricesPaid;

  @Override
  public Integer call() throws IOException {
    checkOptions();
    Outcome outcome = watched(what, this::run);
    if (outcome.report().isEmpty()) {
      return problemsShown.refuse(what, true, outcome.problems(), err());
    }
    Refusal.clear(what);
    return tell(outcome);
  }

  private void checkOptions() {
    DrawsOption.check(draws, spec);
    if (withCosts && audience != Audience.PARTNER) {
      throw wrong("--with-costs goes with --for partner only");
    }
    if (keep && audience != null) {
      throw wrong("--keep freezes the whole plan, so it does not go with --for");
    }
    if (withPrices && audience != Audience.CUSTOMER) {
      throw wrong("--with-prices goes with --for customer only");
    }
  }

  private Outcome run(Progress progress) throws IOException {
    progress.phase("Reading " + what);
    ReportFolder.prepare();
    Loaded<Inputs> loaded =
        Loader.load(
            what,
            species
                .options(program.clock())
                .takingLists()
                .withStock(Optional.ofNullable(stock))
                .valuing(Planned::worth));
    if (loaded.value().isEmpty()) {
      return Outcome.refused(loaded.problems());
    }
    Inputs inputs = asked(loaded.value().get());
    int lots = inputs.scenario().lots().size();
    if (inputs.own().isPresent() && lots > MOST_LOTS_OF_A_LIST) {
      Problem tooMany =
          ListAdvice.tooManyLots(
              Where.file(inputs.scenario().plan().name()), lots, MOST_LOTS_OF_A_LIST);
      return Outcome.refused(List.of(tooMany));
    }
    if (audience != null) {
      return edition(inputs, loaded.problems(), progress);
    }
    Destination destination = destination(inputs, Reading.usualFolder(inputs));
    destination.check(inputs.scenario().plan().name(), Optional.empty());
    Planned plan = Planned.drawn(inputs, drawing(progress));
    Report answered = answered(PlanReport.of(plan, loaded.problems()), plan);
    Report report = issued(withoutPricesPaid ? SupplierOrders.withoutPrices(answered) : answered);
    List<String> kept = keep ? List.of(freeze(inputs, progress)) : List.of();
    progress.phase("Writing " + destination.folder());
    List<String> notices = destination.write(report);
    List<String> first = inputs.own().map(OwnReading::sentences).orElse(List.of());
    return Outcome.written(report, destination.folder(), notices, report.problems())
        .withHeadlines(headlines(report, first))
        .withLast(kept);
  }

  /** Keeps the plan; says where. */
  private String freeze(Inputs inputs, Progress progress) throws IOException {
    Path file = KeptFile.of(what, inputs.scenario().plan());
    progress.phase("Keeping " + file);
    FrozenFile.write(PlanKeeping.keep(inputs, THREADS, done -> {}), file, target.isForced());
    SpeciesTexts species = SpeciesTexts.of(what, this.species.folder());
    FrozenSpecies.write(KeptFile.species(file), species.csv(), species.json());
    return "Kept: %s (review compares with it)".formatted(file);
  }

  /** Projects what the edition's reader may see, and describes that. */
  private Outcome edition(Inputs whole, List<Problem> problems, Progress progress)
      throws IOException {
    Edition edition = new Edition(audience, withCosts, withPrices);
    Path usual = Reading.beside(Reading.usualFolder(whole), edition.folderEnding());
    Destination destination = destination(whole, usual);
    Inputs seen = edition.seen(whole);
    destination.check(edition.title(seen), Optional.of(audience));
    progress.phase("Projecting " + seen.scenario().lots().size() + " lots");
    Planned plan = audience == Audience.PARTNER ? Planned.weighed(seen) : Planned.booked(seen);
    Report report = issued(edition.report(plan, withChances(whole, progress)));
    progress.phase("Writing " + destination.folder());
    List<String> notices = new ArrayList<>(destination.write(report));
    usualPrices(whole).ifPresent(notices::add);
    return Outcome.written(report, destination.folder(), notices, problems)
        .withHeadlines(headlines(report, List.of()));
  }

  /** A customer would take a usual price for the grower's. */
  private Optional<String> usualPrices(Inputs whole) {
    long usual =
        whole.assumptions().stream()
            .filter(each -> each.table().equals("demand") && each.what().equals("price"))
            .filter(Assumption::isUsual)
            .count();
    return !withPrices || usual == 0
        ? Optional.empty()
        : Optional.of(
            "Before you hand it out: %d list prices were laid out from usual values and your list, not typed by you (table demand)."
                .formatted(usual));
  }

  /** The whole plan with its draws; a customer is told of none. */
  private Optional<Planned> withChances(Inputs whole, Progress progress) {
    return audience == Audience.CUSTOMER || whole.scenario().plan().draws() == 0
        ? Optional.empty()
        : Optional.of(Planned.drawn(whole, drawing(progress)));
  }

  private Planned.Drawing drawing(Progress progress) {
    return new Planned.Drawing(worth, THREADS, progress::phase);
  }

  /** The plan as read, with draws and seed as the command line says. */
  private Inputs asked(Inputs read) {
    Plan plan = read.scenario().plan();
    plan = draws == null ? plan : plan.withDraws(draws);
    plan = seed == null ? plan : plan.withSeed(seed);
    return read.withPlan(plan);
  }

  /** The same with the answer in front, where a quick sheet asked. */
  private static Report answered(Report report, Planned plan) {
    return plan.inputs().quick().isPresent() ? QuickAnswer.of(report, plan) : report;
  }

  /** What is said of a list comes first, and then as much as there is room for. */
  private static List<String> headlines(Report report, List<String> first) {
    List<String> lines = new ArrayList<>(first);
    lines.addAll(
        PlanReport.headlines(
            report, first.isEmpty() ? Integer.MAX_VALUE : MOST_LINES - 1 - first.size()));
    return lines;
  }

  private Destination destination(Inputs inputs, Path usual) {
    return destination(what, KeptFile.of(what, inputs.scenario().plan()), usual);
  }
}
