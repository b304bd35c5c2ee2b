package growingon.write;

import growingon.report.model.Report;
import growingon.write.folder.FolderName;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * What the files of a report that a person opens are called.
 *
 * @param workbook the workbook to act on
 * @param details the workbook of what stands behind it
 * @param page the page
 */
record FileNames(String workbook, String details, String page) {
  /** The same in every report, so that links to them last. */
  static final FileNames USUAL = new FileNames("plan.xlsx", "details.xlsx", "report.html");

  /** Those of the report of a fit. */
  static final FileNames FIT = new FileNames("fit.xlsx", "fit details.xlsx", "report.html");

  private static final int LONGEST_PLAN = 50;

  /**
   * Names that say which plan it is, for whom and of what day: they can be told apart in a mail.
   */
  static FileNames dated(Report report) {
    List<String> parts = new ArrayList<>(List.of(cut(FolderName.of(report.plan()))));
    report.reader().ifPresent(each -> parts.add(each.name().toLowerCase(Locale.ROOT)));
    report.madeOn().ifPresent(day -> parts.add(day.toString()));
    String name = String.join(" ", parts);
    return new FileNames(name + ".xlsx", name + " details.xlsx", name + ".html");
  }

  /** So much of a name that it is short enough for a file, whatever its letters. */
  private static String cut(String plan) {
    int[] letters = plan.codePoints().limit(LONGEST_PLAN).toArray();
    return new String(letters, 0, letters.length).strip();
  }
}
