package growingon.money;

import growingon.nursery.Horizon;
import growingon.nursery.HorizonValue;
import growingon.nursery.Lot;
import growingon.nursery.Nursery;
import growingon.nursery.OtherCash;
import growingon.nursery.Place;
import growingon.nursery.Quality;
import growingon.nursery.Scenario;
import growingon.nursery.Settings;
import growingon.project.Luck;
import growingon.project.Programme;
import growingon.project.Stores;
import growingon.project.Supplies;
import growingon.project.Use;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Adds up one run at a time: cash, space, hours, sales and stock of the nursery, and each lot's
 * result. It keeps no history, so a run costs little and can be made thousands of times; {@link
 * Accounts} books the same from a projection. Used again for run after run by one thread. Its
 * arrays are its own, to be read until the next run.
 */
public final class Tally {
  private static final double[][] NOTHING_STANDS = {};

  private final Programme programme;
  private final Settings settings;
  private final Horizon horizon;
  private final HorizonValue horizonValueOf;
  private final Tariff tariff;
  private final Stores stores;
  private final Map<String, Integer> placeIndex = new HashMap<>();
  private final double[] placeFlows;
  private final double[] otherFlows;
  private final double[] fixedHours;
  private final double[][][] netPrices;
  private final int[][] gradeIndex;
  private final int[] season;
  private final double[] flows;
  private final double[] sales;
  private final double[] hours;
  private final double[] costs;
  private final double[][] space;
  private final double[] salesBySeason;
  private final double[][] unitsBySeason;
  private final double[][] stockBySeason;
  private final double[] lotResults;
  private final double[] lotSales;
  private final double[] lotUnits;
  private final EndStock[][] endStocks;
  private final double[][][][] standings;
  private final int countedMonths;
  private double packsBought;
  private Luck luck;

  /**
   * A tally of a programme's runs.
   *
   * @param grades numbers of the grades of its nursery
   */
  public Tally(Programme programme, GradeNumbers grades) {
    this(programme, new Prices(programme.scenario().nursery(), programme.horizon(), grades));
  }

  /**
   * A tally of runs that go on beyond a plan's end.
   *
   * @param grades numbers of the grades of its nursery
   * @param seasons up to their end the results of lots count
   */
  public Tally(Programme programme, GradeNumbers grades, int seasons) {
    this(
        programme,
        new Prices(programme.scenario().nursery(), programme.horizon(), grades),
        seasons);
  }

  /** The same of a programme whose nursery and plan have prices worked out already. */
  public Tally(Programme programme, Prices known) {
    this(programme, known, programme.scenario().plan().seasons());
  }

  private Tally(Programme programme, Prices known, int seasons) {
    this.programme = programme;
    Scenario scenario = programme.scenario();
    Nursery nursery = scenario.nursery();
    GradeNumbers grades = known.grades();
    this.settings = nursery.settings();
    this.horizon = programme.horizon();
    this.horizonValueOf = scenario.plan().horizonValue();
    int months = horizon.months();
    this.countedMonths = horizon.seasonLast(seasons - 1) + 1;
    this.tariff = known.tariff();
    this.stores = new Stores(nursery, months);
    nursery.places().keySet().forEach(place -> placeIndex.put(place, placeIndex.size()));
    this.flows = new double[months];
    this.sales = new double[months];
    this.hours = new double[months];
    this.costs = new double[CostKind.values().length];
    this.space = new double[nursery.places().size() + 1][months];
    this.salesBySeason = new double[scenario.plan().seasons()];
    this.unitsBySeason = new double[grades.size()][scenario.plan().seasons()];
    this.stockBySeason = new double[grades.size()][scenario.plan().seasons()];
    this.lotResults = new double[scenario.lots().size()];
    this.lotSales = new double[lotResults.length];
    this.lotUnits = new double[lotResults.length];
    this.endStocks = new EndStock[scenario.plan().seasons()][lotResults.length];
    this.standings = new double[scenario.plan().seasons()][lotResults.length][][];
    this.season = new int[months];
    this.placeFlows = new double[months];
    this.otherFlows = new double[months];
    this.fixedHours = new double[months];
    for (int month = 0; month < months; month++) {
      season[month] = horizon.season(month);
    }
    nursery.places().values().forEach(this::addPlace);
    nursery.otherCash().stream().filter(row -> row.lot().isEmpty()).forEach(this::addOtherCash);
    this.gradeIndex = new int[lotResults.length][];
    this.netPrices = new double[lotResults.length][][];
    for (int i = 0; i < lotResults.length; i++) {
      Lot lot = scenario.lots().get(i);
      gradeIndex[i] = grades.of(nursery.ladderOf(lot));
      netPrices[i] = known.net(lot);
    }
  }

