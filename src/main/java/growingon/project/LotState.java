package growingon.project;

import growingon.nursery.market.Quality;
import growingon.nursery.number.Negligible;
import growingon.nursery.supply.Pot;
import growingon.nursery.time.Horizon;
import growingon.project.history.GradedPlants;
import growingon.project.history.Grown;
import growingon.project.history.Recorder;
import growingon.project.history.Stood;
import growingon.project.history.YearEnd;
import growingon.project.known.LotFacts;
import growingon.project.lot.Beginning;
import growingon.project.lot.CareRates;
import growingon.project.lot.HeadCount;
import growingon.project.lot.LotHistory;
import growingon.project.lot.LotPlan;
import growingon.project.lot.Luck;
import growingon.project.lot.Position;
import growingon.project.lot.Speed;
import growingon.project.lot.Spot;
import growingon.project.lot.Survival;
import growingon.project.lot.Training;
import growingon.project.lot.Vessel;
import growingon.project.slice.Growing;
import growingon.project.time.Calendar;
import growingon.project.time.Schedule;
import java.util.function.DoublePredicate;
import java.util.function.DoubleSupplier;

/** One lot on its way through the months: its plants, pot, place and clocks. */
final class LotState {
  final LotPlan plan;
  final int start;
  final Growing plants;
  final Schedule schedule;
  final Training training;
  final Position position;
  final Vessel vessel;
  final Speed speed;
  final Survival survival;
  final LotWork work;
  final KnownPast past;
  private final HeadCount heads;
  private final Recorder to;
  private final LotHistory history;
  private final CareRates care;
  private final Calendar calendar;
  private final double[] minutes;
  private final DoubleSupplier meanTrunk;
  private final DoublePredicate reachesTrunk;
  private final int sellsFrom;
  private final boolean hasFacts;
  private final boolean asksForTrunks;
  private int quietUntil = Integer.MIN_VALUE;
  private Spot standing;
  private double speedThere = 1;
  private int potBoundFrom = Integer.MAX_VALUE;
  private boolean sorted;
  private double soldInMonth;
  private boolean gone;

  /**
   * A lot before its first month.
   *
   * @param to takes down what happens
   * @param history takes down the particulars too; null where nobody asks for them
   */
  LotState(LotPlan plan, Run run, Recorder to, LotHistory history) {
    Programme programme = run.programme();
    this.plan = plan;
    this.start = plan.start;
    this.sellsFrom = Math.max(plan.notBefore, plan.apartUntil);
    this.to = to;
    this.history = history;
    this.minutes = run.minutes();
    this.calendar = programme.calendar();
    this.care = programme.care();
    this.heads = new HeadCount(plan, to);
    this.past = new KnownPast(this, run.facts().of(plan), heads);
    this.hasFacts = past.isThere();
    this.asksForTrunks = to.asksForTrunks();
    Luck.OfLot luck = run.luck().of(plan.lot, plan.species);
    this.plants = new Growing(plan.growthStart, luck.quality(), luck.trunks());
    this.meanTrunk = plants::meanTrunk;
    this.reachesTrunk = plants::reaches;
    Beginning beginning = plan.beginning(programme.surroundings());
    this.schedule = new Schedule(beginning.schedule);
    this.training = new Training(beginning.training, schedule);
    this.position = new Position(beginning.position);
    this.vessel = new Vessel(beginning.vessel);
    this.speed = new Speed(beginning.speed);
    this.speed.begin(beginning.speed, luck);
    this.survival = new Survival(plan, calendar, luck);
    this.work = new LotWork(this, heads, run, to, history);
    takeUp(run);
  }

  /** Begins another run, on its luck: the lot before its first month again. */
  void begin(Run run) {
    Luck.OfLot luck = run.luck().of(plan.lot, plan.species);
    plants.begin(luck.quality(), luck.trunks());
    Beginning beginning = plan.beginning(run.programme().surroundings());
    schedule.takeOver(beginning.schedule);
    training.takeOver(beginning.training);
    position.takeOver(beginning.position);
    vessel.takeOver(beginning.vessel);
    speed.begin(beginning.speed, luck);
    survival.begin(luck);
    heads.begin();
    work.begin();
    quietUntil = Integer.MIN_VALUE;
    standing = null;
    speedThere = 1;
    potBoundFrom = Integer.MAX_VALUE;
    sorted = false;
    soldInMonth = 0;
    gone = false;
    takeUp(run);
  }

