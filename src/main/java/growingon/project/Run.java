package growingon.project;

import growingon.problem.Problem;
import growingon.project.history.Missed;
import growingon.project.history.Recorder;
import growingon.project.lot.Facts;
import growingon.project.lot.LotHistory;
import growingon.project.lot.LotPlan;
import growingon.project.lot.Luck;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.IntConsumer;
import java.util.function.IntFunction;
import java.util.function.Supplier;
import java.util.stream.IntStream;

/** One pass through the months of a programme. */
final class Run {
  /** With fewer, sharing the work takes longer than doing it. */
  private static final int LOTS_FOR_ALL_PROCESSORS = 200;

  private final Programme programme;
  private final Facts facts;
  private final double[] minutes;
  private final Map<LotPlan, List<Problem>> remarks = new LinkedHashMap<>();
  private Luck luck;

  Run(Programme programme, Luck luck) {
    this(programme, luck, Facts.NONE);
  }

  Run(Programme programme, Luck luck, Facts facts) {
    this.programme = programme;
    this.facts = facts;
    this.minutes = new double[programme.horizon().months()];
    begin(luck);
  }

  /** Begins another run on its luck, of lots that begin it after this. */
  void begin(Luck ofRun) {
    luck = ofRun;
    for (int month = 0; month < minutes.length; month++) {
      minutes[month] = ofRun.minutes(programme.calendar().seasonYear(month));
    }
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

  /** Whether the grower is told anything of it: of a run with all particulars. */
  boolean isTold() {
    return !remarks.isEmpty();
  }

  /** Notes what the grower is to be told of a lot: of a run with all particulars. */
  void remark(LotPlan plan, Supplier<Problem> problem) {
    List<Problem> ofLot = remarks.get(plan);
    if (ofLot != null) {
      ofLot.add(problem.get());
    }
  }

  /**
   * Runs with all particulars.
   *
   * @param detailed whether to take down how lots stand at every month's end
   */
  Projection withHistories(boolean detailed) {
    return withHistories(detailed, programme.lots().size() >= LOTS_FOR_ALL_PROCESSORS);
  }

  Projection withHistories(boolean detailed, boolean onAllProcessors) {
    List<LotState> lots = new ArrayList<>();
    List<LotHistory> histories = new ArrayList<>();
    programme.lots().forEach(plan -> remarks.put(plan, new ArrayList<>()));
    for (LotPlan plan : programme.lots()) {
      remarkOnTimeApart(plan);
      double part = facts.of(plan).part();
      LotHistory history = new LotHistory(plan, programme.horizon().months(), part, detailed);
      histories.add(history);
      lots.add(new LotState(plan, this, history, history));
    }
    List<Missed> missed = run(lots, onAllProcessors);
    List<Problem> told = remarks.values().stream().flatMap(List::stream).toList();
    return new Projection(programme.scenario(), programme.horizon(), histories, missed, told);
  }

  List<Missed> withRecorders(IntFunction<Recorder> recorders) {
    return run(lots(recorders));
  }

  /** Its lots before their first month. */
  List<LotState> lots(IntFunction<Recorder> recorders) {
    List<LotState> lots = new ArrayList<>();
    for (int i = 0; i < programme.lots().size(); i++) {
      lots.add(new LotState(programme.lots().get(i), this, recorders.apply(i), null));
    }
    return lots;
  }

  private void remarkOnTimeApart(LotPlan plan) {
    boolean hasPlaces = !programme.nursery().places().isEmpty();
    if (plan.apartUntil > plan.start && hasPlaces && programme.apartPlace().isEmpty()) {
      remark(plan, () -> Remarks.noQuarantine(plan.lot.name()));
    }
  }

  /** Runs all months; the lots stand as they do at the end afterwards. */
  List<Missed> run(List<LotState> lots) {
    return run(lots, false);
  }

  /**
   * Runs all months; the lots stand as they do at the end afterwards. Between two sales no lot
   * knows of another, so each goes up to the next sale alone.
   *
   * @param onAllProcessors whether several lots do so at once, which changes no number
   */
  private List<Missed> run(List<LotState> lots, boolean onAllProcessors) {
    Market market = new Market(programme, luck, lots.toArray(new LotState[0]));
    int months = programme.horizon().months();
    int next = 0;
    while (next < months) {
      int from = next;
      int sale = market.nextSale(from);
      IntConsumer goOn =
          lot -> {
            upToSales(from, sale, lots.get(lot));
            market.prepare(lot, sale);
          };
      each(lots, onAllProcessors, goOn);
      market.sell(sale);
      next = sale + 1;
    }
    each(lots, onAllProcessors, lot -> afterSales(months - 1, lots.get(lot)));
    lots.forEach(lot -> lot.checkBalance(programme.horizon()));
    return market.missed();
  }

  private static void each(List<LotState> lots, boolean onAllProcessors, IntConsumer does) {
    if (onAllProcessors) {
      IntStream.range(0, lots.size()).parallel().forEach(does);
      return;
    }
    for (int lot = 0; lot < lots.size(); lot++) {
      does.accept(lot);
    }
  }

  /** The months of a lot up to the sales of the last of them; nothing is sold in the others. */
  void upToSales(int from, int to, LotState lot) {
    for (int month = from; month <= to; month++) {
      if (month > 0) {
        afterSales(month - 1, lot);
      }
      beforeSales(month, lot);
    }
  }

  /**
   * The order of a month up to its sales: plants arrive, what is known happens, steps are done,
   * space is read, plants grow, some die.
   */
  private void beforeSales(int month, LotState lot) {
    if (month < lot.start || lot.isGone()) {
      return;
    }
    if (month == lot.start) {
      lot.arrive(month);
    }
    if (lot.hasFacts()) {
      lot.past.beforeSteps(month);
    }
    lot.work(month, this);
    lot.stand(month);
    lot.grow(month);
    lot.lose(month);
  }

  static void afterSales(int month, LotState lot) {
    if (month >= lot.start) {
      if (lot.hasFacts()) {
        lot.past.takeCount(month);
      }
      lot.endMonth(month);
    }
  }
}
