package growingon.nursery;

/**
 * A share of a lot not sold below a grade.
 *
 * @param grade the grade from which it may be sold
 * @param share share of the plants not kept
 */
public record Hold(String grade, double share) {
  public Hold {
    Check.named(grade, "a hold grade");
    Check.share(share, "hold share");
  }
}
