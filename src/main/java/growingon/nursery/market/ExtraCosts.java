package growingon.nursery.market;

import growingon.nursery.number.Check;
import growingon.nursery.place.Place;
import java.util.OptionalDouble;

/**
 * What more than there is would cost, for the question what to buy; empty where there is no more to
 * be had.
 *
 * @param hour an hour beyond those available
 * @param squareMetre a square metre for a month, in a place that does not say otherwise
 */
public record ExtraCosts(OptionalDouble hour, OptionalDouble squareMetre) {
  /** Nothing more is to be had. */
  public static final ExtraCosts NONE =
      new ExtraCosts(OptionalDouble.empty(), OptionalDouble.empty());

  public ExtraCosts {
    Check.notNegative(hour.orElse(0), "cost of an extra hour");
    Check.notNegative(squareMetre.orElse(0), "cost of an extra square metre");
  }

  /** What a square metre more of a place costs a month. */
  public OptionalDouble squareMetre(Place place) {
    return place.extraM2Cost().isPresent() ? place.extraM2Cost() : squareMetre;
  }
}
