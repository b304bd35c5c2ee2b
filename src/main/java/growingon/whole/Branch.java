package growingon.whole;

import growingon.nursery.market.Quality;
import java.util.ArrayList;
import java.util.List;

/**
 * Plants that are parted into branches, and those into others: what a lot sells into demand rows,
 * and a row's plants into qualities. Whole plants of all are parted likewise, at every tick.
 */
final class Branch {
  private static final double MUCH = 1e6;
  private static final int NONE = -1;

  private final int row;
  private final int quality;
  private final double[] parts;
  private final double[] sums;
  private final List<Branch> branches;
  private int[] whole;
  private int[] before;

  private Branch(int row, int quality, double[] parts, List<Branch> branches) {
    this.row = row;
    this.quality = quality;
    this.parts = parts;
    this.branches = branches;
    this.sums = new double[parts.length];
    double sum = 0;
    for (int tick = 0; tick < parts.length; tick++) {
      sum += parts[tick];
      sums[tick] = sum;
    }
  }

  /** Plants of one quality, at each tick. */
  static Branch ofQuality(Quality quality, double[] parts) {
    return new Branch(NONE, quality.ordinal(), parts, List.of());
  }

  /** A demand row, by its place in tables of all rows. */
  static Branch ofRow(int row, List<Branch> qualities, int ticks) {
    return new Branch(row, NONE, sum(qualities, ticks), List.copyOf(qualities));
  }

  /** Rows together; many are first put together in groups. */
  static Branch of(List<Branch> rows, int ticks) {
    List<Branch> grouped = rows;
    while (grouped.size() > Rounding.MOST) {
      List<Branch> groups = new ArrayList<>();
      for (int i = 0; i < grouped.size(); i += Rounding.MOST) {
        groups.add(of(grouped.subList(i, Math.min(grouped.size(), i + Rounding.MOST)), ticks));
      }
      grouped = groups;
    }
    return new Branch(NONE, NONE, sum(grouped, ticks), List.copyOf(grouped));
  }

  private static double[] sum(List<Branch> branches, int ticks) {
    double[] sum = new double[ticks];
    for (Branch branch : branches) {
      for (int tick = 0; tick < ticks; tick++) {
        sum[tick] += branch.parts[tick];
      }
    }
    return sum;
  }

  /** Branches of this one. */
  List<Branch> branches() {
    return branches;
  }

  /** Plants expected at a tick. */
  double part(int tick) {
    return parts[tick];
  }

  /** What it counts that it has what it had best have at a season's end. */
  double weight(LeftOver others, int season) {
    return row == NONE ? others.weight(season) : others.weight(season, row);
  }

  /** Plants expected up to a tick. */
  double sum(int tick) {
    return sums[tick];
  }

  /** Whole plants at a tick. */
  int at(int tick) {
    return whole[tick] - (tick == 0 ? 0 : whole[tick - 1]);
  }

  /**
   * How many plants it had best have up to a tick, so as to make good for what other lots sold to
   * its rows or of its quality up to a season's end, as far as rounding down or up can.
   */
  double wish(int tick, LeftOver others, int season) {
    if (row != NONE) {
      return less(tick, others.sold(season)[row]);
    }
    if (quality != NONE) {
      return less(tick, others.ofQuality(season)[quality]);
    }
    double sum = 0;
    for (Branch branch : branches) {
      sum += branch.wish(tick, others, season);
    }
    return sum;
  }

  private double less(int tick, double tooMany) {
    double low = Ticks.floor(sums[tick]);
    double high = Ticks.ceil(sums[tick]);
    return Math.max(low, Math.min(high, sums[tick] - tooMany));
  }

  /** How many plants up to a tick a branch had best have. */
  interface Wish {
    /** So many more than expected; 0 if there is no wish. */
    double more(Branch branch, int tick);
  }

  /**
   * Parts whole plants: each next one goes to the branch of the tick that most lags behind what it
   * had best have.
   *
   * @param upTo whole plants of this branch up to each tick
   */
  void part(int[] upTo, Wish wish) {
    before = whole;
    whole = upTo;
    if (branches.isEmpty()) {
      return;
    }
    int[][] each = new int[branches.size()][upTo.length];
    for (int tick = 0; tick < upTo.length; tick++) {
      for (int[] branch : each) {
        branch[tick] = tick == 0 ? 0 : branch[tick - 1];
      }
      for (int left = at(tick); left > 0; left--) {
        each[neediest(tick, each, wish)][tick]++;
      }
    }
    for (int i = 0; i < each.length; i++) {
      branches.get(i).part(each[i], wish);
    }
  }

  private int neediest(int tick, int[][] given, Wish wish) {
    int best = 0;
    double most = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < given.length; i++) {
      Branch branch = branches.get(i);
      int now = given[i][tick] - (tick == 0 ? 0 : given[i][tick - 1]);
      boolean mayHaveMore = now < Ticks.ceil(branch.parts[tick]);
      double need = branch.sums[tick] + wish.more(branch, tick) - given[i][tick];
      if (branch.parts[tick] > 0 && need + (mayHaveMore ? MUCH : 0) > most) {
        most = need + (mayHaveMore ? MUCH : 0);
        best = i;
      }
    }
    return best;
  }

  /** Parts as before it was parted last. */
  void undo() {
    whole = before;
    branches.forEach(Branch::undo);
  }
}
