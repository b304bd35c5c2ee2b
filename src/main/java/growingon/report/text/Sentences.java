package growingon.report.text;

import java.util.List;

/** Sentences that stand on more than one sheet. */
public final class Sentences {
  public static final String WITHOUT_VAT =
      "All amounts are without VAT, in prices of the first month.";

  /** Stands where what was booked and what is still to come are added up. */
  public static final String AS_BOOKED =
      "All amounts are without VAT: what is written down as booked, the rest in prices of the"
          + " plan's first month.";

  public static final String EXPECTED =
      "Plants are expected numbers, made whole lot by lot so that all sheets add up; figures.json has"
          + " them in full.";

  public static final String PARTS_OF_PLANTS =
      "A line of less than a plant is counted, with its money, in the line that has the plant.";

  public static final String LIFTING =
      "Lifting weights are screening values, no limits: follow your local codes, and use a trolley"
          + " or two people. A wet pot weighs more than a dry one; the weights here are wet ones.";

  public static final String BENCH_LOADS =
      "Bench loads are worked out from wet mix, pots and wood: ask whoever built the bench or house"
          + " what it carries, and keep the heaviest lots over its legs.";

  public static final String PLANT_HEALTH =
      "Plants bought in or brought from abroad may need plant passports, certificates, an inspection"
          + " and a time apart; ask the local plant health service before you order.";

  public static final String SPRAYS =
      "Use sprays and wound dressings by their label, and with the licence they ask for.";

  public static final String POISON =
      "Some species are poisonous or irritate the skin or eyes: wear gloves, and keep cuttings from"
          + " children and animals.";

  public static final String NO_PROMISE =
      "A forecast is no promise: growth, losses, demand and prices will differ from what was"
          + " assumed.";

  public static final String NO_ADVICE = "Nothing here is tax or investment advice.";

  private Sentences() {}

  /** The cautions, each with what it is about. */
  public static List<List<String>> cautions() {
    return List.of(
        List.of("lifting", LIFTING),
        List.of("bench loads", BENCH_LOADS),
        List.of("plant health", PLANT_HEALTH),
        List.of("sprays and dressings", SPRAYS),
        List.of("poisonous plants", POISON),
        List.of("forecast", NO_PROMISE),
        List.of("advice", NO_ADVICE));
  }
}
