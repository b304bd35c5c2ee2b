package growingon.fit;

import growingon.fit.Fit.Ahead;
import growingon.fit.Fit.Checked;
import growingon.fit.Fit.Covers;
import growingon.fit.Fit.HeldBack;
import growingon.fit.Fit.LossUnit;
import growingon.fit.Fit.Season;
import growingon.fit.evidence.Evidence;
import growingon.fit.evidence.Interval;
import growingon.fit.evidence.Saleable;
import growingon.fit.growth.Curves;
import growingon.fit.growth.Expectations;
import growingon.fit.growth.Expectations.Slopes;
import growingon.fit.growth.IntervalLaw;
import growingon.fit.growth.SpeedFit;
import growingon.fit.growth.SpeedJudging;
import growingon.fit.growth.Speeds;
import growingon.fit.growth.SpreadJudging;
import growingon.fit.loss.LossJudging;
import growingon.fit.loss.Losses;
import growingon.fit.loss.Losses.Gone;
import growingon.fit.past.FitRecords;
import growingon.fit.past.Past;
import growingon.fit.score.ForecastScore;
import growingon.fit.score.Scored;
import growingon.fit.score.Scores;
import growingon.fit.value.SiteSpeed;
import growingon.fit.value.Value;
import growingon.fit.value.Value.What;
import growingon.fit.verdict.FitPhrases;
import growingon.fit.verdict.Verdicts;
import growingon.nursery.record.DaybookLine;
import growingon.nursery.species.Species;
import growingon.nursery.time.Horizon;
import growingon.problem.Problem;
import growingon.review.book.Booked;
import growingon.review.kept.KeptPlan;
import java.time.Month;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/** One fit, as a list. */
final class Fitting {
  private static final int SEASONS_TO_HOLD_BACK = 3;

  private final FitRecords records;
  private final List<KeptPlan> kept;
  private final Past past;

  Fitting(FitRecords records, List<KeptPlan> kept) {
    this.records = records;
    this.kept = kept;
    this.past = Past.of(records);
  }

  Fit fit() {
    Evidence read = Evidence.of(past);
    SpeedFit growth = new SpeedFit(past, past.assumed());
    SpeedFit.AtFirst atFirst = growth.withoutSlips(read.intervals());
    Evidence evidence = read.with(atFirst.intervals());
    SpeedFit.Fitted first = growth.fit(evidence.used());
    List<Value> spreads = spreads(new SpreadJudging(evidence), first);
    SpeedFit.Fitted fitted = again(spreads, evidence, first);
    List<Value> values = new ArrayList<>(new SpeedJudging(evidence).speeds(fitted));
    values.addAll(new LossJudging(evidence).losses());
    values.addAll(spreads);
    values.addAll(new Curves(evidence).values());
    values.sort(
        Comparator.comparing(Value::species)
            .thenComparing(Value::what)
            .thenComparing(Value::condition));
    Map<String, Species> proposed = Fit.proposed(past.assumed(), values);
    Map<String, Species> inFiles = records.inputs().scenario().nursery().species();
    Scoring scoring = score();
    List<RecordRow> rows = new RecordRows(past, soldWithoutGrade(), evidence, atFirst).rows();
    return new Fit(
        covers(evidence, scoring.plans()),
        values,
        rows,
        lossUnits(evidence),
        seasons(fitted),
        checked(evidence, atFirst),
        ahead(evidence, atFirst),
        heldBack(evidence, growth, fitted),
        Saleable.of(evidence, inFiles, proposed),
        scoring.rows(),
        scoring.scored(),
        scoring.otherSales(),
        past.assumed(),
        proposed,
        SiteSpeed.of(values, past.assumed(), past.scenario().nursery().settings().library()),
        problems());
  }

  private Set<String> soldWithoutGrade() {
    return records.inputs().daybook().stream()
        .filter(line -> line.what() == DaybookLine.What.SOLD && line.grade().isEmpty())
        .map(DaybookLine::lot)
        .collect(Collectors.toSet());
  }

  /** How good the plans kept of this nursery were. */
  private record Scoring(
      List<ForecastScore> rows, List<Scored> scored, int otherSales, int plans) {}

