package growingon.project.known;

import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import java.util.OptionalDouble;

/**
 * What is known to have happened to a lot. Months are offsets from the plan's first month.
 *
 * @param part share of the lot's plants that is spoken of, 0 to 1; the rest was split off
 * @param soldThrough last month in which only what is known was sold; the market sells after it
 * @param goneThrough last month in which only what is known died or was culled; the model's losses
 *     hold after it. It may lie before the plan
 * @param atStart plants that were there when the plan began, where something is known of the time
 *     since the lot was counted
 * @param months what is known of each month
 */
public record LotFacts(
    double part,
    int soldThrough,
    int goneThrough,
    OptionalDouble atStart,
    Map<Integer, MonthFacts> months) {
  public static final LotFacts NONE =
      new LotFacts(1, Integer.MIN_VALUE, Integer.MIN_VALUE, OptionalDouble.empty(), Map.of());

  private static final MonthFacts[] NO_MONTHS = {};

  public LotFacts {
    months = Map.copyOf(months);
  }

  /** The same, nothing else being sold up to a month. */
  public LotFacts soldOnlyAsKnown(int through) {
    return new LotFacts(part, Math.max(soldThrough, through), goneThrough, atStart, months);
  }

  /** The same with all measured trunks so many times as thick. */
  public LotFacts withTrunks(double factor) {
    Map<Integer, MonthFacts> other = new HashMap<>();
    months.forEach((month, known) -> other.put(month, known.withTrunks(factor)));
    return new LotFacts(part, soldThrough, goneThrough, atStart, other);
  }

  /**
   * What is known of each month from the plan's first one to the last of which anything is: a run
   * asks for several things a month, and of a list sooner than of a map. Months before the plan are
   * {@link #atStart}.
   */
  public MonthFacts[] monthByMonth() {
    if (months.isEmpty()) {
      return NO_MONTHS;
    }
    int last = months.keySet().stream().mapToInt(Integer::intValue).max().orElse(-1);
    MonthFacts[] all = new MonthFacts[Math.max(0, last + 1)];
    Arrays.fill(all, MonthFacts.NOTHING);
    months.forEach(
        (month, known) -> {
          if (month >= 0) {
            all[month] = known;
          }
        });
    return all;
  }
}
