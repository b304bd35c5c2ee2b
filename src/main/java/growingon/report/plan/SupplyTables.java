package growingon.report.plan;

import growingon.nursery.Horizon;
import growingon.project.Supplies;
import growingon.project.Use;
import growingon.report.build.TableBuilder;
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

  /** A row for each item and season in which it is used, comes back or is bought. */
  Table bySeason(String name, String title, String note) {
    TableBuilder table = amounts(TableBuilder.table(name, title).note(note).text("season"));
    for (int season = 0; season < horizon.seasons(); season++) {
      int first = horizon.seasonFirst(season);
      int last = horizon.seasonLast(season);
      for (int i = 0; i < items.size(); i++) {
        add(table, i, horizon.seasonLabel(season), first, last);
      }
    }
    return table.build();
  }

  /** A row for each month and item that is used, comes back or is bought in it. */
  Table byMonth(String name, String title) {
    TableBuilder table = amounts(TableBuilder.table(name, title).month("month"));
    for (int month = 0; month < horizon.months(); month++) {
      for (int i = 0; i < items.size(); i++) {
        add(table, i, horizon.month(month), month, month);
      }
    }
    return table.build();
  }

  private TableBuilder amounts(TableBuilder table) {
    table.text("item").text("unit");
    table.column("on hand before", "", amountKind()).column("used", "", amountKind());
    if (comesBack()) {
      table.column("come back", "", amountKind());
    }
    return table
        .column(kind == Use.Kind.COMPONENT ? "bags bought" : "packs bought", "", Kind.COUNT)
        .column("in each", "", Kind.NUMBER)
        .summed("cost", currency, Kind.MONEY)
        .column("left", "", amountKind());
  }

  private void add(TableBuilder table, int index, Object time, int first, int last) {
    Supplies.Item item = items.get(index);
    WholeStore store = stores.get(index);
    long packs = (long) Arrays.stream(item.packs(), first, last + 1).asDoubleStream().sum();
    Shown used = store.used(first, last);
    Shown back = store.back(first, last);
    if (used.shown() == 0 && back.shown() == 0 && packs == 0) {
      return;
    }
    List<Object> row = new ArrayList<>(List.of(time, item.name(), item.unit()));
    row.add(cell(store.before(first)));
    row.add(cell(used));
    if (comesBack()) {
      row.add(cell(back));
    }
    row.addAll(List.of(packs, item.packSize(), cost(item, first, last)));
    row.add(cell(store.left(last)));
    table.row(row.toArray());
  }

  private static double cost(Supplies.Item item, int first, int last) {
    return IntStream.rangeClosed(first, last).mapToDouble(item::cost).sum();
  }
}
