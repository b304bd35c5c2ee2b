package growingon.load.quick;

import growingon.load.cell.Cell;
import growingon.load.cell.CellFault;
import growingon.load.cell.NumberStyle;
import growingon.load.cell.Range;
import growingon.load.cell.SizeText;
import growingon.load.cell.SizeText.Length;
import growingon.load.cell.SizeText.What;
import growingon.load.cell.Spot;
import growingon.load.cell.Texts;
import growingon.load.row.As;
import growingon.load.table.lot.TrunkCells;
import growingon.nursery.lot.QualityShares;
import growingon.nursery.lot.Trunks;
import growingon.problem.advice.FileAdvice;
import growingon.problem.advice.TrunkAdvice;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The two cells of the quick sheet that hold more than a number. */
final class QuickCells {
  private static final String NUMBER = "([0-9]+(?:[.,][0-9]+)?)";
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
        (cell, spot) -> trunk(cell, spot, spread, girthFactor),
        QuickCells::shown,
        heading -> "mm");
  }

  private static String shown(Trunks trunks) {
    return trunks instanceof Trunks.SizeClass size
        ? Math.round(size.fromMm()) + " to " + Math.round(size.toMm())
        : String.valueOf(Math.round(trunks.meanMm()));
  }

  private static Trunks trunk(Cell cell, Spot spot, double spread, double girthFactor) {
    if (cell instanceof Cell.Number number && !number.percent()) {
      return new Trunks.Measured(Range.TRUNK.check(number.value(), cell.shown(), spot), spread);
    }
    SizeText size = size(cell, spot.style());
    if (size.isRange() && size.isBare()) {
      throw new CellFault(where -> TrunkAdvice.trunkOrGirthRange(where, cell.shown()));
    }
    double mm = size.unit().orElse(isGirth(size) ? Length.CM : Length.MM) == Length.CM ? 10 : 1;
    double mmEach = isGirth(size) ? mm / Math.PI * girthFactor : mm;
    return TrunkCells.trunks(size, mmEach, spread, cell, spot);
  }

  private static SizeText size(Cell cell, NumberStyle style) {
    if (cell instanceof Cell.Date) {
      throw new CellFault(where -> TrunkAdvice.sizeBecameDate(where, cell.shown()));
    }
    return (cell instanceof Cell.Text text ? SizeText.find(text.text(), style) : none())
        .orElseThrow(() -> new CellFault(where -> TrunkAdvice.trunkOrGirth(where, cell.shown())));
  }

  private static Optional<SizeText> none() {
    return Optional.empty();
  }

  /** What is in cm is a girth, unless it says that it is a trunk. */
  private static boolean isGirth(SizeText size) {
    return size.word()
        .map(word -> word == What.GIRTH)
        .orElse(size.unit().equals(Optional.of(Length.CM)));
  }

  /** Whether the cell states a girth. */
  static boolean isGirth(Cell cell, NumberStyle style) {
    return cell instanceof Cell.Text text
        && SizeText.find(text.text(), style).filter(QuickCells::isGirth).isPresent();
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
    return new CellFault(where -> FileAdvice.firstsAndSeconds(where, cell.shown()));
  }

  private static double number(String digits) {
    return Double.parseDouble(digits.replace(',', '.'));
  }
}
