package growingon.chance.luck;

/** What is assumed of a bought lot and can be moved alone, in its own words. */
public enum Assumption {
  /** Growth in the seasons, by luck. */
  GROWTH("growth", true, "growth matters most"),
  /** Growth of the lot beside that of the seasons, by luck. */
  GROWTH_OF_LOT("growth of this lot", false),
  /** Losses in the seasons, by luck. */
  LOSS("yearly loss", true),
  /** Loss of the consignment in its first year, by luck. */
  CONSIGNMENT("first-year loss of this consignment", false),
  /** Mean growth of the species. */
  GROWTH_NOT_KNOWN("growth of %s, not known", false, "how fast %s grows here matters most"),
  /** Trunks on arrival, which nobody measured. */
  TRUNKS_NOT_KNOWN(
      "trunks, not measured",
      false,
      "how thick its trunks are, which nobody measured, matters most"),
  /** Mean loss of the species in the first year. */
  FIRST_YEAR_LOSS_NOT_KNOWN(
      "first-year loss, not known", false, "the first-year loss, which is not known, matters most"),
  /** Mean loss of the species later. */
  LATER_LOSS_NOT_KNOWN(
      "later loss, not known", false, "the later loss, which is not known, matters most"),
  /** Mean level of selling prices. */
  PRICES_NOT_KNOWN(
      "all selling prices, not known", false, "the level of all selling prices matters most"),
  /** Mean level of demand. */
  DEMAND_NOT_KNOWN(
      "all units wanted, not known", false, "the level of all units wanted matters most"),
  /** How a lot bought unseen sorts. */
  FIRSTS("share of firsts", false),
  /** Units wanted in the seasons, by luck. */
  UNITS("units wanted", true, "the units wanted matter most"),
  /** Selling prices in the seasons, by luck. */
  PRICE("selling prices", true, "the selling prices matter most"),
  /** Minutes of work in the seasons, by luck. */
  MINUTES("minutes of work", true, "the minutes of work matter most"),
  /** Exchange rate of the season in which the lot is paid. */
  EXCHANGE("exchange rate", false),
  /** The consignment fails as a whole, or a share of it is dead on arrival. */
  FAILURE("the whole consignment fails", false);

  private final String words;
  private final boolean ofSeasons;
  private final String matters;

  Assumption(String words, boolean ofSeasons) {
    this(words, ofSeasons, "the " + words + " matters most");
  }

  Assumption(String words, boolean ofSeasons, String matters) {
    this.words = words;
    this.ofSeasons = ofSeasons;
    this.matters = matters;
  }

  /** What it is, of a species, as in "growth, mean of the seasons". */
  public String of(String species) {
    return ofSeasons ? words + ", mean of the seasons" : briefly(species);
  }

  /** The same without saying that a mean is meant, as in "growth". */
  public String briefly(String species) {
    return words.replace("%s", species);
  }

  /** That it moves most, as in "growth matters most". */
  public String mattersMost(String species) {
    return matters.replace("%s", species);
  }
}
