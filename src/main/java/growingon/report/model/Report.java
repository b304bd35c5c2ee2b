package growingon.report.model;

import growingon.nursery.number.Writing;
import growingon.problem.Problem;
import growingon.report.text.Phrases;
import io.soabase.recordbuilder.core.RecordBuilder;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;

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
 * @param reader for whom an edition is; empty for a whole report
 * @param madeOn the day it was made, where it is said
 * @param writing how numbers, months and money are written in it
 */
@RecordBuilder
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
    List<String> leftOut,
    Optional<Audience> reader,
    Optional<LocalDate> madeOn,
    Writing writing)
    implements ReportBuilder.With {
  public Report {
    Objects.requireNonNull(plan);
    Objects.requireNonNull(nursery);
    Objects.requireNonNull(currency);
    Objects.requireNonNull(firstMonth);
    sheets = List.copyOf(sheets);
    charts = charts.stream().map(chart -> chart.in(writing)).toList();
    extra = List.copyOf(extra);
    headlines = List.copyOf(headlines);
    problems = List.copyOf(problems);
    answers = List.copyOf(answers);
    leftOut = List.copyOf(leftOut);
    Objects.requireNonNull(reader);
    Objects.requireNonNull(madeOn);
  }

  /** The same report, made for somebody. */
  public Report madeFor(Audience somebody) {
    return with().reader(Optional.of(somebody)).build();
  }

  /** The same report, made on a day. */
  public Report madeOn(LocalDate day) {
    return with().madeOn(Optional.of(day)).build();
  }

  /** How amounts and months are said in it. */
  public Phrases say() {
    return new Phrases(currency, writing);
  }

  /** {@code made on 3 November 2026}, where the day is said. */
  public Optional<String> issue() {
    return madeOn.map(day -> "made on " + writing.day(day));
  }

  /** The sheets of one book that have something to show. */
  public Stream<Sheet> sheets(Book book) {
    return sheets.stream().filter(each -> each.book() == book && !each.isEmpty());
  }

  /** Whether it is an edition for somebody who is not to see everything. */
  public boolean isEdition() {
    return !leftOut.isEmpty();
  }

  /** A report of a plan that so far says nothing. */
  public static ReportBuilder of(String plan, String nursery, Phrases say, String firstMonth) {
    return ReportBuilder.builder()
        .plan(plan)
        .nursery(nursery)
        .currency(say.currency())
        .writing(say.writing())
        .firstMonth(firstMonth)
        .sheets(List.of())
        .charts(List.of())
        .extra(List.of())
        .headlines(List.of())
        .problems(List.of())
        .answers(List.of())
        .leftOut(List.of());
  }
}
