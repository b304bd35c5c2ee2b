package growingon.project.need;

import growingon.nursery.Nursery;
import growingon.nursery.supply.Component;
import growingon.nursery.supply.Material;
import growingon.nursery.supply.Pot;
import growingon.nursery.supply.Source;
import growingon.project.history.Use;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * The stores of a nursery over a plan, filled in as items are used and come back, then bought for:
 * on hand first, whole packs in the month in which an item would go below nil, the rest carried on
 * to the next month. Can be cleared and used again.
 */
public final class Stores {
  /** Months until what comes back of a material is used again: a growing year; our choice. */
  private static final int MONTHS_UNTIL_BACK = 12;

  private final List<Supplies.Item> items = new ArrayList<>();
  private final Map<Use.Kind, Map<String, Integer>> byName = new EnumMap<>(Use.Kind.class);
  private final Map<String, Material> materials;
  private final int months;

  /** The stores of a nursery, empty of use, over so many months. */
  public Stores(Nursery nursery, int months) {
    this.months = months;
    this.materials = nursery.materials();
    for (Pot pot : nursery.pots().values()) {
      double packPrice = pot.price() * pot.pack();
      add(Use.Kind.POT, pot.name(), "pots", pot.pack(), packPrice, pot.onHand(), pot.source());
    }
    for (Component each : nursery.components().values()) {
      add(
          Use.Kind.COMPONENT,
          each.name(),
          "litres",
          each.bagLitres(),
          each.bagPrice(),
          each.onHandLitres(),
          each.source());
    }
    for (Material each : nursery.materials().values()) {
      add(
          Use.Kind.MATERIAL,
          each.name(),
          each.unit(),
          each.pack(),
          each.packPrice(),
          each.onHand(),
          each.source());
    }
  }

  private void add(
      Use.Kind kind,
      String name,
      String unit,
      double pack,
      double packPrice,
      double onHand,
      Source source) {
    Supplies.Item item =
        new Supplies.Item(
            kind,
            name,
            unit,
            pack,
            packPrice,
            onHand,
            new double[months],
            new double[months],
            new long[months],
            new double[months],
            source);
    byName.computeIfAbsent(kind, each -> new HashMap<>()).put(name, items.size());
    items.add(item);
  }

  /** An item by name. */
  public Supplies.Item item(Use.Kind kind, String name) {
    return items.get(number(kind, name));
  }

  /** Number of an item among the items. */
  public int number(Use.Kind kind, String name) {
    Integer number = byName.getOrDefault(kind, Map.of()).get(name);
    if (number == null) {
      throw new IllegalArgumentException("no item " + kind + " " + name);
    }
    return number;
  }

  /** The month in which what comes back of a material that is used in a month is used again. */
  public static int again(int month) {
    return month + MONTHS_UNTIL_BACK;
  }

  /** Share of a material that comes back. */
  public double comesBackShare(String material) {
    return materials.get(material).comesBackShare();
  }

  /** Takes so much out in a month; a share of a material comes back a growing year later. */
  public void use(int month, Use.Kind kind, String name, double amount) {
    Supplies.Item item = item(kind, name);
    item.used()[month] += amount;
    int again = again(month);
    if (kind == Use.Kind.MATERIAL && again < months) {
      item.back()[again] += amount * comesBackShare(name);
    }
  }

  /** Takes old pots in that can be used from a month on. */
  public void takeBack(int month, String pot, double amount) {
    item(Use.Kind.POT, pot).back()[month] += amount;
  }

  /** Adds to what is used and comes back of each item what another store has of it. */
  public void add(List<Movement> movements) {
    for (Movement each : movements) {
      Supplies.Item item = items.get(each.item());
      for (int month = 0; month < months; month++) {
        item.used()[month] += each.used()[month];
        item.back()[month] += each.back()[month];
      }
    }
  }

  /**
   * Lets what is used and comes back be what stands in an array.
   *
   * @param from index of what the first item uses in the first month; what it uses in the others
   *     follows, then the same of the other items, then what comes back of all
   */
  public void fill(double[] amounts, int from) {
    int at = from;
    for (Supplies.Item item : items) {
      System.arraycopy(amounts, at, item.used(), 0, months);
      System.arraycopy(amounts, at + items.size() * months, item.back(), 0, months);
      at += months;
    }
  }

  /** What is used and comes back of each item of which anything does. */
  public List<Movement> movements() {
    List<Movement> moved = new ArrayList<>();
    for (int i = 0; i < items.size(); i++) {
      Supplies.Item item = items.get(i);
      boolean moves = item.isUsed() || Arrays.stream(item.back()).anyMatch(amount -> amount > 0);
      if (moves) {
        moved.add(new Movement(i, item.used().clone(), item.back().clone()));
      }
    }
    return moved;
  }

  /**
   * What is used and comes back of an item, by month.
   *
   * @param item its number among the items
   */
  public record Movement(int item, double[] used, double[] back) {}

  /** Works out what must be bought of every item. */
  public void buy() {
    items.forEach(Stores::buy);
  }

  private static void buy(Supplies.Item item) {
    double stock = item.onHand();
    for (int month = 0; month < item.used().length; month++) {
      stock += item.back()[month] - item.used()[month];
      long packs = 0;
      if (stock < 0) {
        packs = (long) Math.ceil(-stock / item.packSize() - 1e-9);
        stock += packs * item.packSize();
      }
      item.packs()[month] = packs;
      item.left()[month] = stock;
    }
  }

  /** Forgets what was used, came back and was bought. */
  public void clear() {
    for (Supplies.Item item : items) {
      Arrays.fill(item.used(), 0);
      Arrays.fill(item.back(), 0);
      Arrays.fill(item.packs(), 0);
      Arrays.fill(item.left(), 0);
    }
  }

  /** Every item, pots first, then components, then materials. */
  public List<Supplies.Item> items() {
    return items;
  }
}
