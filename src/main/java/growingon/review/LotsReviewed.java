package growingon.review;

import growingon.money.CostKind;
import growingon.nursery.market.Quality;
import growingon.project.history.GradedPlants;
import growingon.project.history.MonthStock;
import growingon.project.lot.LotHistory;
import growingon.review.LotReview.OfGrade;
import growingon.review.book.Book;
import growingon.review.book.LotMoney;
import growingon.review.book.Standing;
import growingon.review.book.Standing.OfLot;
import growingon.review.book.Tally;
import growingon.review.kept.Expected;
import growingon.review.kept.KeptChances;
import growingon.review.kept.KeptLot;
import growingon.review.kept.KeptQuantiles;
import growingon.review.kept.Range;
import growingon.whole.Shares;
import growingon.whole.WholeLot;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.function.IntToDoubleFunction;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;

/** Compares lot by lot. */
final class LotsReviewed {
  private static final double DUST = 1e-6;

  private final Standing standing;
  private final Expected expected;
  private final int flows;
  private final int stock;
  private final int[] plannedAlive;
  private final int[] plannedSold;

  LotsReviewed(Standing standing, Expected expected) {
    this.standing = standing;
    this.expected = expected;
    this.flows = standing.through();
    this.stock = Math.max(0, flows);
    this.plannedAlive = wholePlanned(kept -> expected.alive(kept, flows));
    this.plannedSold = wholePlanned(kept -> expected.unitsUpTo(kept, flows));
  }

  /** Whole plants of each lot as planned, so that they add up. */
  private int[] wholePlanned(ToDoubleFunction<KeptLot> planned) {
    double[] exact =
        standing.lots().stream().mapToDouble(lot -> planned(lot.book(), planned)).toArray();
    return Shares.of(Math.round(Arrays.stream(exact).sum()), exact);
  }

  private double planned(Book book, ToDoubleFunction<KeptLot> planned) {
    return expected.lot(book.root).map(planned::applyAsDouble).orElse(0.0) * book.part;
  }

  List<LotReview> lots() {
    return IntStream.range(0, standing.lots().size()).mapToObj(this::lot).toList();
  }

  private LotReview lot(int index) {
    OfLot lot = standing.lots().get(index);
    Book book = lot.book();
    Whereabouts shares = wholeWhereabouts(lot);
    Whereabouts wholeBalance = book.wasSplit() ? booked(whereabouts(lot), shares) : shares;
    LotReviewBuilder review =
        LotReview.of(book.lot)
            .splitFrom(book.splitFrom)
            .part(book.part)
            .isRecorded(book.isRecorded)
            .lastCount(book.lastCount)
            .place(lot.place(flows))
            .balance(whereabouts(lot))
            .wholeBalance(wholeBalance);
    comparePlants(lot, plannedAlive[index], review);
    review.unitsSold(
        unitsSold(lot)
            .whole(plannedSold[index], Math.round(wholeBalance.sold() - wholeBalance.returned())));
    compareMoney(lot, review);
    double costToDate = lot.costToDate(flows);
    double lived = wholeBalance.standing() + wholeBalance.sold() + wholeBalance.used();
    return review
        .costToDate(costToDate)
        .costPerLiving(lived > 0 ? OptionalDouble.of(costToDate / lived) : OptionalDouble.empty())
        .build();
  }

  /** What is alive, and of what size and grade. */
  private void comparePlants(OfLot lot, int planned, LotReviewBuilder into) {
    Book book = lot.book();
    MonthStock now = lot.history().monthStock(stock);
    Compared alive =
        scaled(
                book,
                kept -> expected.alive(kept, flows),
                lot.alive(flows),
                book.isRecorded,
                chances -> chances.living())
            .whole(planned, lot.wholeAlive(flows));
    into.alive(alive)
        .qualities(qualities(lot, now, alive))
        .trunkMm(trunk(book, now))
        .trunkSpread(
            plain(
                book,
                kept -> expected.at(kept.trunkSpread(), stock),
                now.trunkSpread(),
                book.saysSpread))
        .grades(grades(lot, now, alive));
  }

