package growingon.review;

import growingon.review.kept.Expected;
import growingon.review.kept.KeptChances;
import growingon.review.kept.KeptLot;
import growingon.review.kept.KeptQuantiles;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;

/** Lots added up; planned is the whole plan, with lots that never came. */
final class LotsTogether {
  private LotsTogether() {}

  static Review.Together of(List<LotReview> lots, Expected expected, int through) {
    List<KeptLot> kept = expected.kept().lots();
    KeptChances chances = expected.kept().nursery();
    Sum sum = new Sum(lots, kept, expected, through);
    return new Review.Together(
        sum.of(LotReview::alive, lot -> expected.alive(lot, through), chances.living()),
        sum.of(LotReview::unitsSold, lot -> expected.unitsUpTo(lot, through), chances.unitsSold()),
        sum.of(LotReview::sales, lot -> expected.salesUpTo(lot, through), chances.sales()),
        sum.of(LotReview::hours, lot -> expected.upTo(lot.hours(), through), chances.hours()),
        sum.of(LotReview::allCosts, lot -> allCosts(lot, expected, through), KeptQuantiles.NONE),
        sum.of(LotReview::result, lot -> expected.at(lot.result(), through), chances.result()));
  }

  private static double allCosts(KeptLot lot, Expected expected, int through) {
    return lot.costs().values().stream()
        .mapToDouble(months -> expected.upTo(months, through))
        .sum();
  }

  private record Sum(List<LotReview> lots, List<KeptLot> kept, Expected expected, int through) {
    Compared of(
        Function<LotReview, Compared> real,
        ToDoubleFunction<KeptLot> planned,
        KeptQuantiles quantiles) {
      Compared all =
          lots.stream()
              .map(real)
              .reduce(new Compared(0, 0, false, Optional.empty()), Compared::plus);
      double inAll = kept.stream().mapToDouble(planned).sum();
      return all.against(
          inAll,
          expected.range(quantiles, through),
          all.wholePlanned() + Math.round(inAll - all.planned()));
    }
  }
}
