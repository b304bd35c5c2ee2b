package growingon.project.lot;

import growingon.nursery.lot.Lot;
import growingon.nursery.market.Grade;
import growingon.nursery.market.Quality;
import growingon.project.history.BeforeCount;
import growingon.project.history.Freed;
import growingon.project.history.GradedPlants;
import growingon.project.history.GradesReached;
import growingon.project.history.Grown;
import growingon.project.history.Happening;
import growingon.project.history.MonthStock;
import growingon.project.history.Reached;
import growingon.project.history.Recorder;
import growingon.project.history.Sale;
import growingon.project.history.SeasonStock;
import growingon.project.history.Stood;
import growingon.project.history.Use;
import growingon.project.history.Work;
import growingon.project.history.YearEnd;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What happens to one lot over the plan. Months are offsets from the plan's first month; numbers
 * are expected plants.
 */
public final class LotHistory implements Recorder {
  /** Of a lot of which nothing is known nothing comes or goes so. */
  private static final double[] NONE = {};

  private final Lot lot;
  private final List<Grade> grades;
  private final int start;
  private final double[] standing;
  private final double[] died;
  private final double[] culled;
  private final double[] sold;
  private double[] came = NONE;
  private double[] went = NONE;
  private double[] paid = NONE;
  private final MonthStock[] monthStocks;
  private final double part;
  private final double[] careCost;
  private final double[] careHours;
  private final Stood[] stood;
  private final List<Happening> happenings = new ArrayList<>();
  private final List<Use> uses = new ArrayList<>();
  private final List<Freed> freed = new ArrayList<>();
  private final List<Work> works = new ArrayList<>();
  private final List<Sale> sales = new ArrayList<>();
  private final List<SeasonStock> seasons = new ArrayList<>();
  private final GradesReached reached;
  private final Map<Integer, Grown> grown = new HashMap<>();
  private final Map<Integer, BeforeCount> beforeCounts = new HashMap<>();
  private double soldUnready;
  private final List<YearEnd> yearEnds = new ArrayList<>();
  private GradedPlants seasonEnd;
  private double diedBefore;
  private double keptAtEnd;

  /**
   * A history in which nothing has happened yet.
   *
   * @param part share of the lot's plants that it is of
   * @param detailed whether it takes down how the lot stands at every month's end
   */
  public LotHistory(LotPlan plan, int months, double part, boolean detailed) {
    this.part = part;
    this.monthStocks = new MonthStock[detailed ? months : 0];
    Arrays.fill(monthStocks, MonthStock.nothing(plan.grades().size()));
    this.lot = plan.lot;
    this.grades = plan.grades();
    this.start = plan.start;
    this.standing = new double[months];
    this.died = new double[months];
    this.culled = new double[months];
    this.sold = new double[months];
    this.careCost = new double[months];
    this.careHours = new double[months];
    this.stood = new Stood[months];
    this.reached = new GradesReached(grades.size());
  }

  @Override
  public void diedBefore(double plants) {
    diedBefore += plants;
  }

  @Override
  public void died(int month, double plants) {
    died[month] += plants;
  }

  @Override
  public void culled(int month, double plants) {
    culled[month] += plants;
  }

  @Override
  public void came(int month, double plants) {
    came = came == NONE ? new double[standing.length] : came;
    came[month] += plants;
  }

  @Override
  public void went(int month, double plants) {
    went = went == NONE ? new double[standing.length] : went;
    went[month] += plants;
  }

  /** Whether qualities and grades of each month are kept too. */
  public boolean isDetailed() {
    return monthStocks.length > 0;
  }

  /** Takes down how plants stand at the end of a month, counted from 0. */
  public void monthSeen(int month, MonthStock stock) {
    monthStocks[month] = stock;
  }

  /** Takes down how trunks grew in a month. */
  public void grew(int month, Grown how) {
    grown.put(month, how);
  }

  @Override
  public boolean asksForCounts() {
    return true;
  }

  @Override
  public void beforeCount(int month, BeforeCount how) {
    beforeCounts.put(month, how);
  }

  /** Adds plants sold as a grade that they had not reached by the model. */
  public void soldUnready(double plants) {
    soldUnready += plants;
  }

  /** Takes down what a report tells of the lot. */
  public void happened(Happening happening) {
    happenings.add(happening);
  }

  @Override
  public void used(int month, Use.Kind kind, String item, double amount) {
    if (amount > 0 && month < standing.length) {
      uses.add(new Use(month, kind, item, amount));
    }
  }

  @Override
  public void freed(int month, String pot, double amount) {
    if (amount > 0 && month < standing.length) {
      freed.add(new Freed(month, pot, amount));
    }
  }

  @Override
  public void worked(int month, String job, double plants, double hours) {
    if (hours > 0 && month < standing.length) {
      works.add(new Work(month, job, plants, hours));
    }
  }

  /** As care comes every month, its hours are kept by month. */
  @Override
  public void cared(int month, double plants, double hours) {
    careHours[month] += hours;
  }

  @Override
  public void sold(int month, int row, int grade, Quality quality, double units, double money) {
    sales.add(new Sale(month, row, grade, quality, units, money));
    sold[month] += units;
  }

  @Override
  public void stood(int month, Optional<String> place, double plants, double m2, double care) {
    careCost[month] = care;
  }

  @Override
  public void paid(int month, double amount) {
    paid = paid == NONE ? new double[standing.length] : paid;
    paid[month] += amount;
  }

  /** Takes down room and weight of a month. */
  public void weighed(Stood where) {
    stood[where.month()] = where;
  }

  @Override
  public void seasonEnded(int season, GradedPlants atEnd) {
    seasonEnd = atEnd;
  }

