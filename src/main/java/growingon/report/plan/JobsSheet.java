package growingon.report.plan;

import growingon.nursery.Horizon;
import growingon.nursery.LiftFrom;
import growingon.nursery.Nursery;
import growingon.nursery.Step;
import growingon.project.Happening;
import growingon.project.Lifting;
import growingon.project.Projection;
import growingon.project.Sale;
import growingon.project.Work;
import growingon.report.build.FilledSheet;
import growingon.report.build.TableBuilder;
import growingon.report.figures.Context;
import growingon.report.model.Kind;
import growingon.report.model.Sheet;
import growingon.report.model.Table;
import growingon.report.text.Phrases;
import growingon.report.text.Plants;
import growingon.report.text.Sentences;
import growingon.whole.WholeLot;
import growingon.whole.WholePlan;
import java.time.YearMonth;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The job list: what is done where, in which month, with what, and a box to tick. */
final class JobsSheet {
  private static final DateTimeFormatter SHORT_MONTH =
      DateTimeFormatter.ofPattern("MMM", Locale.ENGLISH);

  private final WholePlan whole;
  private final Nursery nursery;
  private final Horizon horizon;
  private final Map<String, Integer> placeOrder = new HashMap<>();
  private final Phrases say;

  /** A happening of a lot, by its place in the lot's list. */
  private record Job(WholeLot lot, int index) {
    Happening happening() {
      return lot.history().happenings().get(index);
    }

    int plants() {
      return lot.workedOn(index);
    }
  }

  private JobsSheet(Context context) {
    this.say = context.say();
    Projection projection = context.accounts().projection();
    this.whole = context.whole();
    this.nursery = projection.scenario().nursery();
    this.horizon = projection.horizon();
    nursery.places().keySet().forEach(name -> placeOrder.put(name, placeOrder.size()));
  }

  static Sheet of(Context context) {
    JobsSheet sheet = new JobsSheet(context);
    List<Job> jobs = sheet.inOrder();
    return FilledSheet.of(
        "Jobs",
        sheet.sentences(jobs),
        sheet.table(
            "jobs-next",
            sheet.nextTitle(),
            jobs.stream().filter(JobsSheet::isNext),
            DueBeside.of(context)),
        sheet.table("jobs", "Later jobs", jobs.stream().filter(job -> !isNext(job)), List.of()));
  }

  private static boolean isNext(Job job) {
    return job.happening().month() < Context.NEXT_MONTHS;
  }

  /**
   * By month, then places in the order of the places table, then lots in the order of the stock.
   * Nobody plans a job on a third of a plant, as may be expected to be left of a lot.
   */
  private List<Job> inOrder() {
    List<Job> jobs = new ArrayList<>();
    for (WholeLot lot : whole.lots()) {
      for (int i = 0; i < lot.history().happenings().size(); i++) {
        if (lot.workedOn(i) > 0) {
          jobs.add(new Job(lot, i));
        }
      }
    }
    jobs.sort(
        Comparator.comparingInt((Job job) -> job.happening().month())
            .thenComparingInt(job -> place(job.happening().place())));
    return jobs;
  }

  private int place(String name) {
    return placeOrder.getOrDefault(name, Integer.MAX_VALUE);
  }

  private String nextTitle() {
    YearMonth last = horizon.month(Math.min(Context.NEXT_MONTHS, horizon.months()) - 1);
    return "The next twelve months: " + say.month(horizon.firstMonth()) + " to " + say.month(last);
  }

  private List<String> sentences(List<Job> jobs) {
    List<String> sentences = new ArrayList<>();
    if (jobs.stream().noneMatch(JobsSheet::isNext)) {
      sentences.add("No job is due in the next twelve months.");
    }
    sentences.add(
        "A job that may be done over several months stands in the first, with its months beside it;"
            + " its hours and litres are those of the whole job. Daily care (watering, weeding) is"
            + " on the sheet Hours, and so is the time for jobs on less than a plant, which are"
            + " left out here. Weights stand where plants are lifted: potted or moved.");
    if (jobs.stream().anyMatch(JobsSheet::isSelling)) {
      sentences.add("Selling stands once a month, with the plants sold from all lots.");
    }
    sentences.add(
        "“2 people or trolley”: a plant weighs more than %.0f kg from a bench or %.0f kg from the"
                .formatted(Lifting.firstKg(LiftFrom.BENCH), Lifting.firstKg(LiftFrom.GROUND))
            + " ground, and the hours are those of two people. “Mind who lifts”: more than %.0f or"
                .formatted(Lifting.secondKg(LiftFrom.BENCH))
            + " %.0f kg, too much for some. ".formatted(Lifting.secondKg(LiftFrom.GROUND))
            + Sentences.LIFTING);
    return sentences;
  }

