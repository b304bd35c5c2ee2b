package growingon.nursery.place;

/** How pots are set out. */
public enum Layout {
  /** Square. */
  SQUARE("square"),
  /** Offset. */
  OFFSET("offset");

  private final String word;

  Layout(String word) {
    this.word = word;
  }

  /** The word used in files and reports. */
  @Override
  public String toString() {
    return word;
  }
}
