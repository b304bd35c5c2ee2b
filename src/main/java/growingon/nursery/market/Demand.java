package growingon.nursery.market;

import growingon.nursery.number.Check;
import growingon.nursery.time.MonthSpan;
import io.soabase.recordbuilder.core.RecordBuilder;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What can be sold of a grade in a season, and at what price.
 *
 * @param species the species, or empty for any of the ladder
 * @param ladder the grade ladder
 * @param grade a grade of it
 * @param season the one season it holds for, as written in reports (2026/27); empty for every one
 * @param months the months in which it sells
 * @param units plants a season; empty for all that is ready
 * @param price list price of one plant, plan currency
 * @param morePerMm added to the price per mm of trunk above the grade's least
 * @param unitsSpread coefficient of variation of the units from season to season, for chances
 * @param priceSpread coefficient of variation of the price from season to season, for chances
 */
@RecordBuilder
public record Demand(
    Optional<String> species,
    String ladder,
    String grade,
    Optional<String> season,
    MonthSpan months,
    OptionalDouble units,
    double price,
    double morePerMm,
    double unitsSpread,
    double priceSpread)
    implements DemandBuilder.With {
  public Demand {
    Objects.requireNonNull(species);
    Objects.requireNonNull(season);
    Objects.requireNonNull(months);
    Check.notNegative(units.orElse(0), "units");
    Check.notNegative(price, "price");
    Check.notNegative(morePerMm, "more per mm");
    Check.notNegative(unitsSpread, "units spread");
    Check.notNegative(priceSpread, "price spread");
  }

  /** The same row with its units multiplied by a factor. */
  public Demand withUnits(double factor) {
    return units.isPresent() ? withUnits(OptionalDouble.of(units.getAsDouble() * factor)) : this;
  }

  /** The same row at prices multiplied by a factor. */
  public Demand times(double factor) {
    return with().price(price * factor).morePerMm(morePerMm * factor).build();
  }
}