  private Table table(String name, String title, Stream<Job> jobs, List<DueBeside.Due> beside) {
    TableBuilder table =
        TableBuilder.table(name, title)
            .month("month")
            .text("place")
            .text("lot")
            .text("job")
            .column("plants", "", Kind.PLANTS)
            .text("pot")
            .summed("mix", "litres", Kind.LITRES)
            .summed("hours", "", Kind.HOURS)
            .column("one plant", "kg", Kind.KG)
            .summed("moved", "kg", Kind.KG)
            .longText("note")
            .wide(32)
            .column("who", "", Kind.TO_FILL)
            .wide(6)
            .column("done", "", Kind.TO_FILL)
            .wide(6);
    Map<Integer, List<Job>> byMonth =
        jobs.collect(
            Collectors.groupingBy(
                job -> job.happening().month(), TreeMap::new, Collectors.toList()));
    Map<Integer, List<DueBeside.Due>> dueByMonth =
        beside.stream()
            .collect(
                Collectors.groupingBy(DueBeside.Due::month, TreeMap::new, Collectors.toList()));
    Set<Integer> months = new TreeSet<>(byMonth.keySet());
    months.addAll(dueByMonth.keySet());
    for (int month : months) {
      dueByMonth.getOrDefault(month, List.of()).forEach(due -> add(table, due));
      add(table, month, byMonth.getOrDefault(month, List.of()));
    }
    return table.build();
  }

  /** The jobs of a month: each by itself, and last what is sold, of all lots together. */
  private void add(TableBuilder table, int month, List<Job> jobs) {
    jobs.stream().filter(job -> !isSelling(job)).forEach(job -> add(table, job));
    List<Job> selling =
        jobs.stream().filter(job -> isSelling(job) && job.lot().sold(month) > 0).toList();
    if (!selling.isEmpty()) {
      table.row(
          horizon.month(month),
          selling.size() == 1 ? placeOf(selling.get(0)) : "all places",
          selling.size() == 1
              ? selling.get(0).lot().history().lot().name()
              : say.counted(selling.size(), "lot", "lots"),
          Work.SELLING,
          selling.stream().map(job -> sold(job, month)).reduce(Plants.NONE, Plants::plus),
          null,
          null,
          selling.stream().mapToDouble(job -> job.happening().hours()).sum(),
          null,
          null,
          null,
          null,
          null);
    }
  }

  private static boolean isSelling(Job job) {
    return job.happening().job().equals(Work.SELLING);
  }

  private static Plants sold(Job job, int month) {
    double units =
        job.lot().history().sales().stream()
            .filter(sale -> sale.month() == month)
            .mapToDouble(Sale::units)
            .sum();
    return Plants.of(units, job.lot().sold(month));
  }

  private static String placeOf(Job job) {
    String place = job.happening().place();
    return place.isEmpty() ? "no place" : place;
  }

  private void add(TableBuilder table, DueBeside.Due due) {
    table.row(
        horizon.month(due.month()),
        due.place().isEmpty() ? "no place" : due.place(),
        due.lot(),
        due.what(),
        Plants.of(due.plants(), due.plants()),
        null,
        null,
        null,
        null,
        null,
        due.note().isEmpty() ? null : due.note(),
        null,
        null);
  }

  private void add(TableBuilder table, Job job) {
    Happening done = job.happening();
    boolean lifts = done.lifting() != Lifting.NOTHING_LIFTED;
    table.row(
        horizon.month(done.month()),
        placeOf(job),
        job.lot().history().lot().name(),
        done.job(),
        Plants.of(done.plants(), job.plants()),
        done.pot().orElse(null),
        unlessNil(done.substrateLitres()),
        done.hours(),
        lifts ? unlessNil(done.kgEach()) : null,
        lifts ? unlessNil(job.plants() * done.kgEach()) : null,
        note(job),
        null,
        null);
  }

  private static Double unlessNil(double value) {
    return value == 0 ? null : value;
  }

  /** What a job needs to be minded of; null for nothing. */
  private String note(Job job) {
    Happening done = job.happening();
    List<String> notes = new ArrayList<>();
    if (done.months() > 1) {
      notes.add(window(done));
    }
    mix(job).ifPresent(notes::add);
    if (!done.toPlace().equals(done.place()) && !done.toPlace().isEmpty()) {
      notes.add("to " + done.toPlace());
    }
    int culled = job.lot().culledAt(job.index());
    if (culled > 0) {
      notes.add("about %s to cull".formatted(say.whole(culled)));
    }
    if (done.lifting() == Lifting.TWO_PEOPLE) {
      notes.add("2 people or trolley");
    } else if (done.lifting() == Lifting.NOT_FOR_EVERYONE) {
      notes.add("mind who lifts");
    }
    done.dueMonth().ifPresent(month -> notes.add("was due in " + say.month(horizon.month(month))));
    return notes.isEmpty() ? null : String.join("; ", notes);
  }

  private String window(Happening done) {
    YearMonth first = horizon.month(done.month());
    YearMonth last = first.plusMonths(done.months() - 1L);
    return first.format(SHORT_MONTH) + "–" + last.format(SHORT_MONTH);
  }

  private Optional<String> mix(Job job) {
    List<Step> steps = nursery.routeOf(job.lot().history().lot()).steps();
    return steps.stream()
        .filter(step -> step.name().equals(job.happening().job()))
        .findFirst()
        .flatMap(Step::mix);
  }
}
