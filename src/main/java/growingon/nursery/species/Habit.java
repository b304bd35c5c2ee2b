package growingon.nursery.species;

/** Whether a species keeps its leaves in winter. */
public enum Habit {
  /** Deciduous. */
  DECIDUOUS("deciduous"),
  /** Evergreen. */
  EVERGREEN("evergreen");

  private final String word;

  Habit(String word) {
    this.word = word;
  }

  /** The word used in files and reports. */
  @Override
  public String toString() {
    return word;
  }
}
