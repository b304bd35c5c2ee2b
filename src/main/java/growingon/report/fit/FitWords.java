package growingon.report.fit;

import growingon.fit.Fit;
import growingon.fit.RecordRow;
import growingon.fit.evidence.Saleable;
import growingon.fit.score.ForecastScore;
import growingon.fit.value.Value;
import growingon.fit.value.Value.Verdict;
import growingon.fit.value.Value.What;
import growingon.nursery.Settings;
import growingon.report.text.Phrases;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.lang3.StringUtils;

/** What a fit says, in sentences. */
final class FitWords {
  private final String nursery;
  private final String measured;
  private final Fit fit;
  private final Phrases say;
  private final ValueWords values;

  FitWords(Settings settings, Fit fit, Phrases say) {
    this.say = say;
    this.nursery = settings.name();
    this.measured = settings.hemisphere().endOfGrowth();
    this.fit = fit;
    this.values = new ValueWords(fit, say, measured);
  }

  /** What the terminal shows. */
  List<String> headlines() {
    List<String> lines = new ArrayList<>();
    lines.add(basis());
    if (!fit.hasRecords()) {
      lines.addAll(nothingYet());
      return lines;
    }
    for (Value each : changed()) {
      lines.add("  " + values.line(each));
    }
    values.agrees().ifPresent(lines::add);
    values.tooThin().ifPresent(lines::add);
    siteSpeed().ifPresent(lines::add);
    lines.add(yearsLine());
    nextSeason().ifPresent(lines::add);
    lines.add(forecastLine());
    return lines;
  }

  private String basis() {
    Fit.Covers covers = fit.covers();
    return "%s: what %s say, %s to %s (%s). %s used, %d refused (sheet Records)."
        .formatted(
            nursery,
            Phrases.list(said(covers)),
            say.month(covers.first()),
            say.month(covers.last()),
            say.counted(covers.seasons(), "season", "seasons"),
            say.counted(covers.used(), "interval", "intervals"),
            covers.refused());
  }

  private List<String> said(Fit.Covers covers) {
    List<String> words = new ArrayList<>();
    if (covers.counts() > 0 || covers.tagged() == 0) {
      words.add(
          "%s of %s"
              .formatted(
                  say.counted(covers.counts(), "count", "counts"),
                  say.counted(covers.lots(), "lot", "lots")));
    }
    if (covers.tagged() > 0) {
      words.add(say.counted(covers.tagged(), "tagged plant", "tagged plants"));
    }
    if (covers.sales() > 0 || (covers.receipts() == 0 && covers.counts() > 0)) {
      words.add(say.counted(covers.sales(), "line of sales", "lines of sales"));
    }
    if (covers.receipts() > 0) {
      words.add(say.counted(covers.receipts(), "receipt", "receipts"));
    }
    return words;
  }

  /** Those that move most first. */
  private List<Value> changed() {
    Map<String, Double> moved = new LinkedHashMap<>();
    for (Saleable each : fit.saleable()) {
      moved.merge(each.species(), Math.abs(each.difference()), Double::sum);
    }
    return fit.changed().stream()
        .sorted(
            Comparator.comparingDouble((Value each) -> -moved.getOrDefault(each.species(), 0.0)))
        .toList();
  }

  private Optional<String> siteSpeed() {
    return fit.siteSpeed()
        .map(
            each ->
                "Your site: %d library species grow %s times as fast as the library says; that may go into the settings as site speed."
                    .formatted(each.species(), values.hundredths(each.rounded())));
  }

  private String yearsLine() {
    String told =
        fit.values().stream()
                .anyMatch(
                    each ->
                        each.what() == What.YEAR_SPREAD
                            && (each.verdict() == Verdict.AGREES || each.isChanged()))
            ? "Spread between seasons: told by " + fit.covers().seasons() + " seasons."
            : "Spread between seasons: not to be told from %s; it takes 6."
                .formatted(say.counted(fit.covers().seasons(), "season", "seasons"));
    return told + poorest();
  }

  /** The season that stands out, if one does. */
  private String poorest() {
    Map<String, double[]> bySeason = new LinkedHashMap<>();
    for (Fit.Season each : fit.seasons()) {
      double[] sum = bySeason.computeIfAbsent(each.season(), none -> new double[2]);
      sum[0] += Math.log(each.factor());
      sum[1]++;
    }
    return bySeason.entrySet().stream()
        .map(each -> Map.entry(each.getKey(), Math.exp(each.getValue()[0] / each.getValue()[1])))
        .max(Comparator.comparingDouble(each -> Math.abs(Math.log(each.getValue()))))
        .filter(each -> Math.abs(Math.log(each.getValue())) > 0.03)
        .map(
            each ->
                " %s was a %s one (%s)."
                    .formatted(
                        each.getKey(),
                        each.getValue() < 1 ? "poor" : "good",
                        values.hundredths(each.getValue())))
        .orElse("");
  }

  private Optional<String> nextSeason() {
    if (fit.saleable().isEmpty() || fit.changed().isEmpty()) {
      return Optional.empty();
    }
    String season = fit.saleable().get(0).season();
    List<Saleable> next =
        fit.saleable().stream().filter(each -> each.season().equals(season)).toList();
    double old = next.stream().mapToDouble(Saleable::old).sum();
    double now = next.stream().mapToDouble(Saleable::now).sum();
    String most =
        next.stream()
            .max(Comparator.comparingDouble(each -> Math.abs(each.difference())))
            .map(
                each ->
                    " (%s %s %s, not %s)"
                        .formatted(
                            each.species(),
                            each.grade(),
                            say.whole(each.now()),
                            say.whole(each.old())))
            .orElse("");
    return Optional.of(
        "Next season (%s) with these values: %s saleable plants, %s%s."
            .formatted(
                season,
                say.whole(now),
                Math.round(now) == Math.round(old) ? "as many as before" : "not " + say.whole(old),
                most));
  }