  private Compared unitsSold(OfLot lot) {
    Book book = lot.book();
    return scaled(
        book,
        kept -> expected.unitsUpTo(kept, flows),
        LotMoney.upTo(lot.money().units, flows)
            + book.asBooked(Tally.Of.SOLD)
            - book.asBooked(Tally.Of.RETURNED),
        book.isRecorded,
        chances -> chances.unitsSold());
  }

  private void compareMoney(OfLot lot, LotReviewBuilder into) {
    Book book = lot.book();
    Compared sales =
        scaled(
            book,
            kept -> expected.salesUpTo(kept, flows),
            sales(lot),
            book.isRecorded,
            chances -> chances.sales());
    Compared hours =
        scaled(
                book,
                kept -> expected.upTo(kept.hours(), flows),
                LotMoney.upTo(lot.money().hours, flows),
                book.spending.saysHours(),
                chances -> chances.hours())
            .partly(book.spending.hoursUpTo(flows));
    Map<CostKind, Compared> costs = costs(lot);
    Compared result =
        scaled(
                book,
                kept -> expected.at(kept.result(), flows),
                sales(lot) - lot.money().costsUpTo(flows),
                book.isRecorded,
                chances -> chances.result())
            .partly(sales.byDaybook() - byDaybook(costs));
    into.sales(sales).hours(hours).costs(costs).result(result);
  }

  /** Money of sales as it was booked on the lot. */
  private double sales(OfLot lot) {
    return LotMoney.upTo(lot.money().sales, flows) + lot.book().asBooked(Tally.Of.MONEY);
  }

  /** Whole plants of a lot that was split: as booked, what is reckoned of deaths takes the rest. */
  private static Whereabouts booked(Whereabouts exact, Whereabouts shares) {
    Whereabouts rounded = exact.nearest();
    Whereabouts there = rounded.withStanding(shares.standing());
    return there.withDied(there.died() + there.difference());
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
        planned(book, planned),
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

  private Map<Quality, Compared> qualities(OfLot lot, MonthStock now, Compared alive) {
    List<Compared> all = new ArrayList<>();
    for (Quality quality : Quality.values()) {
      all.add(
          part(
              lot.book(),
              kept ->
                  expected.at(kept.byQuality().getOrDefault(quality.toString(), List.of()), stock),
              now.standing().of(quality),
              lot.book().saysQualities));
    }
    double keptPlanned = alive.planned();
    for (Compared quality : all) {
      keptPlanned -= quality.planned();
    }
    all.add(part(lot.book(), kept -> 0, now.standing().kept(), false));
    List<Compared> whole = whole(all, alive, Math.max(0, keptPlanned));
    Map<Quality, Compared> qualities = new EnumMap<>(Quality.class);
    for (Quality quality : Quality.values()) {
      Compared plants = whole.get(quality.ordinal());
      if (plants.planned() > DUST || plants.real() > DUST) {
        qualities.put(quality, plants);
      }
    }
    return qualities;
  }

  /**
   * Figures in whole plants that add up to those alive.
   *
   * @param notPlanned plants planned besides the last figure, of which the plan says nothing
   */
  private static List<Compared> whole(List<Compared> parts, Compared alive, double notPlanned) {
    double[] planned = parts.stream().mapToDouble(Compared::planned).toArray();
    double[] real = parts.stream().mapToDouble(Compared::real).toArray();
    planned[planned.length - 1] += notPlanned;
    int[] wholePlanned = Shares.of(near(alive.wholePlanned(), planned), planned);
    int[] wholeReal = Shares.of(near(alive.wholeReal(), real), real);
    List<Compared> whole = new ArrayList<>();
    for (int i = 0; i < parts.size(); i++) {
      whole.add(parts.get(i).whole(wholePlanned[i], wholeReal[i]));
    }
    return whole;
  }

  /** Those alive, unless the parts are those of another month: before the first of the plan. */
  private static long near(long alive, double[] parts) {
    double sum = Arrays.stream(parts).sum();
    return Math.abs(alive - sum) < 1 ? alive : Math.round(sum);
  }

  private Compared part(Book book, ToDoubleFunction<KeptLot> planned, double real, boolean isReal) {
    return scaled(book, planned, real, isReal, chances -> KeptQuantiles.NONE);
  }

  /** Grades as they were counted in the last month, else as the trunks measured give them. */
  private List<OfGrade> grades(OfLot lot, MonthStock now, Compared alive) {
    Book book = lot.book();
    Map<String, Double> counted = book.countedGrades;
    double all = counted.values().stream().mapToDouble(Double::doubleValue).sum();
    boolean isCounted = book.gradesCountedIn == flows && all > 0;
    List<String> names = new ArrayList<>();
    List<Compared> plants = new ArrayList<>();
    for (int grade = GradedPlants.NO_GRADE; grade < lot.history().grades().size(); grade++) {
      String name = grade == GradedPlants.NO_GRADE ? "" : lot.history().grades().get(grade).name();
      double share = isCounted ? counted.getOrDefault(name, 0.0) / all : 0;
      double real = isCounted ? share * alive.real() : now.standing().allOfGrade(grade);
      names.add(name);
      plants.add(
          part(
              book,
              kept -> expected.at(kept.byGrade().getOrDefault(name, List.of()), stock),
              real,
              isCounted || book.saysTrunk));
    }
    List<Compared> whole = whole(plants, alive, 0);
    return IntStream.range(0, names.size())
        .mapToObj(i -> new OfGrade(names.get(i), whole.get(i)))
        .toList();
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
      if (kind == CostKind.LABOUR) {
        cost = cost.partly(lot.book().spending.hoursUpTo(flows) * hourlyRate());
      }
      if (cost.planned() != 0 || cost.real() != 0) {
        costs.put(kind, cost);
      }
    }
    return costs;
  }

