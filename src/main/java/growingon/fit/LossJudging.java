package growingon.fit;

import growingon.fit.Value.Verdict;
import growingon.fit.Value.What;
import growingon.nursery.Species;
import growingon.nursery.Sure;
import java.util.ArrayList;
import java.util.List;

/** How many plants of each species are lost, and whether the records say so. */
final class LossJudging {
  private final Past past;
  private final Words words;
  private final Evidence evidence;

  LossJudging(Evidence evidence) {
    this.evidence = evidence;
    this.past = evidence.past();
    this.words = Words.of(past);
  }

  /** First-year and later losses of every species. */
  List<Value> losses() {
    List<Value> values = new ArrayList<>();
    for (Species species : Judging.inOrder(past)) {
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
    double plants = Sure.plants(known ? 0.999 : sure);
    Losses.Learnt learnt = Losses.learn(old, plants, variance, units);
    boolean agrees = old >= learnt.p10() && old <= learnt.p90();
    Verdict verdict =
        units.isEmpty() ? Verdict.NO_RECORDS : Judging.verdict(learnt.weight(), agrees);
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
            known ? sure : Sure.ofPlants(learnt.plants()),
            "");
    return Judging.told(value, ofLoss(value, units));
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

  private String ofLoss(Value value, List<Losses.Unit> units) {
    double deaths = units.stream().mapToDouble(Losses.Unit::deaths).sum();
    double exposure = units.stream().mapToDouble(Losses.Unit::exposure).sum();
    String from =
        "%s dead in %s plant-years, %s"
            .formatted(
                words.one(deaths),
                words.whole(exposure),
                value.what() == What.LATER_LOSS
                    ? Words.count(value.counts(), "season", "seasons")
                    : Words.count(value.counts(), "lot", "lots"));
    String range =
        "%s %% a year (%s to %s)"
            .formatted(words.one(value.value()), words.one(value.p10()), words.one(value.p90()));
    return switch (value.verdict()) {
      case CHANGED ->
          "Changed: %s, not %s. From %s; rests %s on your records."
              .formatted(range, words.one(value.old()), from, Words.percent(value.weight()));
      case AGREES ->
          "Agrees: %s, and %s was assumed. From %s; rests %s on your records."
              .formatted(range, words.one(value.old()), from, Words.percent(value.weight()));
      case TOO_THIN ->
          "Too few counts to tell: %s; it rests %s on your records, and half is needed. Best: count every lot each October."
              .formatted(from, Words.percent(value.weight()));
      case KNOWN -> "Taken as known: its loss sure % is 100.";
      default -> "No records: count every lot each October.";
    };
  }
}
