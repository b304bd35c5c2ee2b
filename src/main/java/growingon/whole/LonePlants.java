package growingon.whole;

import growingon.nursery.time.Horizon;
import java.util.ArrayList;
import java.util.List;

/**
 * Lots that sell less than a plant in all, and no whole one: the plant that theirs is a part of is
 * counted with another lot, so the money goes there.
 */
final class LonePlants {
  private final Horizon horizon;
  private final int rows;
  private final List<List<WholeSale>> lots;

  /** The sale with most plants of each season and row; of any row last; of any season last. */
  private final At[][] most;

  /** A sale of a lot. */
  private record At(int lot, int sale) {}

  /**
   * Sales that may have money without plants.
   *
   * @param rows how many demand rows there are
   * @param lots sales of each lot, which are replaced
   */
  LonePlants(Horizon horizon, int rows, List<List<WholeSale>> lots) {
    this.horizon = horizon;
    this.rows = rows;
    this.lots = lots;
    this.most = new At[horizon.seasons() + 1][rows + 2];
  }

  void settle() {
    List<At> alone = new ArrayList<>();
    for (int lot = 0; lot < lots.size(); lot++) {
      List<WholeSale> sales = lots.get(lot);
      for (int i = 0; i < sales.size(); i++) {
        if (sales.get(i).whole() > 0) {
          offer(sales.get(i), lot, i);
        } else if (sales.get(i).receipts() != 0) {
          alone.add(new At(lot, i));
        }
      }
    }
    alone.forEach(this::giveAway);
  }

  private WholeSale at(At at) {
    return lots.get(at.lot()).get(at.sale());
  }

  private int row(WholeSale sale) {
    return sale.row() < 0 ? rows : sale.row();
  }

  private void offer(WholeSale sale, int lot, int index) {
    int season = horizon.season(sale.month());
    offer(season, row(sale), sale, lot, index);
    offer(season, rows + 1, sale, lot, index);
    offer(horizon.seasons(), rows + 1, sale, lot, index);
  }

  private void offer(int season, int row, WholeSale sale, int lot, int index) {
    At best = most[season][row];
    if (best == null || sale.whole() > at(best).whole()) {
      most[season][row] = new At(lot, index);
    }
  }

  /** To the sale of its row and season with most plants, else of its season, else of any. */
  private void giveAway(At part) {
    WholeSale sale = at(part);
    At[] season = most[horizon.season(sale.month())];
    At with = season[row(sale)];
    with = with == null ? season[rows + 1] : with;
    with = with == null ? most[horizon.seasons()][rows + 1] : with;
    if (with != null) {
      add(with, sale.receipts());
      add(part, -sale.receipts());
    }
  }

  private void add(At at, double money) {
    List<WholeSale> sales = new ArrayList<>(lots.get(at.lot()));
    sales.set(at.sale(), at(at).plus(money));
    lots.set(at.lot(), sales);
  }
}
