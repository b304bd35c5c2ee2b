package growingon.whole;

import growingon.nursery.number.Negligible;
import growingon.project.history.Happening;
import growingon.project.lot.LotHistory;
import java.util.List;

/**
 * What leaves one lot, expected, in order of time: a tick for every step that loses or culls, one
 * for what happens before a month's steps, and one for a month's losses and sales.
 */
final class Ticks {
  static final int DIED = 0;
  static final int CULLED = 1;
  static final int WENT = 2;
  static final int SOLD = 3;
  static final int KINDS = 4;

  /** Less of a plant is what rounding left of sums. */
  static final double ROUNDING = 1e-6;

  private final double[][] parts;
  private final double[][] sums;
  private final double[] came;
  private final double[] standing;
  private final int[] months;
  private final int[] atEnd;
  private final int[] afterWork;
  private final int[] ofHappening;
  private int size;

  Ticks(LotHistory lot) {
    int most = 1 + 2 * lot.months() + lot.happenings().size();
    this.parts = new double[KINDS][most];
    this.sums = new double[KINDS][most];
    this.came = new double[most];
    this.standing = new double[most];
    this.months = new int[most];
    this.atEnd = new int[lot.months()];
    this.afterWork = new int[lot.months()];
    this.ofHappening = new int[lot.happenings().size()];
    add(lot.start() - 1, lot.diedBefore(), 0, 0, 0, 0);
    int next = 0;
    for (int month = lot.start(); month < lot.months(); month++) {
      next = addMonth(lot, month, next);
    }
    addUp(lot.quantity());
  }

  /** Adds the ticks of a month; gives the index of the next month's first happening. */
  private int addMonth(LotHistory lot, int month, int first) {
    List<Happening> all = lot.happenings();
    int end = first;
    double died = lot.died(month);
    double culled = lot.culled(month);
    for (; end < all.size() && all.get(end).month() == month; end++) {
      died -= all.get(end).died();
      culled -= all.get(end).culled();
    }
    addUnlessNothing(month, 0, culled, 0, 0, lot.came(month));
    for (int i = first; i < end; i++) {
      addUnlessNothing(month, all.get(i).died(), all.get(i).culled(), 0, 0, 0);
      ofHappening[i] = size - 1;
    }
    afterWork[month] = size - 1;
    addUnlessNothing(month, died, 0, lot.went(month), lot.sold(month), 0);
    atEnd[month] = size - 1;
    return end;
  }

  private void addUnlessNothing(
      int month, double died, double culled, double went, double sold, double come) {
    if (!Negligible.is(died) || !Negligible.is(culled) || went > 0 || sold > 0 || come > 0) {
      add(month, Math.max(0, died), Math.max(0, culled), went, sold, come);
    }
  }

  private void add(int month, double died, double culled, double went, double sold, double come) {
    parts[DIED][size] = died;
    parts[CULLED][size] = culled;
    parts[WENT][size] = went;
    parts[SOLD][size] = sold;
    came[size] = come;
    months[size] = month;
    size++;
  }

  private void addUp(double start) {
    double there = start;
    for (int tick = 0; tick < size; tick++) {
      there += came[tick];
      for (int kind = 0; kind < KINDS; kind++) {
        sums[kind][tick] = (tick == 0 ? 0 : sums[kind][tick - 1]) + parts[kind][tick];
        there -= parts[kind][tick];
      }
      standing[tick] = Math.max(0, there);
    }
  }

  int size() {
    return size;
  }

  /** Offset of a tick's month; that before the lot's first for the first tick. */
  int month(int tick) {
    return months[tick];
  }

  /** Plants that leave in a way at each tick. */
  double[] parts(int kind) {
    return parts[kind];
  }

  /** Whether plants are sold at a tick. */
  boolean isSale(int tick) {
    return parts[SOLD][tick] > 0;
  }

  /** Plants that left in a way up to a tick. */
  double sum(int kind, int tick) {
    return sums[kind][tick];
  }

  /** Plants that come at a tick, before any leave. */
  double came(int tick) {
    return came[tick];
  }

  /** Plants alive after a tick. */
  double standing(int tick) {
    return standing[tick];
  }

  /** Last tick up to the end of each month of the plan. */
  int[] atEnd() {
    return atEnd;
  }

  /** Last tick up to the end of each month's steps. */
  int[] afterWork() {
    return afterWork;
  }

  /** Last tick up to the end of each happening. */
  int[] ofHappening() {
    return ofHappening;
  }

  /** The least whole number that a number may be shown as. */
  static long floor(double number) {
    double above = number + ROUNDING;
    long cut = (long) above;
    return cut > above ? cut - 1 : cut;
  }

  /** The greatest whole number that a number may be shown as. */
  static long ceil(double number) {
    double below = number - ROUNDING;
    long cut = (long) below;
    return cut < below ? cut + 1 : cut;
  }
}
