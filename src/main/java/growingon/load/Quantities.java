package growingon.load;

import growingon.nursery.Offer;
import growingon.problem.Advice;
import growingon.problem.Problem;
import growingon.problem.Where;
import java.util.Optional;
import java.util.function.Function;

/**
 * How many plants of an offer may be taken: 0, or at least the least, a multiple, at most the most.
 */
final class Quantities {
  /** More plants than this in one lot are a slip. */
  static final Range PLANTS = Range.of(0, 10_000_000);

  private Quantities() {}

  static As<Integer> plants() {
    return new As<>(
        0,
        (cell, spot) -> As.whole(PLANTS).reader().read(cell, spot),
        Object::toString,
        heading -> "plants");
  }

  static void check(Offer offer, int quantity, Row row, String heading) {
    fault(offer, quantity).ifPresent(fault -> row.fail(heading, fault));
  }

  private static Optional<Function<Where, Problem>> fault(Offer offer, int quantity) {
    String name = offer.name();
    if (offer.allows(quantity)) {
      return Optional.empty();
    }
    if (quantity < offer.least()) {
      return Optional.of(where -> Advice.fewerThanLeast(where, name, quantity, offer.least()));
    }
    return Optional.of(
        quantity % offer.multiple() != 0
            ? where -> Advice.noMultiple(where, name, quantity, offer.multiple())
            : where -> Advice.moreThanMost(where, name, quantity, offer.most().getAsInt()));
  }
}
