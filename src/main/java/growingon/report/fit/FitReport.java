package growingon.report.fit;

import growingon.fit.Fit;
import growingon.nursery.Inputs;
import growingon.nursery.Settings;
import growingon.nursery.species.LibrarySite;
import growingon.nursery.species.Species;
import growingon.problem.Problem;
import growingon.report.build.FilledSheet;
import growingon.report.model.Answer;
import growingon.report.model.Report;
import growingon.report.model.Sheet;
import growingon.report.text.Phrases;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Puts the report of a fit together: what the records say of the assumptions. */
public final class FitReport {
  private FitReport() {}

  /** What the report of a plan's fit is called. */
  public static String title(String plan) {
    return plan + ", fit";
  }

  /**
   * Describes a fit.
   *
   * @param inputs what was read
   * @param problems everything found while reading; what is wrong in the records is added
   */
  public static Report of(Inputs inputs, List<Problem> problems, Fit fit) {
    Set<Problem> all = new LinkedHashSet<>(problems);
    all.addAll(fit.problems());
    Settings settings = inputs.scenario().nursery().settings();
    Phrases say = Phrases.of(settings);
    FitWords words = new FitWords(settings, fit, say);
    FitTables tables = new FitTables(fit);
    FitCharts charts = new FitCharts(fit, say);
    return Report.of(
            title(inputs.scenario().plan().name()),
            settings.name(),
            say,
            fit.covers().first().toString())
        .sheets(sheets(words, tables, charts))
        .extra(List.of(tables.values(), tables.records()))
        .charts(charts.all())
        .headlines(words.headlines())
        .problems(List.copyOf(all))
        .answers(answers(words))
        .build();
  }

  /**
   * The numbers that are proposed otherwise than the files have them now, with what is to be said
   * beside each.
   *
   * @param now species as the files have them
   */
  public static List<SpeciesEdit> proposal(Fit fit, Map<String, Species> now) {
    return FitProposal.edits(fit, now);
  }

  /** What to put into the settings so that library species grow as fast as here, if it is new. */
  public static Optional<String> siteSpeed(Fit fit, LibrarySite site) {
    return fit.siteSpeed().filter(speed -> !speed.isThere(site)).map(FitProposal::siteSpeed);
  }

  private static List<Sheet> sheets(FitWords words, FitTables tables, FitCharts charts) {
    List<Sheet> sheets = new ArrayList<>();
    sheets.add(new Sheet("Summary", words.summary(), List.of(), charts.first(), true));
    sheets.add(
        new Sheet(
            "Values",
            words.values(),
            List.of(tables.figures(), tables.grounds()),
            charts.growth(),
            false));
    sheets.add(FilledSheet.of("What it changes", words.saleable(), tables.saleable()));
    sheets.add(
        new Sheet("Records", words.records(), List.of(tables.intervals()), List.of(), false));
    sheets.add(FilledSheet.of("Losses", words.losses(), tables.losses()));
    sheets.add(
        new Sheet(
            "Seasons",
            words.seasons(),
            List.of(tables.seasons(), tables.checked()),
            charts.seasons(),
            false));
    sheets.add(
        new Sheet(
            "Forecasts",
            words.forecasts(),
            List.of(tables.scores(), tables.ahead()),
            charts.forecasts(),
            false));
    sheets.add(new Sheet("Notes", words.notes(), List.of(), List.of(), true));
    return sheets;
  }

  private static List<Answer> answers(FitWords words) {
    List<Answer> answers = new ArrayList<>();
    answers.add(
        new Answer("What the records say", words.verdicts(), List.of(), List.of("fit-figures")));
    answers.add(
        new Answer("What it changes", words.saleable(), List.of(), List.of("fit-saleable")));
    answers.add(
        new Answer(
            "How good the forecasts were",
            words.forecasts(),
            List.of(),
            List.of("forecast-scores")));
    answers.add(
        new Answer("What was not used", words.refused(), List.of(), List.of("fit-intervals")));
    answers.add(new Answer("What to measure next", words.next(), List.of(), List.of()));
    return answers;
  }
}
