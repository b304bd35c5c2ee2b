package growingon.project;

import growingon.nursery.Horizon;
import growingon.nursery.LiftFrom;
import growingon.nursery.Mix;
import growingon.nursery.Nursery;
import growingon.nursery.Place;
import growingon.nursery.Pot;
import growingon.nursery.Quality;
import growingon.nursery.Settings;
import growingon.nursery.Spacing;
import growingon.nursery.Step;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
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
  private final Luck luck;
  private final Luck.Deaths deaths;
  private final Nursery nursery;
  private final Settings settings;
  private final Calendar calendar;
  private final Optional<Place> apartPlace;
  private final CareRates care;
  private final Spacing winterSpacing;
  private final double[] minutes;
  private double accountedFor;
  private Optional<Pot> pot;
  private Optional<Place> place;
  private boolean standsInWinterPlace;
  private Spacing spacing;
  private Filling filling = Filling.NONE;
  private int pottedAt = NEVER;
  private int rootWorkAt = NEVER;
  private int trainingAt = NEVER;
  private boolean sorted;
  private boolean inWinterPlace;
  private int knownSeason = NEVER;
  private boolean knownFirstYear;
  private double knownSurvival;
  private double knownLog;
  private double knownLoss;
  private int growthSeason = NEVER;
  private double seasonGrowth;
  private Spot summerSpot;
  private Spot winterSpot;
  private Spot standing;
  private Weight weight;
  private double weighedTrunk;
  private Filling weighedFilling;

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
    this.luck = run.luck();
    this.deaths = luck.deaths(plan.lot);
    this.minutes = run.minutes();
    this.facts = run.facts().of(plan);
    Programme programme = run.programme();
    this.nursery = programme.nursery();
    this.settings = nursery.settings();
    this.calendar = programme.calendar();
    this.care = programme.care();
    this.apartPlace = programme.apartPlace();
    this.winterSpacing = new Spacing(settings.winterGapMm(), OptionalDouble.empty());
    this.plants = new Growing(plan, luck.quality(plan.lot));
    plants.keepPart(facts.part());
    this.schedule = new Schedule(plan.route, programme.horizon().firstMonth(), plan.arrival);
    this.pot = plan.lot.potting().pot().map(nursery.pots()::get);
    standIn(plan.lot.standing().place().map(nursery.places()::get));
    this.spacing = plan.lot.standing().spacing().orElse(Spacing.NO_GAP);
    takeUp(run);
  }

  /** Brings the state to the plan's first month, or to the lot's arrival. */
  private void takeUp(Run run) {
    if (plan.arrival < 0) {
      int last = plan.lot.lastStep().map(plan.route::indexOf).orElseGet(() -> lastByDates(run));
      schedule.alreadyDone(last, -1);
      for (int i = 0; i <= last; i++) {
        replay(i, schedule.doneAt(i));
      }
    }
    plan.lot
        .potting()
        .potted()
        .ifPresent(month -> pottedAt = run.programme().horizon().offset(month));
    plan.lot
        .potting()
        .rootWork()
        .ifPresent(month -> rootWorkAt = run.programme().horizon().offset(month));
    plan.lot
        .trainingSince()
        .ifPresent(month -> trainingAt = run.programme().horizon().offset(month));
    if (pot.isPresent() && pottedAt == NEVER) {
      pottedAt = plan.arrival;
    }
    settleFilling();
    sorted = plan.lot.quality().sorted();
    inWinterPlace = belongsInWinterPlace(plan.start);
    plants.growBy(spot(plan.counted).curve());
    carryForward();
  }

  private int lastByDates(Run run) {
    int last =
        Schedule.lastDoneByDates(
            plan.route, run.programme().horizon().firstMonth(), plan.arrival, -1);
    Optional<String> reached = Optional.empty();
    for (int i = 0; i <= last; i++) {
      reached = plan.steps().get(i).pot().or(current(reached));
    }
    if (last >= 0 && reached.isPresent() && !reached.equals(pot.map(Pot::name))) {
      Optional<String> expected = reached;
      run.remark(
          plan,
          () ->
              Remarks.lastStepDisagrees(
                  plan.lot.name(),
                  plan.steps().get(last).name(),
                  expected.get(),
                  pot.map(Pot::name).orElse("no pot")));
    }
    return last;
  }

  private static Supplier<Optional<String>> current(Optional<String> value) {
    return () -> value;
  }

  /** What a step done before the plan left behind, as far as the stock row does not say. */
  private void replay(int index, OptionalInt doneAt) {
    if (doneAt.isEmpty()) {
      return;
    }
    Step step = plan.steps().get(index);
    if (step.pot().isPresent()) {
      pottedAt = doneAt.getAsInt();
      fill(step, step.pot().map(nursery.pots()::get).get());
    }
    rootWorkAt = step.rootWork() ? doneAt.getAsInt() : rootWorkAt;
    startTraining(step, doneAt.getAsInt());
    if (plan.lot.standing().spacing().isEmpty()) {
      spacing = step.spacing().orElse(spacing);
    }
    if (plan.lot.standing().place().isEmpty() && step.place().isPresent()) {
      standIn(step.place().map(nursery.places()::get));
    }
  }

  /** Training, once started, goes on. */
  private void startTraining(Step step, int month) {
    if (step.trainingStarts() && trainingAt == NEVER) {
      trainingAt = month;
    }
  }

  /** Makes the filling agree with the pot that the stock row states. */
  private void settleFilling() {
    if (pot.isEmpty()) {
      filling = Filling.NONE;
      pottedAt = NEVER;
    } else if (Math.abs(filling.litres() - pot.get().fillLitres()) > 1e-9) {
      filling = Filling.NONE.filledUp(pot.get());
    }
  }

  /** Growth and losses from an older count to the plan's first month. */
  private void carryForward() {
    for (int month = plan.counted; month < plan.start; month++) {
      standing = spot(month);
      grow(month);
      if (!isKnown(month)) {
        noteDiedBefore(plants.die(plants.living() * lossShare(month, Luck.NONE)));
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

  /** Share lost in a month: a year's loss spread by month shares, 1 − (1 − q)^s. */
  private double lossShare(int month, Luck by) {
    double share = plan.species.lossMonths().get(calendar.monthOfYear(month));
    return share == 0 ? 0 : lossShare(share * logOfYearlySurvival(month, by));
  }

  /** 1 − e^x; the months of a season often share their x. */
  private double lossShare(double logOfSurvival) {
    if (logOfSurvival != knownLog) {
      knownLog = logOfSurvival;
      knownLoss = 1 - Math.exp(logOfSurvival);
    }
    return knownLoss;
  }

  /** ln(1 − q) of the season, kept until the season or the lot's first year ends. */
  private double logOfYearlySurvival(int month, Luck by) {
    boolean firstYear = plan.isFirstYear(month);
    int season = calendar.seasonYear(month);
    if (season != knownSeason || firstYear != knownFirstYear || by != luck) {
      double expected =
          firstYear
              ? by.consignmentLoss(plan.lot, plan.species.firstYearLoss())
              : plan.species.laterLoss();
      knownSurvival = Math.log(1 - by.loss(plan.species, expected, season));
      knownFirstYear = firstYear;
      knownSeason = by == luck ? season : NEVER;
    }
    return knownSurvival;
  }

  /** So many plants as luck has it die in a month. */
  private double die(int month, int event, double share) {
    double living = plants.living();
    return share == 0 || living == 0 || isKnown(month)
        ? 0
        : plants.die(deaths.in(month, event, living, share));
  }

  /** Takes the lot in: a lot that failed on its way is dead on arrival, others are sorted. */
  void arrive(int month) {
    if (month == plan.arrival) {
      noteDied(month, plants.die(plants.living() * luck.deadOnArrival(plan.lot)));
    }
    sortOnArrival(month);
  }

  /** Whether nothing is left but the dust of dividing; such a lot is done with. */
  boolean isEmpty() {
    return plants.isEmpty();
  }

  /** The place in which the lot stands in a month. */
  private Optional<Place> standsIn(int month) {
    if (plan.isApart(month) && apartPlace.isPresent()) {
      return apartPlace;
    }
    return belongsInWinterPlace(month) ? plan.winterPlace : place;
  }

  /** Potted plants with a winter place stand in it in the winter months, unless they are apart. */
  private boolean belongsInWinterPlace(int month) {
    return plan.winterPlace.isPresent()
        && calendar.isWinter(month)
        && pot.isPresent()
        && !plan.isApart(month)
        && !standsInWinterPlace;
  }

  /** Stands in a place from now on, but for the winter and while it is apart. */
  private void standIn(Optional<Place> next) {
    place = next;
    standsInWinterPlace = plan.winterPlace.equals(next);
  }

  private String placeName(int month) {
    return name(standsIn(month));
  }

  private static String name(Optional<Place> place) {
    return place.map(Place::name).orElse("");
  }

  /** The month's steps and moves, in route order. */
  void work(int month, Run run) {
    if (isEmpty() || plan.isApart(month)) {
      return;
    }
    if (!schedule.isQuiet(month)) {
      doSteps(month, run);
    }
    moveForWinter(month);
  }

  private void doSteps(int month, Run run) {
    for (int i = 0; i < plan.steps().size(); i++) {
      if (!isEmpty() && schedule.isDue(i, month, plants::meanTrunk)) {
        doStep(i, month, run);
      }
    }
  }

  private void doStep(int index, int month, Run run) {
    Step step = plan.steps().get(index);
    Schedule.Done done = schedule.done(index, month);
    done.late()
        .filter(late -> !plan.isApart(late.dueMonth()) || late.yearsMoved() > 0)
        .ifPresent(
            late ->
                run.remark(
                    plan,
                    () ->
                        Remarks.lateStep(
                            plan.lot.name(),
                            step.name(),
                            run.programme().horizon().month(late.dueMonth()),
                            run.programme().horizon().month(month),
                            late.yearsMoved())));
    Optional<Place> before = standsIn(month);
    double loss = luck.consignmentLoss(plan.lot, step.lossShare());
    double died = die(month, index + 1, loss);
    double culled = sortAndCull(step, month);
    noteDied(month, died);
    noteCulled(month, culled);
    double living = plants.living();
    Potted potted = pot(step, month, living);
    if (step.place().isPresent()) {
      standIn(step.place().map(nursery.places()::get));
    }
    spacing = step.spacing().orElse(spacing);
    rootWorkAt = step.rootWork() ? month : rootWorkAt;
    startTraining(step, month);
    plants.growBy(spot(month).curve());
    Lifting lifting = lifts(step) ? lifting(before, standsIn(month)) : Lifting.NOTHING_LIFTED;
    double hours = spreadWork(step, month, done.monthsOfWork(), living, lifting.people());
    if (history == null) {
      return;
    }
    history.happened(
        new Happening(
            month,
            done.monthsOfWork(),
            step.name(),
            name(before),
            placeName(month),
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

  /** Potting, moving and lifting take a plant up; wiring and pruning leave it where it stands. */
  private static boolean lifts(Step step) {
    return step.pot().isPresent() || step.place().isPresent() || step.liftedBallLitres() > 0;
  }

  /**
   * How the lot's plants are lifted. Where nobody asks for the weight itself, plants that could not
   * be too heavy even if all were as thick as the thickest are not weighed.
   */
  private Lifting lifting(Optional<Place> takenUp, Optional<Place> setDown) {
    LiftFrom height = Lifting.lower(takenUp, setDown);
    boolean surelyLight =
        history == null && weight(plants.squaredTrunkAtMost()).kg() <= Lifting.firstKg(height);
    return surelyLight ? Lifting.ONE_PERSON : Lifting.of(weight().kg(), height);
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
    pot.ifPresent(old -> to.freed(month + 1, old.name(), plantsGone * old.reuseShare()));
  }

  private double spreadWork(Step step, int month, int months, double living, int people) {
    double hours = living * step.minutes() * people * minutes(month) / 60;
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
    boolean same = pot.map(Pot::name).filter(into.name()::equals).isPresent();
    if (!same) {
      freePots(month, living);
      to.used(month, Use.Kind.POT, into.name(), living);
    }
    double pottedLitres = fill(step, into);
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
    pot = Optional.of(into);
    pottedAt = month;
    return new Potted(same ? 0 : living, litres);
  }

  /** Fills a pot round the ball that stays on; gives the litres of mix in one pot. */
  private double fill(Step step, Pot into) {
    Filling ball = filling.ballKept(step, filling.litres() > 0, into);
    filling =
        step.mix()
            .map(mix -> ball.filledUp(into, nursery.mixes().get(mix), nursery.components()))
            .orElseGet(() -> ball.filledUp(into));
    return Math.max(0, into.fillLitres() - ball.litres());
  }

  private void moveForWinter(int month) {
    boolean inside = belongsInWinterPlace(month);
    if (inside != inWinterPlace) {
      double living = plants.living();
      Lifting lifting = lifting(place, plan.winterPlace);
      double hours = living * settings.winterMoveMinutes() * lifting.people() * minutes(month) / 60;
      to.worked(month, Work.WINTER_MOVE, living, hours);
      inWinterPlace = inside;
      if (history == null) {
        return;
      }
      String there = plan.winterPlace.get().name();
      boolean fromApart = plan.isApart(month - 1) && apartPlace.isPresent();
      String own = name(fromApart ? apartPlace : place);
      history.happened(
          new Happening(
              month,
              1,
              Work.WINTER_MOVE,
              inside ? own : there,
              inside ? there : own,
              living,
              0,
              0,
              Optional.empty(),
              0,
              0,
              hours,
              weight().kg(),
              OptionalInt.empty(),
              lifting));
    }
  }

  /** Reads space, load and care for the month. */
  void stand(int month) {
    standing = spot(month);
    if (isEmpty()) {
      return;
    }
    double living = plants.living();
    double m2 = living * standing.m2Each();
    int monthOfYear = calendar.monthOfYear(month);
    double hours = m2 * care.minutes(standing.careKind(), monthOfYear) * minutes(month) / 60;
    to.cared(month, living, hours);
    to.stood(
        month, standing.placeName(), living, m2, m2 * care.cost(standing.careKind(), monthOfYear));
    if (history != null) {
      String potName = pot.map(Pot::name).orElse("");
      history.weighed(new Stood(month, standing.placeName(), living, m2, weight(), potName));
    }
  }

  /** How the lot stands in a month, kept until it is potted, moved or set out otherwise. */
  private Spot spot(int month) {
    Optional<Place> where = standsIn(month);
    if (belongsInWinterPlace(month)) {
      if (winterSpot == null || !winterSpot.isOf(pot, where, winterSpacing)) {
        winterSpot = Spot.of(plan, pot, where, winterSpacing);
      }
      return winterSpot;
    }
    if (summerSpot == null || !summerSpot.isOf(pot, where, spacing)) {
      summerSpot = Spot.of(plan, pot, where, spacing);
    }
    return summerSpot;
  }

  private double minutes(int month) {
    return minutes[month];
  }

  /** Weight of a plant, the same object while nothing about it changes. */
  private Weight weight() {
    if (pot.isEmpty()) {
      return Weight.NONE;
    }
    double squaredTrunk = plants.meanSquaredTrunk();
    if (weight == null || squaredTrunk != weighedTrunk || filling != weighedFilling) {
      weight = weight(squaredTrunk);
      weighedTrunk = squaredTrunk;
      weighedFilling = filling;
    }
    return weight;
  }

  private Weight weight(double squaredTrunk) {
    if (pot.isEmpty()) {
      return Weight.NONE;
    }
    return new Weight(
        filling.mixKg(),
        filling.liftedKg(),
        pot.get().emptyKg(),
        Weight.woodKg(squaredTrunk, plan.lot.standing().heightLeftMm()));
  }

  /** Growth years of a month: share × root-work check × pot-bound factor × the season's luck. */
  void grow(int month) {
    double share = plan.species.growthMonths().get(calendar.monthOfYear(month));
    plants.growBy(standing.curve());
    if (share > 0) {
      plants.grow(share * rootWorkCheck(month) * potBoundFactor(month) * yearEffect(month));
    }
  }

  /** The season's luck; growth before the plan has been what it was. */
  private double yearEffect(int month) {
    if (month < 0) {
      return 1;
    }
    int season = calendar.seasonYear(month);
    if (season != growthSeason) {
      growthSeason = season;
      seasonGrowth = luck.growth(plan.species, season);
    }
    return seasonGrowth;
  }

  private double rootWorkCheck(int month) {
    if (rootWorkAt == NEVER || month - rootWorkAt >= 24) {
      return 1;
    }
    return month - rootWorkAt < 12 ? plan.species.checkFirstYear() : plan.species.checkSecondYear();
  }

  private double potBoundFactor(int month) {
    return pottedAt == NEVER || month - pottedAt < plan.species.potBoundMonths()
        ? 1
        : plan.species.potBoundFactor();
  }

  /** What came and went after the month's last cull, then the losses that are to be expected. */
  void lose(int month) {
    if (hasFacts()) {
      MonthFacts known = facts.month(month);
      comeAndGo(month, known.changes().subList(known.afterLastCull(), known.changes().size()));
    }
    noteDied(month, die(month, 0, lossShare(month, luck)));
  }

  /** Whole months since training started, −1 if it has not. */
  private int trainingMonths(int month) {
    return trainingAt == NEVER || trainingAt > month ? -1 : month - trainingAt;
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
    return plants.gradeForSale(trainingMonths(month));
  }

  void sold(int month, int row, int grade, Quality quality, double units, double money) {
    accountedFor += units;
    to.sold(month, row, grade, quality, units, money);
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
