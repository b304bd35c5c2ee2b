package growingon.fit;

import growingon.fit.Value.Verdict;
import growingon.fit.Value.What;
import growingon.growth.Flow;
import growingon.nursery.Curve;
import growingon.nursery.Hemisphere;
import growingon.nursery.Species;
import java.time.Month;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** Which values the records contradict, which they bear out, and which they say too little of. */
final class Judging {
  /** Standard deviations from the middle to P10 and to P90. */
  static final double TO_P90 = 1.2816;

  private static final double HALF = 0.5;
  private static final int PLANTS_FOR_VIGOUR = 20;
  private static final int SEASONS_FOR_VIGOUR = 2;
  private static final double READING_ERRORS = 4;
  private static final int SEASONS_FOR_YEARS = 6;
  private static final int COUNTS_FOR_YEARS = 20;
  private static final int SEASONS_FOR_LOSSES = 6;
  private static final double DEATHS_FOR_LOSSES = 3;

  private final Past past;
  private final Evidence evidence;

  Judging(Evidence evidence) {
    this.evidence = evidence;
    this.past = evidence.past();
  }

  /** All values of one kind of answer. */
  private record Range(double value, double p10, double p90) {
    boolean holds(double old) {
      return old >= p10 && old <= p90;
    }
  }

  private static Verdict verdict(double weight, boolean agrees) {
    if (weight < HALF) {
      return Verdict.TOO_THIN;
    }
    return agrees ? Verdict.AGREES : Verdict.CHANGED;
  }

  /** The speed of every species in every condition. */
  List<Value> speeds(Growth.Fitted fitted) {
    List<Value> values = new ArrayList<>();
    for (Species species : inOrder()) {
      for (String condition : new TreeSet<>(species.growth().keySet())) {
        values.add(speed(fitted, new Kind(species.name(), condition)));
      }
    }
    return values;
  }

  private List<Species> inOrder() {
    return past.assumed().values().stream().sorted(Comparator.comparing(Species::name)).toList();
  }

  private Value speed(Growth.Fitted fitted, Kind kind) {
    List<Interval> told =
        fitted.used().stream()
            .filter(each -> each.species().equals(kind.species()))
            .filter(each -> each.byCondition().getOrDefault(kind.condition(), 0.0) > 0)
            .toList();
    int index = fitted.kinds().indexOf(kind);
    double sure = past.records().prior(kind.species()).growthSure(kind.condition());
    if (told.isEmpty() || index < 0) {
      double width = Math.exp(TO_P90 * Sureness.deviation(sure));
      Range assumed = new Range(1, 1 / width, width);
      return speed(kind, assumed, told, 0, Verdict.NO_RECORDS, sure, sure, Double.NaN);
    }
    double log = fitted.logs()[index];
    double deviation = Math.sqrt(fitted.variances()[index]);
    Range range =
        new Range(
            Math.exp(log), Math.exp(log - TO_P90 * deviation), Math.exp(log + TO_P90 * deviation));
    double weight = fitted.weight(index);
    double sureNew = Sureness.ofVariance(fitted.variances()[index]);
    Verdict verdict = verdict(weight, range.holds(1));
    if (sure >= 1) {
      verdict = Verdict.KNOWN;
      sureNew = sure;
    } else if (!fitted.settled()) {
      verdict = Verdict.DOES_NOT_SETTLE;
    } else if (Growth.isAtABound(log)) {
      verdict = Verdict.DOES_NOT_FIT;
    }
    double trunk = told.stream().mapToDouble(each -> each.first().meanMm()).average().orElse(0);
    return speed(kind, range, told, weight, verdict, sure, sureNew, trunk);
  }

  private Value speed(
      Kind kind,
      Range range,
      List<Interval> told,
      double weight,
      Verdict verdict,
      double sure,
      double sureNew,
      double trunk) {
    Curve curve = past.assumed().get(kind.species()).growth().get(kind.condition());
    double old = aYear(curve, trunk);
    double now = aYear(curve.faster(range.value()), trunk);
    int lots = (int) told.stream().map(Interval::root).distinct().count();
    Set<Integer> seasons =
        told.stream()
            .flatMap(each -> each.seasons().stream())
            .collect(Collectors.toCollection(TreeSet::new));
    double inFile = verdict == Verdict.CHANGED ? rounded(curve, range.value()) : 1;
    Value value =
        new Value(
            kind.species(),
            kind.condition(),
            What.GROWTH,
            1,
            range.value(),
            range.p10(),
            range.p90(),
            old,
            now,
            trunk,
            told.size(),
            lots,
            seasons.size(),
            weight,
            verdict,
            inFile,
            sure,
            sureNew,
            "");
    return told(value, ofSpeed(value, seasons));
  }

