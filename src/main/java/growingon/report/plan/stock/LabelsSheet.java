package growingon.report.plan.stock;

import growingon.nursery.lot.Lot;
import growingon.report.build.FilledSheet;
import growingon.report.build.TableOf;
import growingon.report.figures.Context;
import growingon.report.model.Rows;
import growingon.report.model.Sheet;
import java.util.List;

/** What stands on the labels of the benches, a row a lot, to be merged into a sheet of labels. */
public final class LabelsSheet {
  private LabelsSheet() {}

  public static Sheet of(Context context) {
    return FilledSheet.of(
        "Labels",
        List.of("A row a lot: let a word processor merge them into a sheet of labels."),
        TableOf.<Lot>table("bench-labels", "Bench labels")
            .text("lot", Lot::name)
            .text("species", Lot::species)
            .text("place", lot -> lot.standing().place().orElse(null))
            .text("passport", lot -> Rows.text(lot.papers().passport()))
            .month("potted", lot -> lot.potting().potted().orElse(null))
            .of(
                context.whole().lots().stream()
                    .filter(each -> each.standingAtStart() > 0)
                    .map(each -> each.history().lot())
                    .filter(lot -> lot.purchase().isEmpty())
                    .toList()));
  }
}
