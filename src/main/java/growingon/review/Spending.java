package growingon.review;

import growingon.money.CostKind;
import java.util.EnumMap;
import java.util.Map;
import java.util.TreeMap;

/** What the daybook says was spent on a lot and received for it besides sales, by month. */
final class Spending {
  private final Map<CostKind, TreeMap<Integer, Double>> costs = new EnumMap<>(CostKind.class);
  private final TreeMap<Integer, Double> hours = new TreeMap<>();
  private final TreeMap<Integer, Double> receipts = new TreeMap<>();

  void spend(CostKind kind, int month, double amount) {
    costs.computeIfAbsent(kind, each -> new TreeMap<>()).merge(month, amount, Double::sum);
  }

  void work(int month, double worked) {
    hours.merge(month, worked, Double::sum);
  }

  /** Money for plants used, or, negative, paid back for plants returned. */
  void receive(int month, double amount) {
    receipts.merge(month, amount, Double::sum);
  }

  boolean says(CostKind kind) {
    return kind == CostKind.LABOUR ? saysHours() : costs.containsKey(kind);
  }

  boolean saysHours() {
    return !hours.isEmpty();
  }

  double cost(CostKind kind, int month) {
    return costs.containsKey(kind) ? costs.get(kind).getOrDefault(month, 0.0) : 0;
  }

  double hours(int month) {
    return hours.getOrDefault(month, 0.0);
  }

  double receipts(int month) {
    return receipts.getOrDefault(month, 0.0);
  }

  /** Takes a share of another's, in place of its own. */
  void copy(Spending from, double share) {
    from.costs.forEach((kind, months) -> costs.put(kind, times(months, share)));
    replace(hours, times(from.hours, share));
    replace(receipts, times(from.receipts, share));
  }

  private static void replace(TreeMap<Integer, Double> old, TreeMap<Integer, Double> by) {
    old.clear();
    old.putAll(by);
  }

  private static TreeMap<Integer, Double> times(TreeMap<Integer, Double> months, double share) {
    TreeMap<Integer, Double> scaled = new TreeMap<>();
    months.forEach((month, amount) -> scaled.put(month, amount * share));
    return scaled;
  }
}
