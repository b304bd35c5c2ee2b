package growingon.report.text;

import java.util.Set;

/** Sentences that stand on more than one sheet; what is to be minded is in {@link Cautions}. */
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

  private Sentences() {}

  /**
   * What is true of each table of a sheet, and so is said above each part of one that is divided.
   */
  public static Set<String> ofAllTables() {
    return Set.of(WITHOUT_VAT, EXPECTED);
  }
}
