package growingon.money;

/**
 * What a lot's account is charged for. A line "spent" of the daybook whose reason is the word of a
 * kind is a cost of that kind.
 */
public enum CostKind {
  /** Price of the plants bought. */
  PLANTS("plants", CashItem.PLANTS, Paid.AS_CHARGED),
  /** Carriage and import charges. */
  CARRIAGE("carriage", CashItem.CARRIAGE, Paid.AS_CHARGED),
  /** Pots, at the price of one; the nursery buys them in packs. */
  POTS("pots", CashItem.POTS, Paid.IN_PACKS),
  /** Components of mixes, at the price of a litre; the nursery buys them in bags. */
  SUBSTRATE("substrate", CashItem.SUBSTRATE, Paid.IN_PACKS),
  /** Materials, at the price of a unit; the nursery buys them in packs. */
  MATERIALS("materials", CashItem.MATERIALS, Paid.IN_PACKS),
  /** All hours at the hourly rate; the nursery pays a share of them. */
  LABOUR("hours", CashItem.HOURS, Paid.A_SHARE),
  /** Cost of care by area. */
  CARE("care", CashItem.CARE, Paid.AS_CHARGED),
  /** Charge for the space it takes; the nursery pays for its places, used or not. */
  PLACE("place", CashItem.PLACES, Paid.USED_OR_NOT),
  /** What selling costs beside its hours. */
  SELLING("selling", CashItem.SELLING, Paid.AS_CHARGED),
  /** Other cash that the lot causes, less what it brings; and what the daybook says besides. */
  OTHER("other", CashItem.OTHER, Paid.AS_CHARGED);

  /** How what lots are charged for is paid for by the nursery. */
  enum Paid {
    /** Just what the lot is charged, in that month. */
    AS_CHARGED,
    /** Whole packs, when they are needed. */
    IN_PACKS,
    /** The paid share of all hours. */
    A_SHARE,
    /** Every month, whatever lots are charged. */
    USED_OR_NOT
  }

  private final String word;
  private final CashItem item;
  private final Paid paid;

  CostKind(String word, CashItem item, Paid paid) {
    this.word = word;
    this.item = item;
    this.paid = paid;
  }

  /** The line of cash on which the nursery pays for it. */
  CashItem item() {
    return item;
  }

  /** Whether the nursery pays for it in a way. */
  boolean isPaid(Paid way) {
    return paid == way;
  }

  /** Whether the nursery pays just what the lot is charged, in the same month. */
  public boolean isCash() {
    return paid == Paid.AS_CHARGED;
  }

  /** Whether the nursery buys it in whole packs, of which lots are charged what they use. */
  public boolean isInPacks() {
    return paid == Paid.IN_PACKS;
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
