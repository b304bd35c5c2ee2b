package growingon.report.text;

import java.util.List;

/**
 * What a grower is to mind, whatever the plan: cautions that hold for all lots. What a lot or job
 * is to be minded of stands where it is worked out: weights and loads on their sheets, who lifts
 * beside the job, health notes with the species.
 */
public final class Cautions {
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

  private Cautions() {}

  /** All of them, each behind what it is about. */
  public static List<List<String>> all() {
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