  private Scoring score() {
    Scores scores = new Scores(past);
    List<ForecastScore> rows = new ArrayList<>();
    List<Scored> scored = new ArrayList<>();
    int other = 0;
    int plans = 0;
    for (KeptPlan plan : kept.stream().filter(this::isOfThisNursery).toList()) {
      Scores.Seen seen = scores.of(plan);
      rows.addAll(Scores.summed(plan, seen.scored()));
      scored.addAll(seen.scored());
      other += seen.otherSales();
      plans += seen.scored().isEmpty() ? 0 : 1;
    }
    scored.sort(Scores.inOrder());
    return new Scoring(rows, scored, other, plans);
  }

  /** Whether half or more of its lots are known here: a folder may keep plans of two nurseries. */
  private boolean isOfThisNursery(KeptPlan plan) {
    Set<String> known =
        past.booked().stream().map(book -> book.lot().name()).collect(Collectors.toSet());
    long shared = plan.lotNames().stream().filter(known::contains).count();
    return shared > 0 && 2 * shared >= plan.lotNames().size();
  }

  private List<Problem> problems() {
    return past.problems();
  }

  private List<Value> spreads(SpreadJudging judging, SpeedFit.Fitted fitted) {
    List<Value> spreads = new ArrayList<>();
    for (Species species : past.assumed().values()) {
      spreads.add(judging.vigour(species, fitted));
      spreads.add(judging.lossSpread(species));
    }
    spreads.addAll(judging.years(fitted));
    return spreads;
  }

  /** Speeds are fitted once more where the spreads that they rest on have changed. */
  private SpeedFit.Fitted again(List<Value> spreads, Evidence evidence, SpeedFit.Fitted first) {
    boolean changed =
        spreads.stream()
            .anyMatch(
                each ->
                    each.isChanged()
                        && (each.what() == What.VIGOUR_SPREAD || each.what() == What.YEAR_SPREAD));
    return changed
        ? new SpeedFit(past, Fit.proposed(past.assumed(), spreads)).fit(evidence.used())
        : first;
  }

  /** Counts of a book's own lot; where plants were split off, the book has theirs too. */
  private static long countsOfItself(Booked book) {
    return book.counts().stream().filter(count -> count.lot().equals(book.lot().name())).count();
  }

  private Covers covers(Evidence evidence, int plans) {
    int sales =
        (int)
            records.inputs().daybook().stream()
                .filter(line -> line.what() == DaybookLine.What.SOLD)
                .filter(line -> !YearMonth.from(line.date()).isAfter(records.until()))
                .count();
    int tagged =
        (int)
            records.readings().stream()
                .flatMap(reading -> reading.plant().stream())
                .distinct()
                .count();
    List<Long> counts =
        past.booked().stream().map(Fitting::countsOfItself).filter(each -> each > 0).toList();
    TreeSet<Integer> seasons = new TreeSet<>();
    evidence.used().forEach(each -> seasons.addAll(each.seasons()));
    int used = evidence.used().size();
    return new Covers(
        past.horizon().firstMonth(),
        past.horizon().month(past.lastRecord()),
        past.lists(),
        (int) counts.stream().mapToLong(each -> each).sum(),
        counts.size(),
        sales,
        past.receipts(),
        tagged,
        used,
        evidence.intervals().size() - used,
        seasons.size(),
        plans);
  }

  private List<LossUnit> lossUnits(Evidence evidence) {
    List<LossUnit> units = new ArrayList<>();
    for (Species species : Verdicts.inOrder(past)) {
      for (Losses.Unit unit :
          Losses.firstYear(
              evidence.spans(), species.name(), species.firstYearLoss(), Gone.DIED_IF_LIKELY)) {
        units.add(unit(species, What.FIRST_YEAR_LOSS, unit.name(), unit, species.firstYearLoss()));
      }
      for (Losses.Unit unit :
          Losses.later(
              evidence.spans(), species.name(), species.laterLoss(), Gone.DIED_IF_LIKELY)) {
        String season = season(Integer.parseInt(unit.name()));
        units.add(unit(species, What.LATER_LOSS, season, unit, species.laterLoss()));
      }
    }
    return units;
  }

  private static LossUnit unit(
      Species species, What what, String name, Losses.Unit unit, double loss) {
    return new LossUnit(
        species.name(), what, name, unit.exposure(), unit.deaths(), unit.exposure() * loss);
  }

  private String season(int year) {
    Month start = past.scenario().nursery().settings().seasonStart();
    return FitPhrases.season(year, start == Month.JANUARY);
  }

