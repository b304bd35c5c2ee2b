package growingon.load;

import growingon.load.cell.Findings;
import growingon.load.settings.PlanReader;
import growingon.load.settings.PlanShape;
import growingon.load.source.JsonObject;
import growingon.load.source.RowCount;
import growingon.nursery.Inputs;
import growingon.nursery.PastRecords;
import growingon.problem.Loaded;
import growingon.problem.Where;
import growingon.problem.advice.FileAdvice;
import growingon.problem.advice.ListAdvice;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.YearMonth;
import java.util.Optional;

/** Reads a plan with its nursery; the way into this package for all that a grower types. */
public final class Loader {
  private Loader() {}

  /**
   * Reads and checks everything that a plan needs. Every problem found is returned, not only the
   * first; with an error among them there are no inputs.
   *
   * @param what a plan.json, a nursery folder, or one .xlsx workbook; without a plan.json the plan
   *     has the name of the folder or workbook, begins this month, runs five seasons and takes the
   *     offers marked so
   * @param options the month it is
   */
  public static Loaded<Inputs> load(Path what, LoadOptions options) {
    Reading reading = read(what, options);
    return reading
        .inputs()
        .map(inputs -> Loaded.of(inputs, reading.findings().problems()))
        .orElseGet(() -> Loaded.failed(reading.findings().problems()));
  }

  /**
   * What came of reading.
   *
   * @param rows how many rows there were, were accepted and were reported
   */
  record Reading(Optional<Inputs> inputs, Findings findings, RowCount rows, PastRecords past) {
    Reading(Optional<Inputs> inputs, Findings findings, RowCount rows) {
      this(inputs, findings, rows, PastRecords.NONE);
    }
  }

  /**
   * A nursery with what was written down of its past.
   *
   * @param inputs as for a plan
   * @param past earlier lists, readings, and how many trunks were measured
   */
  public record WithPast(Inputs inputs, PastRecords past) {}

  /** Reads a plan with its nursery and all that was written down of its past. */
  public static Loaded<WithPast> loadWithPast(Path what, LoadOptions options) {
    Reading reading = read(what, options.withPastRecords());
    return reading
        .inputs()
        .map(
            inputs ->
                Loaded.of(new WithPast(inputs, reading.past()), reading.findings().problems()))
        .orElseGet(() -> Loaded.failed(reading.findings().problems()));
  }

  static Reading read(Path what, LoadOptions options) {
    Findings findings = new Findings();
    String name = String.valueOf(what.getFileName());
    if (!Files.exists(what)) {
      findings.add(FileAdvice.notThere(Where.file(what.toString())));
      return nothing(findings);
    }
    if (Files.isDirectory(what)) {
      return folder(what, options, findings);
    }
    return switch (NurseryFiles.extensionOf(name)) {
      case "json" -> planFile(what, name, options, findings);
      case "xlsx" ->
          OwnFiles.isList(what) ? list(what, options, findings) : nursery(what, options, findings);
      case "csv" -> list(what, options, findings);
      default -> {
        findings.add(FileAdvice.notReadable(Where.file(name)));
        yield nothing(findings);
      }
    };
  }

  /**
   * A folder: its quick sheet if that is filled in, else its plan, else the offers marked. Looked
   * at with findings of their own, because a plan may name another nursery.
   */
  private static Reading folder(Path what, LoadOptions options, Findings findings) {
    Path plan = what.resolve(NurseryFiles.PLAN_JSON);
    if (Files.isRegularFile(plan) && !asksQuickly(what)) {
      return plan(plan, options, findings);
    }
    return nursery(what, options, findings);
  }

  private static boolean asksQuickly(Path folder) {
    return QuickSheet.isAsked(NurseryFiles.read(folder, new Findings()).tables());
  }

  private static Reading nothing(Findings findings) {
    return new Reading(Optional.empty(), findings, RowCount.NONE);
  }

