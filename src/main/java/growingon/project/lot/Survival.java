package growingon.project.lot;

import growingon.nursery.time.MonthShares;
import growingon.project.time.Calendar;

/** How plants of a lot die: a year's loss, spread by month shares, and whom luck takes. */
public final class Survival {
  private static final int NEVER = Integer.MIN_VALUE;

  private final LotPlan plan;
  private final Calendar calendar;
  private Luck.OfLot luck;
  private final MonthShares months;
  private int knownUntil = NEVER;
  private double knownSurvival;
  private double knownLog;
  private double knownLoss;

  public Survival(LotPlan plan, Calendar calendar, Luck.OfLot luck) {
    this.plan = plan;
    this.calendar = calendar;
    this.months = plan.species.lossMonths();
    begin(luck);
  }

  /** Begins a run on its luck. */
  public void begin(Luck.OfLot ofRun) {
    luck = ofRun;
    knownUntil = NEVER;
  }

  /** The same so far, for a lot that goes on apart. */
  public Survival(Survival same) {
    this.plan = same.plan;
    this.calendar = same.calendar;
    this.luck = same.luck;
    this.months = same.months;
    this.knownUntil = same.knownUntil;
    this.knownSurvival = same.knownSurvival;
    this.knownLog = same.knownLog;
    this.knownLoss = same.knownLoss;
  }

  /** Share to be expected to die in a month before the plan, in which luck plays no part. */
  public double expectedShare(int month) {
    double share = months.get(calendar.monthOfYear(month));
    return share == 0
        ? 0
        : loss(share * logOfYearlySurvival(month, Luck.NONE.of(plan.lot, plan.species)));
  }

  /** Share lost in a month: a year's loss spread by month shares, 1 − (1 − q)^s. */
  public double share(int month) {
    double share = months.get(calendar.monthOfYear(month));
    if (share == 0) {
      return 0;
    }
    if (month >= knownUntil) {
      knownSurvival = logOfYearlySurvival(month, luck);
      int season = calendar.nextSeason(month);
      knownUntil = plan.isFirstYear(month) ? Math.min(season, plan.firstYearEnds()) : season;
    }
    return loss(share * knownSurvival);
  }

  /** 1 − e^x; the months of a season often share their x. */
  private double loss(double logOfSurvival) {
    if (logOfSurvival != knownLog) {
      knownLog = logOfSurvival;
      knownLoss = 1 - Math.exp(logOfSurvival);
    }
    return knownLoss;
  }

  /** ln(1 − q) of the season and the lot's year. */
  private double logOfYearlySurvival(int month, Luck.OfLot by) {
    boolean firstYear = plan.isFirstYear(month);
    double expected =
        firstYear ? by.consignmentLoss(plan.species.firstYearLoss()) : plan.species.laterLoss();
    return Math.log(1 - by.loss(firstYear, expected, calendar.seasonYear(month)));
  }

  /** Share that dies of a step. */
  public double shareOfStep(double expected) {
    return luck.consignmentLoss(expected);
  }

  /**
   * Plants that die in a month.
   *
   * @param event what kills them: 0 for the month's losses, else one more than the step's index
   */
  public double deaths(int month, int event, double living, double share) {
    return luck.deaths(month, event, living, share);
  }

  /** Share that is dead on arrival. */
  public double shareDeadOnArrival() {
    return luck.deadOnArrival();
  }
}
