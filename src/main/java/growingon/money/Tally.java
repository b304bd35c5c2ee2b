package growingon.money;

import growingon.nursery.Nursery;
import growingon.nursery.Scenario;
import growingon.nursery.Settings;
import growingon.nursery.market.OtherCash;
import growingon.nursery.place.Place;
import growingon.nursery.time.Horizon;
import growingon.project.Programme;
import growingon.project.Reruns;
import growingon.project.SideBySide;
import growingon.project.history.GradedPlants;
import growingon.project.lot.Luck;
import growingon.project.need.Stores;
import growingon.project.need.Supplies;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * Adds up one run at a time: cash, space, hours, sales and stock of the nursery, and each lot's
 * result. It keeps no history, so a run costs little and can be made thousands of times; {@link
 * Accounts} books the same from a projection. Used again for run after run by one thread. Its
 * arrays are its own, to be read until the next run.
 */
public final class Tally {
  private final Programme programme;
  private final Settings settings;
  private final Horizon horizon;
  private final Prices prices;
  private final SumLayout layout;
  private final Stores stores;
  private final double[] placeFlows;
  private final double[] otherFlows;
  private final double[] fixedHours;
  private final double[] sums;
  private final double[] flows;
  private final double[] sales;
  private final double[] hours;
  private final double[][] space;
  private final double[] salesBySeason;
  private final double[][] unitsBySeason;
  private final double[][] stockBySeason;
  private final LotTally[] lots;
  private final LotTally[] own;
  private final Reruns reruns;
  private double packsBought;

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
    this.prices = known;
    Scenario scenario = programme.scenario();
    Nursery nursery = scenario.nursery();
    this.settings = nursery.settings();
    this.horizon = programme.horizon();
    this.layout = new SumLayout(scenario, known.grades(), seasons, true);
    int months = horizon.months();
    this.stores = new Stores(nursery, months);
    this.sums = new double[layout.size];
    this.flows = new double[months];
    this.sales = new double[months];
    this.hours = new double[months];
    this.space = new double[layout.places + 1][months];
    this.salesBySeason = new double[layout.seasons];
    this.unitsBySeason = new double[layout.grades][layout.seasons];
    this.stockBySeason = new double[layout.grades][layout.seasons];
    this.lots = new LotTally[scenario.lots().size()];
    this.own = new LotTally[lots.length];
    this.reruns = programme.reruns(lot -> own[lot]);
    this.placeFlows = new double[months];
    this.otherFlows = new double[months];
    this.fixedHours = new double[months];
    nursery.places().values().forEach(this::addPlace);
    nursery.otherCash().stream().filter(row -> row.lot().isEmpty()).forEach(this::addOtherCash);
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

  /** Runs the programme once and adds it up; what was there before is forgotten. */
  public void run(Luck luck) {
    Arrays.fill(sums, 0);
    for (int lot = 0; lot < lots.length; lot++) {
      if (own[lot] == null) {
        own[lot] = note(lot, luck, sums);
      } else {
        own[lot].begin(luck);
      }
      lots[lot] = own[lot];
    }
    reruns.run(luck);
    finish();
  }

  private LotTally note(int lot, Luck luck, double[] to) {
    return new LotTally(programme.scenario(), lot, prices, layout, luck, to);
  }

  /**
   * Runs this programme and others that differ from it in some lots once, on the same luck, and
   * adds each up: the same as {@link #run} of one after the other, in less time.
   *
   * @param others tallies of programmes of the same nursery and plan
   */
  public void runBeside(List<Tally> others, Luck luck) {
    List<Tally> all = new ArrayList<>(List.of(this));
    all.addAll(others);
    List<SideBySide.Told> told =
        programme.runBeside(
            others.stream().map(Tally::programme).toList(),
            luck,
            (number, lot) -> all.get(number).note(lot, luck, null));
    for (int i = 0; i < all.size(); i++) {
      all.get(i).addUp(told.get(i));
    }
  }

  private void addUp(SideBySide.Told told) {
    for (int lot = 0; lot < lots.length; lot++) {
      lots[lot] = (LotTally) told.lots()[lot];
    }
    LadderRuns.addUp(lots, told.turns(), sums);
    finish();
  }

  /** Takes the sums over the lots out of their array, and adds what no lot causes. */
  private void finish() {
    takeOut();
    stores.buy();
    packsBought = 0;
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

  private void takeOut() {
    takeOut(layout.flows, flows);
    takeOut(layout.sales, sales);
    takeOut(layout.hours, hours);
    takeOut(layout.space, space);
    takeOut(layout.salesBySeason, salesBySeason);
    takeOut(layout.unitsBySeason, unitsBySeason);
    takeOut(layout.stockBySeason, stockBySeason);
    stores.fill(sums, layout.stores);
  }

  private void takeOut(int from, double[]... into) {
    int at = from;
    for (double[] each : into) {
      System.arraycopy(sums, at, each, 0, each.length);
      at += each.length;
    }
  }

  private int lastSeason() {
    return layout.seasons - 1;
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
      net[month] -= prices.tariff().sellingCost(sales[month]);
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
    for (LotTally lot : lots) {
      sum += lot.endStock(endingWith).worth(layout.horizonValue);
    }
    return sum;
  }

  /** The same at list prices multiplied by a factor. */
  public double horizonValue(double priceFactor) {
    double sum = 0;
    for (LotTally lot : lots) {
      sum += lot.endStock(lastSeason()).atPrices(priceFactor).worth(layout.horizonValue);
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
  public EndWorth endWorth(int lot) {
    return endWorth(lot, lastSeason());
  }

  /** What is left of a lot at the end of a season. */
  public EndWorth endWorth(int lot, int endingWith) {
    return new EndWorth(lots[lot].endStock(endingWith), layout.horizonValue);
  }

  /** How a bought lot stands at the end of a season, as its recorder was told. */
  public GradedPlants standing(int lot, int endingWith) {
    return lots[lot].standing(endingWith);
  }

  /** Living plants at the end of each season. */
  public double[] livingBySeason() {
    double[] living = new double[layout.seasons];
    for (int each = 0; each < living.length; each++) {
      for (LotTally lot : lots) {
        living[each] += lot.living(each);
      }
    }
    return living;
  }

  /** Hours of work by month. */
  public double[] hours() {
    return hours;
  }

  /** What all lots together are charged of a kind. */
  public double cost(CostKind kind) {
    return sums[layout.costs + kind.ordinal()];
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

  /** [lot] sales less what its account is charged, plan currency, in the order of the scenario. */
  public double[] lotResults() {
    return ofLots(LotTally::result);
  }

  /** [lot] sales, plan currency, in the order of the scenario. */
  public double[] lotSales() {
    return ofLots(LotTally::sales);
  }

  /** [lot] plants sold, in the order of the scenario. */
  public double[] lotUnits() {
    return ofLots(LotTally::plantsSold);
  }

  private double[] ofLots(ToDoubleFunction<LotTally> number) {
    return Arrays.stream(lots).mapToDouble(number).toArray();
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
    double[] gains = new double[layout.seasons];
    double growth = Math.log1p(settings.discountRate()) / 12;
    double sum = 0;
    for (int month = 0; month < flows.length; month++) {
      double worth = Math.exp(-growth * month);
      sum += (flows[month] - other.flows[month]) * worth;
      if (horizon.isSeasonEnd(month)) {
        int now = layout.season[month];
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
}
