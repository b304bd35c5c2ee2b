package growingon.review;

import growingon.money.Accounts;
import growingon.nursery.Inputs;
import growingon.nursery.Scenario;
import growingon.nursery.market.Grade;
import growingon.nursery.market.OtherCash;
import growingon.nursery.record.DaybookLine;
import growingon.nursery.record.DaybookLine.What;
import growingon.nursery.record.PastRecords;
import growingon.nursery.time.Horizon;
import growingon.problem.Problem;
import growingon.problem.advice.DaybookAdvice;
import growingon.project.Projection;
import growingon.project.Projector;
import growingon.project.history.MonthStock;
import growingon.project.lot.Facts;
import growingon.project.lot.LotHistory;
import growingon.review.book.Bookkeeping;
import growingon.review.book.GonePriced;
import growingon.review.book.Records;
import growingon.review.book.Standing;
import growingon.review.bought.Ahead;
import growingon.review.bought.BoughtReview;
import growingon.review.bought.BoughtReviewed;
import growingon.review.bought.GambleKinds;
import growingon.review.kept.Expected;
import growingon.review.kept.KeptPlan;
import growingon.review.written.SharedReceipt;
import growingon.review.written.WrittenDown;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** One review: reads the books, projects from what is there, compares. */
final class Reviewing {
  /**
   * The thickest plant of a lot may be so much thicker than its thickest representative one: of ten
   * thousand plants whose trunks spread by 15 %, the thickest is about 1.2 times as thick.
   */
  private static final double THICKER_THAN_THICKEST = 1.25;

  private final Inputs given;
  private final WrittenDown written;
  private final Inputs inputs;
  private final YearMonth today;
  private final Optional<KeptPlan> kept;
  private final int threads;
  private final Bookkeeping daybook;
  private final Horizon horizon;

  Reviewing(Inputs given, PastRecords past, YearMonth today, Optional<KeptPlan> kept, int threads) {
    this.threads = threads;
    this.given = given;
    this.written = WrittenDown.of(given, past, today);
    this.inputs = written.inputs();
    this.today = today;
    this.kept = kept;
    this.daybook = written.bookkeeping();
    this.horizon = inputs.scenario().horizon();
  }

  Review review() {
    KeptPlan planned = kept.orElseGet(() -> PlanKeeping.keepLine(given));
    Expected expected = new Expected(planned, horizon);
    Scenario asItIs = inputs.scenario().withLots(daybook.lots());
    Facts known = daybook.facts(expected);
    Projection now = Projector.project(asItIs, known);
    Standing standing = new Standing(daybook, Accounts.of(now));
    List<LotReview> lots = new LotsReviewed(standing, expected).lots();
    List<GonePriced> gone = GonePriced.of(inputs, today, daybook, standing, expected);
    List<BoughtReview> bought = bought(standing, expected, asItIs, known, gone);
    LuckOrMore.All judging = judging(standing, expected, asItIs, known, lots);
    Records records = new Records(daybook, standing);
    return new Review(
        today,
        horizon.firstMonth(),
        horizon.month(daybook.through()),
        daybook.lastDate(),
        kept.map(KeptPlan::name),
        sources(),
        lots,
        LotsTogether.of(lots, expected, daybook.through()),
        ofNoLot(),
        bought,
        written.withoutAPrice(),
        GambleKinds.of(bought),
        judging.judged(),
        judging.insideByLuck(),
        records.losses(),
        records.suspicions(),
        records.traces(),
        gone,
        written.receipts(),
        faults(now));
  }

  private Review.Sources sources() {
    List<DaybookLine> own = written.ownLines();
    return new Review.Sources(
        own.size(),
        (int) own.stream().filter(line -> line.what() == What.COUNTED).count(),
        written.listMonths(),
        (int) written.receipts().stream().map(SharedReceipt::receipt).distinct().count());
  }

  private Review.OfNoLot ofNoLot() {
    double planned = 0;
    for (OtherCash row : inputs.scenario().nursery().otherCash()) {
      for (int month = 0; month <= daybook.through() && row.lot().isEmpty(); month++) {
        planned -= row.isDue(month, horizon) ? row.amount() - row.hours() * hourlyRate() : 0;
      }
    }
    double hours = daybook.ofNoLot().stream().mapToDouble(line -> line.hours().orElse(0)).sum();
    double money = daybook.ofNoLot().stream().mapToDouble(line -> line.amount().orElse(0)).sum();
    boolean isSaid = !daybook.ofNoLot().isEmpty();
    double real = isSaid ? money + hours * hourlyRate() : planned;
    return new Review.OfNoLot(new Compared(planned, real, isSaid, Optional.empty()), hours);
  }

  private double hourlyRate() {
    return inputs.scenario().nursery().settings().hourlyRate();
  }

  private List<BoughtReview> bought(
      Standing standing, Expected expected, Scenario asItIs, Facts known, List<GonePriced> gone) {
    boolean hasBought = asItIs.lots().stream().anyMatch(lot -> lot.purchase().isPresent());
    Scenario drawn = hasBought ? asItIs : asItIs.withPlan(asItIs.plan().withDraws(0));
    Ahead ahead = Ahead.of(drawn, known, daybook.through(), threads);
    return new BoughtReviewed(standing, expected, ahead, gone).bought();
  }

  private LuckOrMore.All judging(
      Standing standing, Expected expected, Scenario asItIs, Facts known, List<LotReview> lots) {
    boolean canJudge = expected.kept().lots().stream().anyMatch(lot -> lot.judging().isPresent());
    if (!canJudge) {
      return LuckOrMore.All.NONE;
    }
    Projection asPlanned = GrownAsPlanned.of(asItIs, known, daybook);
    return new LuckOrMore(daybook, standing, expected, asPlanned, lots).all();
  }

  private List<Problem> faults(Projection now) {
    Map<String, LotHistory> histories = new HashMap<>();
    now.lots().forEach(history -> histories.put(history.lot().name(), history));
    List<Problem> faults = new ArrayList<>(written.problems());
    faults.addAll(daybook.faults());
    for (Bookkeeping.Graded graded : daybook.graded()) {
      LotHistory history = histories.get(graded.line().lot());
      if (graded.month() >= history.start()) {
        gradeFault(graded.line(), history, history.monthStock(graded.month()))
            .ifPresent(faults::add);
      }
    }
    return faults;
  }

  private static Optional<Problem> gradeFault(
      DaybookLine line, LotHistory history, MonthStock stock) {
    Optional<Grade> grade =
        history.grades().stream()
            .filter(each -> each.name().equals(line.grade().orElseThrow()))
            .findFirst();
    boolean isTooThin =
        grade
            .filter(each -> stock.thickestMm() * THICKER_THAN_THICKEST < each.leastTrunkMm())
            .isPresent();
    boolean isUntrained =
        grade
            .filter(each -> Math.max(0, stock.trainingMonths()) < each.leastTrainingMonths())
            .isPresent();
    return isTooThin || isUntrained
        ? Optional.of(
            DaybookAdvice.gradeNotReached(
                line.where().column("grade"),
                grade.get().name(),
                line.lot(),
                stock.trainingMonths(),
                Math.round(stock.thickestMm())))
        : Optional.empty();
  }
}
