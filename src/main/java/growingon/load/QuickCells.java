package growingon.load;

import growingon.nursery.QualityShares;
import growingon.nursery.Trunks;
import growingon.problem.Advice;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The two cells of the quick sheet that hold more than a number. */
final class QuickCells {
  private static final String NUMBER = "([0-9]+(?:[.,][0-9]+)?)";
  private static final String TO = "\\s*(?:-|–|/|to|bis)\\s*";
  private static final Pattern GIRTH =
      Pattern.compile("(?:girth )?" + NUMBER + "(?:" + TO + NUMBER + ")?\\s*cm(?: girth)?");
  private static final Pattern BARE_GIRTH =
      Pattern.compile("girth " + NUMBER + "(?:" + TO + NUMBER + ")?");
  private static final Pattern TRUNK =
      Pattern.compile("(?:trunk )?" + NUMBER + "(?:" + TO + NUMBER + ")?\\s*(?:mm)?");
  private static final Pattern TWO =
      Pattern.compile(NUMBER + "\\s*(?:and|und|\\+|,|;|/|-|&| )\\s*" + NUMBER);

  private static final double IN_ALL = 10;

  private QuickCells() {}

  /**
   * A trunk in mm, or a girth in cm.
   *
   * @param spread coefficient of variation where one size is given
   * @param girthFactor trunk at the base over trunk at the height of the girth
   */
  static As<Trunks> trunk(double spread, double girthFactor) {
    return new As<>(
        new Trunks.Measured(1, 0),
        (cell, spot) -> trunk(cell, spread, girthFactor),
        QuickCells::shown,
        heading -> "mm");
  }

  private static String shown(Trunks trunks) {
    return trunks instanceof Trunks.SizeClass size
        ? Math.round(size.fromMm()) + " to " + Math.round(size.toMm())
        : String.valueOf(Math.round(trunks.meanMm()));
  }

  private static Trunks trunk(Cell cell, double spread, double girthFactor) {
    if (cell instanceof Cell.Number number && !number.percent() && number.value() > 0) {
      return new Trunks.Measured(number.value(), spread);
    }
    String text = cell instanceof Cell.Text typed ? Texts.key(typed.text()) : "";
    for (Pattern pattern : new Pattern[] {GIRTH, BARE_GIRTH, TRUNK}) {
      Matcher size = pattern.matcher(text);
      if (size.matches()) {
        double each = pattern == TRUNK ? 1 : 10 / Math.PI * girthFactor;
        return sized(size, each, spread, cell);
      }
    }
    throw noTrunk(cell);
  }

  private static Trunks sized(Matcher size, double mmEach, double spread, Cell cell) {
    double from = number(size.group(1)) * mmEach;
    double to = size.group(2) == null ? from : number(size.group(2)) * mmEach;
    if (from <= 0 || to < from) {
      throw noTrunk(cell);
    }
    return size.group(2) == null
        ? new Trunks.Measured(from, spread)
        : new Trunks.SizeClass(from, to);
  }

  private static CellFault noTrunk(Cell cell) {
    return new CellFault(where -> Advice.trunkOrGirth(where, cell.shown()));
  }

  /**
   * Firsts and seconds in ten, or one number for both.
   *
   * @param firstsOfUsable share of firsts among them where one number is given
   */
  static As<QualityShares> quality(double firstsOfUsable) {
    return new As<>(
        QualityShares.ALL_FIRSTS,
        (cell, spot) -> quality(cell, firstsOfUsable),
        shares -> inTen(shares.first()) + " and " + inTen(shares.second()),
        heading -> "in ten");
  }

  private static String inTen(double share) {
    return Cell.Number.plain(share * IN_ALL);
  }

  private static QualityShares quality(Cell cell, double firstsOfUsable) {
    String text = Texts.key(cell.shown());
    Matcher two = TWO.matcher(text);
    if (two.matches() && !(cell instanceof Cell.Number)) {
      return shares(number(two.group(1)), number(two.group(2)), cell);
    }
    if (isOneNumber(cell)) {
      double usable = number(text);
      return shares(usable * firstsOfUsable, usable * (1 - firstsOfUsable), cell);
    }
    throw noQuality(cell);
  }

  /** Whether firsts and seconds are given as one number. */
  static boolean isOneNumber(Cell cell) {
    return Texts.key(cell.shown()).matches(NUMBER);
  }

  private static QualityShares shares(double firsts, double seconds, Cell cell) {
    if (firsts + seconds > IN_ALL + 1e-9) {
      throw noQuality(cell);
    }
    return new QualityShares(firsts / IN_ALL, seconds / IN_ALL, false, 1);
  }

  private static CellFault noQuality(Cell cell) {
    return new CellFault(where -> Advice.firstsAndSeconds(where, cell.shown()));
  }

  private static double number(String digits) {
    return Double.parseDouble(digits.replace(',', '.'));
  }
}
