package growingon.fit.growth;

import growingon.fit.evidence.Evidence;
import growingon.fit.loss.Losses;
import growingon.fit.loss.Losses.Gone;
import growingon.fit.past.Measured;
import growingon.fit.past.Past;
import growingon.fit.value.Lacking;
import growingon.fit.value.Value;
import growingon.fit.value.Value.Verdict;
import growingon.fit.value.Value.What;
import growingon.fit.verdict.FitPhrases;
import growingon.fit.verdict.Verdicts;
import growingon.nursery.species.Curve;
import growingon.nursery.species.Species;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** How unlike plants and seasons are, and whether the records say so. */
public final class SpreadJudging {
  private static final int PLANTS_FOR_VIGOUR = 20;
  private static final int SEASONS_FOR_VIGOUR = 2;
  private static final double READING_ERRORS = 4;
  private static final int SEASONS_FOR_YEARS = 6;
  private static final int COUNTS_FOR_YEARS = 20;
  private static final int SEASONS_FOR_LOSSES = 6;
  private static final double DEATHS_FOR_LOSSES = 3;

  private final Past past;
  private final FitPhrases words;
  private final Evidence evidence;

  public SpreadJudging(Evidence evidence) {
    this.evidence = evidence;
    this.past = evidence.past();
    this.words = FitPhrases.of(past);
  }

  /** Spreads between plants, from those that were tagged. */
  public Value vigour(Species species, SpeedFit.Fitted fitted) {
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
                FitPhrases.count(growths.size(), "tagged plant", "tagged plants"),
                FitPhrases.count(seasons.size(), "season", "seasons"));
    String from = FitPhrases.count(growths.size(), "tagged plant", "tagged plants");
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

  private Value spread(
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
        verdict == Verdict.CHANGED ? FitPhrases.rounded(100 * learnt.spread()) : 100 * learnt.old();
    return Value.of(species, what, verdict)
        .old(100 * learnt.old())
        .value(100 * learnt.spread())
        .p10(100 * learnt.p10())
        .p90(100 * learnt.p90())
        .counts(counts)
        .lots(lots)
        .seasons(seasons)
        .weight(learnt.weight())
        .inFile(inFile)
        .why(why)
        .build();
  }

  private String ofSpread(Spreads.Learnt learnt, Verdict verdict, String thin, String from) {
    String range =
        "%s %% (%s to %s)"
            .formatted(
                words.one(100 * learnt.spread()),
                words.one(100 * learnt.p10()),
                words.one(100 * learnt.p90()));
    String old = words.one(100 * learnt.old());
    return switch (verdict) {
      case CHANGED -> "Changed: %s, not %s %%. From %s.".formatted(range, old, from);
      case AGREES -> "Agrees: %s, and %s %% was assumed. From %s.".formatted(range, old, from);
      case TOO_THIN -> "Too few counts to tell: " + thin;
      default -> "No records: " + thin;
    };
  }

  /** Spreads between seasons, all by one factor. */
  public List<Value> years(SpeedFit.Fitted fitted) {
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
    String thin = thinYears(seasons.size(), fitted.used().size());
    List<Value> values = new ArrayList<>();
    for (Species species : Verdicts.inOrder(past)) {
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

  /** What the spread between seasons lacks. */
  static String thinYears(int seasons, int counts) {
    return Lacking.of(
            new Lacking(seasons, SEASONS_FOR_YEARS, "seasons"),
            new Lacking(counts, COUNTS_FOR_YEARS, "counts"))
        + " needed before the spread between seasons can be told.";
  }

  /** Spreads of the later loss between seasons. */
  public Value lossSpread(Species species) {
    List<Losses.Unit> seasons =
        Losses.later(evidence.spans(), species.name(), species.laterLoss(), Gone.DIED_IF_LIKELY);
    long telling =
        seasons.stream()
            .filter(each -> each.exposure() * species.laterLoss() >= DEATHS_FOR_LOSSES)
            .count();
    boolean told =
        seasons.size() > 1
            && species.lossSpread() > 0
            && seasons.stream().mapToDouble(Losses.Unit::deaths).sum() > 0;
    Spreads.Learnt learnt =
        told
            ? Spreads.losses(seasons, species.lossSpread())
            : Spreads.together(0, 0, species.lossSpread());
    String thin =
        telling < SEASONS_FOR_LOSSES
            ? "%d of 6 seasons with 3 deaths to be expected in each needed.".formatted(telling)
            : species.lossSpread() == 0
                ? "it is taken as known."
                : "no plant died in them, so nothing tells the seasons apart.";
    return spread(
        species.name(),
        What.LOSS_SPREAD,
        learnt,
        seasons.size(),
        0,
        seasons.size(),
        telling >= SEASONS_FOR_LOSSES && told,
        thin,
        FitPhrases.count(seasons.size(), "season", "seasons"));
  }
}
