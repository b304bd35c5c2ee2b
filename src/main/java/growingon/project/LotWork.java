package growingon.project;

import growingon.nursery.Nursery;
import growingon.nursery.Settings;
import growingon.nursery.market.OtherCash;
import growingon.nursery.market.Quality;
import growingon.nursery.place.LiftFrom;
import growingon.nursery.place.Place;
import growingon.nursery.route.Step;
import growingon.nursery.supply.Pot;
import growingon.nursery.time.Horizon;
import growingon.project.history.Happening;
import growingon.project.history.Recorder;
import growingon.project.history.Use;
import growingon.project.history.Work;
import growingon.project.lot.HeadCount;
import growingon.project.lot.LotHistory;
import growingon.project.lot.LotPlan;
import growingon.project.lot.Position;
import growingon.project.pot.Lifting;
import growingon.project.pot.ReadyMix;
import growingon.project.pot.Weight;
import growingon.project.time.Schedule;
import java.util.Arrays;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;

/** The work on a lot: its steps, what they use and change, its moves, and other work it causes. */
final class LotWork {
  private final LotState lot;
  private final LotPlan plan;
  private final HeadCount heads;
  private final Recorder to;
  private final LotHistory history;
  private final Nursery nursery;
  private final Settings settings;
  private final double[] minutes;
  private final boolean[] waiting;
  private boolean sorted;

  /**
   * No work done yet.
   *
   * @param to takes down what is worked and used
   * @param history takes down the particulars too; null where nobody asks for them
   */
  LotWork(LotState lot, HeadCount heads, Run run, Recorder to, LotHistory history) {
    this.lot = lot;
    this.plan = lot.plan;
    this.heads = heads;
    this.to = to;
    this.history = history;
    this.nursery = run.programme().nursery();
    this.settings = nursery.settings();
    this.minutes = run.minutes();
    this.waiting = new boolean[plan.steps().size()];
    begin();
  }

  /** Begins a run. */
  void begin() {
    Arrays.fill(waiting, false);
    sorted = plan.lot.quality().sorted();
  }

  /** The same so far, for a lot that goes on apart. */
  LotWork(LotWork same, LotState lot, HeadCount heads, Recorder to) {
    this.lot = lot;
    this.plan = same.plan;
    this.heads = heads;
    this.to = to;
    this.history = null;
    this.nursery = same.nursery;
    this.settings = same.settings;
    this.minutes = same.minutes;
    this.waiting = same.waiting.clone();
    this.sorted = same.sorted;
  }

  /** Whether the plants are sorted by quality. */
  boolean isSorted() {
    return sorted;
  }

  /** The month's moves, then its steps in route order. */
  void ofMonth(int month, Run run) {
    if (lot.isEmpty()) {
      return;
    }
    if (month > plan.start && lot.position.mayTurn(month, lot.vessel.isPotted())) {
      lot.position.turnOf(month, lot.vessel.isPotted()).ifPresent(move -> carry(month, move));
    }
    if (plan.isUntouched(month)) {
      return;
    }
    boolean released = month == plan.apartUntil;
    if (released && plan.lot.untouched()) {
      lot.schedule.missRecurring(month);
    }
    if (released || !lot.schedule.isQuiet(month)) {
      doSteps(month, run);
    }
  }

  /**
   * The first month on or after a month in which there may be a step or a move, of a lot that is
   * apart no more.
   */
  int quietUntil(int month) {
    if (!lot.schedule.isQuiet(month)) {
      return month;
    }
    return lot.position.staysUntil(month, lot.schedule.wakesIn(), lot.vessel.isPotted());
  }

  private void doSteps(int month, Run run) {
    for (int i = 0; i < plan.steps().size(); i++) {
      if (!lot.isEmpty()) {
        boolean released = isReleased(i, month);
        if (released || isDue(i, month)) {
          doStep(i, month, released, run);
        }
      }
    }
  }

  /** Whether a step came due while the lot was apart, and waited until this month. */
  private boolean isReleased(int index, int month) {
    return month == plan.apartUntil
        && plan.waits(index)
        && (waiting[index] || lot.schedule.isOverdue(index, month));
  }

