package growingon.fit.growth;

import growingon.fit.evidence.Evidence;
import growingon.fit.evidence.Interval;
import growingon.fit.past.Past;
import growingon.fit.value.Value;
import growingon.fit.value.Value.Verdict;
import growingon.fit.value.Value.What;
import growingon.fit.value.ValueBuilder;
import growingon.fit.verdict.FitPhrases;
import growingon.fit.verdict.Verdicts;
import growingon.growth.Flow;
import growingon.nursery.species.Curve;
import growingon.nursery.species.Species;
import growingon.nursery.species.Sure;
import java.time.Month;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** How fast each species grows in each condition, and whether the records say so. */
public final class SpeedJudging {
  private final Past past;
  private final FitPhrases words;
  private final Evidence evidence;

  public SpeedJudging(Evidence evidence) {
    this.evidence = evidence;
    this.past = evidence.past();
    this.words = FitPhrases.of(past);
  }

  /** All values of one kind of answer. */
  private record Range(double value, double p10, double p90) {
    boolean holds(double old) {
      return old >= p10 && old <= p90;
    }
  }

  /** The speed of every species in every condition. */
  public List<Value> speeds(SpeedFit.Fitted fitted) {
    List<Value> values = new ArrayList<>();
    for (Species species : Verdicts.inOrder(past)) {
      for (String condition : new TreeSet<>(species.growth().keySet())) {
        values.add(speed(fitted, new Kind(species.name(), condition)));
      }
    }
    return values;
  }

  private Value speed(SpeedFit.Fitted fitted, Kind kind) {
    List<Interval> told =
        fitted.used().stream()
            .filter(each -> each.species().equals(kind.species()))
            .filter(each -> each.byCondition().getOrDefault(kind.condition(), 0.0) > 0)
            .toList();
    int index = fitted.kinds().indexOf(kind);
    double sure = past.records().prior(kind.species()).growthSure(kind.condition());
    if (told.isEmpty() || index < 0) {
      double width = Sure.factor(sure);
      Range assumed = new Range(1, 1 / width, width);
      return speed(kind, assumed, told, 0, Verdict.NO_RECORDS, sure, sure, Double.NaN);
    }
    double log = fitted.logs()[index];
    double deviation = Math.sqrt(fitted.variances()[index]);
    Range range =
        new Range(
            Math.exp(log),
            Math.exp(log - IntervalLaw.TO_P90 * deviation),
            Math.exp(log + IntervalLaw.TO_P90 * deviation));
    double weight = fitted.weight(index);
    double sureNew = Sure.ofVariance(fitted.variances()[index]);
    Verdict verdict = Verdicts.verdict(weight, range.holds(1));
    if (sure >= 1) {
      verdict = Verdict.KNOWN;
      sureNew = sure;
    } else if (!fitted.settled()) {
      verdict = Verdict.DOES_NOT_SETTLE;
    } else if (SpeedFit.isAtABound(log)) {
      verdict = Verdict.DOES_NOT_FIT;
    }
    double trunk = told.stream().mapToDouble(each -> each.first().meanMm()).average().orElse(0);
    Value value = speed(kind, range, told, weight, verdict, sure, sureNew, trunk);
    return verdict == Verdict.TOO_THIN && fitted.scatters(index)
        ? value.withWhy(scattered(value, fitted.phi()))
        : value;
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
    ValueBuilder said =
        Value.of(kind.species(), What.GROWTH, verdict)
            .condition(kind.condition())
            .old(1)
            .value(range.value())
            .p10(range.p10())
            .p90(range.p90())
            .mmOld(old)
            .mmNew(now)
            .trunkMm(trunk)
            .counts(told.size())
            .lots(lots)
            .seasons(seasons.size())
            .weight(weight)
            .inFile(inFile)
            .sureOld(sure)
            .sureNew(sureNew);
    return said.why(ofSpeed(said.build(), seasons)).build();
  }

  /** Mm that a plant of some trunk grows in a year; NaN without a trunk. */
  private static double aYear(Curve curve, double trunk) {
    return trunk > 0 ? Flow.of(curve).advance(trunk, 1) - trunk : Double.NaN;
  }

  /** The factor by which a rate changes that is rounded to three digits. */
  private static double rounded(Curve curve, double factor) {
    double rate = curve.rate();
    return rate > 0 ? FitPhrases.rounded(rate * factor) / rate : 1;
  }

  private String ofSpeed(Value value, Set<Integer> seasons) {
    String counts =
        "%s of %s, %s"
            .formatted(
                FitPhrases.count(value.counts(), "count", "counts"),
                FitPhrases.count(value.lots(), "lot", "lots"),
                FitPhrases.count(value.seasons(), "season", "seasons"));
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

  private String changed(Value value, String counts) {
    return ("Changed: %s (%s to %s) of your figure: %s mm a year at %s mm, not %s. From %s; rests %s"
            + " on your records.")
        .formatted(
            words.factor(value.value()),
            words.factor(value.p10()),
            words.factor(value.p90()),
            words.one(value.mmNew()),
            Math.round(value.trunkMm()),
            words.one(value.mmOld()),
            counts,
            FitPhrases.percent(value.weight()));
  }

  private String agrees(Value value, String counts) {
    return "Agrees: %s of your figure, 80 %% range %s to %s. From %s; rests %s on your records."
        .formatted(
            words.factor(value.value()),
            words.factor(value.p10()),
            words.factor(value.p90()),
            counts,
            FitPhrases.percent(value.weight()));
  }

  private String tooThin(Value value, String counts) {
    return ("Too few counts to tell: %s; it rests %s on your records, and half is needed. About %s"
            + " more like them would do; best: %s.")
        .formatted(
            counts,
            FitPhrases.percent(value.weight()),
            FitPhrases.more(value.counts(), value.weight()),
            measureThem());
  }

  /** Of counts that would be enough, did they not contradict each other. */
  private String scattered(Value value, double phi) {
    return ("Counts contradict each other: in all, they lie %s times as far off as measuring and luck"
            + " explain, so that only %s of this figure rests on your records. Look in sheet Records"
            + " (column z) for a list in another unit or a wrong count.")
        .formatted(words.one(Math.sqrt(phi)), FitPhrases.percent(value.weight()));
  }

  /** What to do at the end of growth. */
  String measureThem() {
    return "measure the same 20 tagged trees each " + past.endOfGrowth();
  }

  private String season(int year) {
    Month start = past.scenario().nursery().settings().seasonStart();
    return FitPhrases.season(year, start == Month.JANUARY);
  }
}
