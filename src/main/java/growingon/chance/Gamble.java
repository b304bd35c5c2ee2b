package growingon.chance;

import growingon.chance.luck.Assumption;
import growingon.money.Accounts;
import growingon.money.EndWorth;
import growingon.money.Finance;
import growingon.money.bought.BoughtLot;
import growingon.money.bought.Ceiling;
import growingon.money.bought.Ending;
import growingon.nursery.Scenario;
import growingon.nursery.lot.Purchase;
import io.soabase.recordbuilder.core.RecordBuilder;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * A bought lot under chance: the whole nursery with it against without it, on the same luck. Money
 * is in plan currency; months and seasons are offsets from the plan's first.
 *
 * @param bought the lot on the plan's line
 * @param gain present value it adds by the end of the season in which it is judged
 * @param gains [rank] that of every draw, rising
 * @param chancePays chance that it adds value, 0 to 1; then its return is above the discount rate
 * @param chanceLosesTenth chance that it loses more than a tenth of what it cost landed, 0 to 1
 * @param paidBackEven offset of the month by which it is paid back with a chance of 50 %; empty if
 *     by none
 * @param paidBackSure the same with a chance of 90 %
 * @param mostLandedEach the landed price of a plant at which the mean gain is nil; empty if it does
 *     not pay as a gift
 * @param byEnding [season] gain by season of ending, up to where the bought lots are judged
 * @param paysByEnding [season] chance that it has paid by then, 0 to 1
 * @param breakEvens values at which the plan's line gains nil
 * @param swings what each assumption moves, largest first
 */
public record Gamble(
    BoughtLot bought,
    Quantiles gain,
    double[] gains,
    double chancePays,
    double chanceLosesTenth,
    OptionalInt paidBackEven,
    OptionalInt paidBackSure,
    OptionalDouble mostLandedEach,
    List<Quantiles> byEnding,
    double[] paysByEnding,
    BreakEvens breakEvens,
    List<Swing> swings) {
  /**
   * Values at which the plan's line gains nil, all else as planned; empty where none does.
   *
   * @param survivors plants of 100 bought that must live through the first year and the steps in it
   * @param firsts share of firsts, the others in the proportion they have
   * @param price share of all selling prices
   * @param slowest factor on the growth of the species
   * @param severalSlowest whether there are several such factors, so that none is given: plants
   *     that grow more slowly crowd each other less
   */
  public record BreakEvens(
      OptionalDouble survivors,
      OptionalDouble firsts,
      OptionalDouble price,
      OptionalDouble slowest,
      boolean severalSlowest) {}

  /**
   * What one assumption moves, all others as planned.
   *
   * @param assumption what it is
   * @param species of the lot
   * @param low its value at P10, in words
   * @param high its value at P90, in words
   * @param gainAtLow gain of the plan's line there
   * @param gainAtLine gain of the plan's line as planned
   * @param gainAtHigh gain of the plan's line there
   * @param measured the same once twenty trunks were measured; empty where that teaches nothing
   */
  @RecordBuilder
  public record Swing(
      Assumption assumption,
      String species,
      String low,
      String high,
      double gainAtLow,
      double gainAtLine,
      double gainAtHigh,
      Optional<Measured> measured)
      implements GambleSwingBuilder.With {
    /** The assumption in words. */
    public String says() {
      return assumption.of(species);
    }

    /** How far the gain moves; growth can turn round, so as planned it may be the most or least. */
    public double width() {
      return width(gainAtLow, gainAtHigh);
    }

    private double width(double low, double high) {
      double most = Math.max(gainAtLine, Math.max(low, high));
      return most - Math.min(gainAtLine, Math.min(low, high));
    }

    /** Share of the width that measuring takes off; nil where it teaches nothing. */
    public double narrower() {
      return width() == 0 || measured.isEmpty()
          ? 0
          : 1 - width(measured.get().gainAtLow(), measured.get().gainAtHigh()) / width();
    }

    /** What the assumption moves once it was measured. */
    public record Measured(double gainAtLow, double gainAtHigh) {}
  }

  static Gamble of(
      Accounts expected,
      BoughtLot bought,
      double[][] byEnding,
      int[] paybacks,
      EndWorth[] endWorths) {
    int judgedAt = bought.ending().judgedAt();
    double[] gains = byEnding[judgedAt];
    double[] sorted = gains.clone();
    Arrays.sort(sorted);
    Quantiles gain = Quantiles.of(gains);
    double tenth = -0.1 * bought.landed();
    Scenario plan = expected.projection().scenario();
    Scenario judged = plan.withPlan(plan.plan().withSeasons(judgedAt + 1));
    Sensitivity sensitivity = new Sensitivity(judged, bought.lot());
    int arrival = expected.projection().horizon().offset(bought.lot().arrived());
    double rate = expected.projection().scenario().nursery().settings().discountRate();
    int last = judged.horizon().months() - 1;
    Ceiling ceiling =
        new Ceiling(discount(rate, arrival), discount(rate, last), List.of(endWorths));
    OptionalDouble most = ceiling.most(bought.landed(), gain.mean());
    return new Gamble(
        bought,
        gain,
        sorted,
        share(sorted, 0, true),
        share(sorted, tenth, false),
        paidBack(paybacks, 0.5),
        paidBack(paybacks, 0.9),
        most.isPresent() ? OptionalDouble.of(most.getAsDouble() / bought.lot().quantity()) : most,
        Quantiles.each(byEnding),
        Arrays.stream(byEnding).mapToDouble(each -> share(each, 0, true)).toArray(),
        sensitivity.breakEvens(bought.judged()),
        sensitivity.swings());
  }

  private static double discount(double rate, int month) {
    return Math.pow(1 + Finance.monthRate(rate), -month);
  }

  private static double share(double[] sorted, double limit, boolean atLeast) {
    int count = 0;
    for (double each : sorted) {
      count += (atLeast ? each >= limit : each < limit) ? 1 : 0;
    }
    return (double) count / sorted.length;
  }

  /** The first month by which at least a share of the draws is paid back. */
  private static OptionalInt paidBack(int[] paybacks, double chance) {
    int[] sorted = paybacks.clone();
    Arrays.sort(sorted);
    int month = sorted[(int) Math.ceil(chance * sorted.length) - 1];
    return month == Drawing.NEVER ? OptionalInt.empty() : OptionalInt.of(month);
  }

  /**
   * The first season from which on its mean gain is never below nil, up to where it is judged;
   * empty if there is none.
   */
  public OptionalInt paysFrom() {
    return Ending.paysFrom(
        byEnding.stream().map(Quantiles::mean).toList(), bought.ending().judgedAt());
  }

  /** Whether the lot may fail as a whole, as stated. */
  public double chanceFails() {
    return bought.lot().purchase().map(Purchase::fails).orElse(0.0);
  }
}
