package growingon.write;

import growingon.report.model.Audience;
import growingon.report.model.Report;
import growingon.write.folder.AnotherRun;
import growingon.write.folder.FolderGuard;
import growingon.write.folder.FolderSwap;
import growingon.write.folder.LastReports;
import growingon.write.folder.NotAReportFolder;
import growingon.write.folder.Placing;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * The door: writes a report as a folder of plan.xlsx, charts/*.png, tables/*.csv, figures.json and
 * problems.txt. The report is replaced whole or not at all; files of others that lie in the folder
 * stay. The same report gives the same bytes.
 */
public final class ReportFolder {
  private ReportFolder() {}

  /**
   * Begins to load, in the background, the libraries that writing needs; call it when a run starts,
   * and reading and projecting hide the half second this takes. Writing works without it too.
   */
  public static void prepare() {
    Thread thread = new Thread(WarmUp::run, "prepare-report");
    thread.setDaemon(true);
    // What fails here fails again, and is told, when the report is written.
    thread.setUncaughtExceptionHandler((same, fault) -> {});
    thread.start();
  }

  /**
   * Checks that a report may go into a folder, before it is worked out.
   *
   * @param plan name of the plan, as the report will have it
   * @param reader for whom, if it is an edition
   * @throws NotAReportFolder if it may not
   */
  public static void check(Placing placing, String plan, Optional<Audience> reader)
      throws IOException {
    guard(placing, plan, reader).check();
  }

  /**
   * Writes a report.
   *
   * @return what a user should know of the folder, in sentences; mostly nothing
   * @throws NotAReportFolder if the report may not go there
   * @throws AnotherRun if another run is writing there
   * @throws IOException if a file cannot be written; the report that was there is left as it was
   */
  public static List<String> write(Report report, Placing placing) throws IOException {
    return write(report, placing, Beside.NOTHING);
  }

  /** The same with a workbook of another name, and further files. */
  public static List<String> write(Report report, Placing placing, Beside beside)
      throws IOException {
    FileNames usual =
        new FileNames(beside.workbook(), FileNames.USUAL.details(), FileNames.USUAL.page());
    FileNames names = placing.dated() ? FileNames.dated(report) : usual;
    return new FolderSwap(placing, guard(placing, report.plan(), report.reader()))
        .replaceWith(
            fresh -> ReportFiles.write(report, fresh, placing.folder(), names, beside.texts()));
  }

  /**
   * Writes the report of a fit, with a proposal beside it if there is one.
   *
   * @param proposal texts by their names
   */
  public static List<String> writeFit(Report report, Map<String, String> proposal, Placing placing)
      throws IOException {
    FileNames names = placing.dated() ? FileNames.dated(report) : FileNames.FIT;
    Map<String, String> more = new TreeMap<>();
    proposal.forEach((name, text) -> more.put("proposal/" + name, text));
    return new FolderSwap(placing, guard(placing, report.plan(), report.reader()))
        .replaceWith(fresh -> ReportFiles.write(report, fresh, placing.folder(), names, more));
  }

  /** Writes a report of which nothing else is to be said. */
  public static List<String> write(Report report, Path folder) throws IOException {
    return write(report, Placing.in(folder));
  }

  private static FolderGuard guard(Placing placing, String plan, Optional<Audience> reader) {
    return new FolderGuard(
        placing, plan, reader.map(each -> each.name().toLowerCase(Locale.ROOT)).orElse(""));
  }

  /**
   * Puts back what runs that were killed have laid aside, in every report folder that lies in a
   * folder.
   *
   * @return what was put back or could not be, in sentences
   */
  public static List<String> putBack(Path parent) throws IOException {
    return LastReports.putBack(parent);
  }
}
