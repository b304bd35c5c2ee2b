package growingon.review.book;

import growingon.nursery.record.DaybookLine;
import growingon.project.history.Work;
import growingon.project.lot.LotHistory;
import java.util.Locale;

/**
 * Kinds of work. Hours that the daybook says of a kind take the place of those that were expected
 * of it; of the other kinds the plan's hours stay.
 */
enum JobKind {
  /** The steps of a route, and what else is done to plants. */
  STEPS(""),
  /** Moves into and out of winter places. */
  MOVES(Work.WINTER_MOVE),
  SELLING(Work.SELLING),
  /** Watering, weeding and the like by area. */
  CARE(Work.CARE);

  private final String job;

  JobKind(String job) {
    this.job = job;
  }

  /** What a line's hours were worked on: by its reason, else by what happened. */
  static JobKind of(DaybookLine line) {
    String reason = line.reason().strip().toLowerCase(Locale.ROOT);
    for (JobKind kind : values()) {
      if (!reason.isEmpty() && kind.job.equals(reason)) {
        return kind;
      }
    }
    return switch (line.what()) {
      case SOLD -> SELLING;
      case MOVED -> MOVES;
      default -> STEPS;
    };
  }

  private static JobKind ofJob(String job) {
    return switch (job) {
      case Work.WINTER_MOVE -> MOVES;
      case Work.SELLING -> SELLING;
      case Work.CARE -> CARE;
      default -> STEPS;
    };
  }

  /** Hours of each kind that a lot was expected to take, by {@link #ordinal} and month. */
  static double[][] expected(LotHistory history, int months) {
    double[][] hours = new double[values().length][months];
    for (Work work : history.works()) {
      if (work.month() < months) {
        hours[ofJob(work.job()).ordinal()][work.month()] += work.hours();
      }
    }
    for (int month = 0; month < months; month++) {
      hours[CARE.ordinal()][month] += history.careHours(month);
    }
    return hours;
  }
}
