package growingon.nursery.supply;

/** The shape of a pot. */
public enum PotShape {
  /** Round. */
  ROUND("round"),
  /** Square. */
  SQUARE("square"),
  /** Rectangular. */
  RECTANGULAR("rectangular"),
  /** Litres. */
  LITRES("litres");

  private final String word;

  PotShape(String word) {
    this.word = word;
  }

  /** The word used in files and reports. */
  @Override
  public String toString() {
    return word;
  }
}
