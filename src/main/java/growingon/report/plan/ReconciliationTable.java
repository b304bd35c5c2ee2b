package growingon.report.plan;

import growingon.money.Reconciliation;
import growingon.report.figures.Context;
import growingon.report.model.Column;
import growingon.report.model.Kind;
import growingon.report.model.Rows;
import growingon.report.model.Table;
import growingon.report.text.Phrases;
import java.util.List;

/** From the lots' results to the nursery's cash; it stands with both. */
final class ReconciliationTable {
  private ReconciliationTable() {}

  static Table of(Context context) {
    Phrases say = context.say();
    Reconciliation lines = context.accounts().reconciliation();
    String currency = context.inputs().scenario().nursery().settings().currency();
    Rows rows = new Rows();
    rows.add("results of all lots", lines.lots());
    rows.add("space not used", lines.spaceNotUsed());
    rows.add("packs and stock on hand", lines.packsAndStock());
    rows.add("hours not paid", lines.hoursNotPaid());
    rows.add("other cash", lines.otherCash());
    return new Table(
        "reconciliation",
        "From the lots' results to the nursery's cash",
        List.of(
            "The total is the change of cash over the plan, %s, to the cent."
                .formatted(say.each(lines.cash())),
            "Results: sales less plants, pots, substrate, materials, all hours, care, the place"
                + " charge, what selling costs and other cash of the lot. Space not used: what places cost that no lot carries; above nil where"
                + " lots stand over capacity.",
            "Packs and stock on hand: lots pay for what they use, cash for whole packs. Hours not"
                + " paid: lots are charged all hours, cash pays the share of the settings."
                + " Other cash: what no lot causes, with its hours."),
        List.of(
            Column.of("line", "line", "", Kind.TEXT),
            Column.summed("amount", "amount", currency, Kind.MONEY)),
        rows.list());
  }
}
