package growingon.command;

import growingon.command.folder.Destination;
import growingon.command.folder.KeptFile;
import growingon.command.folder.SpeciesFolder;
import growingon.fit.Fit;
import growingon.fit.past.FitRecords;
import growingon.load.FrozenReader;
import growingon.load.Loader;
import growingon.load.SpeciesTexts;
import growingon.nursery.Inputs;
import growingon.problem.Loaded;
import growingon.problem.MarkedText;
import growingon.problem.Problem;
import growingon.problem.Where;
import growingon.problem.advice.FitAdvice;
import growingon.report.fit.FitReport;
import growingon.report.fit.SpeciesEdit;
import growingon.report.model.Report;
import growingon.review.kept.KeptPlan;
import growingon.write.ReportFolder;
import growingon.write.text.ProposalText;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** What the records say of growth and losses: read, learn, write a report and a proposal. */
@Command(
    name = "fit",
    mixinStandardHelpOptions = true,
    description = {
      "Learns growth and losses from earlier stock lists, counts, sales and tagged trees,",
      "and says how good kept plans were. It proposes new values and changes no file of yours."
    })
final class FitCommand extends ReportCommand {
  private static final String ENDING = "-fit";

  @Parameters(paramLabel = "WHAT", description = "A plan.json, a nursery folder, or one workbook.")
  private Path what;

  @Mixin private SpeciesFolder species;

  @Option(
      names = "--sure",
      paramLabel = "N",
      description =
          "How sure your own figures are in per cent, 1 to 99 (else as the setting says, or 80).")
  private Integer sure;

  @Option(
      names = "--until",
      paramLabel = "MONTH",
      description = "Look at nothing after this month, such as 2025-10.")
  private String until;

  @Override
  public Integer call() throws IOException {
    checkOptions();
    return tell(watched(what, this::run));
  }

  private void checkOptions() {
    if (sure != null && (sure < 1 || sure > 99)) {
      throw wrong("--sure is 1 to 99: 80 is a good guess, 50 a book's figure");
    }
    lastMonth();
  }

  private YearMonth lastMonth() {
    YearMonth today = YearMonth.now(program.clock());
    if (until == null) {
      return today;
    }
    try {
      return YearMonth.parse(until);
    } catch (DateTimeException noMonth) {
      throw wrong("--until is a month such as 2025-10, not '" + until + "'");
    }
  }

  private Outcome run(Progress progress) throws IOException {
    progress.phase("Reading " + what);
    ReportFolder.prepare();
    Loaded<Loader.WithPast> loaded = Loader.loadWithPast(what, species.options(program.clock()));
    List<Problem> problems = new ArrayList<>(loaded.problems());
    if (loaded.value().isEmpty()) {
      return Outcome.refused(problems);
    }
    Inputs inputs = loaded.value().get().inputs();
    FitRecords records = records(loaded.value().get());
    if (inputs.quick().isPresent() || !records.hasAny()) {
      YearMonth lastYear = YearMonth.now(program.clock()).minusYears(1);
      problems.add(FitAdvice.nothingToLearnFrom(Where.file(what.toString()), lastYear));
      return Outcome.refused(problems);
    }
    Path keptFile = KeptFile.of(what, inputs.scenario().plan());
    Path usual = Reading.beside(Reading.usualFolder(inputs), ENDING);
    Destination destination = destination(what, keptFile, usual);
    destination.check(FitReport.title(inputs.scenario().plan().name()), Optional.empty());
    List<KeptPlan> kept = kept(keptFile.getParent(), problems);
    progress.phase("Learning from the records");
    Fit fit = Fit.of(records, kept);
    Report report = issued(FitReport.of(inputs, problems, fit));
    List<SpeciesEdit> edits = FitReport.proposal(fit, inputs.scenario().nursery().species());
    Map<String, String> proposal = proposal(edits, fit, destination.folder());
    FitReport.siteSpeed(fit, inputs.scenario().nursery().settings().library())
        .ifPresent(text -> proposal.put("settings.txt", text));
    progress.phase("Writing " + destination.folder());
    List<String> notices = destination.writeFit(report, proposal);
    Path folder = destination.folder();
    List<String> headlines = new ArrayList<>(report.headlines());
    headlines.add(
        proposal.isEmpty()
            ? "Nothing is proposed: your files hold what the records say."
            : proposed(folder.resolve("proposal"), edits));
    return Outcome.written(report, folder, notices, report.problems()).withHeadlines(headlines);
  }

  private String proposed(Path proposal, List<SpeciesEdit> edits) {
    boolean isOther = edits.stream().anyMatch(SpeciesEdit::isOther);
    return "Proposal: %s%s. Your own files are as they were. Try it: plan \"%s\" --species \"%s\""
        .formatted(
            proposal, isOther ? "" : " (no figure is changed, but some are surer)", what, proposal);
  }

  private FitRecords records(Loader.WithPast read) {
    FitRecords records =
        new FitRecords(
            read.inputs(),
            read.past().lists(),
            read.past().readings(),
            read.past().measured(),
            FitRecords.priors(
                read.inputs().scenario().nursery().species(),
                read.past().priors(),
                read.past().priorSures()),
            read.past().receipts(),
            lastMonth());
    return sure == null ? records : records.asSureAs(sure / 100.0);
  }

  /** Plans that were kept beside this one. */
  private static List<KeptPlan> kept(Path folder, List<Problem> problems) throws IOException {
    List<KeptPlan> plans = new ArrayList<>();
    if (!Files.isDirectory(folder)) {
      return plans;
    }
    List<Path> files;
    try (Stream<Path> listed = Files.list(folder)) {
      files = listed.filter(file -> file.toString().endsWith(".json")).sorted().toList();
    }
    for (Path file : files) {
      Loaded<KeptPlan> read = FrozenReader.read(file, KeptPlan.class);
      read.value().ifPresent(plans::add);
      if (read.value().isEmpty()) {
        MarkedText why =
            read.problems().isEmpty() ? MarkedText.NONE : read.problems().get(0).sentence();
        problems.add(FitAdvice.keptUnread(Where.file(file.getFileName().toString()), why));
      }
    }
    return plans;
  }

  private Map<String, String> proposal(List<SpeciesEdit> edits, Fit fit, Path folder) {
    Map<String, String> texts = new TreeMap<>();
    if (edits.isEmpty()) {
      return texts;
    }
    String head =
        "Proposed by fit: figures that your records contradict are changed, those that they bear out"
            + " are surer, all else is as it was. Try it with plan … --species \""
            + folder.resolve("proposal").toString().replace('\\', '/')
            + "\"; to keep it, copy it over your own.";
    String learnt = fit.covers().last().toString();
    SpeciesTexts own = SpeciesTexts.of(what, species.folder());
    own.csv()
        .ifPresent(csv -> texts.put("species.csv", ProposalText.csv(csv, edits, learnt, head)));
    own.json()
        .ifPresent(json -> texts.put("species.json", ProposalText.json(json, edits, learnt, head)));
    return texts;
  }
}
