package growingon.money;

/** A line of the cash flow. */
public enum CashItem {
  /** Sales. */
  SALES("sales"),
  /** What selling costs beside its hours. */
  SELLING("selling costs"),
  /** Plants bought, at their unit price. */
  PLANTS("plants bought"),
  /** Carriage and import charges. */
  CARRIAGE("carriage and import charges"),
  /** Pots, whole packs. */
  POTS("pots"),
  /** Substrate components, whole bags. */
  SUBSTRATE("substrate"),
  /** Materials, whole packs. */
  MATERIALS("materials"),
  /** The paid share of all hours. */
  HOURS("hours paid"),
  /** Places, used or not. */
  PLACES("places"),
  /** Care by area in use. */
  CARE("care"),
  /** Other cash, of lots and of none. */
  OTHER("other cash");

  private final String word;

  CashItem(String word) {
    this.word = word;
  }

  /** Whether it is for what is ordered from suppliers, with its carriage. */
  public boolean isBought() {
    return switch (this) {
      case PLANTS, CARRIAGE, POTS, SUBSTRATE, MATERIALS -> true;
      case SALES, SELLING, HOURS, PLACES, CARE, OTHER -> false;
    };
  }

  /** As shown in reports. */
  @Override
  public String toString() {
    return word;
  }
}
