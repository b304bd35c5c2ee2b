package growingon.load;

import growingon.load.cell.Findings;
import growingon.load.file.NurseryFiles;
import growingon.load.settings.PlanReader;
import growingon.load.settings.PlanShape;
import growingon.load.source.JsonObject;
import growingon.problem.Where;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What a plan is read from and where its report goes, as far as its own file tells: known before
 * anything else is read, and also where reading fails.
 *
 * @param files every file and folder that is read, whether it is there or not; files first
 * @param report the folder that the plan's file names for its report
 */
public record PlanSources(List<Path> files, Optional<NamedFolder> report) {
  public PlanSources {
    files = List.copyOf(files);
  }

  /** The same with a file more. */
  public PlanSources with(Path file) {
    List<Path> more = new ArrayList<>(List.of(file));
    more.addAll(files);
    return new PlanSources(more, report);
  }

  /** A folder that a plan's file names, and where it does. */
  public record NamedFolder(Path folder, Where where) {}

  /** The nursery's folder or workbook of what is planned. */
  public static Path nurseryOf(Path what) {
    Path plan = Files.isDirectory(what) ? what.resolve(NurseryFiles.PLAN_JSON) : what;
    boolean isPlan = NurseryFiles.extensionOf(String.valueOf(plan.getFileName())).equals("json");
    if (!isPlan || !Files.isRegularFile(plan)) {
      return what;
    }
    Findings unheard = new Findings();
    return PlanReader.of(JsonObject.read(plan, PlanShape.class, unheard), unheard).nursery(plan);
  }

  /**
   * Looks at a plan.
   *
   * @param what a plan.json, a nursery folder, or one workbook
   */
  public static PlanSources of(Path what) {
    Path plan = Files.isDirectory(what) ? what.resolve(NurseryFiles.PLAN_JSON) : what;
    boolean isPlan = NurseryFiles.extensionOf(String.valueOf(plan.getFileName())).equals("json");
    if (!isPlan || !Files.isRegularFile(plan)) {
      return new PlanSources(inputs(what, what), Optional.empty());
    }
    Findings unheard = new Findings();
    PlanReader reader = PlanReader.of(JsonObject.read(plan, PlanShape.class, unheard), unheard);
    Optional<NamedFolder> report =
        reader
            .reportFolder(plan)
            .map(folder -> new NamedFolder(folder, reader.where(PlanShape.REPORT_FOLDER)));
    return new PlanSources(inputs(plan, reader.nursery(plan)), report);
  }

  private static List<Path> inputs(Path plan, Path nursery) {
    List<Path> inputs = new ArrayList<>(List.of(plan));
    if (Files.isDirectory(nursery)) {
      try (Stream<Path> files = Files.list(nursery)) {
        files.filter(Files::isRegularFile).sorted().forEach(inputs::add);
      } catch (IOException unreadable) {
        // The reading of the plan stops at it and says so.
      }
    }
    inputs.add(nursery);
    return inputs;
  }
}
