package growingon.review.bought;

import growingon.nursery.Scenario;
import growingon.project.Projection;
import growingon.project.Projector;
import growingon.project.history.Sale;
import growingon.project.known.LotFacts;
import growingon.project.known.MonthFacts;
import growingon.project.known.MonthFacts.Leaving;
import growingon.project.lot.Facts;
import growingon.project.lot.LotHistory;
import growingon.review.book.Book;
import growingon.review.book.PlannedSales;
import growingon.review.book.Standing;
import growingon.review.book.Standing.OfLot;
import growingon.review.kept.Expected;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * What the growth of bought lots is worth by itself: they are projected twice, both times sold when
 * and by qualities as planned, dearest grade first at list price, once with trunks as planned and
 * once with trunks as they were measured.
 */
final class GrownAsMeasured {
  private final Standing standing;
  private final Expected expected;
  private final Projection planned;
  private final Projection measured;

  GrownAsMeasured(Standing standing, Expected expected, List<List<OfLot>> families) {
    this.standing = standing;
    this.expected = expected;
    Scenario all = standing.projection().scenario();
    List<OfLot> lots = families.stream().flatMap(List::stream).toList();
    Scenario bought = all.withLots(lots.stream().map(lot -> lot.book().lot).toList());
    this.planned = Projector.project(bought, facts(lots, false));
    this.measured = Projector.project(bought, facts(lots, true));
  }

  private Facts facts(List<OfLot> lots, boolean isMeasured) {
    Map<String, LotFacts> facts = new HashMap<>();
    lots.forEach(lot -> facts.put(lot.name(), facts(lot.book(), isMeasured)));
    return new Facts(facts);
  }

  private LotFacts facts(Book book, boolean isMeasured) {
    int last = standing.projection().horizon().months() - 1;
    Map<Integer, List<Leaving>> sold = PlannedSales.byQuality(expected, book, last);
    Map<Integer, MonthFacts.Count> trunks = isMeasured ? book.trunks() : Map.of();
    Map<Integer, MonthFacts> months = new HashMap<>();
    Set<Integer> spoken = new HashSet<>(sold.keySet());
    spoken.addAll(trunks.keySet());
    for (int month : spoken) {
      months.put(
          month,
          new MonthFacts(
              List.of(),
              sold.getOrDefault(month, List.of()),
              Optional.ofNullable(trunks.get(month))));
    }
    return new LotFacts(book.part, last, Integer.MIN_VALUE, OptionalDouble.empty(), months);
  }

  /** Of a bought lot with all that was split off from it. */
  GrownWorth of(List<OfLot> family) {
    double before = ofAPlant(planned, family);
    double after = ofAPlant(measured, family);
    return Double.isNaN(before) || Double.isNaN(after)
        ? GrownWorth.NONE
        : new GrownWorth(before, after);
  }

  private static double ofAPlant(Projection projection, List<OfLot> family) {
    double units = 0;
    double money = 0;
    for (OfLot lot : family) {
      LotHistory history = projection.lot(lot.name());
      for (Sale sale : history.sales()) {
        units += sale.units();
        money += sale.money();
      }
    }
    return units > 0 ? money / units : Double.NaN;
  }
}
