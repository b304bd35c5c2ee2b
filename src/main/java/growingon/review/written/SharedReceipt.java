package growingon.review.written;

import growingon.nursery.record.Receipt;
import java.util.Optional;

/**
 * What a receipt, or a part of it, was taken for.
 *
 * @param receipt the row
 * @param how what it was taken for
 * @param lot the lot; empty if it fits none
 * @param plants plants of the part, below nil for those that came back
 * @param amount money of the part, plan currency
 */
public record SharedReceipt(
    Receipt receipt, How how, Optional<String> lot, double plants, double amount) {
  /** What a receipt is taken for. */
  public enum How {
    /** It names the lot. */
    NAMED("names the lot", "by the lot that they name"),
    /** The daybook has the sale. */
    IN_DAYBOOK("stands in the daybook", "stand in the daybook"),
    /** Shared out to the oldest lots that had the grade. */
    SHARED("shared out", "shared out to the oldest lots that had the grade"),
    /** It fits no lot. */
    NONE("fits no lot", "fit no lot"),
    /** It is from before the plan began. */
    BEFORE("before the plan", "before the plan, which count for nothing");

    private final String words;
    private final String told;

    How(String words, String told) {
      this.words = words;
      this.told = told;
    }

    /** As it is said of many, behind their number. */
    public String told() {
      return told;
    }

    @Override
    public String toString() {
      return words;
    }
  }
}
