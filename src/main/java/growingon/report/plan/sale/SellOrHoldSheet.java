package growingon.report.plan.sale;

import growingon.money.ListPrices;
import growingon.nursery.Nursery;
import growingon.nursery.lot.Lot;
import growingon.nursery.time.Horizon;
import growingon.project.history.Reached;
import growingon.project.history.Stood;
import growingon.project.lot.LotHistory;
import growingon.report.build.TableOf;
import growingon.report.figures.Context;
import growingon.report.model.Kind;
import growingon.report.model.Rows;
import growingon.report.model.Sheet;
import growingon.report.model.Table;
import growingon.report.text.Phrases;
import growingon.report.text.Sentences;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/** What waiting for the next grade would bring, lot by lot, without any search. */
public final class SellOrHoldSheet {
  static final String NAME = "Sell or hold";

  private final Context context;
  private final Nursery nursery;
  private final Horizon horizon;
  private final ListPrices prices;
  private final List<Wait> waits = new ArrayList<>();
  private final Phrases say;

  private SellOrHoldSheet(Context context) {
    this.say = context.say();
    this.context = context;
    this.nursery = context.inputs().scenario().nursery();
    this.horizon = context.accounts().projection().horizon();
    this.prices = new ListPrices(nursery);
  }

  public static Sheet of(Context context) {
    SellOrHoldSheet sheet = new SellOrHoldSheet(context);
    context.accounts().projection().lots().forEach(sheet::add);
    return Sheet.of(NAME, sheet.table());
  }

  /** A grade that the middle plant of a lot reaches and that has a price. */
  private record Priced(String grade, int month, double price) {}

  /**
   * What waiting for the next grade brings.
   *
   * @param gain of a plant
   * @param m2Months that a plant takes meanwhile
   */
  private record Wait(LotHistory lot, Priced now, Priced next, double gain, double m2Months) {
    int months() {
      return next.month() - now.month();
    }
  }

  private void add(LotHistory lot) {
    List<Priced> grades = priced(lot);
    for (int i = 0; i + 1 < grades.size(); i++) {
      waits.add(wait(lot, grades.get(i), grades.get(i + 1)));
    }
  }

  private List<Priced> priced(LotHistory lot) {
    List<Priced> list = new ArrayList<>();
    for (Reached each : lot.reached()) {
      String grade = lot.grades().get(each.grade()).name();
      OptionalDouble price = prices.of(lot.lot(), grade);
      if (each.middle().isPresent() && price.isPresent()) {
        list.add(new Priced(grade, each.middle().getAsInt(), price.getAsDouble()));
      }
    }
    return list;
  }

  private Wait wait(LotHistory lot, Priced now, Priced next) {
    double years = (next.month() - now.month()) / 12.0;
    double lives = Math.pow(1 - nursery.speciesOf(lot.lot()).laterLoss(), years);
    double gain = next.price() * lives - now.price();
    return new Wait(lot, now, next, gain, m2MonthsEach(lot, now.month(), next.month()));
  }

  /** Square metres a plant takes, summed over the months of waiting. */
  private static double m2MonthsEach(LotHistory lot, int from, int to) {
    double sum = 0;
    for (int month = from; month < to; month++) {
      Stood stood = lot.stood(month);
      sum += stood == null || stood.plants() <= 0 ? 0 : stood.m2() / stood.plants();
    }
    return sum;
  }

  private String held(Lot lot) {
    return lot.hold().map(hold -> say.percent(hold.share()) + " to " + hold.grade()).orElse("");
  }

  private Table table() {
    String currency = nursery.settings().currency();
    return TableOf.<Wait>table("sell-or-hold", "What waiting for the next grade would bring")
        .note(
            "When the middle plant of a lot reaches a grade and the next that has a price, and what"
                + " a plant would gain by waiting: list price of a first, less what dies meanwhile."
                + " Work and pots on the way, and whether that many are wanted, are not in it:"
                + " buying weighs all of it.")
        .note(Sentences.WITHOUT_VAT)
        .column(Rows.lot(), each -> each.lot.lot().name())
        .text("species", each -> each.lot.lot().species())
        .text("grade", each -> each.now.grade())
        .month("ready", "from", each -> horizon.month(each.now.month()))
        .column("price", currency, Kind.MONEY_EACH, each -> each.now.price())
        .text("next grade", each -> each.next.grade())
        .month("next_ready", "in", each -> horizon.month(each.next.month()))
        .column("next_price", "price then", currency, Kind.MONEY_EACH, each -> each.next.price())
        .column("wait", "waiting", "months", Kind.COUNT, Wait::months)
        .column("gain", "gain of a plant", currency, Kind.MONEY_EACH, each -> each.gain)
        .belowNil()
        .column(
            "gain_m2",
            "gain a m² and year",
            currency,
            Kind.MONEY_EACH,
            each -> each.m2Months > 0 ? (Double) (12 * each.gain / each.m2Months) : null)
        .belowNil()
        .text("held", "held now", each -> Rows.text(held(each.lot.lot())))
        .of(waits);
  }
}
