package growingon.nursery.place;

/** From where a pot is lifted. */
public enum LiftFrom {
  /** Bench. */
  BENCH("bench"),
  /** Ground. */
  GROUND("ground");

  private final String word;

  LiftFrom(String word) {
    this.word = word;
  }

  /** The word used in files and reports. */
  @Override
  public String toString() {
    return word;
  }
}
