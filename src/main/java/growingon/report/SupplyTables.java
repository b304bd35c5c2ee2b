package growingon.report;

import growingon.nursery.Horizon;
import growingon.project.Supplies;
import growingon.project.Use;
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

  SupplyTables(Context context, Use.Kind kind) {
    this.horizon = context.accounts().projection().horizon();
    this.currency = context.inputs().scenario().nursery().settings().currency();
    this.kind = kind;
    this.items = context.accounts().supplies().used(kind);
  }

  private Kind amountKind() {
    return switch (kind) {
      case POT -> Kind.PLANTS;
      case COMPONENT -> Kind.LITRES;
      case MATERIAL -> Kind.NUMBER;
    };
  }

  /** Pots are counted whole; they go with whole plants. */
  private Object amount(double amount) {
    return kind == Use.Kind.POT ? (Object) WholePlants.nearest(amount) : (Object) amount;
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
      for (Supplies.Item item : items) {
        add(table, item, horizon.seasonLabel(season), first, last);
      }
    }
    return table.build();
  }

  /** A row for each month and item that is used, comes back or is bought in it. */
  Table byMonth(String name, String title) {
    TableBuilder table = amounts(TableBuilder.table(name, title).month("month"));
    for (int month = 0; month < horizon.months(); month++) {
      for (Supplies.Item item : items) {
        add(table, item, horizon.month(month), month, month);
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

  private void add(TableBuilder table, Supplies.Item item, Object time, int first, int last) {
    double used = sum(item.used(), first, last);
    double back = sum(item.back(), first, last);
    long packs = (long) Arrays.stream(item.packs(), first, last + 1).asDoubleStream().sum();
    if (used == 0 && back == 0 && packs == 0) {
      return;
    }
    List<Object> row = new ArrayList<>(List.of(time, item.name(), item.unit()));
    row.add(amount(first == 0 ? item.onHand() : item.left()[first - 1]));
    row.add(amount(used));
    if (comesBack()) {
      row.add(amount(back));
    }
    row.addAll(List.of(packs, item.packSize(), cost(item, first, last)));
    row.add(amount(item.left()[last]));
    table.row(row.toArray());
  }

  private static double sum(double[] months, int first, int last) {
    return Arrays.stream(months, first, last + 1).sum();
  }

  private static double cost(Supplies.Item item, int first, int last) {
    return IntStream.rangeClosed(first, last).mapToDouble(item::cost).sum();
  }
}
