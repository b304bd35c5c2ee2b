package growingon.load.file;

import growingon.load.cell.Findings;
import growingon.load.cell.Nearest;
import growingon.load.settings.PlanShape;
import growingon.load.source.JsonFile;
import growingon.load.source.JsonObject;
import growingon.load.table.NurseryShape;
import growingon.load.table.species.SpeciesShape;
import growingon.load.table.species.SpeciesTable;
import growingon.nursery.Assumption;
import growingon.problem.Where;
import growingon.problem.advice.FileAdvice;
import growingon.problem.advice.FitAdvice;
import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * What a nursery folder or workbook holds.
 *
 * @param where the folder or workbook
 * @param name of it, without the extension
 * @param tables every table
 * @param species species.json, if it is there
 * @param settings nursery.json, if it is there
 */
public record NurseryFiles(
    Where where,
    String name,
    Tables tables,
    Optional<JsonObject> species,
    Optional<JsonObject> settings) {
  public static final String SPECIES_JSON = "species.json";
  public static final String NURSERY_JSON = "nursery.json";
  public static final String PLAN_JSON = "plan.json";

  /** Where usual values come from. */
  public static final Where USUAL = Where.file(Assumption.USUAL);

  private static final Set<String> OTHER_SHEETS =
      Set.of("xls", "xlsm", "xlsb", "ods", "numbers", "tsv");

  /** Reads the tables of a folder or of one workbook. */
  public static NurseryFiles read(Path nursery, Findings findings) {
    return Files.isDirectory(nursery) ? folder(nursery, findings) : workbook(nursery, findings);
  }

  private static NurseryFiles workbook(Path file, Findings findings) {
    Tables tables = new Tables(findings);
    tables.addWorkbook(file);
    String name = file.getFileName().toString();
    return new NurseryFiles(
        Where.file(name), baseOf(name), tables, Optional.empty(), Optional.empty());
  }

  private static NurseryFiles folder(Path folder, Findings findings) {
    Path whole = folder.toAbsolutePath().normalize();
    String name = whole.getFileName() == null ? whole.toString() : whole.getFileName().toString();
    Tables tables = new Tables(findings);
    list(folder, findings).forEach(file -> add(file, tables, findings));
    return new NurseryFiles(
        Where.file(name),
        name,
        tables,
        json(folder.resolve(SPECIES_JSON), SpeciesShape.class, findings),
        json(folder.resolve(NURSERY_JSON), NurseryShape.class, findings));
  }

  /** The same with the species of another folder in place of its own. */
  public NurseryFiles withSpeciesOf(Path folder, Findings findings) {
    tables.remove(SpeciesTable.FORMAT);
    Path csv = folder.resolve(SpeciesTable.FORMAT.name() + ".csv");
    if (Files.isRegularFile(csv)) {
      tables.addCsv(csv);
    }
    Optional<JsonObject> json = json(folder.resolve(SPECIES_JSON), SpeciesShape.class, findings);
    if (json.isEmpty() && !Files.isRegularFile(csv)) {
      findings.add(FitAdvice.noSpeciesThere(Where.file(folder.toString())));
    }
    return new NurseryFiles(where, name, tables, json, settings);
  }

  private static Optional<JsonObject> json(
      Path file, Class<? extends Record> shape, Findings findings) {
    return Files.isRegularFile(file)
        ? Optional.of(JsonObject.read(file, shape, findings))
        : Optional.empty();
  }

  /** Files of a folder by name, so that problems come in the same order everywhere. */
  private static List<Path> list(Path folder, Findings findings) {
    try (Stream<Path> files = Files.list(folder)) {
      return files.filter(Files::isRegularFile).filter(NurseryFiles::isKept).sorted().toList();
    } catch (AccessDeniedException denied) {
      findings.add(FileAdvice.noAccess(Where.file(folder.toString())));
    } catch (IOException broken) {
      findings.add(FileAdvice.cannotRead(Where.file(folder.toString()), broken.getMessage()));
    }
    return List.of();
  }

  /** Names with a dot or ~$ in front are those of programs, such as lock files. */
  private static boolean isKept(Path file) {
    String name = file.getFileName().toString();
    return !name.startsWith(".") && !name.startsWith("~$");
  }

  private static void add(Path file, Tables tables, Findings findings) {
    String name = file.getFileName().toString();
    String extension = extensionOf(name);
    switch (extension) {
      case "csv" -> tables.addCsv(file);
      case "xlsx" -> tables.addWorkbook(file);
      case "json" -> remarkJson(file, name, findings);
      default -> {
        if (OTHER_SHEETS.contains(extension)) {
          findings.add(FileAdvice.otherSpreadsheet(Where.file(name)));
        }
      }
    }
  }

  /** A plan may have any name; of the others a slip in the name is worth a word. */
  private static void remarkJson(Path file, String name, Findings findings) {
    List<String> known = List.of(SPECIES_JSON, NURSERY_JSON);
    if (!known.contains(name) && !name.equals(PLAN_JSON) && !isPlan(file)) {
      findings.add(FileAdvice.otherJson(Where.file(name), Nearest.to(name, known)));
    }
  }

  /** Whether a file holds a plan, be it the one that is run or another beside it. */
  private static boolean isPlan(Path file) {
    return JsonFile.read(file, PlanShape.class, new Findings())
        .filter(found -> !found.fields().isEmpty())
        .isPresent();
  }

  /** The same with other tables. */
  public NurseryFiles with(Tables others) {
    return new NurseryFiles(where, name, others, species, settings);
  }

  /** Whether its tables are laid out with usual values, of which not all are needed. */
  public boolean isUsual() {
    return tables
        .find(SpeciesTable.FORMAT)
        .filter(table -> table.where().equals(USUAL))
        .isPresent();
  }

  /** Whether there is nothing here that a nursery is made of. */
  public boolean isEmpty() {
    return tables.all().isEmpty() && species.isEmpty() && settings.isEmpty();
  }

  public static String extensionOf(String name) {
    int dot = name.lastIndexOf('.');
    return dot < 0 ? "" : name.substring(dot + 1).toLowerCase(Locale.ROOT);
  }

  public static String baseOf(String name) {
    int dot = name.lastIndexOf('.');
    return dot <= 0 ? name : name.substring(0, dot);
  }
}
