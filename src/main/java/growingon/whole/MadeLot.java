package growingon.whole;

import static growingon.whole.Ticks.KINDS;
import static growingon.whole.Ticks.SOLD;

import growingon.project.lot.LotHistory;
import java.util.List;

/** One lot in the making. */
final class MadeLot {
  private final LotHistory history;
  private final Ticks ticks;
  private final SoldCells cells;
  private final int start;
  private final int[] came;
  private final int[] ticksOfSales;
  private int[][] gone = {};

  /**
   * A lot not rounded yet.
   *
   * @param start whole plants at the start
   */
  MadeLot(LotHistory history, int start, SoldCells cells) {
    this.history = history;
    this.ticks = new Ticks(history);
    this.cells = cells;
    this.start = start;
    this.came = new int[ticks.size()];
    this.ticksOfSales = new int[cells.ticks()];
    double sum = 0;
    int sales = 0;
    for (int tick = 0; tick < came.length; tick++) {
      sum += ticks.came(tick);
      came[tick] = (int) Math.round(sum);
      if (ticks.isSale(tick)) {
        ticksOfSales[sales++] = tick;
      }
    }
  }

  LotHistory history() {
    return history;
  }

  /** Places of the demand rows that buy from it. */
  int[] rows() {
    return cells.rows();
  }

  /**
   * Rounds it so that it makes good for what is left over, and adds what it leaves over. Where the
   * rows that buy from it cannot all have what they are expected to, rounded down or up, what is
   * sold is rounded in all and parted then.
   */
  void round(LeftOver others) {
    if (!round(cells.all().branches(), others)) {
      round(List.of(cells.all()), others);
    }
    leave(others, 1);
  }

  /** Whether there is a way within bounds. */
  private boolean round(List<Branch> branches, LeftOver others) {
    Rounding rounding = new Rounding(parts(branches), ticks.size());
    for (int i = 0; i < branches.size(); i++) {
      int number = SOLD + i;
      cells.tell(
          branches.get(i),
          others,
          (tick, plants, weight) -> rounding.wish(number, ticksOfSales[tick], plants, weight));
    }
    int[][] all = rounding.cheapest(goneExpected(), leftOver(others), SOLD);
    if (!rounding.isWithinBounds() && branches.size() > 1) {
      return false;
    }
    gone = new int[KINDS][];
    System.arraycopy(all, 0, gone, 0, SOLD);
    gone[SOLD] = new int[ticks.size()];
    for (int i = 0; i < branches.size(); i++) {
      for (int tick = 0; tick < ticks.size(); tick++) {
        gone[SOLD][tick] += all[SOLD + i][tick];
      }
      int[] upTo = new int[cells.ticks()];
      for (int tick = 0; tick < upTo.length; tick++) {
        upTo[tick] = all[SOLD + i][ticksOfSales[tick]];
      }
      branches.get(i).part(upTo, (branch, tick) -> cells.more(branch, tick, others));
    }
    return true;
  }

  /** [number][tick]: plants that die, are culled and go, then those that each branch buys. */
  private double[][] parts(List<Branch> branches) {
    double[][] parts = new double[SOLD + branches.size()][ticks.size()];
    for (int kind = 0; kind < SOLD; kind++) {
      parts[kind] = ticks.parts(kind);
    }
    for (int i = 0; i < branches.size(); i++) {
      for (int tick = 0; tick < ticksOfSales.length; tick++) {
        parts[SOLD + i][ticksOfSales[tick]] = branches.get(i).part(tick);
      }
    }
    return parts;
  }

  /** Plants that are to be gone up to each tick, so that those stand that are expected to. */
  private double[] goneExpected() {
    double[] expected = new double[ticks.size()];
    for (int tick = 0; tick < expected.length; tick++) {
      expected[tick] = start + came[tick] - ticks.standing(tick);
    }
    return expected;
  }

  private double[] leftOver(LeftOver others) {
    double[] leftOver = new double[ticks.size()];
    for (int tick = 0; tick < leftOver.length; tick++) {
      leftOver[tick] = others.gone(ticks.month(tick));
    }
    return leftOver;
  }

  /** Rounds it once more, and leaves it as it was if its rows are less even then. */
  void roundAgain(LeftOver others) {
    double uneven = others.uneven(rows());
    int[][] before = gone;
    leave(others, -1);
    round(others);
    if (others.uneven(rows()) > uneven + Ticks.ROUNDING) {
      leave(others, -1);
      gone = before;
      cells.all().undo();
      leave(others, 1);
    }
  }

  private void leave(LeftOver others, int sign) {
    cells.addTo(others, sign);
    double[] expected = goneExpected();
    for (int month = history.start(); month < history.months(); month++) {
      int tick = ticks.atEnd()[month];
      long sum = 0;
      for (int[] kind : gone) {
        sum += kind[tick];
      }
      others.addGone(month, sign * (sum - expected[tick]));
    }
  }

  /** Its sales in whole plants. */
  List<WholeSale> sales() {
    return cells.sales();
  }

  /** The lot as rounded. */
  WholeLot made(List<WholeSale> sales, List<WholeStock> seasons, List<WholeStock> yearEnds) {
    return new WholeLot(history, start, came, gone, ticks, sales, seasons, yearEnds);
  }
}
