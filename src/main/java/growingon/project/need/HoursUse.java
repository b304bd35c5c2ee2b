package growingon.project.need;

import growingon.nursery.Settings;
import growingon.nursery.market.OtherCash;
import growingon.nursery.time.Horizon;
import growingon.project.Projection;
import growingon.project.history.Work;
import growingon.project.lot.LotHistory;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Hours of work by month and job against the hours available. */
public final class HoursUse {
  private final Map<String, double[]> byJob;
  private final double[] needed;
  private final Optional<double[]> available;

  private HoursUse(Map<String, double[]> byJob, double[] needed, Optional<double[]> available) {
    this.byJob = byJob;
    this.needed = needed;
    this.available = available;
  }

  /** Adds up a projection. */
  public static HoursUse of(Projection projection) {
    Horizon horizon = projection.horizon();
    Map<String, double[]> byJob = new LinkedHashMap<>();
    double[] needed = new double[horizon.months()];
    double[] care = new double[needed.length];
    for (LotHistory lot : projection.lots()) {
      for (int month = 0; month < needed.length; month++) {
        care[month] += lot.careHours(month);
      }
    }
    if (Arrays.stream(care).anyMatch(hours -> hours > 0)) {
      byJob.put(Work.CARE, care);
    }
    for (LotHistory lot : projection.lots()) {
      for (Work work : lot.works()) {
        byJob.computeIfAbsent(work.job(), job -> new double[needed.length])[work.month()] +=
            work.hours();
      }
    }
    addOtherCash(projection, byJob);
    for (double[] hours : byJob.values()) {
      for (int month = 0; month < needed.length; month++) {
        needed[month] += hours[month];
      }
    }
    return new HoursUse(
        byJob, needed, available(projection.scenario().nursery().settings(), horizon));
  }

  /** Work of other cash that no lot causes; that of lots is among their works. */
  private static void addOtherCash(Projection projection, Map<String, double[]> byJob) {
    Horizon horizon = projection.horizon();
    for (OtherCash row : projection.scenario().nursery().otherCash()) {
      for (int month = 0; row.lot().isEmpty() && month < horizon.months(); month++) {
        if (row.hours() > 0 && row.isDue(month, horizon)) {
          byJob.computeIfAbsent(row.what(), job -> new double[horizon.months()])[month] +=
              row.hours();
        }
      }
    }
  }

  /** Hours available in each month; empty if the nursery does not say. */
  public static Optional<double[]> available(Settings settings, Horizon horizon) {
    return settings.hoursAvailable().map(hours -> spread(hours, horizon));
  }

  private static double[] spread(List<Double> hours, Horizon horizon) {
    double[] available = new double[horizon.months()];
    for (int month = 0; month < available.length; month++) {
      available[month] = hours.get(horizon.month(month).getMonthValue() - 1);
    }
    return available;
  }

  /** Hours of each job by month: care, then jobs in the order in which they first come up. */
  public Map<String, double[]> byJob() {
    return byJob;
  }

  /** Hours needed in a month. */
  public double needed(int month) {
    return needed[month];
  }

  /** Hours available in a month; empty if the nursery does not say. */
  public Optional<Double> available(int month) {
    return available.map(hours -> hours[month]);
  }

  /** Hours short in a month; 0 if there are enough or nothing is stated. */
  public double shortBy(int month) {
    return available.map(hours -> Math.max(0, needed[month] - hours[month])).orElse(0.0);
  }
}
