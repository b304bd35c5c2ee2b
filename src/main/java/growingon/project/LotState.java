package growingon.project;

import growingon.nursery.Horizon;
import growingon.nursery.LiftFrom;
import growingon.nursery.Lot;
import growingon.nursery.Mix;
import growingon.nursery.Nursery;
import growingon.nursery.OtherCash;
import growingon.nursery.Place;
import growingon.nursery.Pot;
import growingon.nursery.Quality;
import growingon.nursery.Settings;
import growingon.nursery.Step;
import growingon.nursery.StepsDone;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Supplier;

/** One lot on its way through the months: its plants, pot, place and clocks. */
final class LotState {
  private static final int NEVER = Integer.MIN_VALUE;

  final LotPlan plan;
  final Growing plants;
  final Schedule schedule;
  private final Recorder to;
  private final LotHistory history;
  private final LotFacts facts;
  private final Nursery nursery;
  private final Settings settings;
  private final Calendar calendar;
  private final CareRates care;
  private final double[] minutes;
  private final Position position;
  private final Vessel vessel;
  private final Speed speed;
  private final Survival survival;
  private final boolean[] waiting;
  private double accountedFor;
  private int trainingAt = NEVER;
  private boolean sorted;
  private Spot standing;
  private double soldInMonth;

  /**
   * A lot before its first month.
   *
   * @param to takes down what happens
   * @param history takes down the particulars too; null where nobody asks for them
   */
  LotState(LotPlan plan, Run run, Recorder to, LotHistory history) {
    this.plan = plan;
    this.to = to;
    this.history = history;
    this.minutes = run.minutes();
    this.facts = run.facts().of(plan);
    Programme programme = run.programme();
    this.nursery = programme.nursery();
    this.settings = nursery.settings();
    this.calendar = programme.calendar();
    this.care = programme.care();
    this.plants = new Growing(plan, run.luck().quality(plan.lot));
    plants.keepPart(facts.part());
    this.schedule = new Schedule(plan.route, programme.horizon().firstMonth(), plan.arrival);
    this.position = new Position(plan, programme);
    this.vessel = new Vessel(plan, nursery);
    this.speed = new Speed(plan, calendar, run.luck());
    this.survival = new Survival(plan, calendar, run.luck());
    this.waiting = new boolean[plan.steps().size()];
    takeUp(run);
  }

  /** Brings the state to the plan's first month, or to the lot's arrival. */
  private void takeUp(Run run) {
    Horizon horizon = run.programme().horizon();
    Lot lot = plan.lot;
    if (plan.arrival < 0) {
      StepsDone done = StepsDone.of(lot, plan.route, horizon.firstMonth());
      schedule.alreadyDone(done);
      done.clashes().forEach(clash -> run.remark(plan, () -> Remarks.clash(lot.name(), clash)));
      replay();
      if (lot.lastStep().isEmpty()) {
        remarkOnPot(done.last(), run);
      }
    }
    vessel.settle(lot.potting().potted().map(horizon::offset));
    lot.potting().rootWork().map(horizon::offset).ifPresent(speed::rootsCutIn);
    trainingAt = lot.trainingSince().map(horizon::offset).orElse(trainingAt);
    sorted = lot.quality().sorted();
    position.begin(plan.start, vessel.isPotted());
    plants.growBy(spot(plan.counted).curve());
    carryForward();
    position.begin(plan.start, vessel.isPotted());
  }

  /** The pot that the steps done lead to, against the one stated. */
  private void remarkOnPot(int last, Run run) {
    Optional<String> reached = Optional.empty();
    for (int i = 0; i <= last; i++) {
      reached = plan.plantsOut(i) ? Optional.empty() : plan.steps().get(i).pot().or(same(reached));
    }
    Optional<String> stated = vessel.pot().map(Pot::name);
    if (reached.isPresent() && !reached.equals(stated)) {
      String expected = reached.get();
      run.remark(
          plan,
          () ->
              Remarks.lastStepDisagrees(
                  plan.lot.name(),
                  plan.steps().get(last).name(),
                  expected,
                  stated.orElse("no pot")));
    }
  }

  private static Supplier<Optional<String>> same(Optional<String> value) {
    return () -> value;
  }

