package growingon.report.plan.work;

import growingon.nursery.Nursery;
import growingon.nursery.place.LiftFrom;
import growingon.nursery.route.Step;
import growingon.nursery.time.Horizon;
import growingon.project.Projection;
import growingon.project.history.Happening;
import growingon.project.history.Sale;
import growingon.project.history.Work;
import growingon.project.pot.Lifting;
import growingon.report.build.FilledSheet;
import growingon.report.build.TableOf;
import growingon.report.figures.Context;
import growingon.report.model.Kind;
import growingon.report.model.Rows;
import growingon.report.model.Sheet;
import growingon.report.model.Table;
import growingon.report.text.Cautions;
import growingon.report.text.Phrases;
import growingon.report.text.Plants;
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
public final class JobsSheet {
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

  public static Sheet of(Context context) {
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

  private int place(Optional<String> name) {
    return name.map(placeOrder::get).orElse(Integer.MAX_VALUE);
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
            + Cautions.LIFTING);
    return sentences;
  }

  /**
   * A line of the list.
   *
   * @param of the one job it stands for; empty for what is sold of all lots, and for what is due
   */
  private record Line(
      int month,
      String place,
      String lot,
      String what,
      Plants plants,
      Optional<Job> of,
      Optional<Double> hours,
      String note) {
    Optional<Happening> done() {
      return of.map(Job::happening);
    }

    Optional<Job> lifted() {
      return of.filter(job -> job.happening().lifting() != Lifting.NOTHING_LIFTED);
    }
  }

  private Table table(String name, String title, Stream<Job> jobs, List<DueBeside.Due> beside) {
    return TableOf.<Line>table(name, title)
        .month("month", line -> horizon.month(line.month))
        .text("place", Line::place)
        .text("lot", Line::lot)
        .text("job", Line::what)
        .column("plants", "", Kind.PLANTS, Line::plants)
        .text("pot", line -> line.done().flatMap(Happening::pot).orElse(null))
        .summed(
            "mix",
            "litres",
            Kind.LITRES,
            line -> unlessNil(line.done().map(Happening::substrateLitres)))
        .summed("hours", "", Kind.HOURS, line -> line.hours.orElse(null))
        .column(
            "one plant",
            "kg",
            Kind.KG,
            line -> unlessNil(line.lifted().map(job -> job.happening().kgEach())))
        .summed(
            "moved",
            "kg",
            Kind.KG,
            line -> unlessNil(line.lifted().map(job -> job.plants() * job.happening().kgEach())))
        .longText("note", line -> Rows.text(line.note))
        .wide(32)
        .column("who", "", Kind.TO_FILL, line -> null)
        .wide(6)
        .column("done", "", Kind.TO_FILL, line -> null)
        .wide(6)
        .of(lines(jobs, beside));
  }

  private List<Line> lines(Stream<Job> jobs, List<DueBeside.Due> beside) {
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
    List<Line> lines = new ArrayList<>();
    for (int month : months) {
      dueByMonth.getOrDefault(month, List.of()).forEach(due -> lines.add(line(due)));
      add(lines, month, byMonth.getOrDefault(month, List.of()));
    }
    return lines;
  }

  /** The jobs of a month: each by itself, and last what is sold, of all lots together. */
  private void add(List<Line> lines, int month, List<Job> jobs) {
    jobs.stream().filter(job -> !isSelling(job)).forEach(job -> lines.add(line(job)));
    List<Job> selling =
        jobs.stream().filter(job -> isSelling(job) && job.lot().sold(month) > 0).toList();
    if (!selling.isEmpty()) {
      lines.add(selling(month, selling));
    }
  }

  private Line selling(int month, List<Job> jobs) {
    Job first = jobs.get(0);
    boolean one = jobs.size() == 1;
    return new Line(
        month,
        one ? placeOf(first) : "all places",
        one ? first.lot().history().lot().name() : say.counted(jobs.size(), "lot", "lots"),
        Work.SELLING,
        jobs.stream().map(job -> sold(job, month)).reduce(Plants.NONE, Plants::plus),
        Optional.empty(),
        Optional.of(jobs.stream().mapToDouble(job -> job.happening().hours()).sum()),
        "");
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
    return job.happening().place().orElse("no place");
  }

  private Line line(DueBeside.Due due) {
    return new Line(
        due.month(),
        due.place().orElse("no place"),
        due.lot(),
        due.what(),
        Plants.of(due.plants(), due.plants()),
        Optional.empty(),
        Optional.empty(),
        due.note());
  }

  private Line line(Job job) {
    Happening done = job.happening();
    return new Line(
        done.month(),
        placeOf(job),
        job.lot().history().lot().name(),
        done.job(),
        Plants.of(done.plants(), job.plants()),
        Optional.of(job),
        Optional.of(done.hours()),
        note(job));
  }

  private static Double unlessNil(Optional<Double> value) {
    return value.filter(number -> number != 0).orElse(null);
  }

  /** What a job needs to be minded of; empty for nothing. */
  private String note(Job job) {
    Happening done = job.happening();
    List<String> notes = new ArrayList<>();
    if (done.months() > 1) {
      notes.add(window(done));
    }
    mix(job).ifPresent(notes::add);
    if (!done.toPlace().equals(done.place()) && !done.toPlace().isEmpty()) {
      notes.add("to " + done.toPlace().get());
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
    return String.join("; ", notes);
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
