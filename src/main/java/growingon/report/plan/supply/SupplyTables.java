package growingon.report.plan.supply;

import growingon.nursery.time.Horizon;
import growingon.project.history.Use;
import growingon.project.need.Supplies;
import growingon.report.build.TableOf;
import growingon.report.figures.Context;
import growingon.report.figures.PottedPlants;
import growingon.report.figures.WholeStore;
import growingon.report.model.Kind;
import growingon.report.model.Table;
import growingon.report.text.Plants;
import growingon.report.text.Shown;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/** The running store of pots, substrate components or materials, by season and by month. */
final class SupplyTables {
  private final Horizon horizon;
  private final String currency;
  private final Use.Kind kind;
  private final List<Supplies.Item> items;
  private final List<WholeStore> stores;

  SupplyTables(Context context, Use.Kind kind) {
    this.horizon = context.accounts().projection().horizon();
    this.currency = context.inputs().scenario().nursery().settings().currency();
    this.kind = kind;
    this.items = context.accounts().supplies().used(kind);
    PottedPlants potted = PottedPlants.of(context);
    this.stores = items.stream().map(item -> WholeStore.of(item, potted)).toList();
  }

  private Kind amountKind() {
    return switch (kind) {
      case POT -> Kind.PLANTS;
      case COMPONENT -> Kind.LITRES;
      case MATERIAL -> Kind.NUMBER;
    };
  }

  /** Pots are counted like the plants they go with. */
  private Object cell(Shown amount) {
    return kind == Use.Kind.POT
        ? (Object) Plants.of(amount.exact(), Math.round(amount.shown()))
        : (Object) amount;
  }

  private boolean comesBack() {
    return kind != Use.Kind.COMPONENT;
  }

  /** What happens to an item in some months. */
  private record Spent(Supplies.Item item, WholeStore store, Object time, int first, int last) {
    long packs() {
      return (long) Arrays.stream(item.packs(), first, last + 1).asDoubleStream().sum();
    }

    Shown used() {
      return store.used(first, last);
    }

    Shown back() {
      return store.back(first, last);
    }

    double cost() {
      return IntStream.rangeClosed(first, last).mapToDouble(item::cost).sum();
    }

    boolean isAny() {
      return used().shown() != 0 || back().shown() != 0 || packs() != 0;
    }
  }

  /** A row for each item and season in which it is used, comes back or is bought. */
  Table bySeason(String name, String title, String note) {
    List<Spent> spent = new ArrayList<>();
    for (int season = 0; season < horizon.seasons(); season++) {
      spent.addAll(
          spent(
              horizon.seasonLabel(season),
              horizon.seasonFirst(season),
              horizon.seasonLast(season)));
    }
    return amounts(TableOf.<Spent>table(name, title).note(note).text("season", Spent::time))
        .of(spent);
  }

  private List<Spent> spent(Object time, int first, int last) {
    return IntStream.range(0, items.size())
        .mapToObj(i -> new Spent(items.get(i), stores.get(i), time, first, last))
        .filter(Spent::isAny)
        .toList();
  }

  /** A row for each month and item that is used, comes back or is bought in it. */
  Table byMonth(String name, String title) {
    List<Spent> spent = new ArrayList<>();
    for (int month = 0; month < horizon.months(); month++) {
      spent.addAll(spent(horizon.month(month), month, month));
    }
    return amounts(TableOf.<Spent>table(name, title).month("month", Spent::time)).of(spent);
  }

  private TableOf<Spent> amounts(TableOf<Spent> table) {
    table
        .text("item", each -> each.item.name())
        .text("unit", each -> each.item.unit())
        .column("on hand before", "", amountKind(), each -> cell(each.store.before(each.first)))
        .column("used", "", amountKind(), each -> cell(each.used()));
    if (comesBack()) {
      table.column("come back", "", amountKind(), each -> cell(each.back()));
    }
    return table
        .column(
            kind == Use.Kind.COMPONENT ? "bags bought" : "packs bought",
            "",
            Kind.COUNT,
            Spent::packs)
        .column("in each", "", Kind.NUMBER, each -> each.item.packSize())
        .summed("cost", currency, Kind.MONEY, Spent::cost)
        .column("left", "", amountKind(), each -> cell(each.store.left(each.last)));
  }
}
