package growingon.fit.loss;

import growingon.fit.evidence.Evidence;
import growingon.fit.evidence.LossSpan;
import growingon.fit.loss.Losses.Gone;
import growingon.fit.past.FitRecords;
import growingon.fit.past.Past;
import growingon.fit.value.Value;
import growingon.fit.value.Value.Verdict;
import growingon.fit.value.Value.What;
import growingon.fit.value.ValueBuilder;
import growingon.fit.verdict.FitPhrases;
import growingon.fit.verdict.Verdicts;
import growingon.nursery.species.Species;
import growingon.nursery.species.Sure;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/** How many plants of each species are lost, and whether the records say so. */
public final class LossJudging {
  private final Past past;
  private final FitPhrases words;
  private final Evidence evidence;

  public LossJudging(Evidence evidence) {
    this.evidence = evidence;
    this.past = evidence.past();
    this.words = FitPhrases.of(past);
  }

  /** First-year and later losses of every species. */
  public List<Value> losses() {
    List<Value> values = new ArrayList<>();
    for (Species species : Verdicts.inOrder(past)) {
      FitRecords.Prior prior = past.records().prior(species.name());
      values.add(
          loss(
              species,
              What.FIRST_YEAR_LOSS,
              species.firstYearLoss(),
              prior.firstYearSure(),
              Losses.ofLots(species.lossSpread())));
      values.add(
          loss(
              species,
              What.LATER_LOSS,
              species.laterLoss(),
              prior.laterSure(),
              Losses.ofSeasons(species.lossSpread())));
    }
    return values;
  }

  private List<Losses.Unit> units(Species species, What what, double loss, Gone gone) {
    return what == What.LATER_LOSS
        ? Losses.later(evidence.spans(), species.name(), loss, gone)
        : Losses.firstYear(evidence.spans(), species.name(), loss, gone);
  }

  /** A loss as learnt, with a range that holds whatever became of plants gone without a line. */
  private Losses.Learnt learnt(
      Species species, What what, double old, double plants, double variance, boolean isOpen) {
    Function<Gone, Losses.Learnt> learn =
        gone -> Losses.learn(old, plants, variance, units(species, what, old, gone));
    Losses.Learnt learnt = learn.apply(Gone.DIED_IF_LIKELY);
    Losses.Learnt widest = isOpen ? learnt.upTo(learn.apply(Gone.DIED)) : learnt;
    return past.sales().isEmpty() ? widest.downTo(learn.apply(Gone.SOLD_IF_LIKELY)) : widest;
  }

  /** Whether more plants are gone somewhere than deaths explain. */
  private boolean hasUnexplained(Species species, What what) {
    return evidence.spans().stream()
        .filter(span -> !span.isUsed() && span.species().equals(species.name()))
        .flatMap(span -> span.months().stream())
        .anyMatch(month -> month.firstYear() == (what == What.FIRST_YEAR_LOSS));
  }

  private Value loss(Species species, What what, double old, double sure, double variance) {
    boolean known = sure >= 1;
    double plants = Sure.plants(known ? 0.999 : sure);
    boolean hasUnexplained = hasUnexplained(species, what);
    // Plants may have died that nothing is learnt from; who writes deaths down would have said so.
    boolean isOpen = hasUnexplained && !past.saysDeaths();
    Losses.Learnt learnt = learnt(species, what, old, plants, variance, isOpen);
    List<Losses.Unit> units = learnt.units();
    boolean agrees = old >= learnt.p10() && old <= learnt.p90();
    Verdict verdict =
        units.isEmpty() && !hasUnexplained
            ? Verdict.NO_RECORDS
            : Verdicts.verdict(learnt.weight(), agrees);
    verdict = known && !units.isEmpty() ? Verdict.KNOWN : verdict;
    boolean bySeason = what == What.LATER_LOSS;
    double inFile =
        verdict == Verdict.CHANGED ? FitPhrases.rounded(100 * learnt.loss()) : 100 * old;
    ValueBuilder said =
        Value.of(species.name(), what, verdict)
            .old(100 * old)
            .value(100 * (known ? old : learnt.loss()))
            .p10(100 * learnt.p10())
            .p90(100 * learnt.p90())
            .counts(units.size())
            .lots(bySeason ? lots(species.name(), false) : units.size())
            .seasons(bySeason ? units.size() : seasons(species.name()))
            .weight(learnt.weight())
            .inFile(inFile)
            .sureOld(sure)
            .sureNew(known ? sure : Sure.ofPlants(learnt.plants()));
    Value value = said.build();
    return said.why(ofLoss(value, units) + withoutALine(value, isOpen)).build();
  }

  /** That a range is wide as nobody knows what became of plants gone without a line. */
  private String withoutALine(Value value, boolean isOpen) {
    boolean isTold = value.verdict() != Verdict.NO_RECORDS && value.verdict() != Verdict.KNOWN;
    if (!isTold || !isOpen && !past.sales().isEmpty()) {
      return "";
    }
    return isOpen
        ? " More plants are gone somewhere than deaths explain, and no line says how; the range holds"
            + " whether they died or not. Write sales and deaths down, even as one line."
        : " No sale is written down, so plants gone may have been sold; the range holds whether they"
            + " died or not. Write sales and deaths down, even as one line.";
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
                    ? FitPhrases.count(value.counts(), "season", "seasons")
                    : FitPhrases.count(value.counts(), "lot", "lots"));
    String range =
        "%s %% a year (%s to %s)"
            .formatted(words.one(value.value()), words.one(value.p10()), words.one(value.p90()));
    return switch (value.verdict()) {
      case CHANGED ->
          "Changed: %s, not %s. From %s; rests %s on your records."
              .formatted(range, words.one(value.old()), from, FitPhrases.percent(value.weight()));
      case AGREES ->
          "Agrees: %s, and %s was assumed. From %s; rests %s on your records."
              .formatted(range, words.one(value.old()), from, FitPhrases.percent(value.weight()));
      case TOO_THIN ->
          "Too few counts to tell: %s; it rests %s on your records, and half is needed. Best: count every lot each %s."
              .formatted(from, FitPhrases.percent(value.weight()), past.endOfGrowth());
      case KNOWN -> "Taken as known: its loss sure % is 100.";
      default -> "No records: count every lot each %s.".formatted(past.endOfGrowth());
    };
  }
}
