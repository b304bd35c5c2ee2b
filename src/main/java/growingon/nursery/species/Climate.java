package growingon.nursery.species;

/** The climate of a nursery, which the figures of the library of species suit more or less. */
public enum Climate {
  /** Where the trees of the library grew. */
  TEMPERATE("temperate", Fit.SUITS),
  /** Mediterranean. */
  MEDITERRANEAN("mediterranean", Fit.NEAR),
  /** Boreal. */
  BOREAL("boreal", Fit.NEAR),
  /** Subtropical. */
  SUBTROPICAL("subtropical", Fit.NONE),
  /** Tropical. */
  TROPICAL("tropical", Fit.NONE),
  /** Dry. */
  DRY("dry", Fit.NONE);

  private enum Fit {
    SUITS,
    NEAR,
    NONE
  }

  private final String word;
  private final Fit fit;

  Climate(String word, Fit fit) {
    this.word = word;
    this.fit = fit;
  }

  /** Whether the library says nothing of such a climate. */
  public boolean isBeyondLibrary() {
    return fit == Fit.NONE;
  }

  /** Whether the library may be used, but its trees grew in another climate. */
  public boolean isUnlikeLibrary() {
    return fit == Fit.NEAR;
  }

  /** The word used in files and reports. */
  @Override
  public String toString() {
    return word;
  }
}