  private void takeUp(Run run) {
    plants.keepPart(past.part());
    new TakingUp(this).takeUp(run);
  }

  /**
   * The same so far, for a lot of which nothing is known that from now on fares otherwise.
   *
   * @param to takes down what happens from now on
   */
  LotState(LotState same, Recorder to) {
    this.plan = same.plan;
    this.start = same.start;
    this.sellsFrom = same.sellsFrom;
    this.to = to;
    this.history = null;
    this.minutes = same.minutes;
    this.calendar = same.calendar;
    this.care = same.care;
    this.heads = new HeadCount(same.heads, to);
    this.past = new KnownPast(this, LotFacts.NONE, heads);
    this.hasFacts = false;
    this.asksForTrunks = to.asksForTrunks();
    this.quietUntil = same.quietUntil;
    this.plants = new Growing(same.plants);
    this.meanTrunk = plants::meanTrunk;
    this.reachesTrunk = plants::reaches;
    this.schedule = new Schedule(same.schedule);
    this.training = new Training(same.training, schedule);
    this.position = new Position(same.position);
    this.vessel = new Vessel(same.vessel);
    this.speed = new Speed(same.speed);
    this.survival = new Survival(same.survival);
    this.work = new LotWork(same.work, this, heads, to);
    this.standing = same.standing;
    this.speedThere = same.speedThere;
    this.potBoundFrom = same.potBoundFrom;
    this.sorted = same.sorted;
    this.soldInMonth = same.soldInMonth;
    this.gone = same.gone;
  }

  /** Growth and losses of a month from an older count to the plan's first month. */
  void carryForward(int month) {
    position.begin(month, vessel.isPotted());
    standIn(spot(month));
    grow(month);
    if (past.rules(month)) {
      past.beforeThePlan(month);
    } else {
      heads.diedBefore(plants.die(plants.living() * survival.expectedShare(month)));
    }
  }

  /** Whether anything is known of it. */
  boolean hasFacts() {
    return hasFacts;
  }

  /** So many plants as luck has it die in a month. */
  double die(int month, int event, double share) {
    double living = plants.living();
    return share == 0 || living == 0 || (hasFacts && past.rules(month))
        ? 0
        : plants.die(survival.deaths(month, event, living, share));
  }

  /** Takes the lot in: a lot that failed on its way is dead on arrival, others are sorted. */
  void arrive(int month) {
    for (int before = 0; before < month; before++) {
      work.payOtherCash(before, false);
    }
    if (month == plan.arrival) {
      heads.died(month, plants.die(plants.living() * survival.shareDeadOnArrival()));
    }
    work.sortOnArrival(month);
  }

  /** Whether nothing is left but the dust of dividing; such a lot is done with. */
  boolean isEmpty() {
    return plants.isEmpty();
  }

  /**
   * Whether no plant of it is left, no slice has dust of one, and nothing is known that could bring
   * one back: no month changes it any more, and only those who ask for particulars would notice.
   */
  boolean isGone() {
    return gone;
  }

  /** Whether nothing of an empty lot is left, and nobody asks for its particulars. */
  private boolean goes() {
    return history == null && !hasFacts() && !asksForTrunks && plants.count() == 0;
  }

  /**
   * The steps and moves of a month, and where they leave it. In most months there are none, and
   * where it stands, in what and by which law it grows stays as it was.
   */
  void work(int month, Run run) {
    if (month < quietUntil) {
      return;
    }
    work.ofMonth(month, run);
    standIn(spot(month));
    quietUntil = hasFacts || plan.isApart(month) ? month + 1 : work.quietUntil(month + 1);
  }

  private void standIn(Spot spot) {
    if (spot != standing) {
      standing = spot;
      speedThere = speed.in(spot.condition());
    }
    potBoundFrom = vessel.potBoundFrom();
    plants.growBy(spot.curve());
  }

  /** Reads space, load and care for the month, and pays other cash that it causes. */
  void stand(int month) {
    double living = plants.living();
    if (Negligible.is(living)) {
      return;
    }
    double m2 = living * standing.m2Each();
    int monthOfYear = calendar.monthOfYear(month);
    double hours = m2 * care.minutes(standing.careKind(), monthOfYear) * minutes[month] / 60;
    to.cared(month, living, hours);
    to.stood(
        month, standing.placeName(), living, m2, m2 * care.cost(standing.careKind(), monthOfYear));
    if (history != null) {
      String potName = vessel.pot().map(Pot::name).orElse("");
      history.weighed(
          new Stood(month, standing.placeName(), living, m2, vessel.weight(plants), potName));
    }
    work.payOtherCash(month, true);
  }