  private static Value told(Value value, String why) {
    return new Value(
        value.species(),
        value.condition(),
        value.what(),
        value.old(),
        value.value(),
        value.p10(),
        value.p90(),
        value.mmOld(),
        value.mmNew(),
        value.trunkMm(),
        value.counts(),
        value.lots(),
        value.seasons(),
        value.weight(),
        value.verdict(),
        value.inFile(),
        value.sureOld(),
        value.sureNew(),
        why);
  }

  /** Mm that a plant of some trunk grows in a year; NaN without a trunk. */
  private static double aYear(Curve curve, double trunk) {
    return trunk > 0 ? Flow.of(curve).advance(trunk, 1) - trunk : Double.NaN;
  }

  /** The factor by which a rate changes that is rounded to three digits. */
  private static double rounded(Curve curve, double factor) {
    double rate = curve.rate();
    return rate > 0 ? Words.rounded(rate * factor) / rate : 1;
  }

  private String ofSpeed(Value value, Set<Integer> seasons) {
    String counts =
        "%s of %s, %s"
            .formatted(
                Words.count(value.counts(), "count", "counts"),
                Words.count(value.lots(), "lot", "lots"),
                Words.count(value.seasons(), "season", "seasons"));
    return switch (value.verdict()) {
      case CHANGED -> changed(value, counts) + ofOneSeason(seasons);
      case AGREES -> agrees(value, counts) + ofOneSeason(seasons);
      case TOO_THIN -> tooThin(value, counts) + ofOneSeason(seasons);
      case NO_RECORDS -> "No records: %s.".formatted(measureThem());
      case KNOWN -> "Taken as known: its growth sure % is 100.";
      case DOES_NOT_SETTLE -> "Does not settle: the records contradict each other; look at them.";
      case DOES_NOT_FIT ->
          "Does not fit at all: look at the units of its trunks and at its growth.";
    };
  }

  private String ofOneSeason(Set<Integer> seasons) {
    return seasons.size() == 1
        ? " All from one season; if %s was poor, so is this figure; the range allows for it."
            .formatted(season(seasons.iterator().next()))
        : "";
  }

  private static String changed(Value value, String counts) {
    return ("Changed: %s (%s to %s) of your figure: %s mm a year at %s mm, not %s. From %s; rests %s"
            + " on your records.")
        .formatted(
            Words.factor(value.value()),
            Words.factor(value.p10()),
            Words.factor(value.p90()),
            Words.one(value.mmNew()),
            Math.round(value.trunkMm()),
            Words.one(value.mmOld()),
            counts,
            Words.percent(value.weight()));
  }

  private static String agrees(Value value, String counts) {
    return "Agrees: %s of your figure, 80 %% range %s to %s. From %s; rests %s on your records."
        .formatted(
            Words.factor(value.value()),
            Words.factor(value.p10()),
            Words.factor(value.p90()),
            counts,
            Words.percent(value.weight()));
  }

  private String tooThin(Value value, String counts) {
    return ("Too few counts to tell: %s; it rests %s on your records, and half is needed. About %s"
            + " more like them would do; best: %s.")
        .formatted(
            counts,
            Words.percent(value.weight()),
            Words.more(value.counts(), value.weight()),
            measureThem());
  }

  /** What to do at the end of growth. */
  String measureThem() {
    boolean north = past.scenario().nursery().settings().hemisphere() == Hemisphere.NORTH;
    return "measure the same 20 tagged trees each " + (north ? "October" : "April");
  }

  private String season(int year) {
    Month start = past.scenario().nursery().settings().seasonStart();
    return Words.season(year, start == Month.JANUARY);
  }

  /** First-year and later losses of every species. */
  List<Value> losses() {
    List<Value> values = new ArrayList<>();
    for (Species species : inOrder()) {
      FitRecords.Prior prior = past.records().prior(species.name());
      List<Losses.Unit> lots =
          Losses.firstYear(evidence.spans(), species.name(), species.firstYearLoss());
      List<Losses.Unit> seasons =
          Losses.later(evidence.spans(), species.name(), species.laterLoss());
      values.add(
          loss(
              species,
              What.FIRST_YEAR_LOSS,
              species.firstYearLoss(),
              prior.firstYearSure(),
              Losses.ofLots(species.lossSpread()),
              lots));
      values.add(
          loss(
              species,
              What.LATER_LOSS,
              species.laterLoss(),
              prior.laterSure(),
              Losses.ofSeasons(species.lossSpread()),
              seasons));
    }
    return values;
  }

