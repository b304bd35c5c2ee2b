package growingon.review.book;

import growingon.nursery.market.Quality;
import growingon.project.known.LotFacts;
import growingon.project.known.MonthFacts;
import growingon.project.known.MonthFacts.Leaving;
import growingon.review.kept.Expected;
import growingon.review.kept.KeptSale;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** What a plan sells of a lot, as if it were known. */
public final class PlannedSales {
  private PlannedSales() {}

  /**
   * A lot of which the daybook says nothing sells what it was to sell, whatever others do. A lot
   * that the plan did not have sells what the market takes.
   *
   * @param last last month of the plan
   */
  static Optional<LotFacts> assumed(Expected expected, Book book, int last) {
    Map<Integer, MonthFacts> months = new HashMap<>();
    leaving(expected, book, last, true)
        .forEach(
            (month, sold) -> months.put(month, new MonthFacts(List.of(), sold, Optional.empty())));
    return expected
        .lot(book.root)
        .map(
            kept ->
                new LotFacts(book.part, last, Integer.MIN_VALUE, OptionalDouble.empty(), months));
  }

  /** Plants sold by quality; grade and price are those of what stands then. */
  public static Map<Integer, List<Leaving>> byQuality(Expected expected, Book book, int last) {
    return leaving(expected, book, last, false);
  }

  private static Map<Integer, List<Leaving>> leaving(
      Expected expected, Book book, int last, boolean asSold) {
    Map<Integer, List<Leaving>> sold = new HashMap<>();
    expected
        .lot(book.root)
        .filter(kept -> kept.quantity() > 0)
        .ifPresent(
            kept -> {
              double part = book.part * book.lot.quantity() / kept.quantity();
              for (KeptSale sale : kept.sales()) {
                int month = expected.month(sale);
                if (month >= 0 && month <= last && sale.units() > 0) {
                  sold.computeIfAbsent(month, each -> new ArrayList<>())
                      .add(leaving(sale, part, asSold));
                }
              }
            });
    return sold;
  }

  private static Leaving leaving(KeptSale sale, double part, boolean asSold) {
    return new Leaving(
        true,
        Optional.of(sale.grade()).filter(grade -> asSold && !grade.isEmpty()),
        Arrays.stream(Quality.values())
            .filter(quality -> quality.toString().equals(sale.quality()))
            .findFirst(),
        sale.units() * part,
        asSold ? OptionalDouble.of(sale.money() * part) : OptionalDouble.empty());
  }
}
