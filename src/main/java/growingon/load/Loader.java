package growingon.load;

import growingon.load.cell.Findings;
import growingon.load.file.NurseryFiles;
import growingon.load.settings.PlanReader;
import growingon.load.settings.PlanShape;
import growingon.load.source.JsonObject;
import growingon.load.source.RowCount;
import growingon.nursery.Inputs;
import growingon.nursery.record.PastRecords;
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
   * A folder: its quick sheet if that is filled in, else its plan, else the offers marked. Its
   * tables are read once, but for those of a plan that names another nursery.
   */
  private static Reading folder(Path what, LoadOptions options, Findings findings) {
    Path plan = what.resolve(NurseryFiles.PLAN_JSON);
    if (!Files.isRegularFile(plan)) {
      return nursery(what, options, findings);
    }
    boolean itsOwn = nurseryOf(plan).equals(what.toAbsolutePath().normalize());
    ReadOnce tables = new ReadOnce(what, options, itsOwn ? findings : new Findings());
    if (!QuickSheet.isAsked(tables.files().tables())) {
      return plan(plan, options, findings, itsOwn ? Optional.of(tables) : Optional.empty());
    }
    return itsOwn ? nursery(tables, options, findings) : nursery(what, options, findings);
  }

  /** The nursery that a plan names; what is wrong with the plan is said when it is read. */
  private static Path nurseryOf(Path plan) {
    Findings unheard = new Findings();
    return PlanReader.of(JsonObject.read(plan, PlanShape.class, unheard), unheard).nursery(plan);
  }

  /** The files of a nursery, read when they are first asked for. */
  private static final class ReadOnce {
    private final Path nursery;
    private final LoadOptions options;
    private final Findings findings;
    private Optional<NurseryFiles> files = Optional.empty();

    ReadOnce(Path nursery, LoadOptions options, Findings findings) {
      this.nursery = nursery;
      this.options = options;
      this.findings = findings;
    }

    NurseryFiles files() {
      if (files.isEmpty()) {
        NurseryFiles read = NurseryFiles.read(nursery, findings);
        files =
            options
                .speciesFrom()
                .map(folder -> read.withSpeciesOf(folder, findings))
                .or(() -> Optional.of(read));
      }
      return files.get();
    }

    /** The oldest list begins the plan of who looks back, else the plan is of this month. */
    YearMonth firstMonth() {
      return Optional.of(nursery)
          .filter(any -> options.fromOldest() && Files.exists(nursery))
          .map(found -> OwnFiles.found(files(), nursery, options.stock()))
          .flatMap(own -> EarlierLists.oldestMonth(PastSources.of(nursery, own)))
          .orElse(options.thisMonth());
    }
  }

  private static Reading nothing(Findings findings) {
    return new Reading(Optional.empty(), findings, RowCount.NONE);
  }

  private static Reading planFile(Path file, String name, LoadOptions options, Findings findings) {
    if (name.equals(NurseryFiles.NURSERY_JSON) || name.equals(NurseryFiles.SPECIES_JSON)) {
      findings.add(FileAdvice.notAPlan(Where.file(name)));
      return nothing(findings);
    }
    return plan(file, options, findings, Optional.empty());
  }

  /**
   * A plan.
   *
   * @param read the tables of its nursery, where they were read already
   */
  private static Reading plan(
      Path file, LoadOptions options, Findings findings, Optional<ReadOnce> read) {
    JsonObject json = JsonObject.read(file, PlanShape.class, findings);
    PlanReader plan = PlanReader.of(json, findings);
    Path nursery = plan.nursery(file);
    ReadOnce tables = read.orElseGet(() -> new ReadOnce(nursery, options, findings));
    plan.readHorizon(() -> json.isBroken() ? options.thisMonth() : tables.firstMonth());
    if (json.isBroken() || plan.isWithoutHorizon()) {
      return nothing(findings);
    }
    if (!Files.exists(nursery)) {
      findings.add(FileAdvice.noNursery(plan.where(PlanShape.NURSERY), nursery.toString()));
      return nothing(findings);
    }
    String name = NurseryFiles.baseOf(file.getFileName().toString());
    Optional<Path> reportFolder = plan.reportFolder(file);
    return completed(tables.files(), nursery, plan, options, findings)
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
    Optional<OwnFiles> read = OwnFiles.ofList(file, plan.firstMonth(), findings);
    read.flatMap(OwnFiles::own).ifPresent(own -> Moves.tell(own, options));
    return read.map(
            files ->
                files.reading(
                    new NurseryReader(files.nursery(), plan, findings)
                        .read(files.nursery().name(), Optional.empty(), options.today())))
        .orElseGet(() -> nothing(findings));
  }

  private static Reading nursery(Path nursery, LoadOptions options, Findings findings) {
    return nursery(new ReadOnce(nursery, options, findings), options, findings);
  }

  private static Reading nursery(ReadOnce tables, LoadOptions options, Findings findings) {
    NurseryFiles files = tables.files();
    if (QuickSheet.isAsked(files.tables())) {
      return QuickSheet.read(files, findings);
    }
    PlanReader plan = PlanReader.none(findings);
    plan.readHorizon(tables::firstMonth);
    return completed(files, tables.nursery, plan, options, findings)
        .map(
            own ->
                own.reading(
                    new NurseryReader(own.nursery(), plan, findings)
                        .in(PastSources.of(tables.nursery, own), options.withPast())
                        .read(files.name(), Optional.empty(), options.today())))
        .orElseGet(() -> nothing(findings));
  }
}
