package growingon.load.quick;

import growingon.load.cell.Cell;
import growingon.load.cell.Texts;
import growingon.nursery.species.Habit;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/**
 * The lines of the quick sheet: ten to fill in, an eleventh if space is the question, and the rest
 * with usual values that may be typed over. The usual values are common practice, without a source.
 */
public final class QuickLines {
  static final String SPECIES = "species";
  static final String HOW_MANY = "how many";
  static final String PRICE = "price each";
  static final String CARRIAGE = "carriage for all";
  static final String ARRIVAL = "arrival month";
  static final String TRUNK = "trunk mm or girth cm";
  static final String QUALITY = "firsts and seconds in ten";
  static final String POT_LITRES = "pot litres";
  static final String SOLD_AT = "sold at trunk mm";
  static final String SELLING_PRICE = "selling price each";
  static final String FREE_M2 = "free square metres";

  static final String CURRENCY = "currency";
  static final String KIND = "kind";
  static final String HEMISPHERE = "hemisphere";
  static final String GROWTH = "growth mm a year";
  static final String CHECK_1 = "root-work check 1";
  static final String CHECK_2 = "root-work check 2";
  static final String POT_BOUND_MONTHS = "pot-bound months";
  static final String POT_BOUND_FACTOR = "pot-bound factor";
  static final String FORM = "form";
  static final String GIRTH_FACTOR = "girth base factor";
  static final String TRUNK_SPREAD = "trunk spread %";
  static final String VIGOUR_SPREAD = "vigour spread %";
  static final String FIRST_YEAR_LOSS = "first-year loss %";
  static final String LATER_LOSS = "later loss %";
  static final String FIRSTS_OF_USABLE = "firsts of the usable %";
  static final String SECOND_PRICE = "price of a second %";
  static final String POTTING = "minutes to reduce and pot";
  static final String YEARLY = "minutes a year after that";
  static final String HOURLY_RATE = "hourly rate";
  static final String POT_PRICE = "pot price";
  static final String BALL = "old ball in the pot %";
  static final String GRIT = "grit in the mix %";
  static final String GRIT_PRICE = "grit price a litre";
  static final String BARK_PRICE = "bark price a litre";
  static final String GAP = "gap mm";
  static final String M2_COST = "cost per m2 a year";
  static final String DISCOUNT = "discount rate % a year";
  static final String YEARS = "seasons looked ahead";

  static final double GROWTH_DECIDUOUS_MM = 5;
  static final double GROWTH_EVERGREEN_MM = 3;
  static final double POT_PRICE_A_LITRE = 0.20;
  static final double BALL_SHARE = 0.30;

  private static final String WHEN = "when they are ready";
  private static final String APART = "how far the first and the last are apart";
  private static final String LEFT = "how many are left to sell";
  private static final String FETCH = "what they fetch";
  private static final String HOURS = "hours and their cost";
  private static final String COSTS = "costs";
  private static final String SPACE = "space";
  private static final String GAIN = "the gain";

  /** The ten, in the order in which they are asked. */
  static final List<QuickLine> TEN =
      List.of(
          QuickLine.asked(SPECIES, "Field maple", "what they are"),
          QuickLine.asked(HOW_MANY, "60", "plants in the lot"),
          QuickLine.asked(PRICE, "38", "what you are asked for one, without VAT"),
          QuickLine.asked(
              CARRIAGE, "240", "for the whole lot, to your gate, without VAT; 0 if none"),
          QuickLine.asked(ARRIVAL, "Feb 2027", "when it comes: the answer counts from there"),
          QuickLine.asked(
              TRUNK,
              "12-14 cm",
              "12-14 cm is a girth; 35 is a trunk of 35 mm just above the root flare"),
          QuickLine.asked(
              QUALITY,
              "6 and 2",
              "how ten of them sort; the rest are thirds and are thrown out. One number, such as 8,"
                  + " if you cannot tell firsts from seconds"),
          QuickLine.asked(POT_LITRES, "18", "the pot they go into, to the brim"),
          QuickLine.asked(SOLD_AT, "55", "the trunk from which you can sell one"),
          QuickLine.asked(SELLING_PRICE, "190", "what a first of that size fetches, without VAT"));

  /** The eleventh. */
  static final QuickLine ELEVENTH =
      QuickLine.asked(FREE_M2, "15", "only if space is the question: what you have free for them");

