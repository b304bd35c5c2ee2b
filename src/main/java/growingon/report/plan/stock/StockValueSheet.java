package growingon.report.plan.stock;

import growingon.money.ListPrices;
import growingon.money.StockValue;
import growingon.nursery.Nursery;
import growingon.nursery.Settings;
import growingon.nursery.time.Horizon;
import growingon.project.lot.LotHistory;
import growingon.report.build.FilledSheet;
import growingon.report.build.TableOf;
import growingon.report.figures.Context;
import growingon.report.model.Kind;
import growingon.report.model.Sheet;
import growingon.report.model.Table;
import growingon.report.text.Phrases;
import growingon.report.text.Plants;
import growingon.report.text.Sentences;
import growingon.whole.WholeLot;
import growingon.whole.WholePlan;
import growingon.whole.WholeStock;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.function.ToDoubleFunction;

/** What the stock is worth at the end of each business year. */
public final class StockValueSheet {
  private final List<Counted> values;
  private final WholePlan whole;
  private final ListPrices prices;
  private final Horizon horizon;
  private final Settings settings;
  private final Phrases say;

  /**
   * The value of a lot with its plants.
   *
   * @param priced plants that have a list price
   * @param unpriced plants that have none, kept ones apart
   */
  private record Counted(StockValue value, Plants priced, Plants unpriced) {
    Plants plants() {
      return priced.plus(unpriced);
    }
  }

  private StockValueSheet(Context context) {
    this.say = context.say();
    this.whole = context.whole();
    Nursery nursery = context.inputs().scenario().nursery();
    this.prices = new ListPrices(nursery);
    this.horizon = context.accounts().projection().horizon();
    this.settings = nursery.settings();
    this.values = StockValue.of(context.accounts()).stream().map(this::count).toList();
  }

  public static Sheet of(Context context) {
    StockValueSheet sheet = new StockValueSheet(context);
    return FilledSheet.of("Stock value", sentences(), sheet.byYear(1), sheet.byLot());
  }

  /**
   * Totals only.
   *
   * @param leastLots a figure with fewer lots behind it is not told
   */
  public static Sheet totals(Context context, int leastLots) {
    return FilledSheet.of(
        "Stock value", sentences(), new StockValueSheet(context).byYear(leastLots));
  }

  private static List<String> sentences() {
    return List.of(
        "A value on paper for the accounts, worked out from the plan: count the plants and ask your"
            + " accountant before you use it. "
            + Sentences.WITHOUT_VAT,
        Sentences.EXPECTED);
  }

  /**
   * What a row says of some lots.
   *
   * @param isApart whether plants with a list price are told apart from those without
   */
  private record Worth(int month, List<Counted> lots, boolean isApart) {
    Plants plants(Function<Counted, Plants> what) {
      return lots.stream().map(what).reduce(Plants.NONE, Plants::plus);
    }

    double sum(ToDoubleFunction<StockValue> what) {
      return lots.stream().map(Counted::value).mapToDouble(what).sum();
    }

    <N> N apart(Supplier<N> what) {
      return isApart ? what.get() : null;
    }

    StockValue first() {
      return lots.get(0).value;
    }
  }

  private Table byYear(int leastLots) {
    Map<Integer, List<Counted>> years = new LinkedHashMap<>();
    values.forEach(
        each -> years.computeIfAbsent(each.value.month(), any -> new ArrayList<>()).add(each));
    String selling = say.percent(settings.sellingCostShare());
    TableOf<Worth> table =
        TableOf.<Worth>table("stock-value", "Stock value by year end")
            .note(
                "Cost to date: what the lots' accounts were charged, carried by the plants alive; losses"
                    + " stay with them, plants sold take their share away. Kept plants are left out.")
            .note(
                "List less selling cost: by grade and quality, less %s (setting selling cost %%). The"
                        .formatted(selling)
                    + " lower of the two is taken lot by lot.")
            .note(
                "Plants without a list price have no grade yet, or a grade or quality without a price;"
                    + " they stand at their cost. A line without a whole plant is left out.");
    if (leastLots > 1) {
      table.note("A figure with a single lot behind it is not told by itself.");
    }
    return worth(table.month("year end", each -> horizon.month(each.month)))
        .of(
            years.entrySet().stream()
                .filter(year -> behind(year.getValue(), Counted::plants) >= leastLots)
                .map(year -> year(year.getKey(), year.getValue(), leastLots))
                .toList());
  }

  private static Worth year(int month, List<Counted> lots, int leastLots) {
    return new Worth(
        month,
        lots,
        isTold(behind(lots, Counted::priced), leastLots)
            && isTold(behind(lots, Counted::unpriced), leastLots));
  }

  private TableOf<Worth> worth(TableOf<Worth> table) {
    String currency = settings.currency();
    return table
        .column("plants", "", Kind.PLANTS, each -> each.plants(Counted::plants))
        .column(
            "of these with a list price",
            "",
            Kind.PLANTS,
            each -> each.apart(() -> each.plants(Counted::priced)))
        .column(
            "their cost to date",
            currency,
            Kind.MONEY,
            each -> each.apart(() -> each.sum(StockValue::pricedCost)))
        .column(
            "list less selling cost",
            currency,
            Kind.MONEY,
            each -> each.apart(() -> each.sum(StockValue::list)))
        .column(
            "lower of the two",
            currency,
            Kind.MONEY,
            each -> each.apart(() -> each.sum(StockValue::lower)))
        .column(
            "others, cost to date",
            currency,
            Kind.MONEY,
            each -> each.apart(() -> each.sum(StockValue::unpricedCost)))
        .column("value in all", currency, Kind.MONEY, each -> each.sum(StockValue::value));
  }

  private static boolean isTold(long lots, int leastLots) {
    return lots == 0 || lots >= leastLots;
  }

  /** How many lots have a whole plant in a figure. */
  private static long behind(List<Counted> lots, Function<Counted, Plants> what) {
    return lots.stream().filter(each -> what.apply(each).whole() > 0).count();
  }

  private Counted count(StockValue value) {
    WholeLot lot = whole.lot(value.lot().name());
    WholeStock stock = lot.yearEnds().get(yearEnd(lot.history(), value.month()));
    double[][] prices = this.prices.net(value.lot());
    int priced = 0;
    int unpriced = stock.ungraded();
    for (int quality = 0; quality < prices.length; quality++) {
      for (int grade = 0; grade < lot.history().grades().size(); grade++) {
        int plants = stock.standing(quality, grade);
        priced += prices[quality][grade + 1] > 0 ? plants : 0;
        unpriced += prices[quality][grade + 1] > 0 ? 0 : plants;
      }
    }
    return new Counted(
        value, Plants.of(value.priced(), priced), Plants.of(value.unpriced(), unpriced));
  }

  private static int yearEnd(LotHistory lot, int month) {
    int index = 0;
    while (lot.yearEnds().get(index).month() != month) {
      index++;
    }
    return index;
  }

  private Table byLot() {
    return worth(
            TableOf.<Worth>table("stock-value-by-lot", "Stock value by year end and lot")
                .month("year end", each -> horizon.month(each.month))
                .text("lot", each -> each.first().lot().name())
                .text("species", each -> each.first().lot().species()))
        .leavingOutParts()
        .of(
            values.stream()
                .map(each -> new Worth(each.value.month(), List.of(each), true))
                .toList());
  }
}
