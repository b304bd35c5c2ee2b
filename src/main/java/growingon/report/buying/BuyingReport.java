package growingon.report.buying;

import growingon.buying.answer.Answer;
import growingon.buying.answer.HoldAnswer;
import growingon.buying.question.Question.Scope;
import growingon.nursery.Inputs;
import growingon.nursery.Settings;
import growingon.problem.Problem;
import growingon.report.model.Chart;
import growingon.report.model.Report;
import growingon.report.model.Sheet;
import growingon.report.model.Table;
import growingon.report.text.Cautions;
import growingon.report.text.Phrases;
import growingon.report.text.Sentences;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/** Puts the report of what to buy and to hold together. */
public final class BuyingReport {
  /** Tables of the recommended plan that the answer's figures hold too. */
  private static final Set<String> OF_THE_PLAN =
      Set.of(
          "sales-by-season",
          "bench-space",
          "hours",
          "cash",
          "cash-by-season",
          "bought-lots",
          "lot-verdicts");

  private BuyingReport() {}

  /** What the report is called. */
  public static String title(String plan) {
    return plan + ", buying";
  }

  /**
   * Describes an answer.
   *
   * @param problems everything found while reading
   * @param planned the report of the recommended plan, whose figures the answer's hold too
   */
  public static Report of(Answer answer, List<Problem> problems, Report planned) {
    Inputs inputs = answer.inputs();
    Settings settings = inputs.scenario().nursery().settings();
    BuyingFigures figures = new BuyingFigures(answer);
    BuyingTables tables = new BuyingTables(figures);
    BuyingOfferTables offers = new BuyingOfferTables(figures);
    BuyingCharts charts = new BuyingCharts(figures);
    BuyingWords words = new BuyingWords(figures);
    List<Table> extra = new ArrayList<>(List.of(offers.quantities()));
    planned.sheets().stream()
        .flatMap(sheet -> sheet.tables().stream())
        .filter(table -> OF_THE_PLAN.contains(table.name()))
        .forEach(extra::add);
    return Report.of(
            title(inputs.scenario().plan().name()),
            settings.name(),
            figures.say,
            inputs.scenario().plan().firstMonth().toString())
        .sheets(sheets(answer, figures, tables, offers, charts, words))
        .charts(charts.all())
        .extra(extra)
        .headlines(words.headlines())
        .problems(problems)
        .answers(
            List.of(
                new growingon.report.model.Answer(
                    "What to buy and to hold",
                    words.sentences(),
                    List.of(),
                    List.of("buying-plans"))))
        .build();
  }

  private static List<Sheet> sheets(
      Answer answer,
      BuyingFigures figures,
      BuyingTables tables,
      BuyingOfferTables offers,
      BuyingCharts charts,
      BuyingWords words) {
    List<Sheet> sheets = new ArrayList<>();
    List<String> first = new ArrayList<>(List.of(BuyingCharts.PLANS));
    charts.all().stream()
        .map(Chart::name)
        .filter(name -> name.equals(BuyingCharts.ROOM))
        .forEach(first::add);
    sheets.add(new Sheet("Answer", words.sentences(), List.of(tables.plans()), first, true));
    if (!answer.offers().isEmpty()) {
      sheets.add(
          new Sheet(
              "Offers",
              List.of(Sentences.WITHOUT_VAT, Cautions.PLANT_HEALTH),
              List.of(offers.offers(), offers.gains()),
              List.of(),
              false));
      sheets.add(
          new Sheet(
              "How many",
              List.of("What other numbers of each offer would gain, one chart an offer."),
              List.of(),
              charts.numbersNames(),
              true));
    }
    if (answer.wish().scope() != Scope.PURCHASES && !answer.holds().isEmpty()) {
      sheets.add(new Sheet("Sell or hold", List.of(), List.of(tables.holds()), List.of(), false));
    }
    List<String> worth = answer.limitsWorth().isEmpty() ? List.of() : List.of(BuyingCharts.LIMITS);
    sheets.add(
        new Sheet(
            "What holds you back",
            List.of(words.limits()),
            List.of(tables.limits()),
            worth,
            false));
    sheets.add(
        new Sheet("Notes", notes(answer, figures), List.of(tables.certificate()), List.of(), true));
    return sheets;
  }

  private static List<String> notes(Answer answer, BuyingFigures figures) {
    Phrases say = figures.say;
    List<String> notes = new ArrayList<>();
    notes.add(
        "What is decided now: how many of each offer, and what share of each lot is held to a better"
            + " grade. Growth, losses, demand and prices come later, and the plan's own rule of sale"
            + " answers them; nothing looks ahead.");
    notes.add(
        "Every plan that was looked at was run on the real model, with whole packs, price steps,"
            + " carriage, shared demand and room month by month.");
    notes.add(
        answer.draws() == 0
            ? "There is no luck in it: the plan's line stands for all."
            : "It was chosen on draws of its own and judged on %s others, the plan's own."
                .formatted(say.whole(answer.draws())));
    notes.add(
        "It keeps within the room, the hours and the lowest cash that there are, on the plan's line;"
            + " what is over a limit as given already may stay so, but not get worse.");
    notes.add(
        "Hours that nobody is paid for cost nothing here; they count against the hours there are.");
    long changed = answer.holds().stream().filter(HoldAnswer::isChange).count();
    int leftOut = answer.found().leftOut().size();
    if (leftOut > 0) {
      notes.add(
          "%s left as given because they bring little; together they would bring %s."
              .formatted(
                  Phrases.sentence(say.counted(leftOut, "change was", "changes were")),
                  figures.money(answer.leftOutGain().mean())));
    }
    if (changed > 0) {
      notes.add(
          "%s advised in all; the gain of each is weighed beside all others, so they do not add up."
              .formatted(Phrases.sentence(say.counted(changed, "hold is", "holds are"))));
    }
    answer.offers().stream()
        .filter(offer -> offer.take().offer().most().isEmpty())
        .forEach(
            offer ->
                notes.add(
                    "The offer %s names no most: ask how many there are."
                        .formatted(offer.take().name())));
    notes.add(Cautions.NO_PROMISE);
    notes.add(Cautions.NO_ADVICE);
    return notes;
  }
}
