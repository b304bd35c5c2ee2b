package growingon.report.model;

import growingon.problem.Problem;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
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
    List<String> leftOut,
    Optional<Audience> reader,
    Optional<LocalDate> madeOn) {
  private static final DateTimeFormatter DAY =
      DateTimeFormatter.ofPattern("d MMMM yyyy", Locale.ENGLISH);

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
    Objects.requireNonNull(reader);
    Objects.requireNonNull(madeOn);
  }

  /** A report of which nobody has said yet for whom and when it was made. */
  public Report(
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
        answers,
        leftOut,
        Optional.empty(),
        Optional.empty());
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

  /** The same report, made for somebody. */
  public Report madeFor(Audience somebody) {
    return issued(Optional.of(somebody), madeOn);
  }

  /** The same report, made on a day. */
  public Report madeOn(LocalDate day) {
    return issued(reader, Optional.of(day));
  }

  /** The same report with other sheets. */
  public Report withSheets(List<Sheet> others) {
    return new Report(
        plan,
        nursery,
        currency,
        firstMonth,
        others,
        charts,
        extra,
        headlines,
        problems,
        answers,
        leftOut,
        reader,
        madeOn);
  }

  private Report issued(Optional<Audience> somebody, Optional<LocalDate> day) {
    return new Report(
        plan,
        nursery,
        currency,
        firstMonth,
        sheets,
        charts,
        extra,
        headlines,
        problems,
        answers,
        leftOut,
        somebody,
        day);
  }

  /** {@code made on 3 November 2026}, where the day is said. */
  public Optional<String> issue() {
    return madeOn.map(day -> "made on " + day.format(DAY));
  }

  /** The sheets of one book that have something to show. */
  public Stream<Sheet> sheets(Book book) {
    return sheets.stream().filter(each -> each.book() == book && !each.isEmpty());
  }

  /** Whether it is an edition for somebody who is not to see everything. */
  public boolean isEdition() {
    return !leftOut.isEmpty();
  }
}
