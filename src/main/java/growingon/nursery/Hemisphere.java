package growingon.nursery;

/** Which half of the world; it mirrors the shipped month shares. */
public enum Hemisphere {
  /** North. */
  NORTH("north"),
  /** South. */
  SOUTH("south");

  private final String word;

  Hemisphere(String word) {
    this.word = word;
  }

  /** The word used in files and reports. */
  @Override
  public String toString() {
    return word;
  }
}
