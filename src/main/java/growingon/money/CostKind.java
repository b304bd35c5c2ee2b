package growingon.money;

/**
 * What a lot's account is charged for. A line "spent" of the daybook whose reason is the word of a
 * kind is a cost of that kind.
 */
public enum CostKind {
  /** Price of the plants bought. */
  PLANTS("plants", true),
  /** Carriage and import charges. */
  CARRIAGE("carriage", true),
  /** Pots, at the price of one; the nursery buys them in packs. */
  POTS("pots", false),
  /** Components of mixes, at the price of a litre; the nursery buys them in bags. */
  SUBSTRATE("substrate", false),
  /** Materials, at the price of a unit; the nursery buys them in packs. */
  MATERIALS("materials", false),
  /** All hours at the hourly rate; the nursery pays a share of them. */
  LABOUR("hours", false),
  /** Cost of care by area. */
  CARE("care", true),
  /** Charge for the space it takes; the nursery pays for its places, used or not. */
  PLACE("place", false),
  /** What selling costs beside its hours. */
  SELLING("selling", true),
  /** Other cash that the lot causes, less what it brings; and what the daybook says besides. */
  OTHER("other", true);

  private final String word;
  private final boolean isCash;

  CostKind(String word, boolean isCash) {
    this.word = word;
    this.isCash = isCash;
  }

  /** Whether the nursery pays just what the lot is charged, in the same month. */
  public boolean isCash() {
    return isCash;
  }

  /**
   * The kind of a line's amount by the reason it gives; {@link #OTHER} if it names none. Labour is
   * counted in hours, so money for it is another cost.
   */
  public static CostKind named(String reason) {
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
