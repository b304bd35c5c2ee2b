package growingon.review.bought;

/**
 * How the bought lots of one kind came out so far.
 *
 * @param by what they have in common
 * @param kind its name, empty if not said; of {@link By#SEEN} "seen" or "unseen"
 * @param lots number of lots
 * @param paid of these paid
 * @param didNotPay did not
 * @param undecided are not yet decided
 * @param tooYoung are too young to tell
 * @param landed what they cost landed, plan currency
 * @param planned result as planned
 * @param expected result as now expected
 */
public record GambleKind(
    By by,
    String kind,
    int lots,
    int paid,
    int didNotPay,
    int undecided,
    int tooYoung,
    double landed,
    double planned,
    double expected) {
  /** What lots of a kind have in common. */
  public enum By {
    /** Their supplier. */
    SUPPLIER("supplier"),
    /** Their species. */
    SPECIES("species"),
    /** Whether their quality was known when they were bought. */
    SEEN("seen or unseen");

    private final String word;

    By(String word) {
      this.word = word;
    }

    /** The word used in reports. */
    @Override
    public String toString() {
      return word;
    }
  }
}