  /** Whether a step is to be done now; planting out waits while the lot is apart. */
  private boolean isDue(int index, int month) {
    boolean due = lot.schedule.isDue(index, month, lot.reachesTrunk());
    boolean waits = due && plan.isApart(month) && plan.waits(index);
    waiting[index] |= waits;
    return due && !waits;
  }

  private void doStep(int index, int month, boolean released, Run run) {
    Step step = plan.steps().get(index);
    Schedule.Done done =
        released ? lot.schedule.doneInOneGo(index, month) : lot.schedule.done(index, month);
    waiting[index] = false;
    if (run.isTold()) {
      done.late().ifPresent(late -> remarkLate(step, late, month, run));
    }
    Optional<Place> before = lot.position.in(month);
    double died = lot.die(month, index + 1, lot.survival.shareOfStep(step.lossShare()));
    double culled = sortAndCull(step, month);
    heads.died(month, died);
    heads.culled(month, culled);
    double living = lot.plants.living();
    Potted potted = pot(index, month, living);
    plantOut(index, month, living, run);
    lot.position.standIn(plan.place(index), step.spacing());
    grownOn(step, month);
    Lifting lifting =
        plan.lifts(index) ? lifting(before, lot.position.in(month)) : Lifting.NOTHING_LIFTED;
    double each = step.minutes() + (lifting.needsTwo() ? secondPerson(index) : 0);
    double hours = spreadWork(step, month, done.monthsOfWork(), living, each);
    if (history != null) {
      history.happened(
          new Happening(
              month,
              done.monthsOfWork(),
              step.name(),
              name(before),
              name(lot.position.in(month)),
              living,
              died,
              culled,
              step.pot(),
              potted.pots(),
              potted.litres(),
              hours,
              weight().kg(),
              done.late().map(late -> OptionalInt.of(late.dueMonth())).orElse(OptionalInt.empty()),
              lifting));
    }
  }

  /** What a step changes of the way a lot grows. */
  private void grownOn(Step step, int month) {
    if (step.rootWork()) {
      lot.speed.rootsCut(step, month);
    }
    lot.training.done(step, month);
    lot.plants.growBy(lot.spot(month).curve());
  }

  private void remarkLate(Step step, Schedule.Late late, int month, Run run) {
    Horizon horizon = run.programme().horizon();
    run.remark(
        plan,
        () ->
            Remarks.lateStep(
                plan.lot.name(),
                step.name(),
                horizon.month(late.dueMonth()),
                horizon.month(month),
                late.yearsMoved(),
                run.programme().writing()));
  }

  /** Takes the plants out of their pots, if the step does; the pots come back. */
  private void plantOut(int index, int month, double living, Run run) {
    if (!lot.vessel.isPotted()) {
      return;
    }
    if (plan.plantsOut(index)) {
      freePots(month, living);
      lot.vessel.end();
      lot.position.plantedOut();
    } else if (plan.standsInFieldInPot(index)) {
      Step step = plan.steps().get(index);
      run.remark(
          plan,
          () -> Remarks.standsInItsPot(plan.lot.name(), step.name(), step.place().orElseThrow()));
    }
  }

  /**
   * Minutes a plant of the second person: those of lifting it, at most those of the job; a move is
   * lifting throughout.
   */
  private double secondPerson(int index) {
    double job = plan.steps().get(index).minutes();
    return plan.isMove(index) ? job : Math.min(settings.secondPersonMinutes(), job);
  }

  /**
   * How the lot's plants are lifted. Where nobody asks for the weight itself, plants that could not
   * be too heavy even if all were as thick as the thickest are not weighed.
   */
  private Lifting lifting(Optional<Place> takenUp, Optional<Place> setDown) {
    LiftFrom height = Lifting.lower(takenUp, setDown);
    boolean surelyLight =
        history == null
            && lot.vessel.weight(lot.plants.squaredTrunkAtMost()).kg() <= Lifting.firstKg(height);
    return surelyLight ? Lifting.ONE_PERSON : Lifting.of(weight().kg(), height);
  }

  private Weight weight() {
    return lot.vessel.weight(lot.plants);
  }

  void freePots(int month, double plantsGone) {
    if (lot.vessel.isPotted()) {
      Pot old = lot.vessel.pot().get();
      to.freed(month + 1, old.name(), plantsGone * old.reuseShare());
    }
  }

