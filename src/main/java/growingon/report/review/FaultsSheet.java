package growingon.report.review;

import growingon.problem.Problem;
import growingon.report.build.FilledSheet;
import growingon.report.build.TableOf;
import growingon.report.model.Rows;
import growingon.report.model.Sheet;
import growingon.review.Review;
import java.util.List;

/** What is wrong in the records, each with its row. */
final class FaultsSheet {
  static final String NAME = "Faults";

  private FaultsSheet() {}

  static Sheet of(Review review) {
    return FilledSheet.of(
        NAME,
        List.of("Nothing was guessed away: put these right in the files, then review again."),
        TableOf.<Problem>table("faults", "Faults in the records")
            .text("where", each -> Rows.text(each.where().toString()))
            .longText("what is wrong", Problem::what)
            .longText("what to do", each -> Rows.text(each.remedy()))
            .of(review.asked()));
  }
}
