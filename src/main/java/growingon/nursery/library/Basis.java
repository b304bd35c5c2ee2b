package growingon.nursery.library;

/**
 * What a figure of growth rests on, the surest first. The spread of the logarithm that is a
 * species' own is our choice, no source.
 */
enum Basis {
  /** Trunks were measured where trees were planted. */
  MEASURED("measured", 0.31),
  /** Trunks were measured where trees grow wild or as a forest. */
  WILD("measured in wild or forest stands", 0.31),
  /** The middle of its genus, or a near relation. */
  GENUS("genus", 0.36),
  /** Common practice, no source. */
  COMMON_PRACTICE("common practice", 0.45),
  /** The middle of all that keep, or lose, their leaves. */
  KIND("kind", 0.45);

  private static final double SEVERAL_SOURCES = 0.27;

  private final String word;
  private final double spread;

  Basis(String word, double spread) {
    this.word = word;
    this.spread = spread;
  }

  /**
   * Standard deviation of the logarithm of growth that is the species' own.
   *
   * @param sources how many sources measured it
   */
  double spread(int sources) {
    return isMeasured() && sources > 1 ? SEVERAL_SOURCES : spread;
  }

  boolean isMeasured() {
    return this == MEASURED || this == WILD;
  }

  /** The less sure of two. */
  Basis orWeaker(Basis other) {
    return compareTo(other) < 0 ? other : this;
  }

  static Basis of(String word) {
    return OneOf.word(values(), word);
  }

  /** The word used in reports. */
  @Override
  public String toString() {
    return word;
  }
}
