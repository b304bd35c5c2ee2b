package growingon.review.bought;

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
  /** Plants that counts did not find and of which no line says whether they were sold or lost. */
  NO_LINE("gone without a line"),
  /** How they sort. */
  QUALITY("quality"),
  /** What plants would fetch as thick as they grew, sold when they were to be sold. */
  GROWTH("growth"),
  /** The grades at which they are sold: sooner or later than planned, so lower or higher. */
  GRADE_SOLD("sold lower or higher"),
  /** What a plant of a grade and quality fetches. */
  PRICE("price"),
  /** The share of the living plants that finds a buyer. */
  BUYERS("share that finds a buyer");

  private final String word;

  Cause(String word) {
    this.word = word;
  }

  /** The word used of a part that makes a lot better or worse. */
  public String word(boolean isBetter) {
    if (this != GRADE_SOLD) {
      return word;
    }
    return isBetter ? "sold higher than planned" : "sold lower than planned";
  }

  /** The word used in reports. */
  @Override
  public String toString() {
    return word;
  }
}
