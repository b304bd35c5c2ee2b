package growingon.report.plan.supply;

import growingon.money.CashFlow;
import growingon.money.CashItem;
import growingon.nursery.Scenario;
import growingon.nursery.lot.Offer;
import growingon.nursery.lot.Purchase;
import growingon.nursery.time.Horizon;
import growingon.project.need.Supplies;
import growingon.report.build.FilledSheet;
import growingon.report.build.TableOf;
import growingon.report.figures.Context;
import growingon.report.figures.PlantOrder;
import growingon.report.model.Kind;
import growingon.report.model.Rows;
import growingon.report.model.Sheet;
import growingon.report.model.Table;
import growingon.report.text.Cautions;
import growingon.report.text.Phrases;
import growingon.report.text.Sentences;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** What must be bought, and by when it must be ordered. */
public final class OrderSheet {
  private static final String LATE = "order now: late";
  private static final List<CashItem> BOUGHT =
      Stream.of(CashItem.values()).filter(CashItem::isBought).toList();

  private final Context context;
  private final Scenario scenario;
  private final Horizon horizon;
  private final String currency;
  private final Phrases say;
  private final int leadMonths;
  private final List<PlantOrder> plants;

  private OrderSheet(Context context) {
    this.context = context;
    this.scenario = context.accounts().projection().scenario();
    this.horizon = context.accounts().projection().horizon();
    this.currency = scenario.nursery().settings().currency();
    this.say = Phrases.of(scenario);
    this.leadMonths = scenario.nursery().settings().orderLeadMonths();
    this.plants = PlantOrder.of(context.inputs());
  }

  public static Sheet of(Context context) {
    OrderSheet sheet = new OrderSheet(context);
    List<Table> tables = new ArrayList<>();
    tables.add(sheet.plants());
    tables.add(sheet.bySeason());
    tables.add(
        sheet.supplies("orders-next", "Pots, substrate and materials: the next twelve months", 12));
    tables.add(
        sheet.supplies("orders", "Pots, substrate and materials to order", sheet.horizon.months()));
    return FilledSheet.of("To order", sheet.sentences(), tables.toArray(Table[]::new));
  }

  private List<String> sentences() {
    List<String> sentences = new ArrayList<>();
    sentences.add(Sentences.WITHOUT_VAT);
    plants.stream()
        .flatMap(order -> foreign(order).stream())
        .map(offer -> "1 %s = %s %s.".formatted(offer.currency(), rate(offer.rate()), currency))
        .distinct()
        .forEach(sentences::add);
    return sentences;
  }

  /** The offer a lot comes from, if it is priced in another currency. */
  private Optional<Offer> foreign(PlantOrder order) {
    return order.offer().filter(offer -> !offer.currency().equals(currency));
  }

  private String rate(double rate) {
    return say.decimals(rate, 4).replaceAll("(\\D\\d\\d\\d*?)0+$", "$1");
  }

  private String leadTime() {
    return leadMonths == 0
        ? "Order in the month of need."
        : "Order %d month%s before it is needed (setting order lead months)%s."
            .formatted(
                leadMonths,
                leadMonths == 1 ? "" : "s",
                hasOwnLead() ? ", where its row says no other" : "");
  }

  /** Whether some item has lead months of its own. */
  private boolean hasOwnLead() {
    return context.accounts().supplies().items().stream()
        .anyMatch(item -> item.source().leadMonths().isPresent());
  }

  private Table supplies(String name, String title, int months) {
    return TableOf.<Supplies.Order>table(name, title)
        .note(
            "What is on hand, and old pots and wire that come back, are used first; the rest is"
                + " bought in whole packs and bags in the month in which the store would run"
                + " out, and what is left of a pack is carried on.")
        .note(leadTime())
        .month("order in", order -> horizon.month(order.orderMonth()))
        .month("needed in", order -> horizon.month(order.needMonth()))
        .text("item", order -> order.item().name())
        .text("supplier", order -> Rows.text(order.item().source().supplier()))
        .column("packs", "", Kind.COUNT, Supplies.Order::packs)
        .column("pack of", "", Kind.NUMBER, order -> order.item().packSize())
        .text("unit", order -> order.item().unit())
        .column("price of a pack", currency, Kind.MONEY_EACH, order -> order.item().packPrice())
        .summed("cost", currency, Kind.MONEY, Supplies.Order::cost)
        .text("note", order -> order.late() ? LATE : null)
        .of(
            context.accounts().supplies().orders().stream()
                .filter(order -> order.orderMonth() < months)
                .toList());
  }

  private static Purchase purchase(PlantOrder order) {
    return order.lot().purchase().get();
  }

  private Table plants() {
    return TableOf.<PlantOrder>table("orders-plants", "Young plants to order")
        .note(
            "Offers taken up in this plan. Price and carriage are for the whole quantity at its"
                + " price break, paid in the month of arrival. "
                + leadTime()
                + " An offer may name the month by which it must be ordered.")
        .note(Cautions.PLANT_HEALTH)
        .month("order in", order -> horizon.month(order.orderIn()))
        .month("arrives in", order -> order.lot().arrived())
        .text("offer", order -> order.lot().name())
        .text("species", order -> order.lot().species())
        .text(
            "supplier",
            order ->
                order.lot().papers().supplier().isEmpty() ? null : order.lot().papers().supplier())
        .summed("plants", "", Kind.COUNT, order -> order.lot().quantity())
        .column("price each", currency, Kind.MONEY_EACH, order -> purchase(order).unitPrice())
        .summed("carriage", currency, Kind.MONEY, order -> purchase(order).carriage())
        .summed("import charges", currency, Kind.MONEY, order -> purchase(order).importCharges())
        .summed("in all", currency, Kind.MONEY, PlantOrder::landed)
        .text("note", order -> note(order))
        .of(plants);
  }

  private String note(PlantOrder order) {
    List<String> notes = new ArrayList<>();
    if (order.isLate()) {
      notes.add(LATE);
    }
    foreign(order)
        .ifPresent(
            offer ->
                notes.add(
                    say.each(offer.currency(), offer.unitPrice(order.lot().quantity())) + " each"));
    return notes.isEmpty() ? null : String.join("; ", notes);
  }

  private Table bySeason() {
    TableOf<Integer> table =
        TableOf.<Integer>table("orders-by-season", "What buying costs by season")
            .note(
                "By the season in which it is needed and paid, as on the sheet Cash; an order for"
                    + " the first month of a season may fall into the season before.")
            .text("season", horizon::seasonLabel);
    BOUGHT.forEach(
        item -> table.summed(item.toString(), currency, Kind.MONEY, season -> paid(item, season)));
    return table
        .summed("in all", currency, Kind.MONEY, this::paid)
        .of(
            IntStream.range(0, horizon.seasons())
                .filter(season -> paid(season) > 0)
                .boxed()
                .toList());
  }

  private double paid(int season) {
    double sum = 0;
    for (CashItem item : BOUGHT) {
      sum += paid(item, season);
    }
    return sum;
  }

  private double paid(CashItem item, int season) {
    CashFlow cash = context.accounts().cash();
    double sum = 0;
    for (int month = horizon.seasonFirst(season); month <= horizon.seasonLast(season); month++) {
      sum -= cash.get(item, month);
    }
    return sum;
  }
}
