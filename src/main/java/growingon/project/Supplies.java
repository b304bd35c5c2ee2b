package growingon.project;

import growingon.nursery.Component;
import growingon.nursery.Material;
import growingon.nursery.Nursery;
import growingon.nursery.Pot;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;

/**
 * The running stock of every pot, component and material: on hand first, whole packs bought in the
 * month in which it would go below nil, the rest carried on (design section 6.8).
 */
public final class Supplies {
  /** Months until what comes back of a material is used again: a growing year; our choice. */
  private static final int MONTHS_UNTIL_BACK = 12;

  private final List<Item> items;
  private final int leadMonths;

  /**
   * One item over the plan; arrays by month.
   *
   * @param kind pot, component or material
   * @param name its name
   * @param unit pots, litres or the material's unit
   * @param packSize units in a pack
   * @param packPrice price of a pack, plan currency
   * @param onHand on hand at the start
   * @param used used in each month
   * @param back come back for use in each month
   * @param packs packs bought in each month, by the month of need
   * @param left on hand at the end of each month
   */
  public record Item(
      Use.Kind kind,
      String name,
      String unit,
      double packSize,
      double packPrice,
      double onHand,
      double[] used,
      double[] back,
      int[] packs,
      double[] left) {
    /** Price of one unit. */
    public double unitPrice() {
      return packPrice / packSize;
    }

    /** Cost of the packs bought in a month. */
    public double cost(int month) {
      return packs[month] * packPrice;
    }

    /** Whether the plan uses any. */
    public boolean isUsed() {
      return Arrays.stream(used).anyMatch(amount -> amount > 0);
    }
  }

  private Supplies(List<Item> items, int leadMonths) {
    this.items = items;
    this.leadMonths = leadMonths;
  }

  /** Adds up what a projection uses and works out what must be bought. */
  public static Supplies of(Projection projection) {
    Nursery nursery = projection.scenario().nursery();
    int months = projection.horizon().months();
    List<Item> items = new ArrayList<>();
    for (Pot pot : nursery.pots().values()) {
      items.add(
          blank(
              Use.Kind.POT,
              pot.name(),
              "pots",
              pot.pack(),
              pot.price() * pot.pack(),
              pot.onHand(),
              months));
    }
    for (Component each : nursery.components().values()) {
      items.add(
          blank(
              Use.Kind.COMPONENT,
              each.name(),
              "litres",
              each.bagLitres(),
              each.bagPrice(),
              each.onHandLitres(),
              months));
    }
    for (Material each : nursery.materials().values()) {
      items.add(
          blank(
              Use.Kind.MATERIAL,
              each.name(),
              each.unit(),
              each.pack(),
              each.packPrice(),
              each.onHand(),
              months));
    }
    for (LotHistory lot : projection.lots()) {
      add(lot, items, nursery.materials());
    }
    items.forEach(Supplies::buy);
    return new Supplies(List.copyOf(items), nursery.settings().orderLeadMonths());
  }

  private static Item blank(
      Use.Kind kind,
      String name,
      String unit,
      double pack,
      double packPrice,
      double onHand,
      int months) {
    return new Item(
        kind,
        name,
        unit,
        pack,
        packPrice,
        onHand,
        new double[months],
        new double[months],
        new int[months],
        new double[months]);
  }

  private static void add(LotHistory lot, List<Item> items, Map<String, Material> materials) {
    for (Use use : lot.uses()) {
      Item item = find(items, use.kind(), use.item());
      item.used()[use.month()] += use.amount();
      int again = use.month() + MONTHS_UNTIL_BACK;
      if (use.kind() == Use.Kind.MATERIAL && again < item.back().length) {
        item.back()[again] += use.amount() * materials.get(use.item()).comesBackShare();
      }
    }
    for (Freed freed : lot.freed()) {
      find(items, Use.Kind.POT, freed.pot()).back()[freed.month()] += freed.amount();
    }
  }

  private static Item find(List<Item> items, Use.Kind kind, String name) {
    return items.stream()
        .filter(item -> item.kind() == kind && item.name().equals(name))
        .findFirst()
        .orElseThrow(() -> new IllegalStateException("no item " + kind + " " + name));
  }

  /** Buys whole packs in the month in which the stock would go below nil. */
  private static void buy(Item item) {
    double stock = item.onHand();
    for (int month = 0; month < item.used().length; month++) {
      stock += item.back()[month] - item.used()[month];
      if (stock < 0) {
        int packs = (int) Math.ceil(-stock / item.packSize() - 1e-9);
        item.packs()[month] = packs;
        stock += packs * item.packSize();
      }
      item.left()[month] = stock;
    }
  }

  /** Every item, pots first, then components, then materials. */
  public List<Item> items() {
    return items;
  }

  /** Items of a kind that the plan uses. */
  public List<Item> used(Use.Kind kind) {
    return items.stream().filter(item -> item.kind() == kind && item.isUsed()).toList();
  }

  /** An item by name. */
  public Item item(Use.Kind kind, String name) {
    return find(items, kind, name);
  }

  /**
   * Something to be ordered.
   *
   * @param item the item
   * @param orderMonth month in which it must be ordered, at the earliest the first month
   * @param needMonth month in which it is needed
   * @param packs whole packs
   * @param late whether it should have been ordered before the plan's first month
   */
  public record Order(Item item, int orderMonth, int needMonth, int packs, boolean late) {
    /** Cost of the order. */
    public double cost() {
      return packs * item.packPrice();
    }
  }

  /** Everything to be ordered, by month of order, then need, then the order of items. */
  public List<Order> orders() {
    List<Order> orders = new ArrayList<>();
    for (Item item : items) {
      for (int month = 0; month < item.packs().length; month++) {
        if (item.packs()[month] > 0) {
          int due = month - leadMonths;
          orders.add(new Order(item, Math.max(0, due), month, item.packs()[month], due < 0));
        }
      }
    }
    orders.sort(Comparator.comparingInt(Order::orderMonth).thenComparingInt(Order::needMonth));
    return orders;
  }
}
