package growingon.chance;

import growingon.money.Booking;
import growingon.money.CostKind;
import growingon.money.Tariff;
import growingon.nursery.Lot;
import growingon.nursery.Nursery;
import growingon.nursery.Scenario;
import growingon.project.Luck;
import growingon.project.Programme;
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
  private static final int FIGURES = 6;

  private final Scenario scenario;
  private final Programme programme;
  private final Nursery nursery;
  private final Spreads spreads = new Spreads();
  private final Names names = new Names();
  private final Tariff tariff;
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

  private LotDraws(Scenario scenario) {
    this.scenario = scenario;
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
    LotDraws draws = new LotDraws(scenario);
    Workers.draw(scenario.plan().draws(), threads, () -> draws::make, done);
    return draws;
  }

  private void make(int draw) {
    Luck luck =
        new DrawnLuck(new Keyed(scenario.plan().seed(), draw), nursery.settings(), spreads, names);
    List<Note> notes = new ArrayList<>();
    scenario.lots().forEach(lot -> notes.add(new Note(lot, luck)));
    programme.run(luck, notes::get);
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

    Note(Lot lot, Luck luck) {
      super(tariff);
      int start = Math.max(0, programme.horizon().offset(lot.arrived()));
      flows[LIVING][start] += lot.quantity();
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
    protected void cost(CostKind kind, int month, double amount) {
      flows[RESULT][month] -= amount;
    }

    @Override
    protected void hours(int month, double hours) {
      flows[HOURS][month] += hours;
    }

    @Override
    protected void receipts(int month, double plants, double money) {
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
    public void diedBefore(double plants) {
      flows[LIVING][0] -= plants;
    }

    @Override
    public void died(int month, double plants) {
      flows[LIVING][month] -= plants;
    }

    @Override
    public void culled(int month, double plants) {
      flows[LIVING][month] -= plants;
    }
  }
}
