package growingon.chance;

import growingon.chance.luck.DrawnLuck;
import growingon.chance.luck.Keyed;
import growingon.chance.luck.NameNumbers;
import growingon.chance.luck.Spreads;
import growingon.money.Booking;
import growingon.money.CostKind;
import growingon.money.ListPrices;
import growingon.money.Tariff;
import growingon.nursery.Nursery;
import growingon.nursery.Scenario;
import growingon.nursery.lot.Lot;
import growingon.nursery.market.Quality;
import growingon.project.Programme;
import growingon.project.lot.Facts;
import growingon.project.lot.Luck;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.IntConsumer;

/** What many draws of a plan say of each lot month by month, on the luck of {@link Chances}. */
public final class LotDraws {
  private static final int LIVING = 0;
  private static final int TRUNK = 1;
  private static final int UNITS = 2;
  private static final int SALES = 3;
  private static final int HOURS = 4;
  private static final int RESULT = 5;
  private static final int DEATHS = 6;
  private static final int AT_LIST = 7;
  private static final int FIGURES = 8;

  /** Draws are kept to about seven digits. */
  private static final double DUST = 1e-6;

  private final Scenario scenario;
  private final Facts known;
  private final Programme programme;
  private final Nursery nursery;
  private final Spreads spreads = new Spreads();
  private final NameNumbers names = new NameNumbers();
  private final Tariff tariff;
  private final ListPrices prices;
  private final int months;
  // By lot (all together last), figure, month and draw; four bytes a number, as there are many.
  private final float[][][][] samples;

  /** P10, P50 and P90 of a figure. */
  public record Tenths(double p10, double p50, double p90) {}

  /**
   * Figures by month, all but plants alive and trunks added up from the plan's first month.
   *
   * @param living plants alive at the month's end
   * @param trunkMm mean trunk of the living, mm; empty for all lots together
   * @param unitsSold plants sold
   * @param sales money of sales
   * @param hours hours worked
   * @param result sales less what the lot's account is charged
   */
  public record Figures(
      List<Tenths> living,
      List<Tenths> trunkMm,
      List<Tenths> unitsSold,
      List<Tenths> sales,
      List<Tenths> hours,
      List<Tenths> result) {}

  /**
   * Between what nine in ten and one in ten of the draws lie.
   *
   * @param p10 one draw in ten lies below
   * @param p90 nine draws in ten lie below
   * @param outside share of the draws that lie outside; less than a fifth where many are alike
   */
  public record Span(double p10, double p90, double outside) {
    /** Too few draws have such a figure. */
    static final Span NONE = new Span(Double.NaN, Double.NaN, 0);
  }

  /**
   * Figures by which luck is told from more than luck, by month.
   *
   * @param deaths plants that died since they were counted
   * @param trunkMm mean trunk of the living, mm
   * @param price money of all sales so far as a share of list price; of no span where under half of
   *     the draws have sold any
   */
  public record Judged(List<Span> deaths, List<Span> trunkMm, List<Span> price) {}

  /**
   * Which draws had a figure from P10 to P90 of the other draws, by month: hexadecimal digits of
   * four draws each, the first draw's bit the highest. A draw without such a figure counts as one
   * that had.
   *
   * @param living plants alive at the month's end
   * @param trunkMm mean trunk of the living
   * @param unitsSold plants sold up to then
   * @param deaths plants that died up to then
   * @param price money of all sales so far as a share of list price
   */
  public record Within(
      List<String> living,
      List<String> trunkMm,
      List<String> unitsSold,
      List<String> deaths,
      List<String> price) {}

  private LotDraws(Scenario scenario, Facts known) {
    this.scenario = scenario;
    this.known = known;
    this.prices = new ListPrices(scenario.nursery());
    this.programme = Programme.of(scenario);
    this.nursery = scenario.nursery();
    this.months = programme.horizon().months();
    this.tariff = new Tariff(nursery, programme.horizon());
    this.samples = new float[scenario.lots().size() + 1][FIGURES][months][scenario.plan().draws()];
  }

