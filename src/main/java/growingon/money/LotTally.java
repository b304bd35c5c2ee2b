package growingon.money;

import growingon.nursery.Scenario;
import growingon.nursery.lot.Lot;
import growingon.nursery.market.HorizonValue;
import growingon.nursery.market.Quality;
import growingon.nursery.time.Horizon;
import growingon.project.history.GradedPlants;
import growingon.project.history.PartRecorder;
import growingon.project.history.Use;
import growingon.project.lot.Luck;
import growingon.project.need.Stores;
import java.util.Arrays;
import java.util.Optional;

/**
 * Takes down one lot in one run: what it brings itself, and what it adds to the sums of the nursery
 * by a {@link SumLayout}. What it adds goes to the sums at once, or is kept part by part, to be
 * added later in the order in which a run would have told it.
 */
final class LotTally extends Booking implements PartRecorder {
  private static final GradedPlants NOTHING_STANDS = new GradedPlants(0);
  private static final Quality[] QUALITIES = Quality.values();
  private static final int[] NO_CELLS = {};
  private static final int ROOM = 512;
  private static final int ROOM_FOR_PARTS = 96;

  private final Lot lot;
  private final Horizon horizon;
  private final SumLayout layout;
  private final double[] sums;
  private final int[] gradeNumbers;
  private final double[][] netPrices;
  private final double[] living;
  private final EndStock[] endStocks;
  private final GradedPlants[] standings;
  private CostToDate toDate;
  private Optional<String> standsIn;
  private int spaceFrom;
  private double result;
  private double sales;
  private double plantsSold;
  private int[] cells;
  private double[] amounts;
  private int size;
  private int[] partEnds;
  private int parts;

  /**
   * Of a lot to which nothing has happened yet but that it is paid for.
   *
   * @param sums what it adds goes there at once; null where it is kept
   */
  LotTally(Scenario scenario, int lot, Prices prices, SumLayout layout, Luck luck, double[] sums) {
    super(prices.tariff());
    this.layout = layout;
    this.sums = sums;
    this.lot = scenario.lots().get(lot);
    this.horizon = scenario.horizon();
    this.gradeNumbers = prices.grades().of(scenario.nursery().ladderOf(this.lot));
    this.netPrices = prices.net(this.lot);
    this.standsIn = Optional.empty();
    this.spaceFrom = layout.space(standsIn, 0);
    this.endStocks = new EndStock[layout.seasons];
    this.living = new double[layout.seasons];
    this.standings = new GradedPlants[this.lot.purchase().isPresent() ? layout.seasons : 0];
    boolean keeps = sums == null;
    this.cells = keeps ? new int[ROOM] : NO_CELLS;
    this.amounts = keeps ? new double[ROOM] : LadderSums.NONE;
    this.partEnds = keeps ? new int[ROOM_FOR_PARTS] : NO_CELLS;
    begin(luck);
  }

  /** Begins a run: nothing has happened to the lot yet but that it is paid for. */
  void begin(Luck luck) {
    toDate = layout.horizonValue.isStockValue() ? new CostToDate(lot, layout.months) : null;
    Arrays.fill(endStocks, EndStock.NOTHING);
    Arrays.fill(living, 0);
    Arrays.fill(standings, NOTHING_STANDS);
    result = 0;
    sales = 0;
    plantsSold = 0;
    int month = Math.max(0, horizon.offset(lot.arrived()));
    buy(lot, month, horizon.seasonYear(month), luck);
  }

  private LotTally(LotTally same) {
    super(same);
    this.lot = same.lot;
    this.horizon = same.horizon;
    this.layout = same.layout;
    this.sums = same.sums;
    this.gradeNumbers = same.gradeNumbers;
    this.netPrices = same.netPrices;
    this.toDate = same.toDate == null ? null : new CostToDate(same.toDate);
    this.endStocks = same.endStocks.clone();
    this.living = same.living.clone();
    this.standings = same.standings.clone();
    this.standsIn = same.standsIn;
    this.spaceFrom = same.spaceFrom;
    this.result = same.result;
    this.sales = same.sales;
    this.plantsSold = same.plantsSold;
    this.cells = same.cells.clone();
    this.amounts = same.amounts.clone();
    this.size = same.size;
    this.partEnds = same.partEnds.clone();
    this.parts = same.parts;
  }

  @Override
  public PartRecorder goingApart() {
    return new LotTally(this);
  }

  @Override
  public void partOver() {
    partEnds = parts == partEnds.length ? Arrays.copyOf(partEnds, 2 * parts) : partEnds;
    partEnds[parts++] = size;
  }

