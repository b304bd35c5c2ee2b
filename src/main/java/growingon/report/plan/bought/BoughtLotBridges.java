package growingon.report.plan.bought;

import growingon.money.bought.BoughtLot;
import growingon.money.bought.ValueJoin;
import growingon.nursery.time.Horizon;
import growingon.report.build.TableOf;
import growingon.report.figures.Context;
import growingon.report.model.Kind;
import growingon.report.model.Rows;
import growingon.report.model.Table;
import growingon.report.text.Sentences;
import java.util.ArrayList;
import java.util.List;

/** From what bought lots gain to other figures of the plan, and to their cash month by month. */
public final class BoughtLotBridges {
  private BoughtLotBridges() {}

  private static String currency(Context context) {
    return context.inputs().scenario().nursery().settings().currency();
  }

  /** From what each lot gains, in today's money, to the result of its account. */
  static Table bridges(Context context) {
    String currency = currency(context);
    return TableOf.<BoughtLot>table(
            "bought-lot-bridges", "Lots bought: from the gain to the result of the lot's account")
        .note(
            "Gain: what the nursery has more in cash, in today's money. Result: sales less all costs of"
                + " the lot's account. Between them lie discounting, the value of unsold plants, hours"
                + " and space that the account is charged though nobody is paid more for them, whole"
                + " packs, and what other lots sell less or use less because of it. "
                + Sentences.WITHOUT_VAT)
        .column(Rows.lot(), each -> each.lot().name())
        .column("gain", currency, Kind.MONEY, each -> each.bridge().gain())
        .belowNil()
        .column(
            "later",
            "as it comes, undiscounted",
            currency,
            Kind.MONEY,
            each -> each.bridge().later())
        .column(
            "unsold",
            "value of unsold plants",
            currency,
            Kind.MONEY,
            each -> -each.bridge().unsold())
        .column(
            "hours", "hours not paid", currency, Kind.MONEY, each -> -each.bridge().hoursNotPaid())
        .column(
            "place", "charge for space", currency, Kind.MONEY, each -> -each.bridge().placeCharge())
        .column(
            "packs",
            "packs and stock on hand",
            currency,
            Kind.MONEY,
            each -> -each.bridge().packsAndStock())
        .column("others", "other lots", currency, Kind.MONEY, each -> -each.bridge().otherLots())
        .column("result", currency, Kind.MONEY, each -> each.bridge().result())
        .belowNil()
        .of(context.bought());
  }

  /** A line of the join. */
  private record Part(String line, double amount) {}

  private static List<Part> parts(ValueJoin join) {
    List<Part> parts = new ArrayList<>();
    for (BoughtLot each : join.bought()) {
      parts.add(new Part("gain of " + each.lot().name(), each.presentValue()));
    }
    parts.add(new Part("what they gain together beyond that", join.together()));
    parts.add(new Part("lots that stand at the start", join.standing()));
    parts.add(new Part("places, used or not", join.places()));
    parts.add(new Part("other cash of no lot", join.otherCash()));
    return parts;
  }

  /** What the lots bought gain, joined to the plan's present value. */
  static Table join(Context context) {
    ValueJoin join = context.join();
    return TableOf.<Part>table(
            "bought-lot-join", "From the gains of the lots bought to the present value of the plan")
        .note(
            "The total is the net present value of the plan, %s, to the cent."
                .formatted(context.say().each(join.presentValue())))
        .note(
            "A gain is the plan with the lot less the plan without it, so what no lot causes is in none"
                + " of them. Together: they share packs, and sell to the same demand.")
        .text("line", Part::line)
        .summed("amount", currency(context), Kind.MONEY, Part::amount)
        .of(parts(join));
  }

  /** What a lot moves in a month, and up to its end. */
  private record Flow(BoughtLot bought, int month, double flow, double cumulative) {}

  private static List<Flow> flowing(Context context) {
    List<Flow> flowing = new ArrayList<>();
    for (BoughtLot each : context.bought()) {
      double sum = 0;
      for (int month = 0; month < each.flows().length; month++) {
        sum += each.flows()[month];
        flowing.add(new Flow(each, month, each.flows()[month], sum));
      }
    }
    return flowing;
  }

  /** Cash with the lot less cash without it, month by month. */
  public static Table flows(Context context) {
    String currency = currency(context);
    Horizon horizon = context.accounts().projection().horizon();
    return TableOf.<Flow>table(
            "bought-lot-flows", "Lots bought: cash with the lot less cash without it")
        .note(Sentences.WITHOUT_VAT)
        .column(Rows.lot(), each -> each.bought.lot().name())
        .column(Rows.month(), each -> horizon.month(each.month))
        .column("flow", "in less out", currency, Kind.MONEY, Flow::flow)
        .column("cumulative", "since the start", currency, Kind.MONEY, Flow::cumulative)
        .of(flowing(context));
  }
}
