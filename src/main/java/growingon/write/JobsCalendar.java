package growingon.write;

import biweekly.Biweekly;
import biweekly.ICalendar;
import biweekly.component.VEvent;
import biweekly.util.DateTimeComponents;
import biweekly.util.ICalDate;
import growingon.problem.MarkedText;
import growingon.report.model.Column;
import growingon.report.model.Report;
import growingon.report.model.Table;
import growingon.report.text.Plants;
import java.time.LocalDate;
import java.time.YearMonth;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Date;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

/**
 * The next twelve months as a calendar (iCalendar, RFC 5545): what comes, what must be ordered by
 * when, and one event a month that lists its jobs. Events keep their ids from plan to plan, so that
 * a calendar which is read again changes them instead of doubling them.
 */
final class JobsCalendar {
  private static final int MONTHS = 12;
  private static final int LISTED = 40;

  /** Tables that a calendar is made of. */
  private static final Set<String> OF = Set.of("jobs-next", "jobs", "orders", "orders-plants");

  private final Map<String, Table> tables = new TreeMap<>();
  private final YearMonth first;
  private final LocalDate made;
  private final ICalendar calendar = new ICalendar();

  private JobsCalendar(Collection<Table> tables, YearMonth first, LocalDate made) {
    tables.forEach(table -> this.tables.put(table.name(), table));
    this.first = first;
    this.made = made;
    calendar.setProductId("-//growing-on planner//EN");
  }

  /**
   * The calendar of a report.
   *
   * @param made day on which the report was made: the stamp of all events
   */
  static ICalendar of(Report report, LocalDate made) {
    JobsCalendar jobs =
        new JobsCalendar(ReportFiles.tables(report), YearMonth.parse(report.firstMonth()), made);
    jobs.addJobs();
    jobs.addOrders();
    jobs.addArrivals();
    if (jobs.calendar.getEvents().isEmpty()) {
      jobs.add("no-jobs", jobs.first.atDay(1), "No job in the next twelve months", "");
    }
    return jobs.calendar;
  }

  /** Whether a report has jobs and orders at all; a review or a comparison has none to tell of. */
  public static boolean suits(Report report) {
    return ReportFiles.tables(report).stream().map(Table::name).anyMatch(OF::contains);
  }

  /** The calendar as written into a file. */
  public static String text(Report report, LocalDate made) {
    return Biweekly.write(of(report, made)).go();
  }

  private void addJobs() {
    Map<YearMonth, List<String>> byMonth = new TreeMap<>();
    for (String name : List.of("jobs-next", "jobs")) {
      for (List<Object> row : rows(name)) {
        month(name, row, "month")
            .ifPresent(
                month ->
                    byMonth.computeIfAbsent(month, each -> new ArrayList<>()).add(job(name, row)));
      }
    }
    byMonth.forEach(
        (month, jobs) ->
            add(
                "jobs-" + month,
                month.atDay(1),
                jobs.size() == 1 ? "1 job this month" : jobs.size() + " jobs this month",
                listed(jobs)));
  }

  private String job(String table, List<Object> row) {
    return "%s: %s, %s %s"
        .formatted(
            text(table, row, "place"),
            text(table, row, "lot"),
            text(table, row, "job"),
            text(table, row, "plants"));
  }

  private static String listed(List<String> lines) {
    if (lines.size() <= LISTED) {
      return String.join("\n", lines);
    }
    return String.join("\n", lines.subList(0, LISTED))
        + "\nand "
        + (lines.size() - LISTED)
        + " more";
  }

  private void addOrders() {
    for (List<Object> row : rows("orders")) {
      month("orders", row, "order_in")
          .ifPresent(
              month ->
                  add(
                      "order-"
                          + text("orders", row, "item")
                          + "-for-"
                          + text("orders", row, "needed_in"),
                      month.atEndOfMonth(),
                      ordered(row),
                      "needed in " + text("orders", row, "needed_in")));
    }
    for (List<Object> row : rows("orders-plants")) {
      month("orders-plants", row, "order_in")
          .ifPresent(
              month ->
                  add(
                      "order-" + text("orders-plants", row, "offer") + "-" + month,
                      month.atEndOfMonth(),
                      "Order %s %s"
                          .formatted(
                              text("orders-plants", row, "plants"),
                              text("orders-plants", row, "offer")),
                      "from " + text("orders-plants", row, "supplier")));
    }
  }

  /** Order 7 packs of 55 m, wire; Order 40 pots, 7.5 litre. */
  private String ordered(List<Object> row) {
    String packs = text("orders", row, "packs");
    String each = text("orders", row, "pack_of");
    String unit = text("orders", row, "unit");
    String things =
        each.equals("1")
            ? packs + " " + unit
            : "%s of %s %s".formatted(packs + (packs.equals("1") ? " pack" : " packs"), each, unit);
    return "Order %s, %s".formatted(things, text("orders", row, "item"));
  }

  private void addArrivals() {
    for (List<Object> row : rows("orders-plants")) {
      month("orders-plants", row, "arrives_in")
          .ifPresent(
              month ->
                  add(
                      "arrival-" + text("orders-plants", row, "offer") + "-" + month,
                      month.atDay(1),
                      "%s %s come: unload, heel in or pot"
                          .formatted(
                              text("orders-plants", row, "plants"),
                              text("orders-plants", row, "species")),
                      "offer " + text("orders-plants", row, "offer")));
    }
  }

  private void add(String id, LocalDate day, String summary, String description) {
    VEvent event = new VEvent();
    event.setUid(id.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-") + "@growing-on");
    event.setDateTimeStamp(Date.from(made.atStartOfDay(ZoneOffset.UTC).toInstant()));
    event.setDateStart(
        new ICalDate(
            new DateTimeComponents(day.getYear(), day.getMonthValue(), day.getDayOfMonth()),
            false));
    event.setSummary(summary);
    event.setDescription(description);
    calendar.addEvent(event);
  }

  private List<List<Object>> rows(String table) {
    return Optional.ofNullable(tables.get(table)).map(Table::rows).orElse(List.of());
  }

  /** The month of a column, if it is one of the next twelve. */
  private Optional<YearMonth> month(String table, List<Object> row, String key) {
    return cell(table, row, key)
        .filter(YearMonth.class::isInstance)
        .map(YearMonth.class::cast)
        .filter(month -> !month.isBefore(first) && month.isBefore(first.plusMonths(MONTHS)));
  }

  private Optional<Object> cell(String table, List<Object> row, String key) {
    List<Column> columns = tables.get(table).columns();
    for (int i = 0; i < columns.size(); i++) {
      if (columns.get(i).key().equals(key)) {
        return Optional.ofNullable(row.get(i));
      }
    }
    return Optional.empty();
  }

  private String text(String table, List<Object> row, String key) {
    return cell(table, row, key)
        .map(value -> value instanceof Plants plants ? Long.toString(plants.whole()) : plain(value))
        .orElse("");
  }

  private static String plain(Object value) {
    return value instanceof Double number ? MarkedText.plain(number) : value.toString();
  }
}