  /**
   * Draws a plan as often as it says.
   *
   * @param threads how many threads draw; their number changes nothing but the time
   * @param done told how many draws are done, from any thread
   */
  public static LotDraws draw(Scenario scenario, int threads, IntConsumer done) {
    return draw(scenario, Facts.NONE, threads, done);
  }

  /**
   * Draws a plan from what is there.
   *
   * @param known what has happened, which no luck changes
   */
  public static LotDraws draw(Scenario scenario, Facts known, int threads, IntConsumer done) {
    LotDraws draws = new LotDraws(scenario, known);
    Workers.draw(scenario.plan().draws(), threads, () -> draws::make, done);
    return draws;
  }

  private void make(int draw) {
    Luck luck =
        new DrawnLuck(new Keyed(scenario.plan().seed(), draw), nursery.settings(), spreads, names);
    List<Note> notes = new ArrayList<>();
    scenario.lots().forEach(lot -> notes.add(new Note(lot, luck)));
    programme.run(luck, known, notes::get);
    double[][] together = new double[FIGURES][months];
    for (int lot = 0; lot < notes.size(); lot++) {
      double[][] figures = notes.get(lot).addUp();
      for (int figure = 0; figure < FIGURES; figure++) {
        take(draw, samples[lot][figure], figures[figure]);
        for (int month = 0; month < months; month++) {
          together[figure][month] += figures[figure][month];
        }
      }
    }
    for (int figure = 0; figure < FIGURES; figure++) {
      take(draw, samples[notes.size()][figure], together[figure]);
    }
  }

  private static void take(int draw, float[][] into, double[] byMonth) {
    for (int month = 0; month < byMonth.length; month++) {
      into[month][draw] = (float) byMonth[month];
    }
  }

  /** What the draws say of a lot, by its index in the scenario. */
  public Figures lot(int index) {
    float[][][] of = samples[index];
    return new Figures(
        tenths(of[LIVING]),
        tenths(of[TRUNK]),
        tenths(of[UNITS]),
        tenths(of[SALES]),
        tenths(of[HOURS]),
        tenths(of[RESULT]));
  }

  /** What the draws say of all lots together. */
  public Figures together() {
    Figures all = lot(scenario.lots().size());
    return new Figures(
        all.living(), List.of(), all.unitsSold(), all.sales(), all.hours(), all.result());
  }

  /** By what a lot is judged, by its index in the scenario. */
  public Judged judged(int index) {
    float[][][] of = samples[index];
    float[][] price = new float[months][];
    for (int month = 0; month < months; month++) {
      price[month] = share(of[SALES][month], of[AT_LIST][month]);
    }
    return new Judged(spans(of[DEATHS]), spans(of[TRUNK]), spans(price));
  }

  private static float[] share(float[] sales, float[] atList) {
    float[] shares = new float[sales.length];
    int sold = 0;
    for (int draw = 0; draw < sales.length; draw++) {
      if (atList[draw] > 0) {
        shares[sold++] = sales[draw] / atList[draw];
      }
    }
    return 2 * sold < sales.length ? new float[0] : Arrays.copyOf(shares, sold);
  }

  /** Which draws of a lot, by its index in the scenario, were within what the others had. */
  public Within within(int index) {
    float[][][] of = samples[index];
    List<String> price = new ArrayList<>();
    for (int month = 0; month < months; month++) {
      price.add(AmongOthers.of(shareOrNone(of[SALES][month], of[AT_LIST][month])));
    }
    return new Within(
        within(of[LIVING]), within(of[TRUNK]), within(of[UNITS]), within(of[DEATHS]), price);
  }

  private static List<String> within(float[][] byMonth) {
    return Arrays.stream(byMonth).map(AmongOthers::of).toList();
  }

  /** A share of list price for each draw; not a number for one that has sold nothing. */
  private static float[] shareOrNone(float[] sales, float[] atList) {
    float[] shares = new float[sales.length];
    for (int draw = 0; draw < sales.length; draw++) {
      shares[draw] = atList[draw] > 0 ? sales[draw] / atList[draw] : Float.NaN;
    }
    return shares;
  }

