package growingon.report.plan.supply;

import growingon.project.history.Use;
import growingon.report.build.FilledSheet;
import growingon.report.figures.Context;
import growingon.report.model.Sheet;
import growingon.report.text.Sentences;
import java.util.List;

/** Pots used, come back and bought. */
public final class PotsSheet {
  private PotsSheet() {}

  public static Sheet of(Context context) {
    SupplyTables tables = new SupplyTables(context, Use.Kind.POT);
    return FilledSheet.of(
        "Pots",
        List.of(
            Sentences.WITHOUT_VAT,
            "A plant potted again into the pot it stands in needs none. Old pots come back at their"
                + " share of reuse when plants are potted on or culled, for use from the next month;"
                + " a sold plant takes its pot along, and the pot of a dead one is not used again."),
        tables.bySeason(
            "pots",
            "By season",
            "On hand before + come back + packs bought × pots in each − used = left. Packs are"
                + " bought when the store would run out."),
        tables.byMonth("pots-by-month", "By month"));
  }
}
