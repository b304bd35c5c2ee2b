package growingon.project;

import growingon.project.history.PartRecorder;
import growingon.project.lot.LotPlan;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.function.IntFunction;

/** The course of one programme beside a first one, with which it shares lots that fare alike. */
final class Course {
  private static final int OWN = -1;
  private static final int NOT_HERE = -1;
  private static final int ROOM = 128;

  private final Run run;
  private final Course first;
  private final LotState[] lots;
  private final PartRecorder[] recorders;
  private final int[] shared;
  private final int[] placeHere;
  private final int[] own;
  private final int[] apart;
  private final Market market;
  private final Agreement agreed;
  private int owns;
  private int aparts;
  private boolean isAsFirst;
  private int[] turns = new int[ROOM];
  private int turn;

  /** The first one, all of whose lots are its own. */
  Course(Programme programme, Run run, IntFunction<PartRecorder> recorder) {
    this.run = run;
    this.first = this;
    List<LotPlan> plans = programme.lots();
    this.lots = new LotState[plans.size()];
    this.recorders = new PartRecorder[lots.length];
    this.shared = new int[lots.length];
    this.placeHere = new int[0];
    this.own = new int[lots.length];
    this.apart = new int[0];
    for (int lot = 0; lot < lots.length; lot++) {
      begin(lot, plans.get(lot), recorder);
    }
    this.market = new Market(programme, run.luck(), lots);
    this.agreed = new Agreement(lots);
    add(SideBySide.EVERY_LOT);
  }

  /**
   * Another one.
   *
   * @param known the first one's lots, by what was made ready of them
   * @param recorder gives the recorders of lots that the first one has not
   */
  Course(
      Programme programme,
      Course first,
      Map<LotPlan, Integer> known,
      IntFunction<PartRecorder> recorder) {
    this.run = first.run;
    this.first = first;
    List<LotPlan> plans = programme.lots();
    this.lots = new LotState[plans.size()];
    this.recorders = new PartRecorder[lots.length];
    this.shared = new int[lots.length];
    this.own = new int[lots.length];
    this.placeHere = new int[first.lots.length];
    Arrays.fill(placeHere, NOT_HERE);
    for (int lot = 0; lot < lots.length; lot++) {
      Integer there = known.get(plans.get(lot));
      if (there == null) {
        begin(lot, plans.get(lot), recorder);
      } else {
        share(lot, there);
      }
    }
    this.apart = new int[placeHere.length];
    for (int there = 0; there < placeHere.length; there++) {
      if (placeHere[there] == NOT_HERE) {
        apart[aparts++] = there;
      }
    }
    this.market = new Market(first.market, programme, lots);
    this.agreed = new Agreement(lots);
    add(SideBySide.EVERY_LOT);
  }

  private void begin(int lot, LotPlan plan, IntFunction<PartRecorder> recorder) {
    recorders[lot] = recorder.apply(lot);
    lots[lot] = new LotState(plan, run, recorders[lot], null);
    recorders[lot].partOver();
    shared[lot] = OWN;
    own[owns++] = lot;
  }

  private void share(int lot, int there) {
    recorders[lot] = first.recorders[there];
    lots[lot] = first.lots[there];
    shared[lot] = there;
    placeHere[there] = lot;
  }

  /** A lot that fares otherwise from now on than in the first one. */
  private void part(int lot) {
    int there = shared[lot];
    recorders[lot] = first.recorders[there].goingApart();
    lots[lot] = new LotState(first.lots[there], recorders[lot]);
    apart[aparts++] = there;
    shared[lot] = OWN;
    own[owns++] = lot;
  }

  private void add(int whose) {
    turns = turn == turns.length ? Arrays.copyOf(turns, 2 * turn) : turns;
    turns[turn++] = whose;
  }

  /** The first month from a month on in which anything may be sold. */
  int nextSale(int from) {
    return market.nextSale(from);
  }

  /** Its own lots go on through months up to the sales of the last of them. */
  void goOn(int from, int sale) {
    for (int i = 0; i < owns; i++) {
      int lot = own[i];
      run.upToSales(from, sale, lots[lot]);
      market.prepare(lot, sale);
      recorders[lot].partOver();
    }
    add(SideBySide.EVERY_LOT);
  }

  /** Agrees on what is sold in a month; lots that would sell otherwise than in the first part. */
  void agree(int month) {
    if (first == this) {
      market.begin(month);
      agreed.clear();
      market.sellAt(agreed);
      return;
    }
    market.follow(month);
    long otherCells = cellsNotShared();
    isAsFirst = otherCells == 0;
    if (isAsFirst) {
      return;
    }
    agreed.clear();
    for (int lot = 0; lot < lots.length; lot++) {
      if (shared[lot] != OWN) {
        market.takeOver(lot, first.market.readyCells(shared[lot]));
      }
    }
    market.sellBeside(first.agreed, placeHere, otherCells, agreed);
    for (int lot = 0; lot < lots.length; lot++) {
      if (shared[lot] != OWN && !agreed.isAlike(lot, first.agreed, shared[lot])) {
        part(lot);
      }
    }
  }

  /** Cells in which its own lots, or those of the first one that it does not share, have plants. */
  private long cellsNotShared() {
    long cells = 0;
    for (int i = 0; i < owns; i++) {
      cells |= market.readyCells(own[i]);
    }
    for (int i = 0; i < aparts; i++) {
      cells |= first.market.readyCells(apart[i]);
    }
    return cells;
  }

  /** Lets what was agreed on leave its own lots. */
  void deliver() {
    if (isAsFirst) {
      for (int sale = 0; sale < first.agreed.sales(); sale++) {
        add(placeHere[first.agreed.lot(sale)]);
      }
      return;
    }
    for (int sale = 0; sale < agreed.sales(); sale++) {
      int lot = agreed.lot(sale);
      if (shared[lot] == OWN) {
        agreed.deliver(sale, market);
        recorders[lot].partOver();
      }
      add(lot);
    }
  }

  /** The end of the last month. */
  SideBySide.Told end(int month) {
    for (int i = 0; i < owns; i++) {
      Run.afterSales(month, lots[own[i]]);
      lots[own[i]].checkBalance(run.programme().horizon());
      recorders[own[i]].partOver();
    }
    add(SideBySide.EVERY_LOT);
    return new SideBySide.Told(recorders, Arrays.copyOf(turns, turn));
  }
}
