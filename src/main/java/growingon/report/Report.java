package growingon.report;

import growingon.problem.Problem;
import java.util.List;
import java.util.Objects;

/**
 * A whole report: one model that feeds the workbook, the charts, the tables and figures.json, so
 * that they cannot disagree.
 *
 * @param plan name of the plan
 * @param nursery name of the nursery
 * @param currency plan currency
 * @param firstMonth first month, ISO (2026-11)
 * @param sheets in order; empty ones are left out when writing
 * @param charts every chart
 * @param extra tables that go to figures.json and tables/ but on no sheet (long monthly series)
 * @param headlines the dozen lines that the terminal shows
 * @param problems every problem found while reading and projecting
 * @param answers what a reader wants to know first, each with how it came about; may be empty
 * @param leftOut what an edition for somebody else leaves out, by kind; empty for a whole report
 */
public record Report(
    String plan,
    String nursery,
    String currency,
    String firstMonth,
    List<Sheet> sheets,
    List<Chart> charts,
    List<Table> extra,
    List<String> headlines,
    List<Problem> problems,
    List<Answer> answers,
    List<String> leftOut) {
  public Report {
    Objects.requireNonNull(plan);
    Objects.requireNonNull(nursery);
    Objects.requireNonNull(currency);
    Objects.requireNonNull(firstMonth);
    sheets = List.copyOf(sheets);
    charts = List.copyOf(charts);
    extra = List.copyOf(extra);
    headlines = List.copyOf(headlines);
    problems = List.copyOf(problems);
    answers = List.copyOf(answers);
    leftOut = List.copyOf(leftOut);
  }

  /** A whole report without answers. */
  public Report(
      String plan,
      String nursery,
      String currency,
      String firstMonth,
      List<Sheet> sheets,
      List<Chart> charts,
      List<Table> extra,
      List<String> headlines,
      List<Problem> problems) {
    this(
        plan,
        nursery,
        currency,
        firstMonth,
        sheets,
        charts,
        extra,
        headlines,
        problems,
        List.of(),
        List.of());
  }

  /** Whether it is an edition for somebody who is not to see everything. */
  public boolean isEdition() {
    return !leftOut.isEmpty();
  }
}