  private static List<Span> spans(float[][] byMonth) {
    return Arrays.stream(byMonth).map(LotDraws::span).toList();
  }

  private static Span span(float[] draws) {
    if (draws.length == 0) {
      return Span.NONE;
    }
    Tenths tenths = tenths(draws);
    int outside = 0;
    for (float draw : draws) {
      double dust = DUST * Math.max(1, Math.abs(draw));
      outside += draw < tenths.p10() - dust || draw > tenths.p90() + dust ? 1 : 0;
    }
    return new Span(tenths.p10(), tenths.p90(), (double) outside / draws.length);
  }

  /**
   * What the draws say of the result of some lots together after a month, to the plan's end.
   *
   * @param lots their indexes in the scenario
   */
  public Tenths resultAfter(List<Integer> lots, int month) {
    float[] sums = new float[scenario.plan().draws()];
    for (int lot : lots) {
      float[][] result = samples[lot][RESULT];
      for (int draw = 0; draw < sums.length; draw++) {
        sums[draw] += result[months - 1][draw] - (month < 0 ? 0 : result[month][draw]);
      }
    }
    return tenths(sums);
  }

  private static List<Tenths> tenths(float[][] byMonth) {
    return Arrays.stream(byMonth).map(LotDraws::tenths).toList();
  }

  private static Tenths tenths(float[] draws) {
    double[] sample = new double[draws.length];
    for (int i = 0; i < sample.length; i++) {
      sample[i] = draws[i];
    }
    Quantiles quantiles = Quantiles.of(sample);
    return new Tenths(quantiles.p10(), quantiles.p50(), quantiles.p90());
  }

  /** Takes down one lot in one draw; flows by month, added up at the end. */
  private final class Note extends Booking {
    private final double[][] flows = new double[FIGURES][months];
    private final double[][] list;

    Note(Lot lot, Luck luck) {
      super(tariff);
      this.list = prices.gross(lot);
      int start = Math.max(0, programme.horizon().offset(lot.arrived()));
      flows[LIVING][start] += lot.quantity() * known.part(lot.name());
      buy(lot, start, programme.horizon().seasonYear(start), luck);
    }

    double[][] addUp() {
      for (int figure = 0; figure < FIGURES; figure++) {
        for (int month = 1; month < months && figure != TRUNK; month++) {
          flows[figure][month] += flows[figure][month - 1];
        }
      }
      for (int month = 0; month < months; month++) {
        flows[LIVING][month] = Math.max(0, flows[LIVING][month]);
      }
      return flows;
    }

    @Override
    public void cost(CostKind kind, int month, double amount) {
      flows[RESULT][month] -= amount;
    }

    @Override
    public void hours(int month, double hours) {
      flows[HOURS][month] += hours;
    }

    @Override
    public void receipts(int month, double plants, double money) {
      flows[LIVING][month] -= plants;
      flows[UNITS][month] += plants;
      flows[SALES][month] += money;
      flows[RESULT][month] += money;
    }

    @Override
    public boolean asksForTrunks() {
      return true;
    }

    @Override
    public void trunk(int month, double meanMm) {
      flows[TRUNK][month] = meanMm;
    }

    @Override
    public void sold(int month, int row, int grade, Quality quality, double units, double money) {
      super.sold(month, row, grade, quality, units, money);
      flows[AT_LIST][month] += grade < 0 ? 0 : units * list[quality.ordinal()][grade + 1];
    }

    @Override
    public void diedBefore(double plants) {
      died(0, plants);
    }

    @Override
    public void died(int month, double plants) {
      flows[LIVING][month] -= plants;
      flows[DEATHS][month] += plants;
    }

    @Override
    public void came(int month, double plants) {
      flows[LIVING][month] += plants;
    }

    @Override
    public void went(int month, double plants) {
      flows[LIVING][month] -= plants;
    }

    @Override
    public void culled(int month, double plants) {
      flows[LIVING][month] -= plants;
    }
  }
}
