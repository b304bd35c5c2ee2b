package growingon.money.bought;

import growingon.nursery.lot.Lot;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * What a lot bought within the plan is worth to the whole nursery: the plan with it against the
 * plan without it, so that what it crowds out counts.
 *
 * @param lot the lot
 * @param landed its cost landed, plan currency
 * @param flows net flows with it less those without it, horizon value included, by month
 * @param presentValue their present value
 * @param ratesOfReturn yearly, every root; empty for none
 * @param payback first month from which its cumulative flows stay at or above nil
 * @param overflows where and when it makes places overflow, or overflow more
 * @param hoursShort hours short because of it, by month
 * @param bargain how far price, plants and selling price may move
 * @param ending what it would have brought had the plan ended with another season
 * @param later the same where it is judged later than the plan ends: in a plan to there
 * @param bridge from what it gains to the result of its account
 */
public record BoughtLot(
    Lot lot,
    double landed,
    double[] flows,
    double presentValue,
    List<Double> ratesOfReturn,
    OptionalInt payback,
    List<Overflow> overflows,
    double[] hoursShort,
    Bargain bargain,
    Ending ending,
    Optional<BoughtLot> later,
    Bridge bridge) {
  /**
   * Square metres by which a place overflows because of the lot.
   *
   * @param place the place; none for lots without one
   * @param month month offset
   * @param m2 square metres more over capacity than without the lot
   */
  public record Overflow(Optional<String> place, int month, double m2) {}

  /**
   * The values at which the lot neither gains nor loses.
   *
   * @param mostLandedEach the most that a plant may cost landed, plan currency, all else as
   *     planned; empty if it does not pay as a gift
   * @param fewestUsable the fewest firsts and seconds in 100 at which it pays; empty if it does not
   *     pay with 100
   * @param leastPriceShare the share of all selling prices at which it just pays; empty if it sells
   *     nothing
   * @param averagePrice mean price its plants fetch as planned; NaN if it sells nothing
   */
  public record Bargain(
      OptionalDouble mostLandedEach,
      OptionalInt fewestUsable,
      OptionalDouble leastPriceShare,
      double averagePrice) {
    /** The least mean price its plants must fetch; empty if it sells nothing. */
    public OptionalDouble leastPrice() {
      return leastPriceShare.isPresent()
          ? OptionalDouble.of(leastPriceShare.getAsDouble() * averagePrice)
          : OptionalDouble.empty();
    }
  }

  /**
   * From what a lot gains for the nursery, in today's money, to the result of its own account; plan
   * currency.
   *
   * @param gain present value of what it gains
   * @param later what discounting took from it
   * @param unsold value of unsold plants that counts as gain and is no cash
   * @param hoursNotPaid hours that its account is charged and nobody is paid for
   * @param placeCharge charge for space that the nursery pays for, used or not
   * @param packsAndStock use at the price of one less whole packs bought
   * @param otherLots what the accounts of other lots are better for it
   * @param result the result of its account
   */
  public record Bridge(
      double gain,
      double later,
      double unsold,
      double hoursNotPaid,
      double placeCharge,
      double packsAndStock,
      double otherLots,
      double result) {
    private static final double HALF_A_CENT = 0.005;

    public Bridge {
      double sum = gain + later - unsold - hoursNotPaid - placeCharge - packsAndStock - otherLots;
      double size = Math.abs(gain) + Math.abs(result) + Math.abs(otherLots) + placeCharge;
      if (!(Math.abs(sum - result) <= HALF_A_CENT + 1e-9 * size)) {
        throw new IllegalStateException(
            "the gain of a lot and its account differ by " + (sum - result));
      }
    }

    /** What it brings more in cash. */
    public double cash() {
      return gain + later - unsold;
    }
  }

  public BoughtLot {
    ratesOfReturn = List.copyOf(ratesOfReturn);
    overflows = List.copyOf(overflows);
  }

  /** The lot weighed at the end of the season in which it is judged. */
  public BoughtLot judged() {
    return later.orElse(this);
  }
}
