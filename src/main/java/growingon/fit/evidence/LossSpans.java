package growingon.fit.evidence;

import growingon.fit.past.Past;
import growingon.fit.past.Why;
import growingon.nursery.lot.Lot;
import growingon.nursery.route.Step;
import growingon.nursery.species.Species;
import growingon.nursery.time.Horizon;
import growingon.project.history.Happening;
import growingon.project.lot.LotHistory;
import growingon.review.book.Booked;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** Spans between successive counts of the plants of lots. */
public final class LossSpans {
  /** A yearly loss of nothing is taken as this (own choice). */
  static final double LEAST_LOSS = 0.001;

  private static final int MONTHS = 12;
  private static final double NONE_LEFT = 0.5;
  private static final double SURE = 0.95;

  private final Past past;
  private final Map<String, LotHistory> histories;

  LossSpans(Past past, Map<String, LotHistory> histories) {
    this.past = past;
    this.histories = histories;
  }

  /** Spans of a lot, closed by a count or by its end. */
  List<LossSpan> of(Booked book) {
    Lot lot = book.lot();
    LotHistory history = histories.get(lot.name());
    List<LossSpan> spans = new ArrayList<>();
    int from = past.horizon().offset(lot.counted()) - 1;
    TreeMap<Integer, Double> gone = new TreeMap<>();
    for (Booked.Count count : book.counts()) {
      if (count.counted().plants().isEmpty()) {
        continue;
      }
      if (!count.lot().equals(lot.name())) {
        from = count.month();
        continue;
      }
      gone.merge(count.month(), count.before() - count.alive(), Double::sum);
    }
    for (Map.Entry<Integer, Double> each : gone.entrySet()) {
      if (each.getKey() > from) {
        spans.add(span(book, history, from, each.getKey(), each.getValue()));
        from = each.getKey();
      }
    }
    if (book.alive() < NONE_LEFT) {
      int end = firstWithout(history, from);
      if (end > from) {
        spans.add(span(book, history, from, end, 0));
      }
    }
    return spans;
  }

  /** The first month after a count at whose end nothing is left. */
  private int firstWithout(LotHistory history, int from) {
    for (int month = Math.max(history.start(), from + 1); month <= past.through(); month++) {
      if (history.standing(month) < NONE_LEFT) {
        return history.standing(Math.max(history.start(), month - 1)) < NONE_LEFT ? from : month;
      }
    }
    return from;
  }

  private LossSpan span(Booked book, LotHistory history, int from, int to, double gone) {
    Lot lot = book.lot();
    Species species = past.assumed().get(lot.species());
    Map<Integer, Double> byStep = stepLosses(lot, history, from, to);
    List<Expected> months = months(lot, species, history, byStep, from, to);
    double sold = 0;
    double came = 0;
    for (Expected each : months) {
      sold += history.sold(each.month);
      came += each.month == to ? 0 : history.came(each.month);
    }
    double there = months.isEmpty() ? 0 : months.get(0).plants + came;
    Optional<String> refused = unexplained(lot, species, months, from, to, gone, there);
    return new LossSpan(
        lot.name(), lot.species(), from, to, gone, sold, deaths(book, months, gone), refused);
  }

  /** What is to be expected of a month. */
  private static final class Expected {
    int month;
    boolean firstYear;
    int season;
    double plants;
    double share;
    double background;
    double bySteps;
  }

  private List<Expected> months(
      Lot lot, Species species, LotHistory history, Map<Integer, Double> byStep, int from, int to) {
    Horizon horizon = past.horizon();
    int arrival = horizon.offset(lot.arrived());
    List<Expected> months = new ArrayList<>();
    for (int month = Math.max(from + 1, history.start()); month <= to; month++) {
      Expected each = new Expected();
      each.month = month;
      each.firstYear = month < arrival + MONTHS;
      each.season = horizon.seasonYear(month);
      each.plants =
          month == history.start() ? history.standingAtStart() : history.standing(month - 1);
      each.share = species.lossMonths().get(horizon.month(month).getMonthValue() - 1);
      double loss = each.firstYear ? species.firstYearLoss() : species.laterLoss();
      each.background = each.plants * (1 - Math.pow(1 - atLeast(loss), each.share));
      each.bySteps = each.plants * byStep.getOrDefault(month, 0.0);
      months.add(each);
    }
    return months;
  }

  /**
   * A loss held between what a logarithm can be taken of: a part of one a year, above 0, below 1.
   */
  public static double atLeast(double loss) {
    return Math.max(LEAST_LOSS, Math.min(1 - LEAST_LOSS, loss));
  }

  /** Shares that steps done in a span kill, by month. */
  private Map<Integer, Double> stepLosses(Lot lot, LotHistory history, int from, int to) {
    Map<String, Double> losses = new HashMap<>();
    for (Step step : past.scenario().nursery().routeOf(lot).steps()) {
      losses.put(step.name(), step.lossShare());
    }
    Map<Integer, Double> shares = new HashMap<>();
    for (Happening each : history.happenings()) {
      double share = losses.getOrDefault(each.job(), 0.0);
      if (share > 0 && each.month() > from && each.month() <= to) {
        shares.merge(each.month(), share, (one, other) -> 1 - (1 - one) * (1 - other));
      }
    }
    return shares;
  }

  private Optional<String> unexplained(
      Lot lot,
      Species species,
      List<Expected> months,
      int from,
      int to,
      double gone,
      double there) {
    double survival = 1;
    for (Expected each : months) {
      if (each.plants > 0) {
        survival *= (1 - each.background / each.plants) * (1 - each.bySteps / each.plants);
      }
    }
    long plants = Math.round(there);
    double loss = 1 - survival;
    if (plants < 1 || gone < 0.5) {
      return Optional.empty();
    }
    long most = BetaBinomial.quantile(plants, loss, species.lossSpread(), SURE);
    return Math.round(gone) > most
        ? Optional.of(
            Why.unexplained(
                lot.name(),
                Math.round(gone),
                plants,
                past.horizon().month(from),
                past.horizon().month(to),
                Math.round(loss * plants),
                past.writing()))
        : Optional.empty();
  }

  /** What died of background losses: what a line dates in its month, the rest as expected. */
  private static List<LossSpan.MonthLoss> deaths(Booked book, List<Expected> months, double gone) {
    double background = months.stream().mapToDouble(each -> each.background).sum();
    double bySteps = months.stream().mapToDouble(each -> each.bySteps).sum();
    double dated =
        months.stream().mapToDouble(each -> book.dead().getOrDefault(each.month, 0.0)).sum();
    double all = Math.max(0, gone + dated);
    double ofDated = gone >= 0 || dated == 0 ? 1 : all / dated;
    double undated = Math.max(0, gone);
    double part = background > 0 ? background / (background + bySteps) : 0;
    List<LossSpan.MonthLoss> losses = new ArrayList<>();
    double before = 0;
    for (Expected each : months) {
      double share =
          background + bySteps > 0 ? (each.background + each.bySteps) / (background + bySteps) : 0;
      double spread = undated * share;
      double written = book.dead().getOrDefault(each.month, 0.0) * ofDated;
      double plants = Math.max(0, each.plants - before);
      losses.add(
          new LossSpan.MonthLoss(
              each.month,
              each.firstYear,
              each.season,
              plants,
              each.share,
              (written + spread) * part,
              written * part));
      before += spread;
    }
    return losses;
  }
}
