package growingon.command;

import growingon.command.folder.Destination;
import growingon.command.folder.KeptFile;
import growingon.load.FrozenReader;
import growingon.load.LoadOptions;
import growingon.load.Loader;
import growingon.nursery.Inputs;
import growingon.nursery.record.PastRecords;
import growingon.problem.Loaded;
import growingon.problem.Problem;
import growingon.problem.Where;
import growingon.problem.advice.DaybookAdvice;
import growingon.report.model.Report;
import growingon.report.review.ReviewReport;
import growingon.review.Review;
import growingon.review.kept.KeptPlan;
import growingon.write.ReportFolder;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** What really happened against the plan: read, compare the daybook with the kept plan, write. */
@Command(
    name = "review",
    mixinStandardHelpOptions = true,
    description = {
      "Compares the daybook with the plan kept by plan --keep, and says which bought lots paid.",
      "Later stock lists (the older ones in the folder earlier) count as counts, a table receipts as"
          + " sales, beside a daybook or without one.",
      "Without a kept plan it compares with the plan as the files give it now."
    })
final class ReviewCommand extends ReportCommand {
  private static final String ENDING = "-review";

  @Parameters(paramLabel = "WHAT", description = "A plan.json, a nursery folder, or one workbook.")
  private Path what;

  @Mixin private Reader reader;

  @Override
  public Integer call() throws IOException {
    reader.check(spec);
    return tell(watched(what, this::run));
  }

  private Outcome run(Progress progress) throws IOException {
    Clock clock = program.clock();
    progress.phase("Reading " + what);
    ReportFolder.prepare();
    Loaded<Loader.WithPast> loaded =
        Loader.loadWithPast(what, new LoadOptions(LocalDate.now(clock)).lookingBack());
    List<Problem> problems = new ArrayList<>(loaded.problems());
    if (loaded.value().isEmpty()) {
      return Outcome.refused(problems);
    }
    Inputs inputs = loaded.value().get().inputs();
    PastRecords past = loaded.value().get().past();
    YearMonth thisMonth = YearMonth.now(clock);
    if (inputs.quick().isPresent() || !Review.canLookBack(inputs, past, thisMonth)) {
      problems.add(DaybookAdvice.noDaybook(Where.file(what.toString())));
      return Outcome.refused(problems);
    }
    Path keptFile = KeptFile.of(what, inputs.scenario().plan());
    Optional<Loaded<KeptPlan>> kept = kept(keptFile);
    kept.ifPresent(read -> problems.addAll(read.problems()));
    if (kept.isPresent() && kept.get().value().isEmpty()) {
      return Outcome.refused(problems);
    }
    Path usual = Reading.beside(Reading.usualFolder(inputs), ENDING + reader.folderEnding());
    Destination destination = destination(what, keptFile, usual);
    String plan =
        reader
            .edition()
            .map(edition -> edition.title(edition.seen(inputs)))
            .orElse(inputs.scenario().plan().name());
    destination.check(ReviewReport.title(plan), reader.audience());
    progress.phase("Comparing what is written down with the plan");
    Review review = Review.of(inputs, past, thisMonth, kept.flatMap(Loaded::value), THREADS);
    Report whole = ReviewReport.of(inputs, problems, review);
    Report report =
        issued(reader.edition().map(edition -> edition.review(inputs, review)).orElse(whole));
    progress.phase("Writing " + destination.folder());
    List<String> notices = destination.write(report);
    return Outcome.written(report, destination.folder(), notices, whole.problems());
  }

  private static Optional<Loaded<KeptPlan>> kept(Path file) {
    return Files.exists(file)
        ? Optional.of(FrozenReader.read(file, KeptPlan.class))
        : Optional.empty();
  }
}
