package growingon.review;

import growingon.review.kept.KeptSpan;
import java.util.Optional;

/**
 * A figure of a lot that the grower's own sales do not change, held against the kept plan's draws.
 *
 * @param lot name of the lot
 * @param what which figure
 * @param planned by the plan's line
 * @param real as it came
 * @param luck what luck alone had for likely; empty where the kept plan does not tell it apart
 * @param all what luck and not knowing together had for likely
 */
public record Judged(
    String lot,
    What what,
    double planned,
    double real,
    Optional<KeptSpan.At> luck,
    KeptSpan.At all) {
  /** Which figure. */
  public enum What {
    /** Plants that died or went missing, of a lot with all that was split off. */
    DEATHS("deaths"),
    /** Growth of the mean trunk up to the last measuring, mm. */
    GROWTH("growth"),
    /** Money of sales as a share of list price, of a lot with all that was split off. */
    PRICE("price");

    private final String word;

    What(String word) {
      this.word = word;
    }

    @Override
    public String toString() {
      return word;
    }
  }

  /** How a figure is to be taken. */
  public enum Take {
    /** Within what luck alone had for likely. */
    LUCK("luck"),
    /** Outside what luck alone had for likely. */
    MORE_THAN_LUCK("more than luck"),
    /** Outside of what was likely with all that was not known. */
    MORE_THAN_KNOWN("more than foreseen");

    private final String words;

    Take(String words) {
      this.words = words;
    }

    @Override
    public String toString() {
      return words;
    }
  }

  /** How it is to be taken. */
  public Take take() {
    if (!all.holds(real)) {
      return Take.MORE_THAN_KNOWN;
    }
    return luck.orElse(all).holds(real) ? Take.LUCK : Take.MORE_THAN_LUCK;
  }

  /** Chance that it would lie outside by luck alone. */
  public double outsideByLuck() {
    return luck.orElse(all).outside();
  }
}
