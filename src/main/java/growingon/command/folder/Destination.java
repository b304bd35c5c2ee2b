package growingon.command.folder;

import growingon.load.PlanSources.NamedFolder;
import growingon.problem.advice.DaybookAdvice;
import growingon.report.model.Audience;
import growingon.report.model.Report;
import growingon.write.Beside;
import growingon.write.ReportFolder;
import growingon.write.folder.NotAReportFolder;
import growingon.write.folder.Placing;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Where a report goes.
 *
 * @param named what the plan's file says of it, if it goes there because of that: a bad folder is
 *     then a fault of the file
 */
public record Destination(Placing placing, Optional<NamedFolder> named) {
  public Path folder() {
    return placing.folder();
  }

  /** Checks that it can go there, before it is worked out. */
  public void check(String plan, Optional<Audience> reader) throws IOException {
    try {
      ReportFolder.check(placing, plan, reader);
    } catch (NotAReportFolder refused) {
      throw told(refused);
    }
  }

  /** The same with a workbook of another name, and further files. */
  public List<String> write(Report report, Beside beside) throws IOException {
    try {
      return ReportFolder.write(report, placing, beside);
    } catch (NotAReportFolder refused) {
      throw told(refused);
    }
  }

  /** Writes it; gives what a user should know of the folder. */
  public List<String> write(Report report) throws IOException {
    try {
      return ReportFolder.write(report, placing);
    } catch (NotAReportFolder refused) {
      throw told(refused);
    }
  }

  /** Writes the report of a fit with its proposal; gives what a user should know. */
  public List<String> writeFit(Report report, Map<String, String> proposal) throws IOException {
    try {
      return ReportFolder.writeFit(report, proposal, placing);
    } catch (NotAReportFolder refused) {
      throw told(refused);
    }
  }

  private IOException told(NotAReportFolder refused) {
    return named.isEmpty()
        ? refused
        : new BadReportFolder(
            DaybookAdvice.noReportFolder(
                named.get().where(), refused.why(), folder().toString(), refused.remedy()));
  }
}
