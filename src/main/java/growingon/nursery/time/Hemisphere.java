package growingon.nursery.time;

import java.time.Month;
import java.time.format.TextStyle;
import java.util.Locale;

/** Which half of the world; it mirrors the shipped month shares. */
public enum Hemisphere {
  /** North. */
  NORTH("north"),
  /** South. */
  SOUTH("south");

  private final String word;

  Hemisphere(String word) {
    this.word = word;
  }

  /** First month of a season, where nothing is said: when the year's growth is over. */
  public Month usualSeasonStart() {
    return this == NORTH ? Month.OCTOBER : Month.APRIL;
  }

  /** The month in which a year's growth is measured, as one says it. */
  public String endOfGrowth() {
    return usualSeasonStart().getDisplayName(TextStyle.FULL, Locale.ENGLISH);
  }

  /** Months in winter places, where nothing is said. */
  public MonthSpan usualWinter() {
    return this == NORTH ? new MonthSpan(11, 3) : new MonthSpan(5, 9);
  }

  /** Months in which plants without leaves are lifted and moved. */
  public MonthSpan dormantSeason() {
    return this == NORTH ? new MonthSpan(11, 3) : new MonthSpan(5, 9);
  }

  /** The word used in files and reports. */
  @Override
  public String toString() {
    return word;
  }
}
