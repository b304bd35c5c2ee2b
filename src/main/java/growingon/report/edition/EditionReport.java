package growingon.report.edition;

import growingon.nursery.Scenario;
import growingon.report.figures.Context;
import growingon.report.model.Answer;
import growingon.report.model.Chart;
import growingon.report.model.Report;
import growingon.report.model.Sheet;
import growingon.report.model.Table;
import growingon.report.text.Phrases;
import java.util.ArrayList;
import java.util.List;

/** What the reports of all editions have in common. */
final class EditionReport {
  private EditionReport() {}

  /** The first sheet: what is left out, then totals. */
  static Sheet summary(List<String> leftOut, List<Table> tables) {
    return new Sheet(
        "Summary",
        List.of("Left out of this edition: " + String.join("; ", leftOut) + "."),
        tables,
        List.of(),
        true);
  }

  /**
   * The report of an edition, with its answers on the first sheet too.
   *
   * @param currency empty if the edition shows no amounts
   */
  static Report of(
      Context context,
      List<Sheet> sheets,
      List<Chart> charts,
      List<Answer> answers,
      List<String> leftOut,
      String currency) {
    Scenario scenario = context.inputs().scenario();
    return of(scenario.plan().name(), scenario, sheets, charts, answers, leftOut, currency);
  }

  /** The same of a plan that has another name in the edition. */
  static Report of(
      String name,
      Scenario scenario,
      List<Sheet> sheets,
      List<Chart> charts,
      List<Answer> answers,
      List<String> leftOut,
      String currency) {
    List<Sheet> told = new ArrayList<>(sheets);
    Sheet first = told.get(0);
    List<String> sentences = new ArrayList<>(first.sentences());
    answers.forEach(answer -> sentences.addAll(answer.sentences()));
    told.set(0, first.withSentences(sentences));
    return Report.of(
            name,
            scenario.nursery().settings().name(),
            new Phrases(currency, scenario.nursery().settings().writing()),
            scenario.plan().firstMonth().toString())
        .sheets(told)
        .charts(charts)
        .headlines(sentences)
        .answers(answers)
        .leftOut(leftOut)
        .build();
  }
}
