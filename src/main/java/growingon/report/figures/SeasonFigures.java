package growingon.report.figures;

import growingon.money.Accounts;
import growingon.nursery.Nursery;
import growingon.nursery.time.Horizon;
import growingon.project.need.HoursUse;
import growingon.project.need.SpaceUse;
import growingon.project.need.SpaceUse.PlaceMonth;
import growingon.report.text.Phrases;
import growingon.report.text.Plants;
import growingon.whole.WholeLot;
import growingon.whole.WholePlan;
import growingon.whole.WholeSale;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** Totals of each season, by grade where it has one; what several sheets and charts show. */
public final class SeasonFigures {
  private final Horizon horizon;
  private final Grades grades;
  private final Nursery nursery;
  private final Plants[][] soldByGrade;
  private final double[][] moneyByGrade;
  private final Plants[][] standingByGrade;
  private final Plants[][] readyByGrade;
  private final Plants[] ungraded;
  private final Plants[] kept;
  private final Accounts accounts;

  SeasonFigures(Accounts accounts, WholePlan whole) {
    this.accounts = accounts;
    this.horizon = accounts.projection().horizon();
    this.nursery = accounts.projection().scenario().nursery();
    this.grades = new Grades(nursery);
    this.soldByGrade = noPlants();
    this.standingByGrade = noPlants();
    this.readyByGrade = noPlants();
    this.moneyByGrade = new double[grades.all().size()][horizon.seasons()];
    this.ungraded = new Plants[horizon.seasons()];
    this.kept = new Plants[horizon.seasons()];
    Arrays.fill(ungraded, Plants.NONE);
    Arrays.fill(kept, Plants.NONE);
    whole.lots().forEach(this::add);
  }

  private Plants[][] noPlants() {
    Plants[][] none = new Plants[grades.all().size()][horizon.seasons()];
    for (Plants[] seasons : none) {
      Arrays.fill(seasons, Plants.NONE);
    }
    return none;
  }

  private void add(WholeLot lot) {
    int first = grades.indexOf(nursery.ladderOf(lot.history().lot()).name(), 0);
    for (WholeSale sale : lot.sales()) {
      int season = horizon.season(sale.month());
      int grade = first + sale.grade();
      soldByGrade[grade][season] = soldByGrade[grade][season].plus(sale.units(), sale.whole());
      moneyByGrade[grade][season] += sale.money();
    }
    for (int i = 0; i < lot.seasons().size(); i++) {
      add(new SeasonEnd(lot, i), first);
    }
  }

  private void add(SeasonEnd standing, int first) {
    int season = standing.season();
    kept[season] = kept[season].plus(standing.kept());
    ungraded[season] = ungraded[season].plus(standing.ungraded());
    for (int grade = 0; grade < standing.grades(); grade++) {
      int at = first + grade;
      standingByGrade[at][season] = standingByGrade[at][season].plus(standing.ofGrade(grade));
      readyByGrade[at][season] = readyByGrade[at][season].plus(standing.ready(grade));
    }
  }

  public Grades grades() {
    return grades;
  }

  public int seasons() {
    return horizon.seasons();
  }

  public String label(int season) {
    return horizon.seasonLabel(season);
  }

  /** Whether the plan holds all twelve months of a season. */
  public boolean isFull(int season) {
    return horizon.seasonLast(season) - horizon.seasonFirst(season) == 11;
  }

  /** The first full season of the plan; the only one, full or not, of a plan of one season. */
  public int next() {
    return isFull(0) || horizon.seasons() == 1 ? 0 : 1;
  }

  /** Plants sold, by grade and season. */
  public Plants sold(int grade, int season) {
    return soldByGrade[grade][season];
  }

  /** Shown, by grade and season. */
  public double money(int grade, int season) {
    return moneyByGrade[grade][season];
  }

  /** Plants for sale in time, standing at the end of a season, by grade. */
  public Plants standing(int grade, int season) {
    return standingByGrade[grade][season];
  }

  /** Plants that could be sold in a season: those sold and those ready and left at its end. */
  public Plants saleable(int grade, int season) {
    return soldByGrade[grade][season].plus(readyByGrade[grade][season]);
  }

  /** Plants without a grade at the end of a season, kept ones apart. */
  public Plants ungraded(int season) {
    return ungraded[season];
  }

  /** Kept plants at the end of a season. */
  public Plants kept(int season) {
    return kept[season];
  }

  public Plants sold(int season) {
    return sum(soldByGrade, season);
  }

  public double money(int season) {
    return Arrays.stream(moneyByGrade).mapToDouble(seasons -> seasons[season]).sum();
  }

  public Plants saleable(int season) {
    return sum(soldByGrade, season).plus(sum(readyByGrade, season));
  }

  public Plants standing(int season) {
    return sum(standingByGrade, season).plus(ungraded[season]).plus(kept[season]);
  }

  private static Plants sum(Plants[][] byGrade, int season) {
    Plants sum = Plants.NONE;
    for (Plants[] seasons : byGrade) {
      sum = sum.plus(seasons[season]);
    }
    return sum;
  }

  /** Hours short in a season. */
  public double hoursShort(int season) {
    HoursUse hours = accounts.hours();
    double sum = 0;
    for (int month = horizon.seasonFirst(season); month <= horizon.seasonLast(season); month++) {
      sum += hours.shortBy(month);
    }
    return sum;
  }

  /** Cash at the end of each season. */
  public double cash(int season) {
    return accounts.cash().balances()[horizon.seasonLast(season)];
  }

  /** The place and month in which most space is missing in a season, if any is. */
  public Optional<PlaceMonth> peakOverflow(int season) {
    if (nursery.places().isEmpty()) {
      return Optional.empty();
    }
    SpaceUse space = accounts.space();
    List<PlaceMonth> months = new ArrayList<>();
    for (Optional<String> place : space.places()) {
      int last = horizon.seasonLast(season);
      months.addAll(space.months(place).subList(horizon.seasonFirst(season), last + 1));
    }
    return months.stream()
        .filter(each -> each.overflowM2() > Phrases.NEGLIGIBLE)
        .reduce((a, b) -> b.overflowM2() > a.overflowM2() ? b : a);
  }
}
