package growingon.load.own.heading;

import growingon.load.own.sheet.SheetCell;
import growingon.load.own.size.SizeGrammar;
import growingon.load.own.size.SizeParts;
import growingon.load.own.size.Span;
import growingon.load.own.text.CountText;
import growingon.load.own.text.Keys;
import growingon.load.own.text.MoneyText;
import growingon.load.own.text.MonthText;
import growingon.load.own.text.Shapes;

/** What the cells of a column can be that tells what an open heading is. */
final class CellKinds {
  private CellKinds() {}

  static boolean isCount(SheetCell cell) {
    return !cell.date().isPresent() && CountText.of(cell).value().isPresent();
  }

  /** Whether it is a month and no number of plants: KW 12/24, and not 2024. */
  /** How many times something was done, not when. */
  static boolean isHowOften(SheetCell cell) {
    return cell.text().strip().matches("[0-9]\\s*[x×]?");
  }

  static boolean isMonthAlone(SheetCell cell) {
    return cell.date().isPresent() || MonthText.isMonth(cell) && !isCount(cell);
  }

  /** Whether it is money and nothing else: with a sign, or with parts of one. */
  static boolean isMoney(SheetCell cell) {
    return MoneyText.of(cell)
        .value()
        .filter(money -> !money.currency().isEmpty() || money.amount() % 1 != 0)
        .isPresent();
  }

  /** Whether it may be money as well as a month: 8.50, and 12.50 too. */
  static boolean mayBeMoney(SheetCell cell) {
    return isMoney(cell) || cell.text().strip().matches("\\d+[.,]\\d\\d");
  }

  /** Whether it says roots, pot, form or shape. */
  static boolean hasWords(SheetCell cell) {
    SizeParts parts = new SizeParts();
    String left = SizeGrammar.pots(SizeGrammar.roots(cell.text(), parts), parts);
    return parts.pot().isPresent()
        || parts.form().isPresent()
        || SizeGrammar.saysStandard(left)
        || Shapes.ALL.contains(Keys.of(cell.text()))
        || left.matches("(?i).*\\d\\s?x\\s?v.*");
  }

  /** Whether it says itself what size it is, or is a class as trunks, girths and heights have. */
  static boolean saysWhichSize(SheetCell cell) {
    return SizeGrammar.bare(cell.text()).map(Span::isClass).orElse(hasDigit(cell));
  }

  private static boolean hasDigit(SheetCell cell) {
    return cell.isText() && cell.text().matches(".*\\d.*");
  }

  /** Whether it says in which pot or with which roots a plant is. */
  static boolean holdsAPot(SheetCell cell) {
    SizeParts parts = new SizeParts();
    SizeGrammar.readSize(cell.text(), parts);
    return parts.pot().isPresent() || parts.form().isPresent();
  }

  /** A number of litres, or from one to another: 3 -> 10. */
  static boolean isLitres(SheetCell cell) {
    return cell.text()
        .strip()
        .matches("\\d{1,3}(?:[.,]\\d)?(?:\\s*(?:->|→|=>)\\s*\\d{1,3}(?:[.,]\\d)?)?");
  }

  /** Whether it says litres or pot in so many letters. */
  static boolean saysLitres(SheetCell cell) {
    return cell.text().matches("(?i).*(?:\\d\\s*(?:l|lt|ltr|litres?|liter)\\b|pot).*");
  }

  /** Whether it is as high as clear stems are: 60 cm and more, or under three metres. */
  static boolean isClearStem(SheetCell cell) {
    return SizeGrammar.bare(cell.text())
        .filter(span -> span.from() >= 60 || span.to() < 3)
        .isPresent();
  }
}