  private double spreadWork(Step step, int month, int months, double living, double minutesEach) {
    double hours = living * minutesEach * minutes[month] / 60;
    for (int i = 0; i < months; i++) {
      to.worked(month + i, step.name(), living, hours / months);
      for (Map.Entry<String, Double> material : step.materials().entrySet()) {
        double amount = living * material.getValue() / months;
        to.used(month + i, Use.Kind.MATERIAL, material.getKey(), amount);
      }
    }
    return hours;
  }

  private record Potted(double pots, double litres) {
    static final Potted NOT = new Potted(0, 0);
  }

  private Potted pot(int index, int month, double living) {
    Optional<Pot> into = plan.pot(index);
    if (into.isEmpty()) {
      return Potted.NOT;
    }
    String name = into.get().name();
    boolean same = lot.vessel.pot().map(Pot::name).filter(name::equals).isPresent();
    if (!same) {
      freePots(month, living);
      to.used(month, Use.Kind.POT, name, living);
    }
    double pottedLitres = lot.vessel.pot(index, month);
    double litres = 0;
    if (plan.mix(index).isPresent()) {
      ReadyMix mix = plan.mix(index).get();
      litres = living * pottedLitres * mix.looseLitres() * (1 + settings.wasteShare());
      for (ReadyMix.Part part : mix.parts()) {
        to.used(month, Use.Kind.COMPONENT, part.component(), litres * part.share());
      }
    }
    return new Potted(same ? 0 : living, litres);
  }

  /** Carries the plants into their winter place or back. */
  private void carry(int month, Position.Move move) {
    double living = lot.plants.living();
    Lifting lifting = lifting(move.from(), move.to());
    int people = lifting.needsTwo() ? 2 : 1;
    double hours = living * settings.winterMoveMinutes() * people * minutes[month] / 60;
    to.worked(month, Work.WINTER_MOVE, living, hours);
    if (history != null) {
      history.happened(
          Happening.job(month, Work.WINTER_MOVE, name(move.from()), name(move.to()), living, hours)
              .lifted(weight().kg(), lifting));
    }
  }

  /** Other cash of the lot; before it is there only what names its months itself. */
  void payOtherCash(int month, boolean isThere) {
    if (plan.otherCash.isEmpty()) {
      return;
    }
    for (OtherCash row : plan.otherCash) {
      if (plan.isDue(row, month) && (isThere || row.namesItsMonths())) {
        to.paid(month, row.amount());
        book(month, row.what(), isThere ? lot.plants.living() : 0, row.hours() * minutes[month]);
      }
    }
  }

  /** Work that leaves the plants where they stand. */
  private void book(int month, String job, double living, double hours) {
    if (hours == 0) {
      return;
    }
    to.worked(month, job, living, hours);
    if (history != null) {
      Optional<String> place =
          lot.standing() == null ? Optional.empty() : lot.standing().placeName();
      history.happened(Happening.job(month, job, place, place, living, hours));
    }
  }

  /** Sorts, if the step does, and culls; old pots of the culled come back. */
  private double sortAndCull(Step step, int month) {
    double culled = 0;
    if (step.sort()) {
      culled += sort(month);
    }
    culled += lot.past.rules(month) ? 0 : lot.plants.cull(step.cullShare(), sorted);
    freePots(month, culled);
    return culled;
  }

  private double sort(int month) {
    sorted = true;
    double culled = 0;
    for (Quality quality : Quality.values()) {
      if (!lot.past.rules(month) && !nursery.qualities().get(quality).potted()) {
        culled += lot.plants.cullAll(quality);
      }
    }
    return culled;
  }

  /** A lot without a sorting step ahead of it is sorted as it comes. */
  void sortOnArrival(int month) {
    if (sorted) {
      return;
    }
    for (int i = 0; i < plan.steps().size(); i++) {
      if (plan.steps().get(i).sort() && lot.schedule.doneAt(i).isEmpty()) {
        return;
      }
    }
    double culled = sort(month);
    heads.culled(month, culled);
    freePots(month, culled);
  }

  /** The work of selling so many plants in a month. */
  void sell(int month, double sold) {
    double each = lot.standing().minutesASale();
    book(month, Work.SELLING, sold, sold * each * minutes[month] / 60);
  }

  private static Optional<String> name(Optional<Place> place) {
    return place.map(Place::name);
  }
}
