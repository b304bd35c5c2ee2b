package growingon.project.lot;

import growingon.nursery.route.Step;
import growingon.nursery.species.RootWorkYear;
import growingon.nursery.time.MonthShares;
import growingon.project.time.Calendar;
import java.util.OptionalDouble;

/**
 * What speeds and slows the growth of a lot: the months of the year, root work, the season's and
 * the lot's luck. A pot that has become too small is told by {@link Vessel}.
 */
public final class Speed {
  private static final int NEVER = Integer.MIN_VALUE;

  private final LotPlan plan;
  private final Calendar calendar;
  private Luck.OfLot luck;
  private double ofLot;
  private int rootWorkAt = NEVER;
  private Step.GrowthAfter afterRootWork = Step.GrowthAfter.OF_SPECIES;
  private final MonthShares months;
  private int steadyUntil = NEVER;
  private double steadyCheck;
  private double steadyLuck;
  private String condition = "";
  private double inCondition = 1;

  Speed(LotPlan plan, Calendar calendar, Luck.OfLot luck) {
    this.plan = plan;
    this.calendar = calendar;
    this.months = plan.species.growthMonths();
    begin(luck);
  }

  /** The same so far, for a lot that goes on apart. */
  public Speed(Speed same) {
    this.plan = same.plan;
    this.calendar = same.calendar;
    this.months = same.months;
    this.luck = same.luck;
    this.ofLot = same.ofLot;
    this.rootWorkAt = same.rootWorkAt;
    this.afterRootWork = same.afterRootWork;
    this.steadyUntil = same.steadyUntil;
    this.steadyCheck = same.steadyCheck;
    this.steadyLuck = same.steadyLuck;
    this.condition = same.condition;
    this.inCondition = same.inCondition;
  }

  /** Begins a run with roots cut as in another of the same lot, on the luck of the run. */
  public void begin(Speed like, Luck.OfLot ofRun) {
    rootWorkAt = like.rootWorkAt;
    afterRootWork = like.afterRootWork;
    begin(ofRun);
  }

  private void begin(Luck.OfLot ofRun) {
    luck = ofRun;
    ofLot = ofRun.growth();
    steadyUntil = NEVER;
    condition = "";
    inCondition = 1;
  }

  /** Roots were cut by a step in a month. */
  public void rootsCut(Step step, int month) {
    rootsCutIn(month);
    afterRootWork = step.growthAfter();
  }

  /** Roots were last cut in a month that the stock list states; by which step is known already. */
  void rootsCutIn(int month) {
    rootWorkAt = month;
    steadyUntil = NEVER;
  }

  /** Growth years of a month: share × root-work check × the season's and the lot's luck. */
  public double growthYears(int month) {
    double share = months.get(calendar.monthOfYear(month));
    if (share == 0) {
      return 0;
    }
    if (month >= steadyUntil) {
      steadyCheck = rootWorkCheck(month);
      steadyLuck = luck(month);
      steadyUntil = steadyFrom(month);
    }
    return share * steadyCheck * steadyLuck;
  }

  /** The first month after a month from which check and luck may be others than in it. */
  private int steadyFrom(int month) {
    int until = calendar.nextSeason(month);
    if (month < 0) {
      until = Math.min(until, 0);
    }
    return rootWorkAt == NEVER
        ? until
        : Math.min(until, RootWorkYear.nextAfter(month - rootWorkAt) + rootWorkAt);
  }

  /** Factor on the growth in a condition: what is not known of the speed there. */
  public double in(String now) {
    if (!now.equals(condition)) {
      condition = now;
      inCondition = luck.speed(now);
    }
    return inCondition;
  }

  /** The first value holds in the month of the work and the next 11, the second for 12 more. */
  private double rootWorkCheck(int month) {
    RootWorkYear year = afterRootWork(month);
    OptionalDouble stated =
        switch (year) {
          case FIRST -> afterRootWork.first();
          case SECOND -> afterRootWork.second();
          case NONE -> OptionalDouble.empty();
        };
    return stated.orElse(plan.species.checkIn(year));
  }

  /** How long before a month roots were cut. */
  public RootWorkYear afterRootWork(int month) {
    return rootWorkAt == NEVER ? RootWorkYear.NONE : RootWorkYear.after(month - rootWorkAt);
  }

  /** Growth before the plan has been what it was. */
  private double luck(int month) {
    return month < 0 ? 1 : ofLot * luck.growth(calendar.seasonYear(month));
  }
}