  private String forecastLine() {
    List<ForecastScore> all =
        fit.scores().stream().filter(each -> each.figure().equals("all")).toList();
    if (all.isEmpty()) {
      return "Forecasts: no kept plan with draws to score; keep one with plan … --keep.";
    }
    int scored = all.stream().mapToInt(ForecastScore::scored).sum();
    int inside = all.stream().mapToInt(ForecastScore::inside).sum();
    String verdict = all.get(all.size() - 1).verdict();
    return "Forecasts: %d of %d figures inside P10 to P90 (%s): %s."
        .formatted(
            inside,
            scored,
            say.counted(all.size(), "kept plan", "kept plans"),
            verdict.contains("too few") ? "too few to judge" : verdict);
  }

  private List<String> nothingYet() {
    return List.of(
        "Nothing can be told yet.",
        "Next "
            + measured
            + ": mark 20 trees of each lot (every fifth down the row), measure them, and"
            + " write them into the table records; count every lot. The year after, measure the same"
            + " ones again.");
  }

  List<String> summary() {
    List<String> sentences = new ArrayList<>();
    sentences.add(basis());
    sentences.addAll(verdicts());
    nextSeason().ifPresent(sentences::add);
    sentences.add(forecastLine());
    sentences.addAll(next());
    return sentences;
  }

  /** What became of each value, those that changed first. */
  List<String> verdicts() {
    if (!fit.hasRecords()) {
      return nothingYet();
    }
    List<String> sentences = new ArrayList<>();
    for (Value each : changed()) {
      sentences.add(
          "%s %s; %s of it rests on your records."
              .formatted(
                  StringUtils.capitalize(ValueWords.subject(each)),
                  values.said(each),
                  say.percent(each.weight())));
    }
    if (sentences.isEmpty()) {
      sentences.add("No figure of yours is contradicted by the records.");
    }
    values.agrees().ifPresent(sentences::add);
    values.tooThin().ifPresent(sentences::add);
    siteSpeed().ifPresent(sentences::add);
    sentences.add(yearsLine());
    return sentences;
  }

  List<String> values() {
    return List.of(
        "A growth speed is a factor on what was assumed first; mm a year are those at the mean"
            + " trunk of the records. Losses and spreads are per cent. Weight: how much of the new"
            + " figure rests on your records.");
  }

  List<String> saleable() {
    List<String> sentences = new ArrayList<>();
    nextSeason().ifPresent(sentences::add);
    sentences.add(
        fit.changed().isEmpty()
            ? "No value is changed, so nothing is."
            : "Two runs from what is there now, with the old and with the proposed values: plants"
                + " sold in the season and ready at its end.");
    return sentences;
  }

  List<String> records() {
    Fit.Covers covers = fit.covers();
    return List.of(
        "%s used, %d refused. What is refused is told with its reason; put it right and run again."
            .formatted(say.counted(covers.used(), "interval", "intervals"), covers.refused()));
  }

  List<String> losses() {
    return List.of(
        "Exposure: plants times years under the loss. First-year losses by lot, later ones by"
            + " season. Deaths after the last count wait until a count closes them.");
  }

  List<String> seasons() {
    return fit.seasons().isEmpty()
        ? List.of("No season has counts at its beginning and end yet.")
        : List.of(
            "How well each species grew in each season against an ordinary one. Shown only: it goes"
                + " into no value.");
  }

  List<String> forecasts() {
    List<String> sentences = new ArrayList<>();
    sentences.add(forecastLine());
    if (fit.otherSales() > 0) {
      sentences.add("Other sales than planned: %d trunks not scored.".formatted(fit.otherSales()));
    }
    fit.ahead().stream()
        .filter(each -> each.species().isEmpty())
        .forEach(
            each ->
                sentences.add(
                    "The assumptions now, one count ahead: %d of %d counts inside their 80 %% range."
                        .formatted(each.inside(), each.intervals())));
    fit.heldBack()
        .ifPresent(
            each ->
                sentences.add(
                    "Fitted without %s, its counts are off by %s mm with the old values and %s mm with the new; measuring alone would put them off by %s mm%s."
                        .formatted(
                            each.season(),
                            values.hundredths(each.oldMm()),
                            values.hundredths(each.newMm()),
                            values.hundredths(each.measuringMm()),
                            each.newMm() >= each.oldMm() ? "; no better, so far" : "")));
    return sentences;
  }

  List<String> refused() {
    List<String> sentences =
        fit.records().stream()
            .filter(each -> !each.used())
            .map(this::refusal)
            .distinct()
            .limit(12)
            .toList();
    return sentences.isEmpty() ? List.of("Everything was used.") : sentences;
  }

  private String refusal(RecordRow each) {
    return each.why().startsWith(each.subject())
        ? each.why()
        : "%s, %s: %s.".formatted(each.subject(), months(each), each.why());
  }

  private String months(RecordRow each) {
    return each.from().equals(each.to())
        ? say.month(each.from())
        : say.month(each.from()) + " to " + say.month(each.to());
  }

  List<String> notes() {
    return FitNotes.ALL.stream().map(say.writing()::told).toList();
  }

  List<String> next() {
    return List.of(
        values.next().map(best -> best + " ").orElse("")
            + "Mark every fifth tree down the row, 20 of a lot, or 10 of a lot under 60; measure the"
            + " same ones at the end of growth; sell them if you must, and write it down.");
  }
}
