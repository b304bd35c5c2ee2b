package growingon.load.own.sheet;

import java.time.LocalDate;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A filled cell of a list.
 *
 * @param text as it is shown, never blank
 * @param number its value, if it is a true number
 * @param date its value, if it is a true date
 * @param yearShown whether the spreadsheet shows the date's year
 * @param struck whether it is struck through
 * @param formula the formula that made it, empty if none did
 * @param currency sign or code with which the spreadsheet shows a number, empty if none
 */
public record SheetCell(
    String text,
    OptionalDouble number,
    Optional<LocalDate> date,
    boolean yearShown,
    boolean struck,
    String formula,
    String currency) {
  public SheetCell {
    Objects.requireNonNull(text);
    Objects.requireNonNull(number);
    Objects.requireNonNull(date);
    Objects.requireNonNull(formula);
    Objects.requireNonNull(currency);
  }

  /** A cell of text. */
  public static SheetCell of(String text) {
    return new SheetCell(text, OptionalDouble.empty(), Optional.empty(), true, false, "", "");
  }

  /** Whether it is text, not a number or date of the spreadsheet. */
  public boolean isText() {
    return number.isEmpty() && date.isEmpty();
  }
}
