package growingon.fit.score;

import growingon.fit.growth.IntervalLaw;
import growingon.fit.past.Measured;
import growingon.fit.past.Past;
import growingon.nursery.record.DaybookLine;
import growingon.nursery.time.Horizon;
import growingon.review.book.Booked;
import growingon.review.kept.AcrossDraws;
import growingon.review.kept.AcrossDraws.Inside;
import growingon.review.kept.KeptPlan;
import growingon.review.kept.KeptPlan.Figure;
import growingon.review.kept.Range;
import java.time.YearMonth;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import org.hipparchus.distribution.continuous.BetaDistribution;

/** How good kept plans were: their P10 to P90 against what was counted and sold afterwards. */
public final class Scores {
  private static final double OTHER_SALES = 0.1;
  private static final int FEWEST = 20;
  private static final int FEWEST_SEASONS = 3;
  private static final double EIGHT_IN_TEN = 0.8;
  private static final double ONE_SIDED = 0.95;
  private static final String NOT_KEPT =
      "not to be judged: kept without its draws; keep the next plan";

  private final Past past;
  private final Map<String, TreeMap<YearMonth, Double>> sales = new HashMap<>();

  public Scores(Past past) {
    this.past = past;
    for (DaybookLine line : past.sales()) {
      sales
          .computeIfAbsent(line.lot(), each -> new TreeMap<>())
          .merge(YearMonth.from(line.date()), line.quantity().orElse(0), Double::sum);
    }
  }

  /** All figures of a kept plan that were seen, and how many were not scored for other sales. */
  public record Seen(List<Scored> scored, int otherSales) {}

  /** What came of a kept plan so far. */
  public Seen of(KeptPlan plan) {
    List<Scored> scored = new ArrayList<>();
    int other = 0;
    for (Booked book : past.booked()) {
      if (!plan.lotNames().contains(book.lot().name())) {
        continue;
      }
      for (Booked.Count count : book.counts()) {
        if (!count.lot().equals(book.lot().name())) {
          continue;
        }
        YearMonth month = past.horizon().month(count.month());
        if (count.counted().plants().isPresent()) {
          score(plan, Figure.PLANTS, book, month, count.alive(), 0).ifPresent(scored::add);
        }
        OptionalDouble trunk = count.counted().trunkMm();
        if (trunk.isPresent() && count.alive() > 0) {
          if (soldAsPlanned(plan, book, month)) {
            score(plan, Figure.TRUNK, book, month, trunk.getAsDouble(), variance(count))
                .ifPresent(scored::add);
          } else {
            other++;
          }
        }
      }
      // Where no sale at all is written down, none says that nothing was sold.
      scored.addAll(sales.isEmpty() ? List.of() : sold(plan, book));
    }
    return new Seen(scored, other);
  }

  private double variance(Booked.Count count) {
    double mean = count.counted().trunkMm().getAsDouble();
    double plants = Math.max(1, count.alive());
    return new Measured(
            count.counted().rows(),
            mean,
            count.counted().trunkSpread().orElse(0.15),
            plants,
            past.measured(count.counted().rows(), plants),
            past.unit(count.counted().rows()),
            0,
            java.util.Set.of(),
            "")
        .variance();
  }

  private boolean soldAsPlanned(KeptPlan plan, Booked book, YearMonth month) {
    double planned = plan.soldOnTheLine(book.lot().name(), month);
    double sold = soldUpTo(book, plan.first(), month);
    return Math.abs(sold - planned) <= OTHER_SALES * plan.quantity(book.lot().name());
  }

  private double soldUpTo(Booked book, YearMonth first, YearMonth month) {
    return sales
        .getOrDefault(book.lot().name(), new TreeMap<>())
        .subMap(first, true, month.isBefore(first) ? first : month, true)
        .values()
        .stream()
        .mapToDouble(Double::doubleValue)
        .sum();
  }

  private List<Scored> sold(KeptPlan plan, Booked book) {
    List<Scored> scored = new ArrayList<>();
    Horizon horizon = past.horizon();
    int last = Math.min(past.through(), horizon.months() - 1);
    for (int month = Math.max(0, horizon.offset(plan.first())); month <= last; month++) {
      if (horizon.isSeasonEnd(month)) {
        YearMonth end = horizon.month(month);
        double seen = soldUpTo(book, plan.first(), end);
        score(plan, Figure.SOLD, book, end, seen, 0).ifPresent(scored::add);
      }
    }
    return scored;
  }

  private Optional<Scored> score(
      KeptPlan plan, Figure figure, Booked book, YearMonth month, double seen, double variance) {
    return plan.foreseen(book.lot().name(), figure, month)
        .filter(range -> range.p90() > range.p10())
        .map(
            range -> {
              boolean above = seen >= range.p50();
              double half = above ? range.p90() - range.p50() : range.p50() - range.p10();
              double width =
                  Math.sqrt(half * half / (IntervalLaw.TO_P90 * IntervalLaw.TO_P90) + variance);
              double off = Math.abs(seen - range.p50());
              int months = (int) ChronoUnit.MONTHS.between(plan.first(), month);
              return new Scored(
                  plan.name(),
                  figure,
                  book.lot().name(),
                  book.lot().species(),
                  month,
                  months / 12 + 1,
                  range,
                  seen,
                  off <= IntervalLaw.TO_P90 * width + 1e-9,
                  pinball(range, seen),
                  plan.within(book.lot().name(), figure, month));
            });
  }

