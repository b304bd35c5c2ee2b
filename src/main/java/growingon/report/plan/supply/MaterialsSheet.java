package growingon.report.plan.supply;

import growingon.project.history.Use;
import growingon.report.build.FilledSheet;
import growingon.report.figures.Context;
import growingon.report.model.Sheet;
import growingon.report.text.Sentences;
import java.util.List;

/** Wire, dressing, ties and the like: used, come back and bought. */
public final class MaterialsSheet {
  private MaterialsSheet() {}

  public static Sheet of(Context context) {
    SupplyTables tables = new SupplyTables(context, Use.Kind.MATERIAL);
    return FilledSheet.of(
        "Materials",
        List.of(
            Sentences.WITHOUT_VAT,
            "Used is what the steps of the routes state for a plant, times the plants worked on."
                + " The share that comes back is used again twelve months later."),
        tables.bySeason(
            "materials",
            "By season",
            "On hand before + come back + packs bought × amount in each − used = left. Packs are"
                + " bought when the store would run out."),
        tables.byMonth("materials-by-month", "By month"));
  }
}
