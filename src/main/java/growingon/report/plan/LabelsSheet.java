package growingon.report.plan;

import growingon.nursery.Lot;
import growingon.report.build.FilledSheet;
import growingon.report.build.TableBuilder;
import growingon.report.figures.Context;
import growingon.report.model.Rows;
import growingon.report.model.Sheet;
import growingon.whole.WholeLot;
import java.util.List;

/** What stands on the labels of the benches, a row a lot, to be merged into a sheet of labels. */
final class LabelsSheet {
  private LabelsSheet() {}

  static Sheet of(Context context) {
    TableBuilder table =
        TableBuilder.table("bench-labels", "Bench labels")
            .text("lot")
            .text("species")
            .text("place")
            .text("passport")
            .month("potted");
    for (WholeLot each : context.whole().lots()) {
      Lot lot = each.history().lot();
      if (lot.purchase().isEmpty() && each.standingAtStart() > 0) {
        table.row(
            lot.name(),
            lot.species(),
            lot.standing().place().orElse(null),
            Rows.text(lot.papers().passport()),
            lot.potting().potted().orElse(null));
      }
    }
    return FilledSheet.of(
        "Labels",
        List.of("A row a lot: let a word processor merge them into a sheet of labels."),
        table.build());
  }
}
