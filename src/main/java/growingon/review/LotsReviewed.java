package growingon.review;

import growingon.money.CostKind;
import growingon.nursery.Quality;
import growingon.project.LotHistory;
import growingon.project.MonthStock;
import growingon.review.LotReview.OfGrade;
import growingon.review.Standing.OfLot;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.function.IntToDoubleFunction;
import java.util.function.ToDoubleFunction;

/** Compares lot by lot. */
final class LotsReviewed {
  private static final double DUST = 1e-6;

  private final Standing standing;
  private final Expected expected;
  private final int flows;
  private final int stock;

  LotsReviewed(Standing standing, Expected expected) {
    this.standing = standing;
    this.expected = expected;
    this.flows = standing.through();
    this.stock = Math.max(0, flows);
  }

  List<LotReview> lots() {
    return standing.lots().stream().map(this::lot).toList();
  }

  private LotReview lot(OfLot lot) {
    Book book = lot.book();
    MonthStock now = lot.history().monthStock(stock);
    double alive = lot.alive(flows);
    Whereabouts balance = whereabouts(lot);
    double costToDate = lot.costToDate(flows);
    double lived = balance.standing() + balance.sold() + balance.used();
    return new LotReview(
        book.lot,
        book.splitFrom,
        book.part,
        book.isRecorded,
        book.lastCount,
        lot.place(flows),
        scaled(
            book,
            kept -> expected.alive(kept, flows),
            alive,
            book.isRecorded,
            chances -> chances.living()),
        qualities(book, now),
        trunk(book, now),
        plain(
            book,
            kept -> expected.at(kept.trunkSpread(), stock),
            now.trunkSpread(),
            book.saysSpread),
        grades(lot, now, alive),
        scaled(
            book,
            kept -> expected.unitsUpTo(kept, flows),
            LotMoney.upTo(lot.money().units, flows),
            book.isRecorded,
            chances -> chances.unitsSold()),
        scaled(
            book,
            kept -> expected.salesUpTo(kept, flows),
            LotMoney.upTo(lot.money().sales, flows),
            book.isRecorded,
            chances -> chances.sales()),
        scaled(
            book,
            kept -> expected.upTo(kept.hours(), flows),
            LotMoney.upTo(lot.money().hours, flows),
            book.spending.saysHours(),
            chances -> chances.hours()),
        costs(lot),
        scaled(
            book,
            kept -> expected.at(kept.result(), flows),
            LotMoney.upTo(lot.money().sales, flows) - lot.money().costsUpTo(flows),
            book.isRecorded,
            chances -> chances.result()),
        balance,
        costToDate,
        lived > DUST ? OptionalDouble.of(costToDate / lived) : OptionalDouble.empty());
  }

  /** A figure of which a part of the plants has its part. */
  private Compared scaled(
      Book book,
      ToDoubleFunction<KeptLot> planned,
      double real,
      boolean isReal,
      Function<KeptChances, KeptQuantiles> quantiles) {
    Optional<KeptLot> kept = expected.lot(book.root);
    return new Compared(
        kept.map(planned::applyAsDouble).orElse(0.0) * book.part,
        real,
        isReal,
        kept.map(KeptLot::chances)
            .map(quantiles)
            .flatMap(each -> expected.range(each, flows))
            .map(range -> range.times(book.part)));
  }

  /** A figure that is the same of a part of the plants. */
  private Compared plain(
      Book book, ToDoubleFunction<KeptLot> planned, double real, boolean isReal) {
    double of = expected.lot(book.root).map(planned::applyAsDouble).orElse(0.0);
    return new Compared(of, real, isReal, Optional.empty());
  }

  private Compared trunk(Book book, MonthStock now) {
    Compared plain =
        plain(book, kept -> expected.at(kept.trunkMm(), stock), now.meanTrunkMm(), book.saysTrunk);
    Optional<Range> range =
        expected.lot(book.root).flatMap(kept -> expected.range(kept.chances().trunkMm(), flows));
    return new Compared(plain.planned(), plain.real(), plain.isReal(), range);
  }

  private Map<Quality, Compared> qualities(Book book, MonthStock now) {
    Map<Quality, Compared> qualities = new EnumMap<>(Quality.class);
    for (Quality quality : Quality.values()) {
      Compared plants =
          part(
              book,
              kept ->
                  expected.at(kept.byQuality().getOrDefault(quality.toString(), List.of()), stock),
              now.ofQuality(quality.ordinal()),
              book.saysQualities);
      if (plants.planned() > DUST || plants.real() > DUST) {
        qualities.put(quality, plants);
      }
    }
    return qualities;
  }

  private Compared part(Book book, ToDoubleFunction<KeptLot> planned, double real, boolean isReal) {
    return scaled(book, planned, real, isReal, chances -> KeptQuantiles.NONE);
  }

  /** Grades as they were counted in the last month, else as the trunks measured give them. */
  private List<OfGrade> grades(OfLot lot, MonthStock now, double alive) {
    Book book = lot.book();
    Map<String, Double> counted = book.countedGrades;
    double all = counted.values().stream().mapToDouble(Double::doubleValue).sum();
    boolean isCounted = book.gradesCountedIn == flows && all > 0;
    List<OfGrade> grades = new ArrayList<>();
    for (int column = 0; column <= lot.history().grades().size(); column++) {
      String name = column == 0 ? "" : lot.history().grades().get(column - 1).name();
      double real = isCounted ? counted.getOrDefault(name, 0.0) / all * alive : now.ofGrade(column);
      grades.add(
          new OfGrade(
              name,
              part(
                  book,
                  kept -> expected.at(kept.byGrade().getOrDefault(name, List.of()), stock),
                  real,
                  isCounted || book.saysTrunk)));
    }
    return grades;
  }

  private Map<CostKind, Compared> costs(OfLot lot) {
    Map<CostKind, Compared> costs = new EnumMap<>(CostKind.class);
    for (CostKind kind : CostKind.values()) {
      Compared cost =
          part(
              lot.book(),
              kept -> expected.costUpTo(kept, kind, flows),
              lot.money().costUpTo(kind, flows),
              lot.book().spending.says(kind));
      if (cost.planned() != 0 || cost.real() != 0) {
        costs.put(kind, cost);
      }
    }
    return costs;
  }

  private Whereabouts whereabouts(OfLot lot) {
    Book book = lot.book();
    LotHistory history = lot.history();
    if (standing.projection().horizon().offset(book.lot.arrived()) > flows
        && book.lot.purchase().isPresent()) {
      return Whereabouts.NOT_YET_HERE;
    }
    double came = upTo(history::came);
    double went = upTo(history::went);
    return new Whereabouts(
        history.quantity() + book.arrivedLater,
        book.splitIn,
        book.returned,
        came - book.splitIn - book.returned - book.arrivedLater,
        history.diedBefore() + upTo(history::died),
        upTo(history::culled),
        upTo(history::sold),
        book.used,
        book.splitOut,
        went - book.used - book.splitOut,
        lot.alive(flows));
  }

  private double upTo(IntToDoubleFunction byMonth) {
    double sum = 0;
    for (int month = 0; month <= flows; month++) {
      sum += byMonth.applyAsDouble(month);
    }
    return sum;
  }

  /** Adds lots up; planned is the whole plan, with lots that never came. */
  static Review.Together together(List<LotReview> lots, Expected expected, int through) {
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
      return new Compared(
          kept.stream().mapToDouble(planned).sum(),
          all.real(),
          all.isReal(),
          expected.range(quantiles, through));
    }
  }
}
