package growingon.review;

/**
 * Why a lot brings more or less than planned, in the order in which the planned figures are
 * replaced by the real ones, one after the other.
 */
public enum Cause {
  /** All costs but hours. */
  COST("cost"),
  /** Hours at the hourly rate. */
  HOURS("hours"),
  /** How many plants live, of those that came. */
  LOSSES("losses"),
  /** How they sort. */
  QUALITY("quality"),
  /** The grades they reached, within a quality. */
  GROWTH("growth"),
  /** What a plant of a grade and quality fetches. */
  PRICE("price"),
  /** The share of the living plants that is sold. */
  UNITS_SOLD("units sold");

  private final String word;

  Cause(String word) {
    this.word = word;
  }

  /** The word used in reports. */
  @Override
  public String toString() {
    return word;
  }
}
