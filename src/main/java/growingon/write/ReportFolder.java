package growingon.write;

import growingon.report.Report;
import java.io.IOException;
import java.nio.file.Path;

/**
 * The door: writes a report as a folder of plan.xlsx, charts/*.png, tables/*.csv, figures.json and
 * problems.txt. The folder is replaced whole or not at all; files of others that lie in it are
 * kept. The same report gives the same bytes.
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
    thread.start();
  }

  /**
   * Writes a report.
   *
   * @param report what to write
   * @param folder where; made if it is not there, replaced if it is empty or a report
   * @throws NotAReportFolder if something else is there
   * @throws IOException if a file cannot be written; the report that was there is left as it was
   */
  public static void write(Report report, Path folder) throws IOException {
    write(report, folder, false);
  }

  /**
   * Writes a report.
   *
   * @param force whether to write into a folder that is no report of this program too; its own
   *     files stay beside those of the report
   * @throws NotAReportFolder if something else is there and {@code force} is not set, or if it can
   *     never be replaced: a file, a root, the home or working folder or one above
   * @throws IOException if a file cannot be written; the report that was there is left as it was
   */
  public static void write(Report report, Path folder, boolean force) throws IOException {
    new FolderSwap(folder, force).replaceWith(fresh -> ReportFiles.write(report, fresh));
  }
}