  /** What the steps done before the plan left behind, as far as the stock row does not say. */
  private void replay() {
    List<Integer> done = new ArrayList<>();
    for (int i = 0; i < plan.steps().size(); i++) {
      if (schedule.doneAt(i).isPresent()) {
        done.add(i);
      }
    }
    done.sort(Comparator.comparingInt(i -> schedule.doneAt(i).getAsInt()));
    done.forEach(i -> replay(plan.steps().get(i), schedule.doneAt(i).getAsInt()));
  }

  private void replay(Step step, int month) {
    if (step.pot().isPresent()) {
      vessel.wasPotted(step, month);
    }
    if (step.rootWork()) {
      speed.rootsCut(step, month);
    }
    startTraining(step, month);
    boolean spaced = plan.lot.standing().spacing().isPresent();
    boolean placed = plan.lot.standing().place().isPresent();
    position.standIn(
        placed ? Optional.empty() : step.place().map(nursery.places()::get),
        spaced ? Optional.empty() : step.spacing());
  }

  /** Training, once started, goes on. */
  private void startTraining(Step step, int month) {
    if (step.trainingStarts() && trainingAt == NEVER) {
      trainingAt = month;
    }
  }

  /** Growth and losses from an older count to the plan's first month. */
  private void carryForward() {
    for (int month = plan.counted; month < plan.start; month++) {
      position.begin(month, vessel.isPotted());
      standing = spot(month);
      grow(month);
      if (!isKnown(month)) {
        noteDiedBefore(plants.die(plants.living() * survival.expectedShare(month)));
      } else if (month == Math.min(facts.goneThrough(), plan.start - 1)) {
        startFromWhatIsThere();
      }
    }
  }

  private void startFromWhatIsThere() {
    double before = plants.living();
    facts.atStart().ifPresent(plants::countAs);
    noteDiedBefore(before - plants.living());
  }

  /** Whether only what is known died or was culled in a month. */
  private boolean isKnown(int month) {
    return month <= facts.goneThrough();
  }

  /** Whether anything is known of it. */
  boolean hasFacts() {
    return facts != LotFacts.NONE;
  }

  /** What came and went by what is known of a month up to its last cull: before its steps. */
  void comeAndGo(int month) {
    if (!hasFacts()) {
      return;
    }
    MonthFacts known = facts.month(month);
    comeAndGo(month, known.changes().subList(0, known.afterLastCull()));
  }

  private void comeAndGo(int month, List<MonthFacts.Change> changes) {
    for (MonthFacts.Change change : changes) {
      switch (change.way()) {
        case CAME -> came(month, change.plants());
        case DIED -> noteDied(month, plants.die(change.plants()));
        case CULLED -> culled(month, change);
        case WENT -> went(month, plants.die(change.plants()));
      }
    }
  }

  private void came(int month, double more) {
    plants.come(more);
    noteCame(month, more);
  }

  private void culled(int month, MonthFacts.Change change) {
    double wanted = change.plants();
    double ofQuality =
        change.quality().map(quality -> plants.cullPlants(quality, wanted)).orElse(0.0);
    double culled = ofQuality + cullWorst(wanted - ofQuality);
    noteCulled(month, culled);
    freePots(month, culled);
  }

  /** Culls so many plants, the worst first, and kept ones last. */
  private double cullWorst(double wanted) {
    double saleable = plants.living() - plants.keptLiving();
    double share = saleable > 0 ? Math.max(0, Math.min(1, wanted / saleable)) : 0;
    double culled = plants.cull(share, true);
    return culled + plants.die(Math.max(0, wanted - culled));
  }

  /** What is known to have been sold and used in a month. */
  List<MonthFacts.Leaving> leaving(int month) {
    return facts.month(month).leaving();
  }

  /** Plants that left were alive: what the model took for dead of them is found again. */
  void makeSure(int month, double leaving) {
    double found = leaving - plants.living();
    if (found > 0) {
      came(month, found);
    }
  }

  void went(int month, double plantsGone) {
    noteWent(month, plantsGone);
  }

  /** Starts anew from what was counted and measured in a month. */
  void takeCount(int month) {
    if (hasFacts()) {
      facts.month(month).count().ifPresent(count -> takeCount(month, count));
    }
  }

