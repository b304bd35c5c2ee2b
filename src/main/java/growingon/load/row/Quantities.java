package growingon.load.row;

import growingon.load.cell.NumberStyle;
import growingon.load.cell.Range;
import growingon.load.cell.Spot;
import growingon.nursery.lot.Offer;
import growingon.problem.Problem;
import growingon.problem.Where;
import growingon.problem.advice.PlanAdvice;
import java.util.Optional;
import java.util.function.Function;

/**
 * How many plants of an offer may be taken: 0, or at least the least, a multiple, at most the most.
 */
public final class Quantities {
  /** More plants than this in one lot are a slip. */
  static final Range PLANTS = Range.of(0, 10_000_000);

  /** At least one plant. */
  public static final Range SOME = Range.of(1, PLANTS.most());

  private Quantities() {}

  public static As<Integer> plants() {
    return plants(PLANTS);
  }

  /** A number of plants in a range: 1,200 and 1.200 as texts are 1200. */
  public static As<Integer> plants(Range range) {
    return new As<>(
        0,
        (cell, spot) -> As.whole(range).reader().read(cell, ofPlants(spot)),
        Object::toString,
        heading -> "plants");
  }

  private static Spot ofPlants(Spot spot) {
    return new Spot() {
      @Override
      public String heading() {
        return spot.heading();
      }

      @Override
      public NumberStyle style() {
        return NumberStyle.PLANTS;
      }

      @Override
      public void remark(Function<Where, Problem> problem) {
        spot.remark(problem);
      }
    };
  }

  public static void check(Offer offer, int quantity, Row row, String heading) {
    fault(offer, quantity).ifPresent(fault -> row.fail(heading, fault));
  }

  private static Optional<Function<Where, Problem>> fault(Offer offer, int quantity) {
    String name = offer.name();
    if (offer.allows(quantity)) {
      return Optional.empty();
    }
    if (quantity < offer.least()) {
      return Optional.of(where -> PlanAdvice.fewerThanLeast(where, name, quantity, offer.least()));
    }
    return Optional.of(
        quantity % offer.multiple() != 0
            ? where -> PlanAdvice.noMultiple(where, name, quantity, offer.multiple())
            : where -> PlanAdvice.moreThanMost(where, name, quantity, offer.most().getAsInt()));
  }
}
