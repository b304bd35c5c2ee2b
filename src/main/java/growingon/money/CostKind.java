package growingon.money;

import java.util.Optional;

/**
 * What a lot's account is charged for. A line "spent" of the daybook whose reason is the word of a
 * kind is a cost of that kind.
 */
public enum CostKind {
  /** Price of the plants bought. */
  PLANTS("plants", CashItem.PLANTS),
  /** Carriage and import charges. */
  CARRIAGE("carriage", CashItem.CARRIAGE),
  /** Pots, at the price of one; the nursery buys them in packs. */
  POTS("pots"),
  /** Components of mixes, at the price of a litre; the nursery buys them in bags. */
  SUBSTRATE("substrate"),
  /** Materials, at the price of a unit; the nursery buys them in packs. */
  MATERIALS("materials"),
  /** All hours at the hourly rate; the nursery pays a share of them. */
  LABOUR("hours"),
  /** Cost of care by area. */
  CARE("care", CashItem.CARE),
  /** Charge for the space it takes; the nursery pays for its places, used or not. */
  PLACE("place"),
  /** What selling costs beside its hours. */
  SELLING("selling", CashItem.SELLING),
  /** Other cash that the lot causes, less what it brings; and what the daybook says besides. */
  OTHER("other", CashItem.OTHER);

  private final String word;
  private final Optional<CashItem> cash;

  CostKind(String word) {
    this.word = word;
    this.cash = Optional.empty();
  }

  CostKind(String word, CashItem cash) {
    this.word = word;
    this.cash = Optional.of(cash);
  }

  /** The line of cash of which the nursery pays just what the lot is charged, in that month. */
  Optional<CashItem> cash() {
    return cash;
  }

  /** Whether the nursery pays just what the lot is charged, in the same month. */
  public boolean isCash() {
    return cash.isPresent();
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