  private void takeCount(int month, MonthFacts.Count count) {
    double before = plants.living();
    count.living().ifPresent(plants::countAs);
    double more = plants.living() - before;
    if (more > 0) {
      noteCame(month, more);
    } else {
      went(month, -more);
    }
    plants.sortAs(count.qualities());
    boolean measured = count.trunkMm().isPresent() || count.trunkSpread().isPresent();
    if (measured && !isEmpty()) {
      plants.measured(count.trunkMm().orElseGet(plants::meanTrunk), count.trunkSpread());
    }
  }

  /** So many plants as luck has it die in a month. */
  private double die(int month, int event, double share) {
    double living = plants.living();
    return share == 0 || living == 0 || isKnown(month)
        ? 0
        : plants.die(survival.deaths(month, event, living, share));
  }

  /** Takes the lot in: a lot that failed on its way is dead on arrival, others are sorted. */
  void arrive(int month) {
    for (int before = 0; before < month; before++) {
      payOtherCash(before, false);
    }
    if (month == plan.arrival) {
      noteDied(month, plants.die(plants.living() * survival.shareDeadOnArrival()));
    }
    sortOnArrival(month);
  }

  /** Whether nothing is left but the dust of dividing; such a lot is done with. */
  boolean isEmpty() {
    return plants.isEmpty();
  }

  private static String name(Optional<Place> place) {
    return place.map(Place::name).orElse("");
  }

  /** The month's moves, then its steps in route order. */
  void work(int month, Run run) {
    if (isEmpty()) {
      return;
    }
    if (month > plan.start) {
      position.turnOf(month, vessel.isPotted()).ifPresent(move -> carry(month, move));
    }
    if (plan.isUntouched(month)) {
      return;
    }
    boolean released = month == plan.apartUntil;
    if (released && plan.lot.untouched()) {
      schedule.missRecurring(month);
    }
    if (released || !schedule.isQuiet(month)) {
      doSteps(month, run);
    }
  }

