package growingon.report.plan.work;

import growingon.nursery.time.Horizon;
import growingon.project.history.Work;
import growingon.project.need.HoursUse;
import growingon.report.build.PerLot;
import growingon.report.build.TableOf;
import growingon.report.figures.Context;
import growingon.report.model.Column;
import growingon.report.model.Kind;
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
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;

/** Hours needed by job against hours available. */
public final class HoursSheet {
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

  public static Sheet of(Context context) {
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
    return TableOf.<Spell>table("hours-short", "When hours are short")
        .note("One row for each run of months in which more is to do than there are hours.")
        .month("from", spell -> horizon.month(spell.first()))
        .month("to", spell -> horizon.month(spell.last()))
        .month("worst", "worst month", spell -> horizon.month(spell.worst()))
        .column(hours("needed", "needed then"), spell -> hours.needed(spell.worst()))
        .column(
            hours("available", "available then"),
            spell -> hours.available(spell.worst()).orElseThrow())
        .column(hours("short", "short then"), Spell::most)
        .aboveNil()
        .column(summed("short_in_all", "short in all"), Spell::sum)
        .aboveNil()
        .of(Spell.of(horizon.months(), hours::shortBy));
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
    TableOf<Integer> table =
        TableOf.<Integer>table("hours", "Hours by month and job")
            .notes(notes())
            .column(Rows.month(), horizon::month);
    List<String> names = List.copyOf(jobs.keySet());
    List<String> keys = Rows.keys(names.stream().map(name -> "job " + name).toList());
    for (int i = 0; i < keys.size(); i++) {
      double[] job = jobs.get(names.get(i));
      table.column(summed(keys.get(i), names.get(i)), month -> job[month]);
    }
    table.column(summed("needed", "needed"), hours::needed);
    if (stated) {
      table
          .column(summed("available", "available"), month -> hours.available(month).orElseThrow())
          .column(summed("short", "short"), hours::shortBy)
          .aboveNil();
    }
    return table.of(IntStream.range(0, horizon.months()).boxed().toList());
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
    TableOf<Integer> table =
        TableOf.<Integer>table("hours-by-season", "Hours by season")
            .column(Rows.season(), horizon::seasonLabel)
            .column(summed("needed", "needed"), season -> sum(season, hours::needed));
    if (stated) {
      table
          .note("Short is added up month by month: hours left over in one do not help another.")
          .column(
              summed("available", "available"),
              season -> sum(season, month -> hours.available(month).orElse(0.0)))
          .column(summed("short", "short, month by month"), season -> sum(season, hours::shortBy))
          .aboveNil();
    }
    return table.of(IntStream.range(0, horizon.seasons()).boxed().toList());
  }

  private double sum(int season, IntToDoubleFunction of) {
    double sum = 0;
    for (int month = horizon.seasonFirst(season); month <= horizon.seasonLast(season); month++) {
      sum += of.applyAsDouble(month);
    }
    return sum;
  }

  /** Work on a lot. */
  private record LotWork(WholeLot lot, Work work) {}

  /** Hours of every lot, month and job but care, for the long tables. */
  public static Table lines(Context context) {
    Dates dates = new Dates(context.accounts().projection().horizon());
    return TableOf.<LotWork>table("hours-lines", "Hours of every lot, month and job")
        .note("Care, which is to do in every month, is the column care of lot-months.")
        .column(Rows.lot(), each -> each.lot.history().lot().name())
        .column(Rows.month(), each -> dates.month(each.work.month()))
        .text("job", each -> each.work.job())
        .column(
            "plants",
            "",
            Kind.PLANTS,
            each -> Plants.of(each.work.plants(), each.lot.workedOn(each.work)))
        .column(summed("hours", "hours"), each -> each.work.hours())
        .lazily(
            new PerLot<>(
                context.whole().lots(),
                lot -> lot.history().works().size(),
                (lot, index) -> new LotWork(lot, lot.history().works().get(index))));
  }
}