  private void addPlace(Place place) {
    for (int month = 0; month < placeFlows.length; month++) {
      placeFlows[month] -= place.monthlyCost(horizon.month(month));
    }
  }

  private void addOtherCash(OtherCash row) {
    for (int month = 0; month < otherFlows.length; month++) {
      if (row.isDue(month, horizon)) {
        otherFlows[month] += row.amount();
        fixedHours[month] += row.hours();
      }
    }
  }

  /**
   * Runs the programme once and gives what its lots alone cause: the rest is left to {@link Whole},
   * which adds up the parts of a plan.
   */
  public Part part(Luck with) {
    runLots(with);
    double worth = 0;
    for (EndStock stock : endStocks[lastSeason()]) {
      worth += stock.worth(horizonValueOf);
    }
    double[][] needed = new double[space.length][];
    for (int place = 0; place < space.length; place++) {
      boolean used = Arrays.stream(space[place]).anyMatch(m2 -> m2 > 0);
      needed[place] = used ? space[place].clone() : Part.NONE;
    }
    return new Part(flows.clone(), sales.clone(), hours.clone(), needed, stores.movements(), worth);
  }

  private void runLots(Luck with) {
    clear();
    luck = with;
    programme.run(luck, Note::new);
  }

  /** Runs the programme once and adds it up; what was there before is forgotten. */
  public void run(Luck with) {
    runLots(with);
    stores.buy();
    for (Supplies.Item item : stores.items()) {
      for (int month = 0; month < flows.length; month++) {
        flows[month] -= item.cost(month);
        packsBought += item.cost(month);
      }
    }
    double paid = settings.hourlyRate() * settings.paidShare();
    for (int month = 0; month < flows.length; month++) {
      hours[month] += fixedHours[month];
      flows[month] += placeFlows[month] + otherFlows[month] - hours[month] * paid;
    }
  }

  private int lastSeason() {
    return endStocks.length - 1;
  }

  /** The programme. */
  public Programme programme() {
    return programme;
  }

  /** Net cash flow by month, plan currency. */
  public double[] flows() {
    return flows;
  }

  /** Sales by month, plan currency, less what selling them costs beside its hours. */
  public double[] netSales() {
    double[] net = sales.clone();
    for (int month = 0; month < net.length; month++) {
      net[month] -= tariff.sellingCost(sales[month]);
    }
    return net;
  }

  /** Value of unsold plants at the end, as far as the plan counts it. */
  public double horizonValue() {
    return horizonValue(lastSeason());
  }

  /** The same had the plan ended with a season. */
  private double horizonValue(int endingWith) {
    double sum = 0;
    for (EndStock stock : endStocks[endingWith]) {
      sum += stock.worth(horizonValueOf);
    }
    return sum;
  }

  /** The same at list prices multiplied by a factor. */
  public double horizonValue(double priceFactor) {
    double sum = 0;
    for (EndStock stock : endStocks[lastSeason()]) {
      sum += stock.atPrices(priceFactor).worth(horizonValueOf);
    }
    return sum;
  }

