package growingon.project.history;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalInt;

/** When a tenth, half and nine tenths of a lot's plants reach each grade. */
public final class GradesReached {
  private static final double[] TENTHS = {0.1, 0.5, 0.9};

  private final int[][] months;
  private final boolean[] byAny;

  public GradesReached(int grades) {
    this.byAny = new boolean[grades];
    this.months = new int[grades][TENTHS.length];
    for (int[] each : months) {
      Arrays.fill(each, Integer.MIN_VALUE);
    }
  }

  /** At a month's end so great a share has reached a grade. */
  public void note(int month, int grade, double share) {
    byAny[grade] |= share > 0;
    for (int i = 0; i < TENTHS.length; i++) {
      if (months[grade][i] == Integer.MIN_VALUE && share >= TENTHS[i]) {
        months[grade][i] = month;
      }
    }
  }

  /** Whether any plant reaches a grade. */
  public boolean byAny(int grade) {
    return byAny[grade];
  }

  /** Each grade, lowest first. */
  public List<Reached> list() {
    List<Reached> list = new ArrayList<>();
    for (int grade = 0; grade < months.length; grade++) {
      int[] each = months[grade];
      list.add(new Reached(grade, month(each[0]), month(each[1]), month(each[2])));
    }
    return list;
  }

  private static OptionalInt month(int month) {
    return month == Integer.MIN_VALUE ? OptionalInt.empty() : OptionalInt.of(month);
  }
}
