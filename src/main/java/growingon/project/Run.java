package growingon.project;

import growingon.problem.Problem;
import java.util.ArrayList;
import java.util.List;
import java.util.function.IntFunction;
import java.util.function.Supplier;
import java.util.stream.IntStream;

/** One pass through the months of a programme. */
final class Run {
  private final Programme programme;
  private final Luck luck;
  private final Facts facts;
  private final double[] minutes;
  private final List<Problem> remarks = new ArrayList<>();

  Run(Programme programme, Luck luck) {
    this(programme, luck, Facts.NONE);
  }

  Run(Programme programme, Luck luck, Facts facts) {
    this.programme = programme;
    this.luck = luck;
    this.facts = facts;
    this.minutes =
        IntStream.range(0, programme.horizon().months())
            .mapToDouble(month -> luck.minutes(programme.calendar().seasonYear(month)))
            .toArray();
  }

  /** Factor on all minutes of each month. */
  double[] minutes() {
    return minutes;
  }

  Facts facts() {
    return facts;
  }

  Programme programme() {
    return programme;
  }

  Luck luck() {
    return luck;
  }

  /** Notes something that the grower is to be told of the plan's line; a draw tells nothing. */
  void remark(Supplier<Problem> problem) {
    if (luck == Luck.NONE) {
      remarks.add(problem.get());
    }
  }

  /**
   * Runs with all particulars.
   *
   * @param detailed whether to take down how lots stand at every month's end
   */
  Projection withHistories(boolean detailed) {
    List<LotState> lots = new ArrayList<>();
    List<LotHistory> histories = new ArrayList<>();
    for (LotPlan plan : programme.lots()) {
      remarkOnTimeApart(plan);
      double part = facts.of(plan).part();
      LotHistory history = new LotHistory(plan, programme.horizon().months(), part, detailed);
      histories.add(history);
      lots.add(new LotState(plan, this, history, history));
    }
    List<Missed> missed = run(lots);
    return new Projection(programme.scenario(), programme.horizon(), histories, missed, remarks);
  }

  List<Missed> withRecorders(IntFunction<Recorder> recorders) {
    List<LotState> lots = new ArrayList<>();
    for (int i = 0; i < programme.lots().size(); i++) {
      lots.add(new LotState(programme.lots().get(i), this, recorders.apply(i), null));
    }
    return run(lots);
  }

  private void remarkOnTimeApart(LotPlan plan) {
    boolean hasPlaces = !programme.nursery().places().isEmpty();
    if (plan.apartUntil > plan.start && hasPlaces && programme.apartPlace().isEmpty()) {
      remark(() -> Remarks.noQuarantine(plan.lot.name()));
    }
  }

  /** Runs all months; the lots stand as they do at the end afterwards. */
  List<Missed> run(List<LotState> lots) {
    Market market = new Market(programme, luck, lots);
    for (int month = 0; month < programme.horizon().months(); month++) {
      runMonth(month, lots, market);
    }
    return market.missed();
  }

  /** The order of a month (design section 6.4). */
  private void runMonth(int month, List<LotState> lots, Market market) {
    for (LotState lot : lots) {
      if (month < lot.plan.start) {
        continue;
      }
      if (month == lot.plan.start) {
        lot.arrive(month);
      }
      if (lot.hasFacts()) {
        lot.comeAndGo(month);
      }
      lot.work(month, this);
      lot.stand(month);
      lot.grow(month);
      lot.lose(month);
    }
    market.sell(month);
    for (LotState lot : lots) {
      if (month >= lot.plan.start) {
        if (lot.hasFacts()) {
          lot.takeCount(month);
        }
        lot.endMonth(month);
      }
    }
  }
}