  private static double byDaybook(Map<CostKind, Compared> costs) {
    return costs.values().stream().mapToDouble(Compared::byDaybook).sum();
  }

  private double hourlyRate() {
    return standing.projection().scenario().nursery().settings().hourlyRate();
  }

  private boolean isHere(Book book) {
    return book.lot.purchase().isEmpty()
        || standing.projection().horizon().offset(book.lot.arrived()) <= flows;
  }

  private Whereabouts whereabouts(OfLot lot) {
    Book book = lot.book();
    if (!isHere(book)) {
      return Whereabouts.NOT_YET_HERE;
    }
    return exactShares(lot).plus(book::asBooked);
  }

  /** Where plants went, what was before a split as shares. */
  private Whereabouts exactShares(OfLot lot) {
    Book book = lot.book();
    LotHistory history = lot.history();
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

  private Whereabouts wholeWhereabouts(OfLot lot) {
    Book book = lot.book();
    WholeLot whole = lot.whole();
    if (!isHere(book)) {
      return Whereabouts.NOT_YET_HERE;
    }
    Whereabouts exact = exactShares(lot);
    int[] came =
        Shares.of(
            whole.cameUpTo(flows),
            book.arrivedLater,
            exact.splitIn(),
            exact.returned(),
            exact.found());
    int[] went = Shares.of(whole.wentUpTo(flows), exact.used(), exact.splitOut(), exact.lost());
    return new Whereabouts(
        whole.start() + came[0],
        came[1],
        came[2],
        came[3],
        whole.diedUpTo(flows),
        whole.culledUpTo(flows),
        whole.soldUpTo(flows),
        went[0],
        went[1],
        went[2],
        lot.wholeAlive(flows));
  }

  private double upTo(IntToDoubleFunction byMonth) {
    double sum = 0;
    for (int month = 0; month <= flows; month++) {
      sum += byMonth.applyAsDouble(month);
    }
    return sum;
  }
}
