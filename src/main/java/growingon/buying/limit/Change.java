package growingon.buying.limit;

import growingon.buying.engine.Outcome;
import java.util.Arrays;

/**
 * What a move changed when it was looked at last.
 *
 * @param value value gained
 * @param needs what more it needs, month by month: square metres of each place, hours, and cash;
 *     empty where nothing is known of them
 */
public record Change(double value, double[] needs) {
  private static final double ROUNDING = 1e-6;
  private static final double[] NOTHING = {};

  /** No change. */
  static final Change NONE = new Change(0, NOTHING);

  /** What changes from one outcome to another. */
  public static Change between(Outcome before, Outcome after) {
    int months = before.hours().length;
    double[] needs = new double[(before.space().length + 2) * months];
    int at = 0;
    for (int place = 0; place < before.space().length; place++) {
      at = put(before.space()[place], after.space()[place], needs, at);
    }
    at = put(before.hours(), after.hours(), needs, at);
    put(after.cash(), before.cash(), needs, at);
    return new Change(after.value() - before.value(), needs);
  }

  private static int put(double[] before, double[] after, double[] into, int at) {
    for (int month = 0; month < before.length; month++) {
      into[at + month] = after[month] - before[month];
    }
    return at + before.length;
  }

  /** The same with another value. */
  public Change withValue(double other) {
    return new Change(other, needs);
  }

  /** What it changes beyond another. */
  public Change less(Change other) {
    if (needs.length != other.needs.length) {
      return new Change(value - other.value, needs);
    }
    double[] less = needs.clone();
    for (int i = 0; i < less.length; i++) {
      less[i] -= other.needs[i];
    }
    return new Change(value - other.value, less);
  }

  /** What undoing it changes. */
  public Change back() {
    return new Change(0, new double[needs.length]).less(this);
  }

  /** Whether it changes anything. */
  public boolean isAny() {
    return Math.abs(value) > ROUNDING || Arrays.stream(needs).anyMatch(each -> each != 0);
  }

  /** What more it needs of the thing with an index: the places in order, hours, cash. */
  double needs(int thing, int month, int months) {
    return needs.length == 0 ? 0 : needs[thing * months + month];
  }
}