  private void doSteps(int month, Run run) {
    for (int i = 0; i < plan.steps().size(); i++) {
      if (!isEmpty()) {
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
        && (waiting[index] || schedule.isOverdue(index, month));
  }

  /** Whether a step is to be done now; planting out waits while the lot is apart. */
  private boolean isDue(int index, int month) {
    boolean due = schedule.isDue(index, month, plants::meanTrunk);
    boolean waits = due && plan.isApart(month) && plan.waits(index);
    waiting[index] |= waits;
    return due && !waits;
  }

  private void doStep(int index, int month, boolean released, Run run) {
    Step step = plan.steps().get(index);
    Schedule.Done done =
        released ? schedule.doneInOneGo(index, month) : schedule.done(index, month);
    waiting[index] = false;
    done.late().ifPresent(late -> remarkLate(step, late, month, run));
    Optional<Place> before = position.in(month);
    double died = die(month, index + 1, survival.shareOfStep(step.lossShare()));
    double culled = sortAndCull(step, month);
    noteDied(month, died);
    noteCulled(month, culled);
    double living = plants.living();
    Potted potted = pot(step, month, living);
    plantOut(index, month, living, run);
    position.standIn(step.place().map(nursery.places()::get), step.spacing());
    if (step.rootWork()) {
      speed.rootsCut(step, month);
    }
    startTraining(step, month);
    plants.growBy(spot(month).curve());
    Lifting lifting =
        plan.lifts(index) ? lifting(before, position.in(month)) : Lifting.NOTHING_LIFTED;
    double each = step.minutes() + (lifting.needsTwo() ? secondPerson(index) : 0);
    double hours = spreadWork(step, month, done.monthsOfWork(), living, each);
    if (history == null) {
      return;
    }
    history.happened(
        new Happening(
            month,
            done.monthsOfWork(),
            step.name(),
            name(before),
            name(position.in(month)),
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
                late.yearsMoved()));
  }

  /** Takes the plants out of their pots, if the step does; the pots come back. */
  private void plantOut(int index, int month, double living, Run run) {
    if (!vessel.isPotted()) {
      return;
    }
    if (plan.plantsOut(index)) {
      freePots(month, living);
      vessel.end();
      position.plantedOut();
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
            && vessel.weight(plants.squaredTrunkAtMost()).kg() <= Lifting.firstKg(height);
    return surelyLight ? Lifting.ONE_PERSON : Lifting.of(weight().kg(), height);
  }

  private Weight weight() {
    return vessel.weight(plants);
  }

  /** Sorts, if the step does or it was left to, and culls; old pots of the culled come back. */
  private double sortAndCull(Step step, int month) {
    double culled = 0;
    if (step.sort()) {
      culled += sort(month);
    }
    culled += isKnown(month) ? 0 : plants.cull(step.cullShare(), sorted);
    freePots(month, culled);
    return culled;
  }

  private double sort(int month) {
    sorted = true;
    double culled = 0;
    for (Quality quality : Quality.values()) {
      if (!isKnown(month) && !nursery.qualities().get(quality).potted()) {
        culled += plants.cullAll(quality);
      }
    }
    return culled;
  }

  /** A lot without a sorting step ahead of it is sorted as it comes. */
  private void sortOnArrival(int month) {
    if (sorted) {
      return;
    }
    for (int i = 0; i < plan.steps().size(); i++) {
      if (plan.steps().get(i).sort() && schedule.doneAt(i).isEmpty()) {
        return;
      }
    }
    double culled = sort(month);
    noteCulled(month, culled);
    freePots(month, culled);
  }

  private void freePots(int month, double plantsGone) {
    vessel.pot().ifPresent(old -> to.freed(month + 1, old.name(), plantsGone * old.reuseShare()));
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

  private record Potted(double pots, double litres) {}

  private Potted pot(Step step, int month, double living) {
    if (step.pot().isEmpty()) {
      return new Potted(0, 0);
    }
    Pot into = nursery.pots().get(step.pot().get());
    boolean same = vessel.pot().map(Pot::name).filter(into.name()::equals).isPresent();
    if (!same) {
      freePots(month, living);
      to.used(month, Use.Kind.POT, into.name(), living);
    }
    double pottedLitres = vessel.pot(step, into, month);
    double litres = 0;
    if (step.mix().isPresent()) {
      Mix mix = nursery.mixes().get(step.mix().get());
      litres =
          living * pottedLitres * mix.looseLitresPerPottedLitre() * (1 + settings.wasteShare());
      for (String component : mix.parts().keySet()) {
        double amount = litres * mix.share(component);
        to.used(month, Use.Kind.COMPONENT, component, amount);
      }
    }
    return new Potted(same ? 0 : living, litres);
  }

  /** Carries the plants into their winter place or back. */
  private void carry(int month, Position.Move move) {
    double living = plants.living();
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

  /** Reads space, load and care for the month, and pays other cash that it causes. */
  void stand(int month) {
    standing = spot(month);
    if (isEmpty()) {
      return;
    }
    double living = plants.living();
    double m2 = living * standing.m2Each();
    int monthOfYear = calendar.monthOfYear(month);
    double hours = m2 * care.minutes(standing.careKind(), monthOfYear) * minutes[month] / 60;
    to.cared(month, living, hours);
    to.stood(
        month, standing.placeName(), living, m2, m2 * care.cost(standing.careKind(), monthOfYear));
    if (history != null) {
      String potName = vessel.pot().map(Pot::name).orElse("");
      history.weighed(new Stood(month, standing.placeName(), living, m2, weight(), potName));
    }
    payOtherCash(month, true);
  }

  /** Other cash of the lot; before it is there only what names its months itself. */
  private void payOtherCash(int month, boolean isThere) {
    for (OtherCash row : plan.otherCash) {
      if (plan.isDue(row, month) && (isThere || row.namesItsMonths())) {
        to.paid(month, row.amount());
        work(month, row.what(), isThere ? plants.living() : 0, row.hours() * minutes[month]);
      }
    }
  }

  /** Work that leaves the plants where they stand. */
  private void work(int month, String job, double living, double hours) {
    if (hours == 0) {
      return;
    }
    to.worked(month, job, living, hours);
    if (history != null) {
      String place = standing == null ? "" : standing.placeName();
      history.happened(Happening.job(month, job, place, place, living, hours));
    }
  }

  /** How the lot stands in a month. */
  private Spot spot(int month) {
    return position.spot(month, vessel.pot(), plants::meanTrunk);
  }

  /** Grows for a month. */
  void grow(int month) {
    plants.growBy(standing.curve());
    double years = speed.growthYears(month);
    if (years > 0) {
      plants.grow(years * vessel.potBoundFactor(month));
    }
  }

  /** What came and went after the month's last cull, then the losses that are to be expected. */
  void lose(int month) {
    if (hasFacts()) {
      MonthFacts known = facts.month(month);
      comeAndGo(month, known.changes().subList(known.afterLastCull(), known.changes().size()));
    }
    noteDied(month, die(month, 0, survival.share(month)));
  }

  /** Whole months since training started, −1 if it has not. */
  private int trainingMonths(int month) {
    return trainingAt == NEVER || trainingAt > month ? -1 : month - trainingAt;
  }

  /**
   * Whole months since training started, negative where it is to start by a dated step ahead;
   * {@link Growing#UNTRAINED} where it is not.
   */
  private int trainingClock(int month) {
    if (trainingAt != NEVER) {
      return month - trainingAt;
    }
    OptionalInt starts = schedule.trainingStarts(month);
    return starts.isPresent() ? month - starts.getAsInt() : Growing.UNTRAINED;
  }

  boolean maySell(int month) {
    return sorted
        && month > facts.soldThrough()
        && month >= plan.notBefore
        && !plan.isApart(month)
        && !isEmpty();
  }

  /** Grades the lot for sale; gives the cells in which plants are ready. */
  long gradeForSale(int month) {
    return plants.gradeForSale(trainingClock(month));
  }

  void sold(int month, int row, int grade, Quality quality, double units, double money) {
    accountedFor += units;
    soldInMonth += units;
    to.sold(month, row, grade, quality, units, money);
  }

  /** The work of the month's sales. */
  private void sellingWork(int month) {
    if (soldInMonth > 0) {
      double each = standing.place().map(plan::minutesASale).orElse(settings.minutesASale());
      work(month, Work.SELLING, soldInMonth, soldInMonth * each * minutes[month] / 60);
      soldInMonth = 0;
    }
  }

  private void noteDiedBefore(double dead) {
    accountedFor += dead;
    to.diedBefore(dead);
  }

  private void noteDied(int month, double dead) {
    accountedFor += dead;
    to.died(month, dead);
  }

  private void noteCulled(int month, double culled) {
    accountedFor += culled;
    to.culled(month, culled);
  }

  private void noteCame(int month, double more) {
    accountedFor -= more;
    to.came(month, more);
  }

  private void noteWent(int month, double gone) {
    accountedFor += gone;
    to.went(month, gone);
  }

  /**
   * Checks that what was booked and what stands are all the plants there were.
   *
   * @throws BalanceException if they are not
   */
  void checkBalance(Horizon horizon) {
    Balance.check(plan.lot, facts.part(), accountedFor, plants.count(), horizon);
  }

  void endMonth(int month) {
    sellingWork(month);
    to.monthOver(month, plants.living());
    if (to.asksForTrunks()) {
      to.trunk(month, isEmpty() ? 0 : plants.meanTrunk());
    }
    if (calendar.isSeasonEnd(month)) {
      to.seasonEnded(calendar.season(month), plants.standing(trainingMonths(month)));
    }
    if (history != null) {
      noteMonth(month);
    }
  }

  private void noteMonth(int month) {
    if (history.isDetailed()) {
      history.monthSeen(month, plants.stock(trainingMonths(month)));
    }
    for (int grade = 0; grade < plan.grades().size(); grade++) {
      history.graded(month, grade, plants.shareGraded(grade, trainingMonths(month)));
    }
    history.monthEnded(month, plants.count(), plants.keptLiving());
    if (calendar.isYearEnd(month)) {
      history.yearEnded(new YearEnd(month, plants.standing(trainingMonths(month))));
    }
    if (calendar.isSeasonEnd(month)) {
      history.seasonSeen(calendar.season(month), readyNow(month), plants.meanTrunk());
    }
  }

  private double[][] readyNow(int month) {
    double[][] ready = new double[Quality.values().length][plan.grades().size()];
    if (maySell(month)) {
      gradeForSale(month);
      for (Quality quality : Quality.values()) {
        for (int grade = 0; grade < plan.grades().size(); grade++) {
          ready[quality.ordinal()][grade] = plants.ready(quality, grade);
        }
      }
    }
    return ready;
  }
}
