package growingon.nursery.lot;

/** How plants of a lot come. */
public enum Form {
  /** Bare root. */
  BARE_ROOT("bare root"),
  /** Root ball. */
  ROOT_BALL("root ball"),
  /** Container. */
  CONTAINER("container"),
  /** Cutting. */
  CUTTING("cutting"),
  /** Seedling. */
  SEEDLING("seedling");

  private final String word;

  Form(String word) {
    this.word = word;
  }

  /** The word used in files and reports. */
  @Override
  public String toString() {
    return word;
  }

  /** Whether it is lifted from the ground, and so moves in the dormant season only. */
  public boolean liftedFromGround() {
    return this == BARE_ROOT || this == ROOT_BALL;
  }
}
