package growingon.fit.past;

import growingon.nursery.number.Writing;
import java.time.YearMonth;

/** Why a record is not used, in the words that a grower reads. */
public final class Why {
  private Why() {}

  static String countedTheSameMonth() {
    return "other plants or trunks than the row before it, but counted in the same month: which"
        + " holds?";
  }

  static String countedThatDay() {
    return "the daybook has a count of this lot on that day, which holds";
  }

  static String otherSpecies(String before) {
    return "the lot was of the species " + before + " on the list before";
  }

  static String tooOld() {
    return "too old: more than 37 seasons back";
  }

  static String notCounted() {
    return "no number of plants, with which a lot could begin";
  }

  public static String oneReading() {
    return "one reading only: it takes a second one of the same plant";
  }

  public static String afterUntil() {
    return "later than the last month looked at";
  }

  public static String beforeTheLot() {
    return "its lot was not there yet";
  }

  public static String noTrunk() {
    return "no trunk measured: deaths are used, growth is not";
  }

  public static String fewPlants(long plants) {
    return "%d %s left: fewer than 5 say little of a mean"
        .formatted(plants, plants == 1 ? "plant" : "plants");
  }

  public static String shortClock() {
    return "hardly any growing season between the two: deaths are used, the trunk is not";
  }

  public static String joined(long plants, Writing writing) {
    return "%s plants of other trunks joined it, so its mean says nothing of growth"
        .formatted(writing.whole(plants));
  }

  public static String slip(String row) {
    return "looks like a slip: more than six times as far off as it may be (" + row + ")";
  }

  public static String plantSlip(String plants) {
    return "looks like a slip: " + plants;
  }

  public static String plantsAppeared(long more, Writing writing) {
    return "%s more %s than the lines leave: used for growth"
        .formatted(writing.whole(more), more == 1 ? "plant" : "plants");
  }

  public static String soldUnready() {
    return "sold as a grade before the assumption had any";
  }

  public static String soldWithoutGrade() {
    return "sales without a grade: a grade on each line makes this truer";
  }

  /** Plants that are gone without a line. */
  public static String unexplained(
      String lot,
      long gone,
      long there,
      YearMonth from,
      YearMonth to,
      long expected,
      Writing writing) {
    return ("%s: %s of %s plants gone between %s and %s, %s to be expected, and no line says"
            + " how; were they sold? Its thick ones would be missing from the mean. Write the sales"
            + " (or deaths) down, even as one line.")
        .formatted(
            lot,
            writing.whole(gone),
            writing.whole(there),
            writing.month(from),
            writing.month(to),
            writing.whole(expected));
  }
}
