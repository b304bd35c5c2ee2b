package growingon.project.need;

import growingon.nursery.Nursery;
import growingon.nursery.supply.Source;
import growingon.project.Projection;
import growingon.project.history.Freed;
import growingon.project.history.Use;
import growingon.project.lot.LotHistory;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/**
 * The running stock of every pot, component and material: on hand first, whole packs bought in the
 * month in which it would go below nil, the rest carried on: packs = ⌈what is short / pack size⌉.
 */
public final class Supplies {
  private final Stores stores;
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
   * @param packs packs bought in each month, by the month of need; of packs that are far too small
   *     by a slip more than an int counts
   * @param left on hand at the end of each month
   * @param source from whom it is bought
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
      long[] packs,
      double[] left,
      Source source) {
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

  private Supplies(Stores stores, int leadMonths) {
    this.stores = stores;
    this.items = List.copyOf(stores.items());
    this.leadMonths = leadMonths;
  }

  /** Adds up what a projection uses and works out what must be bought. */
  public static Supplies of(Projection projection) {
    Nursery nursery = projection.scenario().nursery();
    Stores stores = new Stores(nursery, projection.horizon().months());
    for (LotHistory lot : projection.lots()) {
      for (Use use : lot.uses()) {
        stores.use(use.month(), use.kind(), use.item(), use.amount());
      }
      for (Freed freed : lot.freed()) {
        stores.takeBack(freed.month(), freed.pot(), freed.amount());
      }
    }
    stores.buy();
    return new Supplies(stores, nursery.settings().orderLeadMonths());
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
    return stores.item(kind, name);
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
  public record Order(Item item, int orderMonth, int needMonth, long packs, boolean late) {
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
          int due = month - item.source().leadMonths().orElse(leadMonths);
          orders.add(new Order(item, Math.max(0, due), month, item.packs()[month], due < 0));
        }
      }
    }
    orders.sort(Comparator.comparingInt(Order::orderMonth).thenComparingInt(Order::needMonth));
    return orders;
  }
}
