package growingon.chance;

import growingon.money.EndWorth;
import growingon.money.GradeNumbers;
import growingon.money.Tally;
import growingon.nursery.Scenario;

/**
 * What the quantiles need of every draw; arrays end in [draw], so that draws may come in any order.
 */
final class Samples {
  final GradeNumbers grades;
  final double[][] sales;
  final double[][][] units;
  final double[][][] stock;
  final double[][][] space;
  final double[][] hours;
  final double[][] cash;
  final double[][] lotResults;
  final double[][] standing;
  final double[] values;
  final double[][] gains;
  final double[][][] gainsByEnding;
  final int[][] paybacks;
  final EndWorth[][] endWorths;
  private final double opening;

  /**
   * Room for the draws of a plan.
   *
   * @param endings seasons run for the bought lots, the plan's own and more
   */
  Samples(Scenario scenario, int boughtLots, int endings) {
    int draws = scenario.plan().draws();
    int seasons = scenario.plan().seasons();
    int months = scenario.horizon().months();
    this.grades = new GradeNumbers(scenario.nursery());
    this.sales = new double[seasons][draws];
    this.units = new double[grades.size()][seasons][draws];
    this.stock = new double[grades.size()][seasons][draws];
    this.space = new double[scenario.nursery().places().size()][months][draws];
    this.hours = new double[months][draws];
    this.cash = new double[months][draws];
    this.lotResults = new double[scenario.lots().size()][draws];
    this.standing = new double[seasons][draws];
    this.values = new double[draws];
    this.gains = new double[boughtLots][draws];
    this.gainsByEnding = new double[boughtLots][endings][draws];
    this.paybacks = new int[boughtLots][draws];
    this.endWorths = new EndWorth[boughtLots][draws];
    this.opening = scenario.nursery().settings().openingCash();
  }

  /** Takes a draw over from a tally. */
  void take(int draw, Tally tally) {
    copy(tally.salesBySeason(), sales, draw);
    copy(tally.hours(), hours, draw);
    copy(tally.lotResults(), lotResults, draw);
    copy(tally.livingBySeason(), standing, draw);
    for (int grade = 0; grade < units.length; grade++) {
      copy(tally.unitsBySeason()[grade], units[grade], draw);
      copy(tally.stockBySeason()[grade], stock[grade], draw);
    }
    for (int place = 0; place < space.length; place++) {
      copy(tally.space()[place], space[place], draw);
    }
    values[draw] = tally.presentValue(sales.length - 1);
    double balance = opening;
    for (int month = 0; month < cash.length; month++) {
      balance += tally.flows()[month];
      cash[month][draw] = balance;
    }
  }

  /** As much as there is room for: a run may go on beyond the plan's end. */
  static void copy(double[] from, double[][] to, int draw) {
    for (int i = 0; i < to.length; i++) {
      to[i][draw] = from[i];
    }
  }
}
