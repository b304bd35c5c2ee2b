package growingon.report.plan;

import growingon.money.ListPrices;
import growingon.nursery.Horizon;
import growingon.nursery.Lot;
import growingon.nursery.Nursery;
import growingon.project.LotHistory;
import growingon.project.Reached;
import growingon.project.Stood;
import growingon.report.build.Columns;
import growingon.report.figures.Context;
import growingon.report.model.Column;
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
final class SellOrHoldSheet {
  static final String NAME = "Sell or hold";

  private final Context context;
  private final Nursery nursery;
  private final Horizon horizon;
  private final ListPrices prices;
  private final Rows rows = new Rows();
  private final Phrases say;

  private SellOrHoldSheet(Context context) {
    this.say = context.say();
    this.context = context;
    this.nursery = context.inputs().scenario().nursery();
    this.horizon = context.accounts().projection().horizon();
    this.prices = new ListPrices(nursery);
  }

  static Sheet of(Context context) {
    SellOrHoldSheet sheet = new SellOrHoldSheet(context);
    context.accounts().projection().lots().forEach(sheet::add);
    return Sheet.of(NAME, sheet.table());
  }

  /** A grade that the middle plant of a lot reaches and that has a price. */
  private record Priced(String grade, int month, double price) {}

  private void add(LotHistory lot) {
    List<Priced> grades = priced(lot);
    for (int i = 0; i + 1 < grades.size(); i++) {
      add(lot, grades.get(i), grades.get(i + 1));
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

  private void add(LotHistory lot, Priced now, Priced next) {
    int wait = next.month() - now.month();
    double lives = Math.pow(1 - nursery.speciesOf(lot.lot()).laterLoss(), wait / 12.0);
    double gain = next.price() * lives - now.price();
    double m2Months = m2MonthsEach(lot, now.month(), next.month());
    rows.add(
        lot.lot().name(),
        lot.lot().species(),
        now.grade(),
        horizon.month(now.month()),
        now.price(),
        next.grade(),
        horizon.month(next.month()),
        next.price(),
        wait,
        gain,
        m2Months > 0 ? (Double) (12 * gain / m2Months) : null,
        Rows.text(held(lot.lot())));
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
    return new Table(
        "sell-or-hold",
        "What waiting for the next grade would bring",
        List.of(
            "When the middle plant of a lot reaches a grade and the next that has a price, and what"
                + " a plant would gain by waiting: list price of a first, less what dies meanwhile."
                + " Work and pots on the way, and whether that many are wanted, are not in it:"
                + " buying weighs all of it.",
            Sentences.WITHOUT_VAT),
        List.of(
            Rows.lot(),
            Column.of("species", "species", "", Kind.TEXT),
            Column.of("grade", "grade", "", Kind.TEXT),
            Column.of("ready", "from", "", Kind.MONTH),
            Column.of("price", "price", currency, Kind.MONEY_EACH),
            Column.of("next_grade", "next grade", "", Kind.TEXT),
            Column.of("next_ready", "in", "", Kind.MONTH),
            Column.of("next_price", "price then", currency, Kind.MONEY_EACH),
            Column.of("wait", "waiting", "months", Kind.COUNT),
            Columns.belowNil(Column.of("gain", "gain of a plant", currency, Kind.MONEY_EACH)),
            Columns.belowNil(Column.of("gain_m2", "gain a m² and year", currency, Kind.MONEY_EACH)),
            Column.of("held", "held now", "", Kind.TEXT)),
        rows.list());
  }
}
