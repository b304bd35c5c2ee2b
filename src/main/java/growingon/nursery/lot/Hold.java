package growingon.nursery.lot;

import growingon.nursery.number.Check;
import java.util.Locale;
import java.util.Objects;

/**
 * A share of a lot not sold below a grade.
 *
 * @param grade the grade from which it may be sold
 * @param share share of the plants not kept
 * @param which which plants are held
 */
public record Hold(String grade, double share, Which which) {
  /** Which plants of a lot are held. */
  public enum Which {
    /** The same share of all. */
    ALIKE,
    /** Those that were thickest when the lot was counted; of each quality the same share. */
    BEST;

    @Override
    public String toString() {
      return name().toLowerCase(Locale.ROOT);
    }
  }

  public Hold {
    Check.named(grade, "a hold grade");
    Check.share(share, "hold share");
    Objects.requireNonNull(which);
  }

  /** The same share of all plants. */
  public Hold(String grade, double share) {
    this(grade, share, Which.ALIKE);
  }

  /** Whether another hold holds the same plants. */
  public boolean holdsAs(Hold other) {
    boolean all = share == 1;
    return grade.equals(other.grade)
        && share == other.share
        && (all || share == 0 || which == other.which);
  }
}
