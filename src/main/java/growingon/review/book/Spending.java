package growingon.review.book;

import growingon.money.CostKind;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** What the daybook says was spent on a lot and received for it besides sales, by month. */
public final class Spending {
  private final Map<CostKind, TreeMap<Integer, Double>> costs = new EnumMap<>(CostKind.class);
  private final Map<JobKind, TreeMap<Integer, Double>> hours = new EnumMap<>(JobKind.class);
  private final List<CameBack> cameBack = new ArrayList<>();
  private final TreeMap<Integer, Double> receipts = new TreeMap<>();

  void spend(CostKind kind, int month, double amount) {
    costs.computeIfAbsent(kind, each -> new TreeMap<>()).merge(month, amount, Double::sum);
  }

  void work(JobKind kind, int month, double worked) {
    hours.computeIfAbsent(kind, each -> new TreeMap<>()).merge(month, worked, Double::sum);
  }

  /** Plants sold came back. */
  void takeBack(CameBack back) {
    cameBack.add(back);
    receive(back.month(), -back.money());
  }

  /** Plants sold that came back. */
  List<CameBack> cameBack() {
    return cameBack;
  }

  /** Money for plants used. */
  void receive(int month, double amount) {
    receipts.merge(month, amount, Double::sum);
  }

  /**
   * Whether the daybook says what was spent on a kind. What was paid for plants on arrival is what
   * the invoice says: carriage and charges are within it, unless a line of its own says them.
   */
  public boolean says(CostKind kind) {
    return switch (kind) {
      case LABOUR -> saysHours();
      case CARRIAGE -> costs.containsKey(kind) || costs.containsKey(CostKind.PLANTS);
      default -> costs.containsKey(kind);
    };
  }

  /** Whether a line of its own says what carriage cost. */
  boolean saysCarriage() {
    return costs.containsKey(CostKind.CARRIAGE);
  }

  /** Whether any hours are written down. */
  public boolean saysHours() {
    return !hours.isEmpty();
  }

  double cost(CostKind kind, int month) {
    return costs.containsKey(kind) ? costs.get(kind).getOrDefault(month, 0.0) : 0;
  }

  /** Whether hours of a kind of job are written down. */
  public boolean saysHours(JobKind kind) {
    return hours.containsKey(kind);
  }

  double hours(JobKind kind, int month) {
    return hours.containsKey(kind) ? hours.get(kind).getOrDefault(month, 0.0) : 0;
  }

  /** Hours of all kinds up to a month, that month counted. */
  public double hoursUpTo(int month) {
    double sum = 0;
    for (TreeMap<Integer, Double> months : hours.values()) {
      sum += months.headMap(month, true).values().stream().mapToDouble(each -> each).sum();
    }
    return sum;
  }

  double receipts(int month) {
    return receipts.getOrDefault(month, 0.0);
  }

  /** Takes a share of another's, in place of its own. */
  void copy(Spending from, double share) {
    from.costs.forEach((kind, months) -> costs.put(kind, times(months, share)));
    from.hours.forEach((kind, months) -> hours.put(kind, times(months, share)));
    List<CameBack> backs = from.cameBack.stream().map(each -> each.times(share)).toList();
    cameBack.clear();
    cameBack.addAll(backs);
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
