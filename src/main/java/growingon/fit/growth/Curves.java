package growingon.fit.growth;

import static java.util.stream.Collectors.joining;

import growingon.fit.evidence.Evidence;
import growingon.fit.evidence.Interval;
import growingon.fit.evidence.SpansByLot;
import growingon.fit.past.Measured;
import growingon.fit.value.Lacking;
import growingon.fit.value.Value;
import growingon.fit.value.Value.Verdict;
import growingon.fit.value.Value.What;
import growingon.fit.verdict.FitPhrases;
import growingon.growth.CurveFit;
import growingon.growth.TwoTrunks;
import growingon.nursery.species.Curve;
import growingon.nursery.species.Species;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;

/**
 * Whether another growth law says better how plants of a kind grow: by those that were tagged, and
 * by lots of which nothing was sold.
 */
public final class Curves {
  private static final int GROWTHS = 120;
  private static final int SUBJECTS = 30;
  private static final int SEASONS = 3;
  private static final double THICKEST_TO_THINNEST = 3;
  private static final double LARGEST_SIZE = 2;
  private static final double BETTER_BY = 6;

  private final Evidence evidence;
  private final SpansByLot spans;

  public Curves(Evidence evidence) {
    this.evidence = evidence;
    this.spans = new SpansByLot(evidence.spans());
  }

  /** What a kind has grown. */
  private static final class Seen {
    final List<TwoTrunks> growths = new ArrayList<>();
    final Set<String> subjects = new TreeSet<>();
    final Set<Integer> seasons = new TreeSet<>();

    void add(String subject, double from, double to, double years, Set<Integer> in, double vigour) {
      double ofGrowth = vigour * (to - from);
      double error = 2 * Measured.READING_MM * Measured.READING_MM;
      growths.add(new TwoTrunks(from, to, years, Math.sqrt(error + ofGrowth * ofGrowth)));
      subjects.add(subject);
      seasons.addAll(in);
    }

    double thickest() {
      return growths.stream()
          .mapToDouble(each -> Math.max(each.fromMm(), each.toMm()))
          .max()
          .orElse(0);
    }

    boolean isEnough() {
      return lacking().isEmpty();
    }

    /** What there is too little of to tell another curve, as in a sentence; empty if of nothing. */
    String lacking() {
      double most = growths.stream().mapToDouble(TwoTrunks::fromMm).max().orElse(0);
      double least = growths.stream().mapToDouble(TwoTrunks::fromMm).min().orElse(1);
      String numbers =
          Lacking.of(
              new Lacking(growths.size(), GROWTHS, "growths"),
              new Lacking(subjects.size(), SUBJECTS, "plants or lots"),
              new Lacking(seasons.size(), SEASONS, "seasons"));
      String sizes =
          most < THICKEST_TO_THINNEST * least ? "trunks from thin to three times as thick" : "";
      return Stream.of(numbers, sizes).filter(each -> !each.isEmpty()).collect(joining("; "));
    }
  }

  /** A value for each kind of which anything was seen. */
  public List<Value> values() {
    TreeMap<Kind, Seen> kinds = new TreeMap<>();
    for (Evidence.TaggedPlant plant : evidence.plants()) {
      for (Evidence.PlantGrowth each : plant.steps()) {
        seen(kinds, plant.species(), each.condition())
            .add(
                plant.name(),
                each.fromMm(),
                each.toMm(),
                each.years(),
                each.seasons(),
                vigour(plant.species()));
      }
    }
    for (Interval each : evidence.used()) {
      boolean isOfOne = !each.isTagged() && each.byCondition().size() == 1 && nothingSold(each);
      if (isOfOne) {
        seen(kinds, each.species(), each.condition())
            .add(
                each.subject(),
                each.first().meanMm(),
                each.second().meanMm(),
                each.clock(),
                Set.copyOf(each.seasons()),
                vigour(each.species()));
      }
    }
    List<Value> values = new ArrayList<>();
    kinds.forEach((kind, seen) -> values.add(value(kind, seen)));
    return values;
  }

  private double vigour(String species) {
    return evidence.past().assumed().get(species).vigourSpread();
  }

  private boolean nothingSold(Interval interval) {
    return spans.within(interval.subject(), interval).stream().allMatch(span -> span.sold() == 0);
  }

  private static Seen seen(TreeMap<Kind, Seen> kinds, String species, String condition) {
    return kinds.computeIfAbsent(new Kind(species, condition), each -> new Seen());
  }

  private Value value(Kind kind, Seen seen) {
    Species species = evidence.past().assumed().get(kind.species());
    Curve now = species.growth().get(kind.condition());
    if (now == null || !seen.isEnough()) {
      return value(
          kind,
          seen,
          Verdict.TOO_THIN,
          "Too few counts to tell another curve: %s needed.".formatted(seen.lacking()));
    }
    List<CurveFit> fits = CurveFit.ofEveryLaw(seen.growths);
    double own =
        fits.stream()
            .filter(each -> each.isOfTheLawOf(now))
            .mapToDouble(CurveFit::aicc)
            .findFirst()
            .orElse(Double.POSITIVE_INFINITY);
    boolean better =
        !fits.isEmpty()
            && fits.get(0).aicc() <= own - BETTER_BY
            && fits.get(0).finalMm().orElse(0) <= LARGEST_SIZE * seen.thickest();
    return better
        ? value(
            kind,
            seen,
            Verdict.CHANGED,
            "Changed: another law says better how it grows. To use it, put into species.json: %s."
                .formatted(json(kind.condition(), fits.get(0).curve())))
        : value(kind, seen, Verdict.AGREES, "Agrees: no other law says better how it grows.");
  }

  private static Value value(Kind kind, Seen seen, Verdict verdict, String why) {
    double none = Double.NaN;
    return Value.of(kind.species(), What.CURVE, verdict)
        .condition(kind.condition())
        .counts(seen.growths.size())
        .lots(seen.subjects.size())
        .seasons(seen.seasons.size())
        .why(why)
        .build();
  }

  /** As a line of species.json. */
  private static String json(String condition, Curve curve) {
    String parameters =
        curve.parameters().entrySet().stream()
            .map(each -> "\"%s\": %s".formatted(each.getKey(), FitPhrases.number(each.getValue())))
            .collect(joining(", "));
    return "\"%s\": { \"curve\": \"%s\", %s }".formatted(condition, curve.law(), parameters);
  }
}
