package growingon.nursery.record;

import growingon.nursery.number.Check;
import growingon.problem.Where;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.Objects;
import java.util.Optional;

/**
 * A row of what a till or the bookkeeping has of sales. A credit note has fewer than no plants and
 * less than no money.
 *
 * @param month the month of the sale
 * @param day its day, if it is known
 * @param lot the lot, if it is named
 * @param species the species, if it is named or that of the lot is known; without a lot and a
 *     species it is of none of the nursery's plants
 * @param grade the grade, if it is known
 * @param plants plants sold; below nil for those that came back
 * @param amount money of the whole row without VAT, plan currency; below nil if paid back
 * @param where the row
 */
public record Receipt(
    YearMonth month,
    Optional<LocalDate> day,
    Optional<String> lot,
    Optional<String> species,
    Optional<String> grade,
    int plants,
    double amount,
    Where where) {
  public Receipt {
    Objects.requireNonNull(month);
    Check.that(
        day.map(YearMonth::from).orElse(month).equals(month),
        "a receipt's day is of its month",
        day);
    Objects.requireNonNull(lot);
    Objects.requireNonNull(species);
    Objects.requireNonNull(grade);
    Check.that(plants * amount >= 0, "plants and money go opposite ways", amount);
    Objects.requireNonNull(where);
  }

  /** The day by which it is taken: the last of its month where none is said. */
  public LocalDate date() {
    return day.orElse(month.atEndOfMonth());
  }

  /** Whether plants came back. */
  public boolean isCreditNote() {
    return plants < 0;
  }
}