  /** Adds to the season's end what could be sold then, and the mean trunk. */
  public void seasonSeen(int season, GradedPlants ready, double meanTrunkMm) {
    seasons.add(new SeasonStock(season, seasonEnd, ready, meanTrunkMm));
  }

  /** Takes down what stands at the end of a business year. */
  public void yearEnded(YearEnd stock) {
    yearEnds.add(stock);
  }

  /** Takes down which share of the plants has reached a grade by a month. */
  public void graded(int month, int grade, double share) {
    reached.note(month, grade, share);
  }

  /**
   * Takes down what stands at a month's end.
   *
   * @param living plants, kept ones among them
   * @param kept plants that are never sold
   */
  public void monthEnded(int month, double living, double kept) {
    standing[month] = living;
    keptAtEnd = kept;
  }

  /** The lot. */
  public Lot lot() {
    return lot;
  }

  /** Grades of its ladder, lowest first. */
  public List<Grade> grades() {
    return grades;
  }

  /** First month in which it is in the plan. */
  public int start() {
    return start;
  }

  /** Number of months of the plan. */
  public int months() {
    return standing.length;
  }

  /** Share of the lot's plants that it is of: 1 unless some were split off. */
  public double part() {
    return part;
  }

  /** Plants it is of, as counted. */
  public double quantity() {
    return lot.quantity() * part;
  }

  /** Plants alive when it comes into the plan: as counted, less what died since. */
  public double standingAtStart() {
    return quantity() - diedBefore;
  }

  /** Plants that were found, returned or came from other lots in a month. */
  public double came(int month) {
    return came == NONE ? 0 : came[month];
  }

  /** Plants that were lost, used or went to other lots in a month. */
  public double went(int month) {
    return went == NONE ? 0 : went[month];
  }

  /** How it stands at the end of a month; only of a projection in detail. */
  public MonthStock monthStock(int month) {
    return monthStocks[month];
  }

  /** How its plants grew in a month; empty where they did not, or nothing is known of the lot. */
  public Optional<Grown> grown(int month) {
    return Optional.ofNullable(grown.get(month));
  }

  /** How it stood just before the count of a month; empty for a month without one. */
  public Optional<BeforeCount> beforeCount(int month) {
    return Optional.ofNullable(beforeCounts.get(month));
  }

  /** Plants known to have been sold as a grade of which, by the model, none was ready. */
  public double soldUnready() {
    return soldUnready;
  }

  /** Plants alive at the end of a month. */
  public double standing(int month) {
    return standing[month];
  }

  /** Plants that died in a month, of steps and of losses. */
  public double died(int month) {
    return died[month];
  }

  /** Plants that died between the count and the plan's first month. */
  public double diedBefore() {
    return diedBefore;
  }

  /** Plants culled in a month. */
  public double culled(int month) {
    return culled[month];
  }

  /** Plants sold in a month. */
  public double sold(int month) {
    return sold[month];
  }

  /** Kept plants alive at the end of the plan. */
  public double keptAtEnd() {
    return keptAtEnd;
  }

  /** Cost of care by area in a month, plan currency. */
  public double careCost(int month) {
    return careCost[month];
  }

  /** Other cash that it causes in a month: received if positive, paid if negative. */
  public double paid(int month) {
    return paid == NONE ? 0 : paid[month];
  }

  /** Hours of care by area in a month. */
  public double careHours(int month) {
    return careHours[month];
  }

  /** Where it stands in a month; null while it is not there or when none is left. */
  public Stood stood(int month) {
    return stood[month];
  }

  /** Steps and moves in order of time. */
  public List<Happening> happenings() {
    return Collections.unmodifiableList(happenings);
  }

  /** What it uses up. */
  public List<Use> uses() {
    return Collections.unmodifiableList(uses);
  }

  /** Old pots it gives back. */
  public List<Freed> freed() {
    return Collections.unmodifiableList(freed);
  }

  /** Hours of work but for care. */
  public List<Work> works() {
    return Collections.unmodifiableList(works);
  }

  /** Sales in order of time. */
  public List<Sale> sales() {
    return Collections.unmodifiableList(sales);
  }

  /** How it stands at the end of each business year in which it is there. */
  public List<YearEnd> yearEnds() {
    return Collections.unmodifiableList(yearEnds);
  }

  /** How it stands at the end of each season in which it is there. */
  public List<SeasonStock> seasons() {
    return Collections.unmodifiableList(seasons);
  }

  /**
   * Tells another recorder what was used, worked, sold, paid and taken up in space, as it was told
   * here.
   */
  public void retell(Recorder to) {
    for (Use use : uses) {
      to.used(use.month(), use.kind(), use.item(), use.amount());
    }
    for (Work work : works) {
      to.worked(work.month(), work.job(), work.plants(), work.hours());
    }
    for (Sale sale : sales) {
      to.sold(sale.month(), sale.row(), sale.grade(), sale.quality(), sale.units(), sale.money());
    }
    for (int month = 0; month < standing.length; month++) {
      if (paid(month) != 0) {
        to.paid(month, paid(month));
      }
      if (stood[month] != null) {
        Stood where = stood[month];
        to.cared(month, where.plants(), careHours[month]);
        to.stood(month, where.place(), where.plants(), where.m2(), careCost[month]);
      }
    }
  }

  /** Whether any of its plants reaches a grade within the plan, as {@link #reached}. */
  public boolean reaches(int grade) {
    return reached.byAny(grade);
  }

  /** When it reaches each grade, lowest first. */
  public List<Reached> reached() {
    return reached.list();
  }
}