  /** Net flows that no lot causes, by month: places, used or not, or other cash and its hours. */
  public double[] flowsOfNoLot(boolean ofPlaces) {
    double paid = settings.hourlyRate() * settings.paidShare();
    double[] net = new double[flows.length];
    for (int month = 0; month < net.length; month++) {
      net[month] = ofPlaces ? placeFlows[month] : otherFlows[month] - fixedHours[month] * paid;
    }
    return net;
  }

  /** What whole packs of pots, substrate and materials cost. */
  public double packsBought() {
    return packsBought;
  }

  /** What is left of a lot at the end, by its index in the scenario. */
  public Leftover leftover(int lot) {
    return leftover(lot, lastSeason());
  }

  /** What is left of a lot at the end of a season. */
  public Leftover leftover(int lot, int endingWith) {
    return new Leftover(endStocks[endingWith][lot], horizonValueOf);
  }

  /** How a lot stands at the end of a season, as its recorder was told. */
  public double[][] standing(int lot, int endingWith) {
    return standings[endingWith][lot];
  }

  /** Living plants at the end of each season. */
  public double[] livingBySeason() {
    double[] living = new double[standings.length];
    for (int each = 0; each < living.length; each++) {
      for (double[][] lot : standings[each]) {
        living[each] += plants(lot);
      }
    }
    return living;
  }

  private static double plants(double[][] standing) {
    double sum = 0;
    for (double[] quality : standing) {
      for (double plants : quality) {
        sum += plants;
      }
    }
    return sum;
  }

  /** Hours of work by month. */
  public double[] hours() {
    return hours;
  }

  /** What all lots together are charged of a kind. */
  public double cost(CostKind kind) {
    return costs[kind.ordinal()];
  }

  /** Square metres needed, [place in the order of the table; last, of lots without one][month]. */
  public double[][] space() {
    return space;
  }

  /** Sales by season, plan currency. */
  public double[] salesBySeason() {
    return salesBySeason;
  }

  /** Plants sold, [number of the grade][season]. */
  public double[][] unitsBySeason() {
    return unitsBySeason;
  }

  /** Plants standing at the end, [number of the grade][season]. */
  public double[][] stockBySeason() {
    return stockBySeason;
  }

  /** Sales of each lot less what its account is charged, in the order of the scenario. */
  public double[] lotResults() {
    return lotResults;
  }

  /** Sales of each lot, plan currency. */
  public double[] lotSales() {
    return lotSales;
  }

  /** Plants sold of each lot. */
  public double[] lotUnits() {
    return lotUnits;
  }

  /** Flows with the value of unsold plants, which is no cash, in the last month. */
  public double[] flowsWithHorizonValue() {
    double[] valued = flows.clone();
    valued[valued.length - 1] += horizonValue();
    return valued;
  }

  /**
   * Net flows that this run brings more than another, had the plan ended with a season: by month up
   * to its last, in which unsold plants are valued.
   */
  public double[] gainOver(Tally other, int endingWith) {
    double[] gain = Arrays.copyOf(flows, horizon.seasonLast(endingWith) + 1);
    for (int month = 0; month < gain.length; month++) {
      gain[month] -= other.flows[month];
    }
    gain[gain.length - 1] += horizonValue(endingWith) - other.horizonValue(endingWith);
    return gain;
  }

  /** Present value of the run's flows, had the plan ended with a season; unsold plants valued. */
  public double presentValue(int endingWith) {
    double[] valued = Arrays.copyOf(flows, horizon.seasonLast(endingWith) + 1);
    valued[valued.length - 1] += horizonValue(endingWith);
    return Finance.presentValue(valued, settings.discountRate());
  }

  /** Present value of {@link #gainOver(Tally, int)} for every season. */
  public double[] gainsByEnding(Tally other) {
    double[] gains = new double[endStocks.length];
    double growth = Math.log1p(settings.discountRate()) / 12;
    double sum = 0;
    for (int month = 0; month < flows.length; month++) {
      double worth = Math.exp(-growth * month);
      sum += (flows[month] - other.flows[month]) * worth;
      if (horizon.isSeasonEnd(month)) {
        int now = season[month];
        gains[now] = sum + (horizonValue(now) - other.horizonValue(now)) * worth;
      }
    }
    return gains;
  }

