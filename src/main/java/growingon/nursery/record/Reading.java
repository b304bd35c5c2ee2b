package growingon.nursery.record;

import growingon.nursery.number.Check;
import growingon.problem.Where;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * A trunk or a mean of trunks that was measured: a row of the table {@code records}.
 *
 * @param plant the tagged plant it is of; empty for the mean of a sample
 * @param lot the lot it is of, if it is of one
 * @param species its species; empty for that of the lot
 * @param condition its growing condition; empty for that of the lot
 * @param date the day
 * @param trunkMm trunk, or mean trunk of a sample, mm
 * @param mmPerTyped what one typed unit is in mm: 1 for a trunk in mm, more for a girth in cm
 * @param spread spread of a sample's trunks as a share of their mean
 * @param measured how many trunks a sample is of, if stated
 * @param potted when a plant without a lot was potted, if stated
 * @param rootWork when its roots were cut, if stated
 * @param where the row
 */
public record Reading(
    Optional<String> plant,
    Optional<String> lot,
    Optional<String> species,
    Optional<String> condition,
    LocalDate date,
    double trunkMm,
    double mmPerTyped,
    double spread,
    OptionalInt measured,
    Optional<YearMonth> potted,
    Optional<YearMonth> rootWork,
    Where where) {
  private static final int LAST_DAY_OF_BEGINNING = 15;

  public Reading {
    Objects.requireNonNull(plant);
    Objects.requireNonNull(date);
    Objects.requireNonNull(potted);
    Objects.requireNonNull(rootWork);
    Objects.requireNonNull(where);
    Check.that(
        lot.isPresent() || (species.isPresent() && condition.isPresent()),
        "a plant without a lot needs its species and condition",
        plant);
    Check.that(plant.isPresent() || lot.isPresent(), "a sample is of a lot", lot);
    Check.positive(trunkMm, "a trunk");
    Check.positive(mmPerTyped, "mm of a typed unit");
    Check.notNegative(spread, "a trunk spread");
  }

  /**
   * The month at whose end it holds: of a day up to the 15th, the month before, for the plants had
   * hardly grown in its own yet.
   */
  public YearMonth month() {
    YearMonth month = YearMonth.from(date);
    return date.getDayOfMonth() <= LAST_DAY_OF_BEGINNING ? month.minusMonths(1) : month;
  }
}
