package growingon.report.words;

import growingon.nursery.time.Horizon;
import growingon.project.need.Supplies;
import growingon.project.need.Supplies.Order;
import growingon.report.figures.Context;
import growingon.report.figures.PlantOrder;
import growingon.report.figures.SeasonFigures;
import growingon.report.text.Phrases;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** What is said about what must be ordered first. */
public final class OrderWords {
  private static final int NAMED = 6;

  private final Horizon horizon;
  private final int lastOfNext;
  private final String nextSeason;
  private final Supplies supplies;
  private final List<Order> orders;
  private final List<PlantOrder> plants;
  private final Phrases say;

  public OrderWords(Context context) {
    this.say = context.say();
    SeasonFigures figures = context.seasons();
    this.horizon = context.accounts().projection().horizon();
    this.supplies = context.accounts().supplies();
    this.orders = supplies.orders();
    this.plants = PlantOrder.of(context.inputs());
    this.lastOfNext = horizon.seasonLast(figures.next());
    this.nextSeason = figures.label(figures.next());
  }

  /** What must be ordered first, by when, at what cost; young plants before all else. */
  public List<String> sentences() {
    if (orders.isEmpty() && plants.isEmpty()) {
      return List.of(nothing());
    }
    String first =
        "Order first, by the end of %s: %s, for %s together."
            .formatted(
                say.month(horizon, firstMonth()),
                Phrases.list(firstThings(), NAMED, "things"),
                say.money(costOfFirst()));
    return Stream.of(first, tooLate(), youngPlants().orElse(""), untilNext())
        .filter(each -> !each.isEmpty())
        .toList();
  }

  /** The first young plants to order, where other things must be ordered before them. */
  public Optional<String> youngPlants() {
    if (plants.isEmpty() || !firstPlants().isEmpty()) {
      return Optional.empty();
    }
    int month = plants.stream().mapToInt(PlantOrder::orderIn).min().orElseThrow();
    List<PlantOrder> young = plants.stream().filter(each -> each.orderIn() == month).toList();
    return Optional.of(
        "Order young plants by the end of %s: %s, %s landed."
            .formatted(
                say.month(horizon, month),
                Phrases.list(young.stream().map(this::thing).toList(), NAMED, "lots"),
                say.money(young.stream().mapToDouble(PlantOrder::landed).sum())));
  }

  private int firstMonth() {
    return Stream.concat(
            orders.stream().map(Order::orderMonth), plants.stream().map(PlantOrder::orderIn))
        .min(Comparator.naturalOrder())
        .orElseThrow();
  }

  private double costOfFirst() {
    return cost(first()) + firstPlants().stream().mapToDouble(PlantOrder::landed).sum();
  }

  private String nothing() {
    boolean used = supplies.items().stream().anyMatch(Supplies.Item::isUsed);
    return used
        ? "Nothing has to be ordered: the pots, substrate and materials on hand last."
        : "Nothing has to be ordered: the plan uses no pots, substrate or materials.";
  }

  private String tooLate() {
    boolean late =
        first().stream().anyMatch(Order::late)
            || firstPlants().stream().anyMatch(PlantOrder::isLate);
    return late ? "Some of it is needed sooner than an order takes: see To order." : "";
  }

  private String untilNext() {
    List<Order> until = orders.stream().filter(each -> each.orderMonth() <= lastOfNext).toList();
    double landed =
        plants.stream()
            .filter(order -> order.orderIn() <= lastOfNext)
            .mapToDouble(PlantOrder::landed)
            .sum();
    if (until.size() == first().size() && landed == 0) {
      return "";
    }
    String young =
        landed > 0 ? ", those of young plants to %s landed".formatted(say.money(landed)) : "";
    return "Up to the end of %s orders of pots, substrate and materials come to %s%s."
        .formatted(nextSeason, say.money(cost(until)), young);
  }

  private static double cost(List<Order> some) {
    return some.stream().mapToDouble(Order::cost).sum();
  }

  private List<Order> first() {
    int month = firstMonth();
    return orders.stream().filter(each -> each.orderMonth() == month).toList();
  }

  private List<PlantOrder> firstPlants() {
    int month = firstMonth();
    return plants.stream().filter(each -> each.orderIn() == month).toList();
  }

  /** What is ordered first: young plants, then the rest, dearest first. */
  private List<String> firstThings() {
    List<String> things = new ArrayList<>();
    firstPlants().stream()
        .sorted(Comparator.comparingDouble((PlantOrder order) -> -order.landed()))
        .forEach(order -> things.add(thing(order)));
    Map<Supplies.Item, Long> packs = new LinkedHashMap<>();
    first().stream()
        .sorted(Comparator.comparingDouble((Order order) -> -order.cost()))
        .forEach(order -> packs.merge(order.item(), order.packs(), Long::sum));
    packs.forEach((item, number) -> things.add(thing(item, number)));
    return things;
  }

  private String thing(PlantOrder order) {
    return "%s (%s)".formatted(say.plants(order.lot().quantity()), order.lot().name());
  }

  private String thing(Supplies.Item item, long packs) {
    return switch (item.kind()) {
      case POT ->
          "%s (%s)".formatted(say.counted(packs * item.packSize(), "pot", "pots"), item.name());
      case COMPONENT -> say.counted(packs, "bag", "bags") + " of " + item.name();
      case MATERIAL -> say.counted(packs, "pack", "packs") + " of " + item.name();
    };
  }

  /** The line for the terminal. */
  String headline() {
    if (orders.isEmpty() && plants.isEmpty()) {
      return "Order: nothing.";
    }
    String month = say.month(horizon, firstMonth());
    String money = say.money(costOfFirst());
    List<String> things = firstThings();
    return Phrases.fitted(
        things.size(),
        Headlines.WIDTH,
        most ->
            "Order by the end of %s: %s, %s."
                .formatted(month, Phrases.list(things, most, "things"), money));
  }
}
