package growingon.nursery.place;

import growingon.nursery.number.Check;
import growingon.nursery.time.MonthSpan;
import java.util.Objects;
import java.util.Optional;

/**
 * Watering, weeding and the like by area in use.
 *
 * @param kind kind of place, or empty for every kind
 * @param months when
 * @param minutesPerM2 minutes for a square metre in use in a month
 * @param costPerM2 cost of a square metre in use in a month
 */
public record Care(
    Optional<PlaceKind> kind, MonthSpan months, double minutesPerM2, double costPerM2) {
  public Care {
    Objects.requireNonNull(kind);
    Objects.requireNonNull(months);
    Check.notNegative(minutesPerM2, "minutes per m2");
    Check.notNegative(costPerM2, "cost per m2");
  }
}
