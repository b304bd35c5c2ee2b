package growingon.write.text;

import growingon.nursery.number.Writing;
import growingon.problem.Problem;
import growingon.problem.Severity;
import growingon.report.model.Report;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** Writes problems.txt: errors, warnings and notices, each with their number. */
public final class ProblemsText {
  private ProblemsText() {}

  /** Every problem on a line of its own, in UTF-8. */
  public static byte[] bytes(Report report) {
    StringBuilder text = new StringBuilder();
    text.append("Problems found while making the plan: ").append(report.plan()).append("\n\n");
    for (Severity severity : Severity.values()) {
      group(text, severity, of(report, severity), report.writing());
    }
    if (report.problems().isEmpty()) {
      text.append("none\n");
    }
    return text.toString().getBytes(StandardCharsets.UTF_8);
  }

  private static List<Problem> of(Report report, Severity severity) {
    return report.problems().stream().filter(each -> each.severity() == severity).toList();
  }

  private static void group(
      StringBuilder text, Severity severity, List<Problem> problems, Writing writing) {
    if (!problems.isEmpty()) {
      String plural = problems.size() == 1 ? "" : "s";
      text.append(writing.whole(problems.size()))
          .append(' ')
          .append(severity)
          .append(plural)
          .append('\n');
      problems.forEach(each -> text.append("  ").append(writing.told(each.line())).append('\n'));
      text.append('\n');
    }
  }
}