  /** What this run brings more than another, by month, unsold plants valued. */
  public double[] gainOver(Tally other) {
    double[] gain = flowsWithHorizonValue();
    double[] others = other.flowsWithHorizonValue();
    for (int month = 0; month < gain.length; month++) {
      gain[month] -= others[month];
    }
    return gain;
  }

  private void clear() {
    stores.clear();
    packsBought = 0;
    for (int each = 0; each < endStocks.length; each++) {
      Arrays.fill(endStocks[each], EndStock.NOTHING);
      Arrays.fill(standings[each], NOTHING_STANDS);
    }
    for (double[] each :
        List.of(flows, sales, hours, costs, salesBySeason, lotResults, lotSales, lotUnits)) {
      Arrays.fill(each, 0);
    }
    for (double[][] table : List.of(space, unitsBySeason, stockBySeason)) {
      for (double[] row : table) {
        Arrays.fill(row, 0);
      }
    }
  }

  /** Takes down one lot. */
  private final class Note extends Booking {
    private final int lot;
    private final CostToDate toDate;

    Note(int lot) {
      super(tariff);
      this.lot = lot;
      Lot bought = programme.scenario().lots().get(lot);
      this.toDate = horizonValueOf.isStockValue() ? new CostToDate(bought, flows.length) : null;
      int month = Math.max(0, horizon.offset(bought.arrived()));
      buy(bought, month, horizon.seasonYear(month), luck);
    }

    @Override
    protected void cost(CostKind kind, int month, double amount) {
      costs[kind.ordinal()] += amount;
      lotResults[lot] -= month < countedMonths ? amount : 0;
      flows[month] -= kind.isCash() ? amount : 0;
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
    protected void hours(int month, double worked) {
      hours[month] += worked;
    }

    @Override
    protected void receipts(int month, double plants, double money) {
      flows[month] += money;
      sales[month] += money;
      lotResults[lot] += month < countedMonths ? money : 0;
      lotSales[lot] += money;
      lotUnits[lot] += plants;
      salesBySeason[season[month]] += money;
      if (toDate != null) {
        toDate.sold(plants);
      }
    }

    @Override
    public void sold(int month, int row, int grade, Quality quality, double units, double money) {
      super.sold(month, row, grade, quality, units, money);
      unitsBySeason[gradeIndex[lot][grade]][season[month]] += units;
    }

    @Override
    public void used(int month, Use.Kind kind, String item, double amount) {
      super.used(month, kind, item, amount);
      if (month < flows.length) {
        stores.use(month, kind, item, amount);
      }
    }

    @Override
    public void freed(int month, String pot, double amount) {
      if (month < flows.length) {
        stores.takeBack(month, pot, amount);
      }
    }

    @Override
    protected void takesSpace(int month, String place, double m2) {
      int index = place.isEmpty() ? placeIndex.size() : placeIndex.get(place);
      space[index][month] += m2;
    }

    @Override
    public void monthOver(int month, double living) {
      if (toDate != null) {
        toDate.monthOver(month, living);
      }
    }

    @Override
    public void seasonEnded(int ended, double[][] standing) {
      for (int quality = 0; quality < Quality.values().length; quality++) {
        for (int grade = 1; grade < standing[quality].length; grade++) {
          stockBySeason[gradeIndex[lot][grade - 1]][ended] += standing[quality][grade];
        }
      }
      standings[ended][lot] = standing;
      if (ended == lastSeason() || !horizonValueOf.equals(HorizonValue.NOTHING)) {
        double costEach = toDate == null ? 0 : toDate.costEach();
        double paidEach = toDate == null ? 0 : toDate.paidEach();
        endStocks[ended][lot] = EndStock.of(standing, netPrices[lot], costEach, paidEach);
      }
    }
  }
}