  /** Lines with a usual value. */
  static final List<QuickLine> USUAL =
      List.of(
          QuickLine.usual(KIND, "", "deciduous or evergreen; empty: by the species' name", WHEN),
          QuickLine.usual(
              GROWTH,
              "",
              "of the trunk in its pot; empty: %s deciduous, %s evergreen"
                  .formatted(
                      Cell.Number.plain(GROWTH_DECIDUOUS_MM),
                      Cell.Number.plain(GROWTH_EVERGREEN_MM)),
              WHEN),
          QuickLine.usual(
              CHECK_1, "0.6", "growth in the year after roots are cut: 1 is full", WHEN),
          QuickLine.usual(CHECK_2, "0.85", "growth in the year after that", WHEN),
          QuickLine.usual(POT_BOUND_MONTHS, "36", "months of full growth in the pot", WHEN),
          QuickLine.usual(POT_BOUND_FACTOR, "0.6", "growth after those months", WHEN),
          QuickLine.usual(
              FORM,
              "",
              "root ball, bare root or container; empty: root ball in the dormant months, else"
                  + " container. Lifted plants are not sold for half a year",
              WHEN),
          QuickLine.usual(HEMISPHERE, "north", "north or south", WHEN),
          QuickLine.usual(GIRTH_FACTOR, "1.25", "trunk at the base over trunk at the girth", WHEN),
          QuickLine.usual(
              TRUNK_SPREAD, "15", "between the trunks, where one trunk is given", APART),
          QuickLine.usual(VIGOUR_SPREAD, "20", "between their growth", APART),
          QuickLine.usual(FIRST_YEAR_LOSS, "10", "die in the first twelve months", LEFT),
          QuickLine.usual(LATER_LOSS, "2", "die in each year after that", LEFT),
          QuickLine.usual(FIRSTS_OF_USABLE, "75", "where you gave one number for both", FETCH),
          QuickLine.usual(SECOND_PRICE, "60", "of the price of a first", FETCH),
          QuickLine.usual(POTTING, "12", "a plant, on arrival", HOURS),
          QuickLine.usual(YEARLY, "8", "a plant: pruning, watering, weeding", HOURS),
          QuickLine.usual(HOURLY_RATE, "15", "what an hour costs you", COSTS),
          QuickLine.usual(
              POT_PRICE, "", "of one pot; empty: %.2f a litre".formatted(POT_PRICE_A_LITRE), COSTS),
          QuickLine.usual(GRIT, "40", "the rest is composted bark", COSTS),
          QuickLine.usual(GRIT_PRICE, "0.25", "", COSTS),
          QuickLine.usual(BARK_PRICE, "0.12", "", COSTS),
          QuickLine.usual(
              BALL,
              "",
              "part of the pot that the old ball fills; empty: %s, bare root 0"
                  .formatted(Cell.Number.plain(100 * BALL_SHARE)),
              COSTS),
          QuickLine.usual(M2_COST, "0", "of the ground they stand on", COSTS),
          QuickLine.usual(GAP, "100", "between the pots", SPACE),
          QuickLine.usual(DISCOUNT, "4", "above inflation", GAIN),
          QuickLine.usual(YEARS, "10", "what is unsold after them counts nothing", GAIN),
          QuickLine.usual(CURRENCY, "EUR", "what the amounts are called", "no figure"));

  /** Words in the names of evergreens, from memory; whatever has none of them is deciduous. */
  private static final Set<String> EVERGREENS =
      Set.of(
          "abies",
          "fir",
          "buxus",
          "box",
          "cedar",
          "cedrus",
          "chamaecyparis",
          "cypress",
          "cupressus",
          "cryptomeria",
          "holly",
          "ilex",
          "juniper",
          "juniperus",
          "olive",
          "olea",
          "picea",
          "spruce",
          "pine",
          "pinus",
          "taxus",
          "yew",
          "thuja",
          "tsuga",
          "hemlock",
          "hinoki");

  private QuickLines() {}

  /** Every line in the order of the sheet. */
  public static List<QuickLine> all() {
    List<QuickLine> all = new ArrayList<>(TEN);
    all.add(ELEVENTH);
    all.addAll(USUAL);
    return List.copyOf(all);
  }

  static QuickLine get(String name) {
    return all().stream().filter(line -> line.name().equals(name)).findFirst().orElseThrow();
  }

  /** By the words of its name. */
  static Habit habit(String species) {
    boolean evergreen =
        List.of(Texts.headingKey(species).split(" ")).stream().anyMatch(EVERGREENS::contains);
    return evergreen ? Habit.EVERGREEN : Habit.DECIDUOUS;
  }
}
