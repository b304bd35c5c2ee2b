package growingon.nursery.market;

/** How a plant was sorted, best first. */
public enum Quality {
  /** First. */
  FIRST("first"),
  /** Second. */
  SECOND("second"),
  /** Third. */
  THIRD("third");

  private final String word;

  Quality(String word) {
    this.word = word;
  }

  /** The word used in files and reports. */
  @Override
  public String toString() {
    return word;
  }
}
