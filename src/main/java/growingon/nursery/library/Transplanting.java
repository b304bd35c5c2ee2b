package growingon.nursery.library;

/** How well a species bears being moved: common practice, no source. */
public enum Transplanting {
  /** Hardly any is lost. */
  EASY("easy", 0.75),
  /** Between the two. */
  MIDDLING("middling", 0.6),
  /** Many are lost, in some years most. */
  HARD("hard", 0.3);

  private final String word;
  private final double lossSure;

  Transplanting(String word, double lossSure) {
    this.word = word;
    this.lossSure = lossSure;
  }

  /** How sure the loss of the first year is, as a share. */
  double lossSure() {
    return lossSure;
  }

  static Transplanting of(String word) {
    return OneOf.word(values(), word);
  }

  /** The word used in reports. */
  @Override
  public String toString() {
    return word;
  }
}
