package growingon.review.kept;

import growingon.money.CostKind;
import growingon.nursery.time.Horizon;
import java.time.temporal.ChronoUnit;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What a kept plan expected, asked by the months of the plan under review. */
public final class Expected {
  private final KeptPlan kept;
  private final int shift;
  private final Map<String, KeptLot> lots = new HashMap<>();

  public Expected(KeptPlan kept, Horizon horizon) {
    this.kept = kept;
    this.shift = (int) ChronoUnit.MONTHS.between(kept.first(), horizon.firstMonth());
    kept.lots().forEach(lot -> lots.put(lot.name(), lot));
  }

  /** The plan as it was frozen. */
  public KeptPlan kept() {
    return kept;
  }

  /** A lot of the kept plan by its name. */
  public Optional<KeptLot> lot(String name) {
    return Optional.ofNullable(lots.get(name));
  }

  /** A value by month; 0 before the kept plan, its last value after it. */
  public double at(List<Double> values, int month) {
    int index = Math.min(month + shift, values.size() - 1);
    return index < 0 ? 0 : values.get(index);
  }

  /** Plants alive at the end of a month; as counted for the month before the kept plan. */
  public double alive(KeptLot lot, int month) {
    boolean isBefore = month + shift < 0;
    return isBefore ? (lot.bought() ? 0 : lot.quantity()) : at(lot.living(), month);
  }

  /** Values up to a month added up, that month counted. */
  public double upTo(List<Double> values, int month) {
    double sum = 0;
    for (int index = 0; index <= Math.min(month + shift, values.size() - 1); index++) {
      sum += values.get(index);
    }
    return sum;
  }

  /** P10 to P90 of a month, counted from 0 in the plan under review. */
  public Optional<Range> range(KeptQuantiles quantiles, int month) {
    return quantiles.at(month + shift);
  }

  /** What lies in a month between nine in ten and one in ten of the draws. */
  public Optional<KeptSpan.At> span(KeptSpan span, int month) {
    return span.at(month + shift);
  }

  /** What is said of a month; empty outside the kept plan. */
  public Optional<String> text(List<String> byMonth, int month) {
    int index = month + shift;
    return index >= 0 && index < byMonth.size()
        ? Optional.of(byMonth.get(index))
        : Optional.empty();
  }

  /** Whether a sale comes up to a month. */
  public boolean isWithin(KeptSale sale, int month) {
    return sale.month() <= month + shift;
  }

  /** Month of a sale as an offset from the first month of the plan under review. */
  public int month(KeptSale sale) {
    return sale.month() - shift;
  }

  /**
   * Plants of a lot sold up to a month.
   *
   * @param month offset from the first month of the plan under review, counted
   */
  public double unitsUpTo(KeptLot lot, int month) {
    return lot.sales().stream()
        .filter(sale -> isWithin(sale, month))
        .mapToDouble(KeptSale::units)
        .sum();
  }

  /** What they brought, plan currency. */
  public double salesUpTo(KeptLot lot, int month) {
    return lot.sales().stream()
        .filter(sale -> isWithin(sale, month))
        .mapToDouble(KeptSale::money)
        .sum();
  }

  /** Cost of a kind up to a month, plan currency; 0 where the kept plan has none of the kind. */
  public double costUpTo(KeptLot lot, CostKind kind, int month) {
    return upTo(lot.costs().getOrDefault(kind.toString(), List.of()), month);
  }
}
