package growingon.command;

import growingon.command.folder.Destination;
import growingon.load.PlanSources;
import growingon.load.PlanSources.NamedFolder;
import growingon.write.ReportFolder;
import growingon.write.folder.Placing;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import picocli.CommandLine.Option;

/** The options of all commands that write a report, and where it goes by them. */
final class ReportTarget {
  /** Where reports go if nobody says. */
  static final Path USUAL = Path.of("reports");

  @Option(
      names = "--out",
      paramLabel = "FOLDER",
      description = "Where the report goes (else where the plan says, or into reports).")
  private Path out;

  @Option(
      names = "--force",
      description = {
        "Write into the folder even if it holds another plan's report, which is replaced,",
        "or no report, whose files stay beside it."
      })
  private boolean force;

  @Option(
      names = "--dated",
      description =
          "Call workbook and page by plan, reader and date, such as ridge bank 2026-11-03.")
  private boolean dated;

  /** Whether what is in the way may be replaced. */
  boolean isForced() {
    return force;
  }

  /**
   * Where a report goes.
   *
   * @param usual if the command line names no folder
   * @param inputs what is read for it
   * @param named what the plan's file says of the folder, if the usual one goes by that
   */
  Destination of(Path usual, List<Path> inputs, Optional<NamedFolder> named, GrowingOn program) {
    Path folder = out != null ? out : usual;
    return new Destination(
        new Placing(folder, force, dated, inputs, program.watch()),
        out != null ? Optional.empty() : named);
  }

  /** Puts back the reports that earlier runs were stopped over, wherever this one may write. */
  void putBack(List<PlanSources> plans, PrintWriter err) {
    putBack(Optional.ofNullable(out), plans, err);
  }

  /** The same for a command that writes nothing. */
  static void putBack(Optional<Path> out, List<PlanSources> plans, PrintWriter err) {
    Set<Path> parents = new LinkedHashSet<>(List.of(USUAL));
    List<Path> folders = new ArrayList<>(out.stream().toList());
    plans.forEach(plan -> plan.report().map(NamedFolder::folder).ifPresent(folders::add));
    for (Path folder : folders) {
      Optional.ofNullable(folder.normalize().getParent()).ifPresent(parents::add);
    }
    parents.forEach(parent -> putBack(parent, err));
  }

  private static void putBack(Path parent, PrintWriter err) {
    try {
      ReportFolder.putBack(parent).forEach(err::println);
    } catch (IOException unreadable) {
      err.println("%s cannot be looked through (%s).".formatted(parent, unreadable.getMessage()));
    }
  }
}
