package growingon.whole;

import growingon.nursery.time.Horizon;
import growingon.project.Projection;
import growingon.project.history.GradedPlants;
import growingon.project.history.SeasonStock;
import growingon.project.history.YearEnd;
import growingon.project.lot.LotHistory;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Makes whole plants, lot after lot: each is rounded by itself, but so that it makes good for those
 * before it. Lots whose demand rows do not come out even then are rounded once more, season by
 * season.
 */
final class Making {
  /** Most times that lots are rounded once more. */
  private static final int PASSES = 3;

  private final Projection projection;
  private final Horizon horizon;
  private final Due due;
  final LeftOver leftOver;
  private final StockShares stock = new StockShares();
  private final List<MadeLot> made = new ArrayList<>();
  private final int[] rows;
  private double startTooMany;

  Making(Projection projection) {
    this.projection = projection;
    this.horizon = projection.horizon();
    this.due = new Due(projection);
    this.leftOver = new LeftOver(due.soldOverDue(), due.strict(), horizon.months());
    this.rows = IntStream.rangeClosed(0, projection.scenario().nursery().demand().size()).toArray();
  }

  WholePlan plan() {
    for (LotHistory lot : projection.lots()) {
      MadeLot part = new MadeLot(lot, start(lot), new SoldCells(lot, horizon, rows.length - 1));
      part.round(leftOver);
      made.add(part);
    }
    evenOut();
    return new WholePlan(lots(), due.met(leftOver));
  }

  /** A part of a lot that was split may be no whole number of plants. */
  private int start(LotHistory lot) {
    int whole = (int) Math.round(lot.quantity() - startTooMany);
    startTooMany += whole - lot.quantity();
    return whole;
  }

  /** Lots whose rows have not what is due to them are rounded once more. */
  private void evenOut() {
    for (int pass = 0; pass < PASSES; pass++) {
      boolean isEven = true;
      for (int season = 0; season < horizon.seasons(); season++) {
        if (!leftOver.isEven(rows, season)) {
          isEven = false;
          evenOut(season);
        }
      }
      if (isEven) {
        return;
      }
    }
  }

  private void evenOut(int season) {
    leftOver.hurry(season);
    for (MadeLot lot : made) {
      if (!leftOver.isEven(lot.rows(), season)) {
        lot.roundAgain(leftOver);
      }
    }
  }

  private List<WholeLot> lots() {
    List<List<WholeSale>> sales = new ArrayList<>(made.stream().map(MadeLot::sales).toList());
    new LonePlants(horizon, rows.length - 1, sales).settle();
    List<WholeLot> lots = new ArrayList<>();
    for (int i = 0; i < made.size(); i++) {
      lots.add(lot(made.get(i), sales.get(i)));
    }
    return lots;
  }

  private WholeLot lot(MadeLot part, List<WholeSale> sales) {
    WholeLot bare = part.made(sales, List.of(), List.of());
    String ladder = projection.scenario().nursery().ladderOf(part.history().lot()).name();
    List<WholeStock> seasons = new ArrayList<>();
    for (SeasonStock each : part.history().seasons()) {
      int month = horizon.seasonLast(each.season());
      seasons.add(stock.share(ladder, month, bare.standing(month), each.standing(), each.ready()));
    }
    List<WholeStock> years = new ArrayList<>();
    for (YearEnd end : part.history().yearEnds()) {
      years.add(yearEnd(ladder, end, bare, seasons));
    }
    return part.made(sales, seasons, years);
  }

  /** A year that ends with a season ends with the same plants. */
  private WholeStock yearEnd(String ladder, YearEnd end, WholeLot lot, List<WholeStock> seasons) {
    List<SeasonStock> known = lot.history().seasons();
    for (int i = 0; i < known.size(); i++) {
      if (horizon.seasonLast(known.get(i).season()) == end.month()) {
        return seasons.get(i);
      }
    }
    GradedPlants nothingReady = new GradedPlants(lot.history().grades().size());
    return stock.share(
        ladder, end.month(), lot.standing(end.month()), end.standing(), nothingReady);
  }
}
