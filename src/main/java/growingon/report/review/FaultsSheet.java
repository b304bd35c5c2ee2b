package growingon.report.review;

import growingon.problem.Problem;
import growingon.report.build.FilledSheet;
import growingon.report.build.TableBuilder;
import growingon.report.model.Rows;
import growingon.report.model.Sheet;
import growingon.review.Review;
import java.util.List;

/** What is wrong in the records, each with its row. */
final class FaultsSheet {
  static final String NAME = "Faults";

  private FaultsSheet() {}

  static Sheet of(Review review) {
    TableBuilder table =
        TableBuilder.table("faults", "Faults in the records")
            .text("where")
            .longText("what is wrong")
            .longText("what to do");
    for (Problem each : review.asked()) {
      table.row(
          Rows.text(each.where().toString()),
          each.sentence() + (each.found().isEmpty() ? "" : " (" + each.found() + ")"),
          Rows.text(each.remedy()));
    }
    return FilledSheet.of(
        NAME,
        List.of("Nothing was guessed away: put these right in the files, then review again."),
        table.build());
  }
}
