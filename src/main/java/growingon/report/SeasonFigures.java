package growingon.report;

import growingon.money.Accounts;
import growingon.nursery.Horizon;
import growingon.nursery.Nursery;
import growingon.project.HoursUse;
import growingon.project.LotHistory;
import growingon.project.Sale;
import growingon.project.SeasonStock;
import growingon.project.SpaceUse;
import growingon.project.SpaceUse.PlaceMonth;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** Totals of each season, by grade where it has one; what several sheets and charts show. */
final class SeasonFigures {
  private final Horizon horizon;
  private final Grades grades;
  private final Nursery nursery;
  private final double[][] soldByGrade;
  private final double[][] moneyByGrade;
  private final double[][] standingByGrade;
  private final double[][] readyByGrade;
  private final double[] ungraded;
  private final double[] kept;
  private final Accounts accounts;

  SeasonFigures(Accounts accounts) {
    this.accounts = accounts;
    this.horizon = accounts.projection().horizon();
    this.nursery = accounts.projection().scenario().nursery();
    this.grades = new Grades(nursery);
    int size = grades.all().size();
    this.soldByGrade = new double[size][horizon.seasons()];
    this.moneyByGrade = new double[size][horizon.seasons()];
    this.standingByGrade = new double[size][horizon.seasons()];
    this.readyByGrade = new double[size][horizon.seasons()];
    this.ungraded = new double[horizon.seasons()];
    this.kept = new double[horizon.seasons()];
    accounts.projection().lots().forEach(this::add);
  }

  private void add(LotHistory lot) {
    int first = grades.indexOf(nursery.ladderOf(lot.lot()).name(), 0);
    for (Sale sale : lot.sales()) {
      int season = horizon.season(sale.month());
      soldByGrade[first + sale.grade()][season] += sale.units();
      moneyByGrade[first + sale.grade()][season] += sale.money();
    }
    lot.seasons().forEach(stock -> add(stock, first));
  }

  private void add(SeasonStock stock, int first) {
    int season = stock.season();
    double[][] standing = stock.standing();
    for (int row = 0; row < standing.length; row++) {
      boolean forSale = row < stock.ready().length;
      for (int grade = 0; grade < standing[row].length; grade++) {
        double plants = standing[row][grade];
        if (!forSale) {
          kept[season] += plants;
        } else if (grade == 0) {
          ungraded[season] += plants;
        } else {
          standingByGrade[first + grade - 1][season] += plants;
          readyByGrade[first + grade - 1][season] += stock.ready()[row][grade - 1];
        }
      }
    }
  }

  Grades grades() {
    return grades;
  }

  int seasons() {
    return horizon.seasons();
  }

  String label(int season) {
    return horizon.seasonLabel(season);
  }

  /** Whether the plan holds all twelve months of a season. */
  boolean isFull(int season) {
    return horizon.seasonLast(season) - horizon.seasonFirst(season) == 11;
  }

  /** The first full season of the plan; the only one, full or not, of a plan of one season. */
  int next() {
    return isFull(0) || horizon.seasons() == 1 ? 0 : 1;
  }

  /** Plants sold, by grade and season. */
  double sold(int grade, int season) {
    return soldByGrade[grade][season];
  }

  /** Receipts, by grade and season. */
  double money(int grade, int season) {
    return moneyByGrade[grade][season];
  }

  /** Plants for sale in time, standing at the end of a season, by grade. */
  double standing(int grade, int season) {
    return standingByGrade[grade][season];
  }

  /** Plants that could be sold in a season: those sold and those ready and left at its end. */
  double saleable(int grade, int season) {
    return soldByGrade[grade][season] + readyByGrade[grade][season];
  }

  /** Plants without a grade at the end of a season, kept ones apart. */
  double ungraded(int season) {
    return ungraded[season];
  }

  /** Kept plants at the end of a season. */
  double kept(int season) {
    return kept[season];
  }

  double sold(int season) {
    return sum(soldByGrade, season);
  }

  double money(int season) {
    return sum(moneyByGrade, season);
  }

  double saleable(int season) {
    return sum(soldByGrade, season) + sum(readyByGrade, season);
  }

  double standing(int season) {
    return sum(standingByGrade, season) + ungraded[season] + kept[season];
  }

  private static double sum(double[][] byGrade, int season) {
    return Arrays.stream(byGrade).mapToDouble(seasons -> seasons[season]).sum();
  }

  /** Hours short in a season. */
  double hoursShort(int season) {
    HoursUse hours = accounts.hours();
    double sum = 0;
    for (int month = horizon.seasonFirst(season); month <= horizon.seasonLast(season); month++) {
      sum += hours.shortBy(month);
    }
    return sum;
  }

  /** Cash at the end of each season. */
  double cash(int season) {
    return accounts.cash().balances()[horizon.seasonLast(season)];
  }

  /** The place and month in which most space is missing in a season, if any is. */
  Optional<PlaceMonth> peakOverflow(int season) {
    if (nursery.places().isEmpty()) {
      return Optional.empty();
    }
    SpaceUse space = accounts.space();
    List<PlaceMonth> months = new ArrayList<>();
    for (String place : space.places()) {
      int last = horizon.seasonLast(season);
      months.addAll(space.months(place).subList(horizon.seasonFirst(season), last + 1));
    }
    return months.stream()
        .filter(each -> each.overflowM2() > Phrases.NEGLIGIBLE)
        .reduce((a, b) -> b.overflowM2() > a.overflowM2() ? b : a);
  }
}
