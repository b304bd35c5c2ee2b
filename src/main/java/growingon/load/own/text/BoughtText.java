package growingon.load.own.text;

import growingon.load.own.sheet.SheetCell;
import java.time.YearMonth;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What a remark says of how plants were bought: in Mar 26 @ 1.35.
 *
 * @param month they came in
 * @param cost of one
 */
public record BoughtText(Optional<YearMonth> month, OptionalDouble cost) {
  private static final Pattern CAME =
      Pattern.compile(
          "(?iu)^(?:came|came in|in|arrived|bought|received|gekommen|gekauft|erhalten|arrivée?s?|achetée?s?|reçue?s?|"
              + "gekocht|ontvangen|arrivat[oaie]|comprat[oaie]|ricevut[oaie]|llegad[oa]s?|comprad[oa]s?|recibid[oa]s?)"
              + "\\s+(\\p{L}{3,}\\.?\\s+'?(?:20)?[0-9]{2})(?![0-9]).*");
  private static final Pattern EACH =
      Pattern.compile(
          "(?i)(?:^|\\s)@\\s*[£€$]?\\s*([0-9]{1,5}(?:[.,][0-9]{1,2})?)\\s*(p|c|ct|cents?)?(?![0-9.,\\p{L}])");
  private static final double HUNDREDTHS = 100;

  /** Planted spring 23, bought bare root Nov 24 @ 85p. */
  private static final Pattern WITHIN =
      Pattern.compile(
          "(?iu)^(?:\\p{L}+\\s+){1,4}?(\\p{L}{3,}\\.?\\s+'?(?:20)?[0-9]{2})(?![0-9]).*");

  /** What a remark says; nothing where it says neither. */
  public static BoughtText of(String remark) {
    Matcher came = CAME.matcher(remark.strip());
    Matcher each = EACH.matcher(remark.contains("@") ? remark : "");
    return new BoughtText(
        came.matches()
            ? new MonthText(Optional.empty(), false).of(SheetCell.of(came.group(1))).value()
            : Optional.empty(),
        each.find()
            ? OptionalDouble.of(
                Double.parseDouble(each.group(1).replace(',', '.'))
                    / (each.group(2) == null ? 1 : HUNDREDTHS))
            : OptionalDouble.empty());
  }

  /** The month that stands behind a word or some, where a cell is of months. */
  public static Optional<YearMonth> within(String text, MonthText months) {
    Matcher within = WITHIN.matcher(text.strip());
    return within.matches() ? months.of(SheetCell.of(within.group(1))).value() : Optional.empty();
  }
}
