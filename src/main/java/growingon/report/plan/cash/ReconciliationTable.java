package growingon.report.plan.cash;

import growingon.money.Reconciliation;
import growingon.report.build.TableOf;
import growingon.report.figures.Context;
import growingon.report.model.Kind;
import growingon.report.model.Table;
import java.util.List;

/** From the lots' results to the nursery's cash; it stands with both. */
final class ReconciliationTable {
  private ReconciliationTable() {}

  /** A line between them. */
  private record Part(String line, double amount) {}

  private static List<Part> parts(Reconciliation lines) {
    return List.of(
        new Part("results of all lots", lines.lots()),
        new Part("space not used", lines.spaceNotUsed()),
        new Part("packs and stock on hand", lines.packsAndStock()),
        new Part("hours not paid", lines.hoursNotPaid()),
        new Part("other cash", lines.otherCash()));
  }

  static Table of(Context context) {
    Reconciliation lines = context.accounts().reconciliation();
    String currency = context.inputs().scenario().nursery().settings().currency();
    return TableOf.<Part>table("reconciliation", "From the lots' results to the nursery's cash")
        .note(
            "The total is the change of cash over the plan, %s, to the cent."
                .formatted(context.say().each(lines.cash())))
        .note(
            "Results: sales less plants, pots, substrate, materials, all hours, care, the place"
                + " charge, what selling costs and other cash of the lot. Space not used: what places cost that no lot carries; above nil where"
                + " lots stand over capacity.")
        .note(
            "Packs and stock on hand: lots pay for what they use, cash for whole packs. Hours not"
                + " paid: lots are charged all hours, cash pays the share of the settings."
                + " Other cash: what no lot causes, with its hours.")
        .text("line", Part::line)
        .summed("amount", currency, Kind.MONEY, Part::amount)
        .of(parts(lines));
  }
}
