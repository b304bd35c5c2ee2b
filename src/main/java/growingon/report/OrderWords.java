package growingon.report;

import growingon.nursery.Horizon;
import growingon.nursery.Lot;
import growingon.project.Supplies;
import growingon.project.Supplies.Order;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** What is said about what must be ordered first. */
final class OrderWords {
  private static final int NAMED = 6;

  private final Horizon horizon;
  private final String currency;
  private final int lastOfNext;
  private final String nextSeason;
  private final Supplies supplies;
  private final List<Order> orders;
  private final List<Lot> lots;
  private final int leadMonths;

  OrderWords(Context context, SeasonFigures figures) {
    this.horizon = context.accounts().projection().horizon();
    this.currency = context.inputs().scenario().nursery().settings().currency();
    this.supplies = context.accounts().supplies();
    this.orders = supplies.orders();
    this.lots = context.inputs().scenario().lots();
    this.leadMonths = context.inputs().scenario().nursery().settings().orderLeadMonths();
    this.lastOfNext = horizon.seasonLast(figures.next());
    this.nextSeason = figures.label(figures.next());
  }

  /** What must be ordered first, by when, at what cost. */
  String summary() {
    if (orders.isEmpty()) {
      return nothing();
    }
    String first =
        "Order first, by the end of %s: %s, for %s together."
            .formatted(
                Phrases.month(horizon, orders.get(0).orderMonth()),
                Phrases.list(firstThings(), NAMED, "things"),
                Phrases.money(currency, cost(first())));
    return first + tooLate() + untilNext();
  }

  private String nothing() {
    boolean used = supplies.items().stream().anyMatch(Supplies.Item::isUsed);
    return used
        ? "Nothing has to be ordered: the pots, substrate and materials on hand last."
        : "Nothing has to be ordered: the plan uses no pots, substrate or materials.";
  }

  private String tooLate() {
    return first().stream().anyMatch(Order::late)
        ? " Some of it is needed sooner than an order takes: see To order."
        : "";
  }

  private String untilNext() {
    List<Order> until = orders.stream().filter(each -> each.orderMonth() <= lastOfNext).toList();
    return until.size() == first().size()
        ? ""
        : " Up to the end of %s orders of pots, substrate and materials come to %s%s."
            .formatted(nextSeason, Phrases.money(currency, cost(until)), plants());
  }

  private String plants() {
    double plants =
        lots.stream()
            .filter(lot -> lot.purchase().isPresent())
            .filter(lot -> horizon.offset(lot.arrived()) - leadMonths <= lastOfNext)
            .mapToDouble(lot -> lot.purchase().get().landed(lot.quantity()))
            .sum();
    return plants > 0
        ? ", those of young plants to %s landed".formatted(Phrases.money(currency, plants))
        : "";
  }

  private static double cost(List<Order> some) {
    return some.stream().mapToDouble(Order::cost).sum();
  }

  private List<Order> first() {
    int month = orders.get(0).orderMonth();
    return orders.stream().filter(each -> each.orderMonth() == month).toList();
  }

  /** What is ordered first, dearest first. */
  private List<String> firstThings() {
    Map<Supplies.Item, Integer> packs = new LinkedHashMap<>();
    List<Order> dearest = new ArrayList<>(first());
    dearest.sort((a, b) -> Double.compare(b.cost(), a.cost()));
    dearest.forEach(order -> packs.merge(order.item(), order.packs(), Integer::sum));
    return packs.entrySet().stream().map(each -> thing(each.getKey(), each.getValue())).toList();
  }

  private static String thing(Supplies.Item item, int packs) {
    return switch (item.kind()) {
      case POT ->
          "%s (%s)".formatted(Phrases.counted(packs * item.packSize(), "pot", "pots"), item.name());
      case COMPONENT -> Phrases.counted(packs, "bag", "bags") + " of " + item.name();
      case MATERIAL -> Phrases.counted(packs, "pack", "packs") + " of " + item.name();
    };
  }

  /** The line for the terminal. */
  String headline() {
    if (orders.isEmpty()) {
      return "Order: nothing.";
    }
    String month = Phrases.month(horizon, orders.get(0).orderMonth());
    String money = Phrases.money(currency, cost(first()));
    List<String> things = firstThings();
    return Phrases.fitted(
        things.size(),
        Headlines.WIDTH,
        most ->
            "Order by the end of %s: %s, %s."
                .formatted(month, Phrases.list(things, most, "things"), money));
  }
}