  private static Reading planFile(Path file, String name, LoadOptions options, Findings findings) {
    if (name.equals(NurseryFiles.NURSERY_JSON) || name.equals(NurseryFiles.SPECIES_JSON)) {
      findings.add(FileAdvice.notAPlan(Where.file(name)));
      return nothing(findings);
    }
    return plan(file, options, findings);
  }

  private static Reading plan(Path file, LoadOptions options, Findings findings) {
    JsonObject json = JsonObject.read(file, PlanShape.class, findings);
    PlanReader plan = PlanReader.of(json, findings);
    Path nursery = plan.nursery(file);
    plan.readHorizon(() -> firstMonth(nursery, options));
    if (json.isBroken() || plan.isWithoutHorizon()) {
      return nothing(findings);
    }
    if (!Files.exists(nursery)) {
      findings.add(FileAdvice.noNursery(plan.where(PlanShape.NURSERY), nursery.toString()));
      return nothing(findings);
    }
    String name = NurseryFiles.baseOf(file.getFileName().toString());
    Optional<Path> reportFolder = plan.reportFolder(file);
    return completed(files(nursery, options, findings), nursery, plan, options, findings)
        .map(
            files ->
                files.reading(
                    new NurseryReader(files.nursery(), plan, findings)
                        .in(PastSources.of(nursery, files), options.withPast())
                        .read(name, reportFolder, options.today())))
        .orElseGet(() -> nothing(findings));
  }

  /** With the stock of the grower's own lists, where own words name some. */
  private static Optional<OwnFiles> completed(
      NurseryFiles files, Path nursery, PlanReader plan, LoadOptions options, Findings findings) {
    return OwnFiles.completed(files, nursery, plan.firstMonth(), options.stock(), findings);
  }

  /** A grower's own list, with usual values for all that is not in it. */
  private static Reading list(Path file, LoadOptions options, Findings findings) {
    if (!options.takesLists()) {
      findings.add(
          ListAdvice.listAlone(Where.file(file.getFileName().toString()), file.toString()));
      return nothing(findings);
    }
    PlanReader plan = PlanReader.none(findings);
    plan.readHorizon(options::thisMonth);
    return OwnFiles.ofList(file, plan.firstMonth(), findings)
        .map(
            files ->
                files.reading(
                    new NurseryReader(files.nursery(), plan, findings)
                        .read(files.nursery().name(), Optional.empty(), options.today())))
        .orElseGet(() -> nothing(findings));
  }

  private static NurseryFiles files(Path nursery, LoadOptions options, Findings findings) {
    NurseryFiles files = NurseryFiles.read(nursery, findings);
    return options.speciesFrom().map(folder -> files.withSpeciesOf(folder, findings)).orElse(files);
  }

  private static Reading nursery(Path nursery, LoadOptions options, Findings findings) {
    NurseryFiles files = files(nursery, options, findings);
    if (QuickSheet.isAsked(files.tables())) {
      return QuickSheet.read(files, findings);
    }
    PlanReader plan = PlanReader.none(findings);
    plan.readHorizon(() -> firstMonth(nursery, options));
    return completed(files, nursery, plan, options, findings)
        .map(
            own ->
                own.reading(
                    new NurseryReader(own.nursery(), plan, findings)
                        .in(PastSources.of(nursery, own), options.withPast())
                        .read(files.name(), Optional.empty(), options.today())))
        .orElseGet(() -> nothing(findings));
  }

  /** The oldest list begins the plan of who looks back, else the plan is of this month. */
  private static YearMonth firstMonth(Path nursery, LoadOptions options) {
    return Optional.of(nursery)
        .filter(any -> options.fromOldest() && Files.exists(nursery))
        .map(found -> new OwnFiles(files(found, options, new Findings()), Optional.empty()))
        .flatMap(files -> EarlierLists.oldestMonth(PastSources.of(nursery, files)))
        .orElse(options.thisMonth());
  }
}
