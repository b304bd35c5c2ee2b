package growingon.report.plan.stock;

import growingon.nursery.lot.Lot;
import growingon.report.build.FilledSheet;
import growingon.report.build.TableOf;
import growingon.report.figures.Context;
import growingon.report.model.Kind;
import growingon.report.model.Rows;
import growingon.report.model.Sheet;
import growingon.whole.WholeLot;
import java.util.List;

/** What stands on the labels of the benches, a row a lot, to be merged into a sheet of labels. */
public final class LabelsSheet {
  private LabelsSheet() {}

  public static Sheet of(Context context) {
    return FilledSheet.of(
        "Labels",
        List.of("A row a lot: let a word processor merge them into a sheet of labels."),
        TableOf.<WholeLot>table("bench-labels", "Bench labels")
            .text("lot", each -> lot(each).name())
            .text("species", each -> lot(each).species())
            .text("pot", each -> lot(each).potting().pot().orElse(null))
            .column("plants", "", Kind.COUNT, each -> lot(each).quantity())
            .text("place", each -> lot(each).standing().place().orElse(null))
            .text("passport", each -> Rows.text(lot(each).papers().passport()))
            .month("potted", each -> lot(each).potting().potted().orElse(null))
            .of(
                context.whole().lots().stream()
                    .filter(each -> each.standingAtStart() > 0)
                    .filter(each -> lot(each).purchase().isEmpty())
                    .toList()));
  }

  private static Lot lot(WholeLot each) {
    return each.history().lot();
  }
}
