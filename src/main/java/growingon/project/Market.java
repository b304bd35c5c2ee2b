package growingon.project;

import growingon.nursery.Quality;
import growingon.nursery.QualityRule;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;

/**
 * Sells what is ready to what is wanted, month by month (design section 6.5): rows of a species
 * before rows of any species, dearer first, then row order; within a row firsts before seconds,
 * oldest arrival first; of lots that arrived together the same share of every lot, slice and
 * stream, so that it does not matter how a batch is split into lots.
 */
final class Market {
  private static final double NEGLIGIBLE = 1e-9;

  private final Programme programme;
  private final Luck luck;
  private final LotState[] lots;
  private final Map<Quality, QualityRule> qualities;
  private final List<Missed> missed = new ArrayList<>();
  private final int[] gradedIn;
  private final boolean[] maySell;

  Market(Programme programme, Luck luck, List<LotState> lots) {
    this.programme = programme;
    this.luck = luck;
    this.lots = lots.toArray(new LotState[0]);
    this.qualities = programme.nursery().qualities();
    this.gradedIn = new int[lots.size()];
    Arrays.fill(gradedIn, -1);
    this.maySell = new boolean[gradedIn.length];
  }

  void sell(int month) {
    String season = programme.calendar().seasonName(month);
    for (int lot = 0; lot < lots.length; lot++) {
      maySell[lot] = month >= lots[lot].plan.start && lots[lot].maySell(month);
    }
    for (DemandRow row : programme.rows()) {
      double wanted = wanted(row, month);
      if (wanted > 0 && row.demand().season().map(season::equals).orElse(true)) {
        double left = meet(row, month, wanted);
        if (left > NEGLIGIBLE && Double.isFinite(left)) {
          missed.add(new Missed(month, row.index(), left));
        }
      }
    }
  }

  private double wanted(DemandRow row, int month) {
    double units = row.unitsByMonth()[programme.calendar().monthOfYear(month)];
    return units > 0 ? units * luck.units(row.demand(), programme.calendar().seasonYear(month)) : 0;
  }

  private double meet(DemandRow row, int month, double wanted) {
    double left = wanted;
    for (Quality quality : Quality.values()) {
      for (int[] batch : row.batches()) {
        if (left > 0) {
          left -= sellFrom(batch, row, quality, month, left);
        }
      }
    }
    return left;
  }

  /** Sells the same share of every lot of a batch; gives how many plants. */
  private double sellFrom(int[] batch, DemandRow row, Quality quality, int month, double wanted) {
    double ready = 0;
    for (int lot : batch) {
      if (maySell[lot]) {
        gradeOnce(lot, month);
        ready += lots[lot].plants.ready(quality, row.grade());
      }
    }
    if (ready <= NEGLIGIBLE) {
      return 0;
    }
    double share = Math.min(1, wanted / ready);
    for (int lot : batch) {
      if (maySell[lot]) {
        sell(lots[lot], row, quality, month, share);
      }
    }
    return share * ready;
  }

  private void gradeOnce(int lot, int month) {
    if (gradedIn[lot] != month) {
      lots[lot].gradeForSale(month);
      gradedIn[lot] = month;
    }
  }

  private void sell(LotState lot, DemandRow row, Quality quality, int month, double share) {
    double units = share * lot.plants.ready(quality, row.grade());
    if (units <= 0) {
      return;
    }
    double money = units * row.demand().price() * qualities.get(quality).priceShare();
    if (row.demand().morePerMm() > 0) {
      double mm = lot.plants.mmAboveLeast(quality, row.grade());
      money += share * mm * row.demand().morePerMm();
    }
    lot.plants.sell(quality, row.grade(), share);
    money *= luck.price(row.demand(), programme.calendar().seasonYear(month));
    lot.sold(month, row.index(), row.grade(), quality, units, money);
  }

  List<Missed> missed() {
    return missed;
  }
}
