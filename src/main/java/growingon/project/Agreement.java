package growingon.project;

import growingon.nursery.market.Quality;
import growingon.nursery.number.Negligible;
import growingon.project.slice.Growing;
import java.util.Arrays;

/**
 * What is agreed on in the sales of a month before anything leaves, in the order of the sales. It
 * tells what a lot would have left, as if what was agreed on had left.
 */
final class Agreement implements Market.Stall {
  private static final int NONE = -1;
  private static final int ROOM = 32;

  private final LotState[] lots;
  private final int[] first;
  private final int[] last;
  private int sales;
  private int[] lot = new int[ROOM];
  private int[] next = new int[ROOM];
  private DemandRow[] row = new DemandRow[ROOM];
  private Quality[] quality = new Quality[ROOM];
  private double[] share = new double[ROOM];
  private double[] units = new double[ROOM];
  private double[] sold = new double[ROOM];

  /** An agreement about the lots of an array, those that stand in it at the time. */
  Agreement(LotState[] lots) {
    this.lots = lots;
    this.first = new int[lots.length];
    this.last = new int[lots.length];
    Arrays.fill(first, NONE);
  }

  /** Nothing is agreed on yet. */
  void clear() {
    for (int sale = 0; sale < sales; sale++) {
      first[lot[sale]] = NONE;
    }
    sales = 0;
  }

  @Override
  public double ready(int ofLot, Quality of, int grade) {
    Growing plants = lots[ofLot].plants;
    int before = 0;
    for (int sale = first[ofLot]; sale != NONE; sale = next[sale]) {
      if (quality[sale] == of && row[sale].grade() == grade) {
        sold[before++] = share[sale];
      }
    }
    if (before == 0) {
      return plants.offered(of, grade);
    }
    double ready = plants.readyAfter(of, grade, sold, before);
    return Negligible.is(ready) ? 0 : ready;
  }

  @Override
  public void sell(int ofLot, DemandRow to, Quality of, double part, double plants) {
    if (sales == lot.length) {
      grow();
    }
    lot[sales] = ofLot;
    row[sales] = to;
    quality[sales] = of;
    share[sales] = part;
    units[sales] = plants;
    next[sales] = NONE;
    if (first[ofLot] == NONE) {
      first[ofLot] = sales;
    } else {
      next[last[ofLot]] = sales;
    }
    last[ofLot] = sales;
    sales++;
  }

  /** A lot sells to a row what a lot of another agreement sells in a sale. */
  void sellAs(Agreement other, int sale, int ofLot, DemandRow to) {
    sell(ofLot, to, other.quality[sale], other.share[sale], other.units[sale]);
  }

  /** Number of the first sale from one on that is not to a row. */
  int endOf(DemandRow to, int from) {
    int end = from;
    while (end < sales && row[end].index() == to.index()) {
      end++;
    }
    return end;
  }

  private void grow() {
    int room = 2 * sales;
    lot = Arrays.copyOf(lot, room);
    next = Arrays.copyOf(next, room);
    row = Arrays.copyOf(row, room);
    quality = Arrays.copyOf(quality, room);
    share = Arrays.copyOf(share, room);
    units = Arrays.copyOf(units, room);
    sold = Arrays.copyOf(sold, room);
  }

  /** Number of sales. */
  int sales() {
    return sales;
  }

  /** The lot that a sale is of. */
  int lot(int sale) {
    return lot[sale];
  }

  /** Lets a sale happen. */
  void deliver(int sale, Market market) {
    market.deliver(lots[lot[sale]], row[sale], quality[sale], share[sale], units[sale]);
  }

  /** Whether a lot sells just what a lot of another agreement sells. */
  boolean isAlike(int ofLot, Agreement other, int ofOther) {
    int here = first[ofLot];
    int there = other.first[ofOther];
    while (here != NONE && there != NONE && isAlikeSale(here, other, there)) {
      here = next[here];
      there = other.next[there];
    }
    return here == NONE && there == NONE;
  }

  private boolean isAlikeSale(int here, Agreement other, int there) {
    return row[here].index() == other.row[there].index()
        && quality[here] == other.quality[there]
        && share[here] == other.share[there]
        && units[here] == other.units[there];
  }
}