  private Value loss(
      Species species,
      What what,
      double old,
      double sure,
      double variance,
      List<Losses.Unit> units) {
    boolean known = sure >= 1;
    double plants = Sureness.plants(known ? 0.999 : sure);
    Losses.Learnt learnt = Losses.learn(old, plants, variance, units);
    boolean agrees = old >= learnt.p10() && old <= learnt.p90();
    Verdict verdict = units.isEmpty() ? Verdict.NO_RECORDS : verdict(learnt.weight(), agrees);
    verdict = known && !units.isEmpty() ? Verdict.KNOWN : verdict;
    boolean bySeason = what == What.LATER_LOSS;
    double inFile = verdict == Verdict.CHANGED ? Words.rounded(100 * learnt.loss()) : 100 * old;
    Value value =
        new Value(
            species.name(),
            "",
            what,
            100 * old,
            100 * (known ? old : learnt.loss()),
            100 * learnt.p10(),
            100 * learnt.p90(),
            Double.NaN,
            Double.NaN,
            Double.NaN,
            units.size(),
            bySeason ? lots(species.name(), false) : units.size(),
            bySeason ? units.size() : seasons(species.name()),
            learnt.weight(),
            verdict,
            inFile,
            sure,
            known ? sure : Sureness.ofPlants(learnt.plants()),
            "");
    return told(value, ofLoss(value, units));
  }

  private int lots(String species, boolean firstYear) {
    return (int)
        evidence.spans().stream()
            .filter(span -> span.isUsed() && span.species().equals(species))
            .filter(span -> span.months().stream().anyMatch(each -> each.firstYear() == firstYear))
            .map(LossSpan::lot)
            .distinct()
            .count();
  }

  private int seasons(String species) {
    return (int)
        evidence.spans().stream()
            .filter(span -> span.isUsed() && span.species().equals(species))
            .flatMap(span -> span.months().stream())
            .filter(LossSpan.MonthLoss::firstYear)
            .map(LossSpan.MonthLoss::season)
            .distinct()
            .count();
  }

  private static String ofLoss(Value value, List<Losses.Unit> units) {
    double deaths = units.stream().mapToDouble(Losses.Unit::deaths).sum();
    double exposure = units.stream().mapToDouble(Losses.Unit::exposure).sum();
    String from =
        "%s dead in %s plant-years, %s"
            .formatted(
                Words.one(deaths),
                "%,d".formatted(Math.round(exposure)),
                value.what() == What.LATER_LOSS
                    ? Words.count(value.counts(), "season", "seasons")
                    : Words.count(value.counts(), "lot", "lots"));
    String range =
        "%s %% a year (%s to %s)"
            .formatted(Words.one(value.value()), Words.one(value.p10()), Words.one(value.p90()));
    return switch (value.verdict()) {
      case CHANGED ->
          "Changed: %s, not %s. From %s; rests %s on your records."
              .formatted(range, Words.one(value.old()), from, Words.percent(value.weight()));
      case AGREES ->
          "Agrees: %s, and %s was assumed. From %s; rests %s on your records."
              .formatted(range, Words.one(value.old()), from, Words.percent(value.weight()));
      case TOO_THIN ->
          "Too few counts to tell: %s; it rests %s on your records, and half is needed. Best: count every lot each October."
              .formatted(from, Words.percent(value.weight()));
      case KNOWN -> "Taken as known: its loss sure % is 100.";
      default -> "No records: count every lot each October.";
    };
  }

  /** Spreads between plants, from those that were tagged. */
  Value vigour(Species species, Growth.Fitted fitted) {
    List<Evidence.PlantGrowth> growths =
        evidence.plants().stream()
            .filter(plant -> plant.species().equals(species.name()))
            .flatMap(plant -> plant.growth().stream())
            .filter(growth -> species.growth().containsKey(growth.condition()))
            .toList();
    Set<Integer> seasons =
        growths.stream()
            .flatMap(each -> each.seasons().stream())
            .collect(Collectors.toCollection(TreeSet::new));
    double grown =
        growths.stream().mapToDouble(each -> each.toMm() - each.fromMm()).average().orElse(0);
    boolean enough =
        growths.size() >= PLANTS_FOR_VIGOUR
            && seasons.size() >= SEASONS_FOR_VIGOUR
            && grown >= READING_ERRORS * Measured.READING_MM;
    Map<String, Curve> curves =
        fitted.speeds().of(Map.of(species.name(), species)).get(species.name()).growth();
    Spreads.Learnt learnt =
        growths.size() > 1 && species.vigourSpread() > 0
            ? Spreads.vigour(growths, curves, species.vigourSpread())
            : Spreads.together(0, 0, species.vigourSpread());
    String thin =
        "%s, %s; it takes 20 tagged plants over 2 seasons that have grown 2 mm."
            .formatted(
                Words.count(growths.size(), "tagged plant", "tagged plants"),
                Words.count(seasons.size(), "season", "seasons"));
    String from = Words.count(growths.size(), "tagged plant", "tagged plants");
    return spread(
        species.name(),
        What.VIGOUR_SPREAD,
        learnt,
        growths.size(),
        0,
        seasons.size(),
        enough,
        thin,
        from);
  }

