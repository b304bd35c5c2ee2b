package growingon.report.figures;

import growingon.project.history.Use;
import growingon.project.need.Supplies;
import growingon.report.text.Shown;
import java.util.Arrays;

/**
 * The running store of an item as it is shown: in whole pots, litres and units of a material, or in
 * tenths to thousandths of them where its packs are, so that on hand before + come back + bought −
 * used = left in every row, and nothing is left below nil.
 */
public final class WholeStore {
  private static final double[] STEPS = {1, 0.1, 0.01, 0.001};
  private static final double ROUNDING = 1e-6;

  private final Supplies.Item item;
  private final double step;
  private final long[] used;
  private final long[] back;
  private final long[] left;

  /**
   * A store.
   *
   * @param usedUpTo units used up to each month's end
   */
  private WholeStore(Supplies.Item item, double step, double[] usedUpTo) {
    int months = usedUpTo.length;
    this.item = item;
    this.step = step;
    this.used = new long[months];
    this.back = new long[months];
    this.left = new long[months];
    long stock = steps(item.onHand());
    double backUpTo = 0;
    for (int month = 0; month < months; month++) {
      backUpTo += item.back()[month];
      long packs = item.packs()[month] * steps(item.packSize());
      back[month] = Math.max(before(back, month), steps(backUpTo));
      long most = before(used, month) + stock + packs + back[month] - before(back, month);
      used[month] = Math.max(before(used, month), Math.min(most, steps(usedUpTo[month])));
      stock += packs + in(back, month, month) - in(used, month, month);
      left[month] = stock;
    }
  }

  /** A store; of pots as many are used as whole plants are potted, as far as there are so many. */
  public static WholeStore of(Supplies.Item item, PottedPlants potted) {
    if (item.kind() == Use.Kind.POT) {
      int[] pots = potted.byMonth(item.name());
      return new WholeStore(item, 1, upTo(Arrays.stream(pots).asDoubleStream().toArray()));
    }
    double step =
        Arrays.stream(STEPS)
            .filter(each -> isMultiple(item.packSize(), each) && isMultiple(item.onHand(), each))
            .findFirst()
            .orElse(STEPS[STEPS.length - 1]);
    return new WholeStore(item, step, upTo(item.used()));
  }

  private static double[] upTo(double[] months) {
    double[] sums = months.clone();
    Arrays.parallelPrefix(sums, Double::sum);
    return sums;
  }

  private static boolean isMultiple(double amount, double step) {
    return Math.abs(amount / step - Math.rint(amount / step)) < ROUNDING;
  }

  private long steps(double amount) {
    return Math.round(amount / step);
  }

  private static long before(long[] sums, int month) {
    return month == 0 ? 0 : sums[month - 1];
  }

  private static long in(long[] sums, int first, int last) {
    return sums[last] - before(sums, first);
  }

  private Shown shown(double exact, long steps) {
    return new Shown(exact, Math.rint(steps * step / ROUNDING) * ROUNDING);
  }

  /** On hand before a month. */
  public Shown before(int month) {
    return month == 0 ? shown(item.onHand(), steps(item.onHand())) : left(month - 1);
  }

  /** Used in some months, last included. */
  public Shown used(int first, int last) {
    return shown(Arrays.stream(item.used(), first, last + 1).sum(), in(used, first, last));
  }

  /** Come back in some months, last included. */
  public Shown back(int first, int last) {
    return shown(Arrays.stream(item.back(), first, last + 1).sum(), in(back, first, last));
  }

  /** On hand at a month's end. */
  public Shown left(int month) {
    return shown(item.left()[month], left[month]);
  }
}
