package growingon.money;

import growingon.nursery.Grade;
import growingon.nursery.Horizon;
import growingon.nursery.Lot;
import growingon.nursery.Nursery;
import growingon.nursery.OtherCash;
import growingon.nursery.Place;
import growingon.nursery.Quality;
import growingon.nursery.Scenario;
import growingon.nursery.Settings;
import growingon.project.Luck;
import growingon.project.Programme;
import growingon.project.Recorder;
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
  private final Programme programme;
  private final Nursery nursery;
  private final Settings settings;
  private final Horizon horizon;
  private final Stores stores;
  private final Map<String, Integer> placeIndex = new HashMap<>();
  private final List<Place> places;
  private final double[][] charges;
  private final double[] fixedFlows;
  private final double[][][] listPrices;
  private final int[][] gradeIndex;
  private final int[] season;
  private final double[] flows;
  private final double[] sales;
  private double horizonValue;
  private final double[] hours;
  private final double[][] space;
  private final double[] salesBySeason;
  private final double[][] unitsBySeason;
  private final double[][] stockBySeason;
  private final double[] lotResults;
  private final double[] lotSales;
  private final double[] lotUnits;

  /**
   * A tally of a programme's runs.
   *
   * @param grades numbers of the grades of its nursery
   */
  public Tally(Programme programme, GradeNumbers grades) {
    this.programme = programme;
    Scenario scenario = programme.scenario();
    this.nursery = scenario.nursery();
    this.settings = nursery.settings();
    this.horizon = programme.horizon();
    int months = horizon.months();
    this.stores = new Stores(nursery, months);
    this.places = List.copyOf(nursery.places().values());
    places.forEach(place -> placeIndex.put(place.name(), placeIndex.size()));
    this.flows = new double[months];
    this.sales = new double[months];
    this.hours = new double[months];
    this.space = new double[places.size() + 1][months];
    this.salesBySeason = new double[scenario.plan().seasons()];
    this.unitsBySeason = new double[grades.size()][scenario.plan().seasons()];
    this.stockBySeason = new double[grades.size()][scenario.plan().seasons()];
    this.lotResults = new double[scenario.lots().size()];
    this.lotSales = new double[lotResults.length];
    this.lotUnits = new double[lotResults.length];
    this.season = new int[months];
    this.fixedFlows = new double[months];
    for (int month = 0; month < months; month++) {
      season[month] = horizon.season(month);
      fixedFlows[month] = fixedFlow(month);
    }
    this.charges = charges();
    this.gradeIndex = new int[lotResults.length][];
    this.listPrices = new double[lotResults.length][][];
    ListPrices prices = new ListPrices(nursery);
    for (int i = 0; i < lotResults.length; i++) {
      Lot lot = scenario.lots().get(i);
      gradeIndex[i] = grades.of(nursery.ladderOf(lot));
      listPrices[i] = listPrices(lot, prices);
    }
  }

  private double fixedFlow(int month) {
    double flow = 0;
    for (Place place : places) {
      flow -= place.monthlyCost(horizon.month(month));
    }
    for (OtherCash other : nursery.otherCash()) {
      flow += other.isDue(month, horizon) ? other.amount() : 0;
    }
    return flow;
  }

  private double[][] charges() {
    double[][] table = new double[places.size()][flows.length];
    for (int place = 0; place < table.length; place++) {
      for (int month = 0; month < flows.length; month++) {
        table[place][month] = places.get(place).chargePerM2(horizon.month(month));
      }
    }
    return table;
  }

  private double[][] listPrices(Lot lot, ListPrices prices) {
    List<Grade> grades = nursery.ladderOf(lot).grades();
    double[][] table = new double[Quality.values().length][grades.size() + 1];
    for (Quality quality : Quality.values()) {
      for (int g = 0; g < grades.size(); g++) {
        table[quality.ordinal()][g + 1] =
            prices.of(lot, grades.get(g).name()).orElse(0)
                * nursery.qualities().get(quality).priceShare();
      }
    }
    return table;
  }

  /** Runs the programme once and adds it up; what was there before is forgotten. */
  public void run(Luck luck) {
    clear();
    programme.run(luck, Note::new);
    for (int i = 0; i < lotResults.length; i++) {
      payFor(programme.scenario().lots().get(i), i, luck);
    }
    stores.buy();
    for (Supplies.Item item : stores.items()) {
      for (int month = 0; month < flows.length; month++) {
        flows[month] -= item.cost(month);
      }
    }
    double paid = settings.hourlyRate() * settings.paidShare();
    for (int month = 0; month < flows.length; month++) {
      flows[month] += fixedFlows[month] - hours[month] * paid;
    }
  }

  /** The programme. */
  Programme programme() {
    return programme;
  }

  /** Net cash flow by month, plan currency. */
  public double[] flows() {
    return flows;
  }

  /** Sales by month, plan currency. */
  double[] sales() {
    return sales;
  }

  /** Value of unsold plants at the end, as far as the plan counts it. */
  double horizonValue() {
    return horizonValue;
  }

  /** Hours of work by month. */
  public double[] hours() {
    return hours;
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
  double[] lotSales() {
    return lotSales;
  }

  /** Plants sold of each lot. */
  double[] lotUnits() {
    return lotUnits;
  }

  /** Flows with the value of unsold plants, which is no cash, in the last month. */
  double[] flowsWithHorizonValue() {
    double[] valued = flows.clone();
    valued[valued.length - 1] += horizonValue;
    return valued;
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
    horizonValue = 0;
    Arrays.fill(flows, 0);
    Arrays.fill(sales, 0);
    Arrays.fill(hours, 0);
    Arrays.fill(salesBySeason, 0);
    Arrays.fill(lotResults, 0);
    Arrays.fill(lotSales, 0);
    Arrays.fill(lotUnits, 0);
    for (double[][] table : List.of(space, unitsBySeason, stockBySeason)) {
      for (double[] row : table) {
        Arrays.fill(row, 0);
      }
    }
  }

  private void payFor(Lot lot, int index, Luck luck) {
    if (lot.purchase().isPresent()) {
      int month = horizon.offset(lot.arrived());
      double landed = luck.landed(lot.purchase().get(), lot.quantity(), horizon.seasonYear(month));
      flows[month] -= landed;
      lotResults[index] -= landed;
    }
  }

  /** Takes down one lot. */
  private final class Note implements Recorder {
    private final int lot;

    Note(int lot) {
      this.lot = lot;
    }

    @Override
    public void diedBefore(double plants) {
      // Deaths before the plan cost nothing in it.
    }

    @Override
    public void died(int month, double plants) {
      // A death shows in what is sold and what stands.
    }

    @Override
    public void culled(int month, double plants) {
      // A cull shows in what is sold and what stands.
    }

    @Override
    public void sold(int month, int row, int grade, Quality quality, double units, double money) {
      flows[month] += money;
      sales[month] += money;
      lotResults[lot] += money;
      lotSales[lot] += money;
      lotUnits[lot] += units;
      salesBySeason[season[month]] += money;
      unitsBySeason[gradeIndex[lot][grade]][season[month]] += units;
    }

    @Override
    public void used(int month, Use.Kind kind, String item, double amount) {
      if (month < flows.length) {
        stores.use(month, kind, item, amount);
        lotResults[lot] -= amount * stores.item(kind, item).unitPrice();
      }
    }

    @Override
    public void freed(int month, String pot, double amount) {
      if (month < flows.length) {
        stores.takeBack(month, pot, amount);
      }
    }

    @Override
    public void worked(int month, String job, double plants, double hoursWorked) {
      if (month < flows.length) {
        hours[month] += hoursWorked;
        lotResults[lot] -= hoursWorked * settings.hourlyRate();
      }
    }

    @Override
    public void stood(int month, String place, double plants, double m2, double careCost) {
      flows[month] -= careCost;
      lotResults[lot] -= careCost;
      if (place.isEmpty()) {
        space[places.size()][month] += m2;
      } else {
        int index = placeIndex.get(place);
        space[index][month] += m2;
        lotResults[lot] -= m2 * charges[index][month];
      }
    }

    @Override
    public void seasonEnded(int ended, double[][] standing) {
      boolean last = ended == salesBySeason.length - 1;
      for (int quality = 0; quality < Quality.values().length; quality++) {
        for (int grade = 1; grade < standing[quality].length; grade++) {
          double plants = standing[quality][grade];
          stockBySeason[gradeIndex[lot][grade - 1]][ended] += plants;
          if (last) {
            horizonValue +=
                programme.scenario().plan().horizonValueShare()
                    * plants
                    * listPrices[lot][quality][grade];
          }
        }
      }
    }
  }
}
