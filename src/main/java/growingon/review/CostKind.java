package growingon.review;

/**
 * What a lot's account is charged for. A line "spent" of the daybook whose reason is the word of a
 * kind is a cost of that kind.
 */
public enum CostKind {
  /** Price of the plants bought. */
  PLANTS("plants"),
  /** Carriage and import charges. */
  CARRIAGE("carriage"),
  /** Pots. */
  POTS("pots"),
  /** Components of mixes. */
  SUBSTRATE("substrate"),
  /** Materials. */
  MATERIALS("materials"),
  /** All hours at the hourly rate. */
  LABOUR("hours"),
  /** Cost of care by area. */
  CARE("care"),
  /** Charge for the space it takes. */
  PLACE("place"),
  /** Whatever the daybook says was spent that is none of these; never planned. */
  OTHER("other");

  private final String word;

  CostKind(String word) {
    this.word = word;
  }

  /**
   * The kind of a line's amount by the reason it gives; {@link #OTHER} if it names none. Labour is
   * counted in hours, so money for it is another cost.
   */
  static CostKind named(String reason) {
    for (CostKind kind : values()) {
      if (kind != LABOUR && kind.word.equalsIgnoreCase(reason.strip())) {
        return kind;
      }
    }
    return OTHER;
  }

  /** The word used in files and reports. */
  @Override
  public String toString() {
    return word;
  }
}