  /** Twice the mean of the pinball losses of three quantiles. */
  static double pinball(Range range, double seen) {
    return 2
        * (pinball(range.p10(), 0.1, seen)
            + pinball(range.p50(), 0.5, seen)
            + pinball(range.p90(), 0.9, seen))
        / 3;
  }

  private static double pinball(double quantile, double share, double seen) {
    return (share - (seen < quantile ? 1 : 0)) * (seen - quantile);
  }

  /** What became of the figures of a plan, by figure, species and years ahead. */
  public static List<ForecastScore> summed(KeptPlan plan, List<Scored> scored) {
    Map<String, List<Scored>> groups = new TreeMap<>();
    List<ForecastScore> rows = new ArrayList<>();
    if (!scored.isEmpty()) {
      rows.add(score(plan, "all", "", "", scored));
    }
    for (Scored each : scored) {
      String lead =
          each.lead() >= 3 ? "3+ years" : each.lead() == 1 ? "1 year" : each.lead() + " years";
      group(groups, "0" + each.figure().ordinal(), each);
      group(groups, "1" + each.figure().ordinal() + each.species(), each);
      group(groups, "2" + each.figure().ordinal() + lead, each);
    }
    groups.forEach(
        (key, figures) -> {
          String figure = figures.get(0).figure().toString();
          String of = key.substring(2);
          rows.add(
              score(
                  plan,
                  figure,
                  key.charAt(0) == '1' ? of : "",
                  key.charAt(0) == '2' ? of : "",
                  figures));
        });
    return rows;
  }

  private static void group(Map<String, List<Scored>> groups, String key, Scored each) {
    groups.computeIfAbsent(key, none -> new ArrayList<>()).add(each);
  }

  private static ForecastScore score(
      KeptPlan plan, String figure, String species, String lead, List<Scored> figures) {
    int inside = (int) figures.stream().filter(Scored::inside).count();
    long seasons = figures.stream().map(Scored::lead).distinct().count();
    boolean isFew =
        figures.size() < FEWEST || (lead.isEmpty() ? seasons : FEWEST_SEASONS) < FEWEST_SEASONS;
    Optional<Inside> should = should(plan, figures);
    return new ForecastScore(
        plan.name(),
        figure,
        species,
        lead,
        figures.size(),
        inside,
        should.map(each -> (double) each.low() / each.of()).orElse(Double.NaN),
        should.map(each -> (double) each.high() / each.of()).orElse(Double.NaN),
        figures.stream()
            .filter(each -> each.foreseen().p50() >= 0.5)
            .mapToDouble(each -> each.seen() / each.foreseen().p50() - 1)
            .average()
            .orElse(0),
        figures.stream().mapToDouble(Scored::pinball).average().orElse(0),
        figures.stream()
            .mapToDouble(each -> Math.abs(each.seen() - each.foreseen().p50()))
            .average()
            .orElse(0),
        isFew
            ? "%d of %d inside; too few to judge".formatted(inside, figures.size())
            : should.map(each -> verdict(inside, each)).orElse(NOT_KEPT));
  }

  /**
   * How many should lie inside, by the plan's own draws, in which figures are good or bad together.
   * Older files do not have them: of luck alone figures are then taken as independent, of luck and
   * not knowing nobody can say.
   */
  static Optional<Inside> should(KeptPlan plan, List<Scored> figures) {
    List<String> within = figures.stream().flatMap(each -> each.within().stream()).toList();
    Optional<Inside> across =
        within.size() == figures.size()
            ? AcrossDraws.count(within, plan.draws())
            : Optional.empty();
    return across.or(
        () -> plan.isOfLuckAlone() ? Optional.of(independent(figures.size())) : Optional.empty());
  }

  private static String verdict(int inside, Inside should) {
    if (inside < should.low()) {
      return "bands too narrow";
    }
    return inside > should.high() ? "bands too wide" : "as wide as they should be";
  }

  /** Numbers inside of which eight in ten can be the true share: a Jeffreys range of 5 to 95 %. */
  static Inside independent(int all) {
    int low = 0;
    while (isTrueShareBelow(low, all)) {
      low++;
    }
    int high = low;
    while (high < all && !isTrueShareAbove(high + 1, all)) {
      high++;
    }
    return new Inside(low, high, all);
  }

  private static boolean isTrueShareBelow(int inside, int all) {
    return trueShareUpToEightInTen(inside, all) > ONE_SIDED;
  }

  private static boolean isTrueShareAbove(int inside, int all) {
    return trueShareUpToEightInTen(inside, all) < 1 - ONE_SIDED;
  }

  private static double trueShareUpToEightInTen(int inside, int all) {
    return new BetaDistribution(inside + 0.5, all - inside + 0.5)
        .cumulativeProbability(EIGHT_IN_TEN);
  }

  /** By month, lot and figure. */
  public static Comparator<Scored> inOrder() {
    return Comparator.comparing(Scored::month)
        .thenComparing(Scored::lot)
        .thenComparing(Scored::figure);
  }
}