  /** How it stands in the month, once that has been read. */
  Spot standing() {
    return standing;
  }

  /** Whether the mean trunk of its living plants is so many mm, where somebody asks. */
  DoublePredicate reachesTrunk() {
    return reachesTrunk;
  }

  /** How the lot stands in a month. */
  Spot spot(int month) {
    return position.spot(month, vessel.pot(), meanTrunk);
  }

  /** Grows for a month. */
  void grow(int month) {
    double years = speed.growthYears(month);
    if (years > 0) {
      years *= speedThere * (month < potBoundFrom ? 1 : plan.species.potBoundFactor());
      plants.grow(years);
      noteGrowth(month, years);
    }
  }

  private void noteGrowth(int month, double years) {
    if (history != null && hasFacts() && month >= 0) {
      history.grew(
          month,
          new Grown(
              standing.condition(), years, speed.afterRootWork(month), vessel.isPotBound(month)));
    }
  }

  /** Notes how it stands just before a count is taken. */
  void noteBeforeCount(int month) {
    if (to.asksForCounts()) {
      to.beforeCount(month, plants.beforeCount());
    }
  }

  /** What came and went after the month's last cull, then the losses that are to be expected. */
  void lose(int month) {
    if (hasFacts()) {
      past.afterSteps(month);
    }
    double died = die(month, 0, survival.share(month));
    if (died > 0) {
      heads.died(month, died);
    }
  }

  boolean maySell(int month) {
    return month >= sellsFrom
        && !gone
        && !(hasFacts && past.rulesSales(month))
        && !isEmpty()
        && isSorted();
  }

  private boolean isSorted() {
    sorted = sorted || work.isSorted();
    return sorted;
  }

  /** Grades the lot for sale; gives the cells in which plants are ready. */
  long gradeForSale(int month) {
    return plants.gradeForSale(training.clock(month));
  }

  void sold(int month, int row, int grade, Quality quality, double units, double money) {
    heads.sold(units);
    soldInMonth += units;
    to.sold(month, row, grade, quality, units, money);
  }

  /** So many plants were sold as a grade that they had not reached by the model, if any. */
  void noteUnready(double plants) {
    if (history != null && plants > 0) {
      history.soldUnready(plants);
    }
  }

  /** Plants were used, which is no sale. */
  void went(int month, double gone) {
    heads.went(month, gone);
  }

  /**
   * Checks that what was booked and what stands are all the plants there were.
   *
   * @throws BalanceException if they are not
   */
  void checkBalance(Horizon horizon) {
    heads.check(past.part(), plants.count(), horizon);
  }

  void endMonth(int month) {
    if (soldInMonth > 0) {
      work.sell(month, soldInMonth);
      soldInMonth = 0;
    }
    double living = plants.living();
    to.monthOver(month, living);
    if (asksForTrunks) {
      tellTrunk(month);
    }
    if (calendar.isSeasonEnd(month)) {
      to.seasonEnded(calendar.season(month), plants.standing(training.months(month)));
    }
    if (history != null) {
      noteMonth(month);
    }
    gone = gone || (Negligible.is(living) && goes());
  }

  private void tellTrunk(int month) {
    to.trunk(month, isEmpty() ? 0 : plants.meanTrunk());
    to.growsIn(month, standing.condition());
  }

  private void noteMonth(int month) {
    for (int grade = 0; grade < plan.grades().size(); grade++) {
      history.graded(month, grade, plants.shareGraded(grade, training.months(month)));
    }
    history.monthEnded(month, plants.count(), plants.keptLiving());
    if (calendar.isYearEnd(month)) {
      history.yearEnded(new YearEnd(month, plants.standing(training.months(month))));
    }
    if (calendar.isSeasonEnd(month)) {
      history.seasonSeen(calendar.season(month), readyNow(month), plants.meanTrunk());
    }
    if (history.isDetailed()) {
      history.monthSeen(month, plants.stock(training.months(month), readyNow(month)));
    }
  }

  private GradedPlants readyNow(int month) {
    GradedPlants ready = new GradedPlants(plan.grades().size());
    if (maySell(month)) {
      gradeForSale(month);
      for (Quality quality : Quality.values()) {
        for (int grade = 0; grade < plan.grades().size(); grade++) {
          ready.add(quality, grade, plants.ready(quality, grade));
        }
      }
    }
    return ready;
  }
}
