package growingon.report.plan;

import growingon.nursery.Horizon;
import growingon.project.HoursUse;
import growingon.project.Work;
import growingon.report.build.Columns;
import growingon.report.figures.Context;
import growingon.report.model.Column;
import growingon.report.model.FixedRow;
import growingon.report.model.Kind;
import growingon.report.model.LazyRows;
import growingon.report.model.Rows;
import growingon.report.model.Sheet;
import growingon.report.model.Table;
import growingon.report.text.Dates;
import growingon.report.text.Plants;
import growingon.report.text.Spell;
import growingon.report.words.HoursWords;
import growingon.whole.WholeLot;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Hours needed by job against hours available. */
final class HoursSheet {
  /** As many jobs as are legible side by side; the rest are added up. */
  private static final int ACROSS = 8;

  private final HoursUse hours;
  private final Horizon horizon;
  private final boolean stated;

  private HoursSheet(Context context) {
    this.hours = context.accounts().hours();
    this.horizon = context.accounts().projection().horizon();
    this.stated = hours.available(0).isPresent();
  }

  static Sheet of(Context context) {
    HoursSheet sheet = new HoursSheet(context);
    if (sheet.hours.byJob().isEmpty()) {
      return Sheet.of("Hours");
    }
    List<Table> tables = new ArrayList<>();
    if (sheet.stated) {
      tables.add(sheet.shortTable());
    }
    tables.add(sheet.months());
    tables.add(sheet.seasons());
    List<String> sentences = List.of(new HoursWords(context).summary());
    return new Sheet("Hours", sentences, tables, List.of(), false);
  }

  private static Column hours(String key, String heading) {
    return Column.of(key, heading, "hours", Kind.HOURS);
  }

  private static Column summed(String key, String heading) {
    return Column.summed(key, heading, "hours", Kind.HOURS);
  }

  private Table shortTable() {
    Rows rows = new Rows();
    for (Spell spell : Spell.of(horizon.months(), hours::shortBy)) {
      rows.add(
          horizon.month(spell.first()),
          horizon.month(spell.last()),
          horizon.month(spell.worst()),
          hours.needed(spell.worst()),
          hours.available(spell.worst()).orElseThrow(),
          spell.most(),
          spell.sum());
    }
    return new Table(
        "hours-short",
        "When hours are short",
        List.of("One row for each run of months in which more is to do than there are hours."),
        List.of(
            Column.of("from", "from", "", Kind.MONTH),
            Column.of("to", "to", "", Kind.MONTH),
            Column.of("worst", "worst month", "", Kind.MONTH),
            hours("needed", "needed then"),
            hours("available", "available then"),
            Columns.aboveNil(hours("short", "short then")),
            Columns.aboveNil(summed("short_in_all", "short in all"))),
        rows.list());
  }

  /**
   * The jobs with most hours, each by its name, and the rest added up.
   *
   * @return hours by job and month; in the order in which jobs first come up
   */
  static Map<String, double[]> mainJobs(HoursUse hours, int months) {
    List<String> byHours = new ArrayList<>(hours.byJob().keySet());
    byHours.sort(
        Comparator.comparingDouble((String job) -> -Arrays.stream(hours.byJob().get(job)).sum()));
    boolean all = byHours.size() <= ACROSS;
    List<String> named = byHours.subList(0, all ? byHours.size() : ACROSS - 1);
    Map<String, double[]> jobs = new LinkedHashMap<>();
    hours.byJob().keySet().stream()
        .filter(named::contains)
        .forEach(job -> jobs.put(job, hours.byJob().get(job)));
    if (!all) {
      double[] rest = new double[months];
      byHours.subList(named.size(), byHours.size()).stream()
          .map(hours.byJob()::get)
          .forEach(job -> Arrays.setAll(rest, month -> rest[month] + job[month]));
      jobs.put(HoursWords.OTHER_WORK, rest);
    }
    return jobs;
  }

  private Table months() {
    Map<String, double[]> jobs = mainJobs(hours, horizon.months());
    List<Column> columns = new ArrayList<>(List.of(Rows.month()));
    List<String> names = List.copyOf(jobs.keySet());
    List<String> keys = Rows.keys(names.stream().map(name -> "job " + name).toList());
    for (int i = 0; i < keys.size(); i++) {
      columns.add(summed(keys.get(i), names.get(i)));
    }
    columns.add(summed("needed", "needed"));
    if (stated) {
      columns.add(summed("available", "available"));
      columns.add(Columns.aboveNil(summed("short", "short")));
    }
    Rows rows = new Rows();
    for (int month = 0; month < horizon.months(); month++) {
      rows.add(row(month, jobs));
    }
    return new Table("hours", "Hours by month and job", notes(), columns, rows.list());
  }

  private List<Object> row(int month, Map<String, double[]> jobs) {
    List<Object> row = new ArrayList<>(List.of(horizon.month(month)));
    jobs.values().forEach(job -> row.add(job[month]));
    row.add(hours.needed(month));
    if (stated) {
      row.add(hours.available(month).orElseThrow());
      row.add(hours.shortBy(month));
    }
    return row;
  }

  private List<String> notes() {
    List<String> notes = new ArrayList<>();
    notes.add(
        "Minutes of a step in the routes table times the plants worked on, spread evenly over its"
            + " window; care: minutes per m² of the care table times the square metres in use;"
            + " winter move: minutes of the settings times the plants moved.");
    notes.add(
        stated
            ? "Available: the hours table, or the hours a week of the settings."
            : "The nursery does not say how many hours it has: add an hours table, or hours a week"
                + " to the settings, to see when they are short.");
    return notes;
  }

  private Table seasons() {
    Rows rows = new Rows();
    for (int season = 0; season < horizon.seasons(); season++) {
      double needed = 0;
      double available = 0;
      double missing = 0;
      int last = horizon.seasonLast(season);
      for (int month = horizon.seasonFirst(season); month <= last; month++) {
        needed += hours.needed(month);
        available += hours.available(month).orElse(0.0);
        missing += hours.shortBy(month);
      }
      List<Object> row = new ArrayList<>(List.of(horizon.seasonLabel(season), needed));
      if (stated) {
        row.add(available);
        row.add(missing);
      }
      rows.add(row);
    }
    List<Column> columns = new ArrayList<>(List.of(Rows.season(), summed("needed", "needed")));
    if (stated) {
      columns.add(summed("available", "available"));
      columns.add(Columns.aboveNil(summed("short", "short, month by month")));
    }
    List<String> notes =
        stated
            ? List.of(
                "Short is added up month by month: hours left over in one do not help another.")
            : List.of();
    return new Table("hours-by-season", "Hours by season", notes, columns, rows.list());
  }

  /** Hours of every lot, month and job but care, for the long tables. */
  static Table lines(Context context) {
    Dates dates = new Dates(context.accounts().projection().horizon());
    return new Table(
        "hours-lines",
        "Hours of every lot, month and job",
        List.of("Care, which is to do in every month, is the column care of lot-months."),
        List.of(
            Rows.lot(),
            Rows.month(),
            Column.of("job", "job", "", Kind.TEXT),
            Column.of("plants", "plants", "", Kind.PLANTS),
            summed("hours", "hours")),
        LazyRows.byLot(
            context.whole().lots(),
            lot -> lot.history().works().size(),
            (lot, index) -> line(lot, lot.history().works().get(index), dates)));
  }

  private static FixedRow line(WholeLot lot, Work work, Dates dates) {
    return new FixedRow(
        lot.history().lot().name(),
        dates.month(work.month()),
        work.job(),
        Plants.of(work.plants(), lot.workedOn(work)),
        work.hours());
  }
}