  private List<Season> seasons(SpeedFit.Fitted fitted) {
    if (fitted.used().isEmpty()) {
      return List.of();
    }
    return fitted.law().seasonEffects().stream()
        .map(
            each ->
                new Season(
                    season(each.season()),
                    each.species(),
                    Math.exp(each.log()),
                    Math.exp(each.log() - IntervalLaw.TO_P90 * each.deviation()),
                    Math.exp(each.log() + IntervalLaw.TO_P90 * each.deviation())))
        .toList();
  }

  private List<Checked> checked(Evidence evidence, SpeedFit.AtFirst atFirst) {
    TreeMap<String, TreeMap<Interval.State, double[]>> sums = new TreeMap<>();
    for (int i = 0; i < evidence.intervals().size(); i++) {
      Interval each = evidence.intervals().get(i);
      if (each.isUsed()) {
        double z = (each.second().meanMm() - atFirst.expected()[i]) / atFirst.deviations()[i];
        for (Interval.State state : each.states()) {
          double[] sum =
              sums.computeIfAbsent(each.species(), none -> new TreeMap<>())
                  .computeIfAbsent(state, none -> new double[2]);
          sum[0]++;
          sum[1] += z;
        }
      }
    }
    List<Checked> checked = new ArrayList<>();
    sums.forEach(
        (species, states) ->
            states.forEach(
                (state, sum) ->
                    checked.add(
                        new Checked(species, state.toString(), (int) sum[0], sum[1] / sum[0]))));
    return checked;
  }

  private static List<Ahead> ahead(Evidence evidence, SpeedFit.AtFirst atFirst) {
    TreeMap<String, List<Double>> bySpecies = new TreeMap<>();
    for (int i = 0; i < evidence.intervals().size(); i++) {
      Interval each = evidence.intervals().get(i);
      if (each.isUsed()) {
        double z = (each.second().meanMm() - atFirst.expected()[i]) / atFirst.deviations()[i];
        bySpecies.computeIfAbsent("", none -> new ArrayList<>()).add(z);
        bySpecies.computeIfAbsent(each.species(), none -> new ArrayList<>()).add(z);
      }
    }
    List<Ahead> ahead = new ArrayList<>();
    bySpecies.forEach(
        (species, all) ->
            ahead.add(
                new Ahead(
                    species,
                    all.size(),
                    all.stream().mapToDouble(z -> z).average().orElse(0),
                    Math.sqrt(all.stream().mapToDouble(z -> z * z).average().orElse(0)),
                    (int) all.stream().filter(z -> Math.abs(z) <= IntervalLaw.TO_P90).count())));
    return ahead;
  }

  private Optional<HeldBack> heldBack(Evidence evidence, SpeedFit growth, SpeedFit.Fitted all) {
    TreeSet<Integer> seasons = new TreeSet<>();
    Horizon horizon = past.horizon();
    evidence.used().forEach(each -> seasons.addAll(each.seasons()));
    if (seasons.size() < SEASONS_TO_HOLD_BACK) {
      return Optional.empty();
    }
    int last = seasons.last();
    Predicate<Interval> isOfLast = each -> each.seasons().contains(last);
    List<Interval> before = evidence.used().stream().filter(isOfLast.negate()).toList();
    List<Interval> after = evidence.used().stream().filter(isOfLast).toList();
    if (before.isEmpty() || after.isEmpty()) {
      return Optional.empty();
    }
    SpeedFit.Fitted fitted = growth.fitNear(before, all.speeds());
    Expectations expectations = new Expectations(past, after, growth.kinds(after), past.assumed());
    double[] old = expectations.means(Speeds.AS_ASSUMED);
    double[] now = expectations.means(fitted.speeds());
    Slopes slopes = expectations.at(fitted.speeds());
    double oldSum = 0;
    double newSum = 0;
    double measuring = 0;
    for (int i = 0; i < old.length; i++) {
      Interval each = after.get(i);
      oldSum += Math.pow(each.second().meanMm() - old[i], 2);
      newSum += Math.pow(each.second().meanMm() - now[i], 2);
      double slope = slopes.byFirst()[i];
      measuring += each.second().variance() + slope * slope * each.first().variance();
    }
    return Optional.of(
        new HeldBack(
            season(last),
            after.size(),
            Math.sqrt(oldSum / old.length),
            Math.sqrt(newSum / old.length),
            Math.sqrt(measuring / old.length)));
  }
}
