package growingon.buying.answer;

import growingon.buying.limit.Lack;
import growingon.buying.question.Choice.Take;
import growingon.buying.question.Spread;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * What is said of an offer.
 *
 * @param take the offer and its orders
 * @param verdict what is said of it
 * @param advised plants to buy, of each order; 0 for none
 * @param planned plants that the plan takes
 * @param at the number of plants that the rest is of: the advised, else the best there would be
 * @param numbers every number that was tried
 * @param goodFrom least number that does as well as {@code at}
 * @param goodTo greatest
 * @param gain what it gains beside all else recommended, judged at {@code judgedAt}
 * @param atEnd the same at the plan's end
 * @param worstFifth by how much it changes the mean of the worst fifth of the draws, at the plan's
 *     end
 * @param judgedAt season at whose end it is judged, 0 = the plan's first; beyond the plan where
 *     plants are unsold then
 * @param paysFrom season from which on it pays, if it does
 * @param unsold plants of it unsold at the plan's end, on the plan's line
 * @param unsoldAtList what they would fetch at list price
 * @param isSold whether nine tenths are sold by {@code judgedAt}
 * @param unsoldAtJudging plants unsold at {@code judgedAt}
 * @param mostLanded the most a plant may cost landed; empty if it does not pay as a gift
 * @param landed what a plant costs landed at that number
 * @param lacks what would have to be added for that number to fit
 * @param least the number that gains and lacks least, and what it lacks; empty where one fits
 * @param payback month by which the money is back on the plan's line
 * @param yieldPerM2Year gain for a square metre and year that it stands on, plan currency
 */
public record OfferAnswer(
    Take take,
    Verdict verdict,
    int advised,
    int planned,
    int at,
    List<Tried> numbers,
    int goodFrom,
    int goodTo,
    Spread gain,
    Spread atEnd,
    double worstFifth,
    int judgedAt,
    OptionalInt paysFrom,
    double unsold,
    double unsoldAtList,
    boolean isSold,
    double unsoldAtJudging,
    OptionalDouble mostLanded,
    double landed,
    Optional<Lack> lacks,
    Optional<LeastLack> least,
    OptionalInt payback,
    double yieldPerM2Year) {
  /** What is said. */
  public enum Verdict {
    /** Buy so many. */
    BUY,
    /** It brings too little to be worth saying. */
    BRINGS_LITTLE,
    /** It gains on average, but makes the worst fifth of the draws worse, which is asked about. */
    RISKS_TOO_MUCH,
    /** It gains only over a limit. */
    DOES_NOT_FIT,
    /** It gains beside the holds as given, not beside those recommended. */
    HOLDING_PAYS_MORE,
    /** It pays only after the plan's end. */
    PAYS_LATER,
    /** Too many of it stand unsold after the last season looked at. */
    UNSOLD,
    /** It loses. */
    DOES_NOT_PAY
  }

  /**
   * A number of plants, tried beside all else recommended.
   *
   * @param number plants of each order
   * @param gain what they gain at the plan's end
   * @param isGood whether it does as well as the best
   * @param fits whether it keeps within the limits
   */
  public record Tried(int number, Spread gain, boolean isGood, boolean fits) {}

  /** A number of plants and what it lacks. */
  public record LeastLack(int number, double gain, Lack lack) {}

  public OfferAnswer {
    numbers = List.copyOf(numbers);
  }
}
