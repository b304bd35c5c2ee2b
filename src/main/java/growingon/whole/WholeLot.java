package growingon.whole;

import static growingon.whole.Ticks.CULLED;
import static growingon.whole.Ticks.DIED;
import static growingon.whole.Ticks.KINDS;
import static growingon.whole.Ticks.SOLD;
import static growingon.whole.Ticks.WENT;

import growingon.nursery.number.Negligible;
import growingon.project.history.Happening;
import growingon.project.history.Work;
import growingon.project.lot.LotHistory;
import java.util.List;

/**
 * Whole plants of a lot, month by month: start + came = died + culled + sold + went + standing at
 * every month's end. Months are offsets from the plan's first month.
 */
public final class WholeLot {
  private final LotHistory history;
  private final int start;
  private final int[] came;
  private final int[][] gone;
  private final int[] atEnd;
  private final int[] afterWork;
  private final int[] ofHappening;
  private final List<WholeSale> sales;
  private final List<WholeStock> seasons;
  private final List<WholeStock> yearEnds;

  /**
   * A lot.
   *
   * @param start whole plants at the start
   * @param came whole plants that came up to each tick
   * @param gone [kind][tick] whole plants that left up to the tick
   */
  WholeLot(
      LotHistory history,
      int start,
      int[] came,
      int[][] gone,
      Ticks ticks,
      List<WholeSale> sales,
      List<WholeStock> seasons,
      List<WholeStock> yearEnds) {
    this.history = history;
    this.start = start;
    this.came = came;
    this.gone = gone;
    this.atEnd = ticks.atEnd();
    this.afterWork = ticks.afterWork();
    this.ofHappening = ticks.ofHappening();
    this.sales = List.copyOf(sales);
    this.seasons = List.copyOf(seasons);
    this.yearEnds = List.copyOf(yearEnds);
  }

  /** The expected numbers it was made from. */
  public LotHistory history() {
    return history;
  }

  /** Plants at the start: as counted, or bought. */
  public int start() {
    return start;
  }

  /** Plants that died between the count and the plan's first month. */
  public int diedBefore() {
    return gone[DIED][0];
  }

  /** Plants alive when it comes into the plan. */
  public int standingAtStart() {
    return start - diedBefore();
  }

  /** Plants that came up to a month's end. */
  public int cameUpTo(int month) {
    return upTo(came, month);
  }

  /** Plants that died up to a month's end, those before the plan too. */
  public int diedUpTo(int month) {
    return month < history.start() ? diedBefore() : upTo(gone[DIED], month);
  }

  /** Plants culled up to a month's end. */
  public int culledUpTo(int month) {
    return upTo(gone[CULLED], month);
  }

  /** Plants sold up to a month's end. */
  public int soldUpTo(int month) {
    return upTo(gone[SOLD], month);
  }

  /** Plants lost, used or gone to other lots up to a month's end. */
  public int wentUpTo(int month) {
    return upTo(gone[WENT], month);
  }

  private int upTo(int[] sums, int month) {
    return month < history.start() ? 0 : sums[atEnd[month]];
  }

  /** Plants that died in a month. */
  public int died(int month) {
    return diedUpTo(month) - diedUpTo(month - 1);
  }

  /** Plants culled in a month. */
  public int culled(int month) {
    return culledUpTo(month) - culledUpTo(month - 1);
  }

  /** Plants sold in a month. */
  public int sold(int month) {
    return soldUpTo(month) - soldUpTo(month - 1);
  }

  /** Plants alive at a month's end; none before it is there. */
  public int standing(int month) {
    return month < history.start() ? 0 : standingAt(atEnd[month]);
  }

  /** Plants alive after a month's steps, before its losses and sales. */
  public int standingAfterWork(int month) {
    return month < history.start() ? 0 : standingAt(afterWork[month]);
  }

  private int standingAt(int tick) {
    int standing = start + came[tick];
    for (int kind = 0; kind < KINDS; kind++) {
      standing -= gone[kind][tick];
    }
    return standing;
  }

  /** Plants that died or were culled, before the plan too. */
  public int lost() {
    int last = history.months() - 1;
    return diedUpTo(last) + culledUpTo(last);
  }

  /** Plants sold within the plan. */
  public int sold() {
    return soldUpTo(history.months() - 1);
  }

  /** Plants standing at the plan's end, kept ones among them. */
  public int standing() {
    return standing(history.months() - 1);
  }

  /** Kept plants standing at the plan's end. */
  public int kept() {
    return seasons.isEmpty() ? 0 : seasons.get(seasons.size() - 1).kept();
  }

  /** Plants that a happening is done on, after its losses and culls, by its place in the list. */
  public int workedOn(int happening) {
    return standingAt(ofHappening[happening]);
  }

  /** Plants that die of a happening. */
  public int diedOf(int happening) {
    return at(gone[DIED], happening);
  }

  /** Plants culled at a happening. */
  public int culledAt(int happening) {
    return at(gone[CULLED], happening);
  }

  private int at(int[] sums, int happening) {
    Happening done = history.happenings().get(happening);
    boolean hasTick = !Negligible.is(done.died()) || !Negligible.is(done.culled());
    int tick = ofHappening[happening];
    return hasTick ? sums[tick] - sums[tick - 1] : 0;
  }

  /** Plants that a job is done on. */
  public int workedOn(Work work) {
    List<Happening> all = history.happenings();
    for (int i = all.size() - 1; i >= 0; i--) {
      Happening done = all.get(i);
      boolean isIts = done.month() <= work.month() && work.month() < done.month() + done.months();
      if (isIts && done.job().equals(work.job())) {
        return workedOn(i);
      }
    }
    boolean isSelling = work.job().equals(Work.SELLING);
    return isSelling ? sold(work.month()) : standingAfterWork(work.month());
  }

  /** Sales in order of time; one to a row, grade and quality in a month. */
  public List<WholeSale> sales() {
    return sales;
  }

  /** How it stands at the end of each season in which it is there, as in its history. */
  public List<WholeStock> seasons() {
    return seasons;
  }

  /** How it stands at the end of each business year in which it is there, as in its history. */
  public List<WholeStock> yearEnds() {
    return yearEnds;
  }
}
