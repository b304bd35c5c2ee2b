package growingon.fit.verdict;

import growingon.fit.past.Past;
import growingon.nursery.number.Writing;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/**
 * Figures and verdicts as a grower reads them.
 *
 * @param writing how numbers are written
 */
public record FitPhrases(Writing writing) {
  private static final int DIGITS = 3;
  private static final int MANY = 30;

  /** As the settings of the nursery of a past have it. */
  public static FitPhrases of(Past past) {
    return new FitPhrases(past.writing());
  }

  /** Three digits that count. */
  public static double rounded(double value) {
    return Double.isFinite(value)
        ? new BigDecimal(value).round(new MathContext(DIGITS, RoundingMode.HALF_UP)).doubleValue()
        : value;
  }

  /** Three digits that count, for files. */
  public static String number(double value) {
    return new BigDecimal(value)
        .round(new MathContext(DIGITS, RoundingMode.HALF_UP))
        .stripTrailingZeros()
        .toPlainString();
  }

  /** A factor on growth or losses: 1.20. */
  public String factor(double value) {
    return writing.decimals(value, 2);
  }

  /** With one decimal at most. */
  public String one(double value) {
    return writing.marked(
        new BigDecimal(value)
            .setScale(1, RoundingMode.HALF_UP)
            .stripTrailingZeros()
            .toPlainString());
  }

  /** 12,345. */
  public String whole(double value) {
    return writing.whole(value);
  }

  /** A number with its noun in the right form. */
  public static String count(int number, String one, String many) {
    return number + " " + (number == 1 ? one : many);
  }

  /** A share from 0 to 1 in whole per cent. */
  public static String percent(double share) {
    return "%d %%".formatted(Math.round(100 * share));
  }

  /** How many more records like these a value needs to rest on them by half. */
  public static String more(int counts, double weight) {
    if (weight <= 0 || counts == 0) {
      return "many";
    }
    double more = Math.ceil(counts * (1 - weight) / weight) - counts;
    return more > MANY ? "many" : Long.toString(Math.max(1, (long) more));
  }

  /** Years in which the seasons start, as one names a season. */
  public static String season(int year, boolean isCalendarYear) {
    return isCalendarYear ? Integer.toString(year) : "%d/%02d".formatted(year, (year + 1) % 100);
  }
}