  private static Value spread(
      String species,
      What what,
      Spreads.Learnt learnt,
      int counts,
      int lots,
      int seasons,
      boolean enough,
      String thin,
      String from) {
    boolean agrees = learnt.old() >= learnt.p10() && learnt.old() <= learnt.p90();
    Verdict verdict =
        counts == 0
            ? Verdict.NO_RECORDS
            : !enough ? Verdict.TOO_THIN : agrees ? Verdict.AGREES : Verdict.CHANGED;
    String why = ofSpread(learnt, verdict, thin, from);
    double inFile =
        verdict == Verdict.CHANGED ? Words.rounded(100 * learnt.spread()) : 100 * learnt.old();
    return new Value(
        species,
        "",
        what,
        100 * learnt.old(),
        100 * learnt.spread(),
        100 * learnt.p10(),
        100 * learnt.p90(),
        Double.NaN,
        Double.NaN,
        Double.NaN,
        counts,
        lots,
        seasons,
        learnt.weight(),
        verdict,
        inFile,
        Double.NaN,
        Double.NaN,
        why);
  }

  private static String ofSpread(Spreads.Learnt learnt, Verdict verdict, String thin, String from) {
    String range =
        "%s %% (%s to %s)"
            .formatted(
                Words.one(100 * learnt.spread()),
                Words.one(100 * learnt.p10()),
                Words.one(100 * learnt.p90()));
    String old = Words.one(100 * learnt.old());
    return switch (verdict) {
      case CHANGED -> "Changed: %s, not %s %%. From %s.".formatted(range, old, from);
      case AGREES -> "Agrees: %s, and %s %% was assumed. From %s.".formatted(range, old, from);
      case TOO_THIN -> "Too few counts to tell: " + thin;
      default -> "No records: " + thin;
    };
  }

  /** Spreads between seasons, all by one factor. */
  List<Value> years(Growth.Fitted fitted) {
    TreeMap<Integer, Integer> seasons = new TreeMap<>();
    fitted
        .used()
        .forEach(each -> each.seasons().forEach(year -> seasons.merge(year, 1, Integer::sum)));
    boolean enough =
        seasons.size() >= SEASONS_FOR_YEARS && fitted.used().size() >= COUNTS_FOR_YEARS;
    Spreads.Years years =
        fitted.used().isEmpty() || fitted.kinds().isEmpty()
            ? new Spreads.Years(1, 1, 1)
            : Spreads.years(fitted);
    String thin =
        "%d of 6 seasons and %d of 20 counts needed before the spread between seasons can be told."
            .formatted(seasons.size(), fitted.used().size());
    List<Value> values = new ArrayList<>();
    for (Species species : inOrder()) {
      double old = species.yearSpread();
      Spreads.Learnt learnt =
          new Spreads.Learnt(
              old, old * years.factor(), old * years.p10(), old * years.p90(), 0, seasons.size());
      values.add(
          spread(
              species.name(),
              What.YEAR_SPREAD,
              learnt,
              fitted.used().size(),
              0,
              seasons.size(),
              enough,
              thin,
              seasons.size() + " seasons, all species together"));
    }
    return values;
  }

  /** Spreads of the later loss between seasons. */
  Value lossSpread(Species species) {
    List<Losses.Unit> seasons = Losses.later(evidence.spans(), species.name(), species.laterLoss());
    boolean enough =
        seasons.size() >= SEASONS_FOR_LOSSES
            && seasons.stream()
                .allMatch(each -> each.exposure() * species.laterLoss() >= DEATHS_FOR_LOSSES);
    boolean told =
        seasons.size() > 1
            && species.lossSpread() > 0
            && seasons.stream().mapToDouble(Losses.Unit::deaths).sum() > 0;
    Spreads.Learnt learnt =
        told
            ? Spreads.losses(seasons, species.lossSpread())
            : Spreads.together(0, 0, species.lossSpread());
    String thin =
        "%d of 6 seasons with 3 deaths to be expected in each needed.".formatted(seasons.size());
    return spread(
        species.name(),
        What.LOSS_SPREAD,
        learnt,
        seasons.size(),
        0,
        seasons.size(),
        enough && told,
        thin,
        Words.count(seasons.size(), "season", "seasons"));
  }
}