  /** Adds what it adds in a part to sums. */
  void addPart(int part, double[] to) {
    int[] where = cells;
    double[] what = amounts;
    int end = partEnds[part];
    for (int i = part == 0 ? 0 : partEnds[part - 1]; i < end; i++) {
      to[where[i]] += what[i];
    }
  }

  private void add(int cell, double amount) {
    if (sums != null) {
      sums[cell] += amount;
    } else {
      keep(cell, amount);
    }
  }

  private void keep(int cell, double amount) {
    if (size == cells.length) {
      cells = Arrays.copyOf(cells, 2 * size);
      amounts = Arrays.copyOf(amounts, 2 * size);
    }
    cells[size] = cell;
    amounts[size++] = amount;
  }

  @Override
  public void cost(CostKind kind, int month, double amount) {
    if (amount == 0) {
      return;
    }
    if (layout.isWhole) {
      add(layout.costs + kind.ordinal(), amount);
    }
    if (kind.isCash()) {
      add(layout.flows + month, -amount);
    }
    result -= month < layout.countedMonths ? amount : 0;
    if (toDate != null) {
      toDate.cost(kind, month, amount);
    }
  }

  @Override
  protected void sellingLabour(int month, double amount) {
    if (toDate != null) {
      toDate.sellingLabour(month, amount);
    }
  }

  @Override
  public void hours(int month, double worked) {
    if (worked != 0) {
      add(layout.hours + month, worked);
    }
  }

  @Override
  public void receipts(int month, double plants, double money) {
    add(layout.flows + month, money);
    add(layout.sales + month, money);
    if (layout.isWhole) {
      add(layout.salesBySeason + layout.season[month], money);
    }
    result += month < layout.countedMonths ? money : 0;
    sales += money;
    plantsSold += plants;
    if (toDate != null) {
      toDate.sold(plants);
    }
  }

  @Override
  public void sold(int month, int row, int grade, Quality quality, double units, double money) {
    super.sold(month, row, grade, quality, units, money);
    if (layout.isWhole) {
      int ofGrade = gradeNumbers[grade] * layout.seasons;
      add(layout.unitsBySeason + ofGrade + layout.season[month], units);
    }
  }

  @Override
  public void used(int month, Use.Kind kind, String item, double amount) {
    super.used(month, kind, item, amount);
    if (month >= layout.months) {
      return;
    }
    add(layout.used(kind, item, month), amount);
    int again = Stores.again(month);
    if (kind == Use.Kind.MATERIAL && again < layout.months) {
      add(layout.back(kind, item, again), amount * layout.comesBackShare(item));
    }
  }

  @Override
  public void freed(int month, String pot, double amount) {
    if (month < layout.months) {
      add(layout.back(Use.Kind.POT, pot, month), amount);
    }
  }

  @Override
  protected void takesSpace(int month, Optional<String> place, double m2) {
    if (!place.equals(standsIn)) {
      standsIn = place;
      spaceFrom = layout.space(place, 0);
    }
    add(spaceFrom + month, m2);
  }

  @Override
  public void monthOver(int month, double living) {
    if (toDate != null) {
      toDate.monthOver(month, living);
    }
  }

  @Override
  public void seasonEnded(int ended, GradedPlants standing) {
    living[ended] = standing.sum();
    if (standings.length > 0) {
      standings[ended] = standing;
    }
    if (layout.isWhole) {
      addStock(ended, standing);
    }
    boolean isLast = ended == layout.seasons - 1;
    if (isLast || !layout.horizonValue.equals(HorizonValue.NOTHING)) {
      double costEach = toDate == null ? 0 : toDate.costEach();
      double paidEach = toDate == null ? 0 : toDate.paidEach();
      endStocks[ended] = EndStock.of(standing, netPrices, costEach, paidEach);
    }
  }

  private void addStock(int ended, GradedPlants standing) {
    for (Quality quality : QUALITIES) {
      for (int grade = 0; grade < standing.grades(); grade++) {
        int ofGrade = gradeNumbers[grade] * layout.seasons;
        add(layout.stockBySeason + ofGrade + ended, standing.of(quality, grade));
      }
    }
  }

  /** Sales less what its account is charged, as far as the seasons count. */
  double result() {
    return result;
  }

  /** Sales, plan currency. */
  double sales() {
    return sales;
  }

  /** Plants sold. */
  double plantsSold() {
    return plantsSold;
  }

  /** What stands at the end of a season, by what it cost and would fetch. */
  EndStock endStock(int season) {
    return endStocks[season];
  }

  /** Living plants at the end of a season. */
  double living(int season) {
    return living[season];
  }

  /** How a bought lot stands at the end of a season, as it was told. */
  GradedPlants standing(int season) {
    return standings[season];
  }
}
