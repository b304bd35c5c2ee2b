package growingon.report;

import growingon.money.CostKind;
import growingon.nursery.Inputs;
import growingon.nursery.lot.Lot;
import growingon.nursery.lot.Papers;
import growingon.nursery.market.Quality;
import growingon.nursery.record.DaybookLine.What;
import growingon.problem.Problem;
import growingon.problem.Where;
import growingon.problem.advice.DaybookAdvice;
import growingon.review.Compared;
import growingon.review.Judged;
import growingon.review.LotReview;
import growingon.review.Review;
import growingon.review.Whereabouts;
import growingon.review.book.Loss;
import growingon.review.book.Suspicion;
import growingon.review.book.Trace;
import growingon.review.bought.BoughtReview;
import growingon.review.bought.BoughtReview.Payback;
import growingon.review.bought.BoughtReview.Payback.State;
import growingon.review.bought.BoughtReview.ToBeEven;
import growingon.review.bought.BoughtReview.Verdict;
import growingon.review.bought.BoughtReview.Verdict.Kind;
import growingon.review.bought.BoughtReview.Verdict.Why;
import growingon.review.bought.Cause;
import growingon.review.bought.CauseStep;
import growingon.review.bought.GambleKind;
import growingon.review.kept.KeptSpan;
import growingon.review.kept.Range;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;

/** An invented review with a lot for every verdict, of the months November 2026 to October 2027. */
public final class SampleReview {
  static final YearMonth THROUGH = YearMonth.of(2027, 10);
  private static final int MONTHS = 47;

  private SampleReview() {}

  public static Inputs inputs() {
    return SmallNursery.context().inputs();
  }

  static Lot lot(String name) {
    Lot far = inputs().scenario().lots().get(5);
    return far.as(name, new Papers("Hill Farm Plants", "XX-1", "hills", "", ""));
  }

  public static Review review(
      List<Suspicion> suspicions, Optional<String> kept, List<Problem> faults) {
    return review(List.of(far(), tall()), bought(), suspicions, kept, faults);
  }

  /** One bought lot, of which the daybook says nothing. */
  public static Review ofBought(Verdict verdict) {
    return review(
        List.of(), List.of(bought("one", verdict, 0)), List.of(), Optional.empty(), List.of());
  }

  private static Review review(
      List<LotReview> lots,
      List<BoughtReview> bought,
      List<Suspicion> suspicions,
      Optional<String> kept,
      List<Problem> faults) {
    return new Review(
        YearMonth.of(2027, 11),
        SmallNursery.FIRST,
        THROUGH,
        Optional.of(LocalDate.of(2027, 10, 28)),
        kept,
        new Review.Sources(212, 14, List.of(), 0),
        lots,
        new Review.Together(
            real(150, 141),
            real(80, 92),
            real(4200, 4711),
            real(310, 297),
            planned(2600),
            real(1600, 2111)),
        new Review.OfNoLot(real(120, 150), 3),
        bought,
        List.of(),
        List.of(
            new GambleKind(
                GambleKind.By.SUPPLIER, "Hill Farm Plants", 6, 2, 2, 2, 0, 1050, 900, 310),
            new GambleKind(GambleKind.By.SEEN, "unseen", 6, 2, 2, 2, 0, 1050, 900, 310)),
        judged(),
        Optional.empty(),
        List.of(
            new Loss("frost", "Larch", "Hill Farm Plants", "far larch", What.DIED, 12, 3, false),
            new Loss("", "Larch", "Hill Farm Plants", "tall larch", What.LOST, 2, 1, false)),
        suspicions,
        List.of(trace()),
        List.of(),
        List.of(),
        faults);
  }

  public static Review review() {
    return review(List.of(), Optional.of("kept by hand"), List.of());
  }

  public static Suspicion suspicion() {
    return new Suspicion(
        LocalDate.of(2027, 6, 3),
        "far larch",
        "XX-1",
        Optional.of("Ground"),
        new Where("daybook.csv", "", 7, ""));
  }

  public static Problem fault() {
    return DaybookAdvice.beforeTheLot(
        new Where("daybook.csv", "", 9, "date"), "2026-01-03", "far larch", "2026-12");
  }

  private static List<Judged> judged() {
    KeptSpan.At luck = new KeptSpan.At(2, 9, 0.17);
    KeptSpan.At all = new KeptSpan.At(1, 11, 0.15);
    return List.of(
        new Judged("far larch", Judged.What.DEATHS, 4, 12, Optional.of(luck), all),
        new Judged("far larch", Judged.What.GROWTH, 3.3, 9.6, Optional.of(luck), all),
        new Judged(
            "far larch",
            Judged.What.PRICE,
            1,
            1.02,
            Optional.empty(),
            new KeptSpan.At(0.93, 1.08, 0.2)));
  }

  private static Compared real(double planned, double real) {
    return new Compared(planned, real, true, Optional.empty());
  }

  private static Compared planned(double planned) {
    return new Compared(planned, planned, false, Optional.empty());
  }

  private static Compared ranged(double planned, double real, double p10, double p90) {
    return new Compared(planned, real, true, Optional.of(new Range(p10, planned, p90)));
  }

  /** The same with so many lots, each a plant better off than the one before. */
  public static Review ofLots(int number) {
    LotReview far = far();
    List<LotReview> lots = new ArrayList<>();
    for (int i = 0; i < number; i++) {
      lots.add(far.with().lot(lot("lot " + i)).result(real(0, i)).build());
    }
    return review(lots, bought(), List.of(), Optional.empty(), List.of());
  }

  private static LotReview far() {
    return LotReview.of(lot("far larch"))
        .isRecorded(true)
        .lastCount(Optional.of(LocalDate.of(2027, 10, 28)))
        .place(Optional.of("Ground"))
        .alive(ranged(36, 24, 31, 38))
        .qualities(Map.of(Quality.FIRST, real(36, 24)))
        .trunkMm(ranged(13.1, 13.4, 12.4, 13.9))
        .trunkSpread(planned(0.2))
        .grades(
            List.of(
                new LotReview.OfGrade("", planned(4)),
                new LotReview.OfGrade("small", real(32, 20))))
        .unitsSold(real(0, 2))
        .sales(real(0, 57))
        .hours(planned(11.5))
        .costs(Map.of(CostKind.PLANTS, real(120, 131), CostKind.LABOUR, planned(190)))
        .result(real(-310, -264))
        .balance(new Whereabouts(40, 0, 0, 0, 12, 0, 2, 0, 2, 0, 24))
        .costToDate(321)
        .costPerLiving(OptionalDouble.of(321.0 / 24))
        .build();
  }

  private static LotReview tall() {
    return LotReview.of(lot("tall larch"))
        .splitFrom(Optional.of("far larch"))
        .part(0.05)
        .isRecorded(true)
        .alive(planned(2))
        .trunkMm(planned(13))
        .trunkSpread(planned(0.2))
        .unitsSold(planned(0))
        .sales(planned(0))
        .hours(planned(0.5))
        .result(planned(-16))
        .balance(new Whereabouts(0, 2, 0, 0, 0, 0, 0, 0, 0, 2, 0))
        .costToDate(16)
        .build();
  }

  private static List<BoughtReview> bought() {
    Optional<YearMonth> by = Optional.of(YearMonth.of(2028, 5));
    return List.of(
        bought("one", new Verdict(Kind.PAID, Why.ALL_SOLD_AHEAD, 412, Optional.empty()), 0),
        bought("two", new Verdict(Kind.PAID, Why.MONEY_IS_BACK, 88, by), 5),
        bought("three", new Verdict(Kind.DID_NOT_PAY, Why.NOTHING_LEFT, 390, Optional.empty()), 0),
        bought("four", new Verdict(Kind.DID_NOT_PAY, Why.CANNOT_BE_REACHED, 120, by), 7),
        bought("five", new Verdict(Kind.UNDECIDED, Why.EXPECTED_TO_PAY, 260, by), 30),
        bought("six", new Verdict(Kind.UNDECIDED, Why.EXPECTED_TO_FALL_SHORT, 75, by), 30));
  }

  static BoughtReview bought(String name, Verdict verdict, double standing) {
    List<CauseStep> steps =
        List.of(
            new CauseStep(Cause.COST, CauseStep.Factor.COSTS, 200, 240),
            new CauseStep(Cause.HOURS, CauseStep.Factor.COST_OF_HOURS, 112.5, 100),
            new CauseStep(Cause.LOSSES, CauseStep.Factor.LIVING, 40, 28),
            new CauseStep(Cause.NO_LINE, CauseStep.Factor.LIVING, 28, 28),
            new CauseStep(Cause.QUALITY, CauseStep.Factor.MONEY_OF_A_PLANT, 25.842, 24),
            new CauseStep(Cause.GROWTH, CauseStep.Factor.MONEY_OF_A_PLANT, 24, 25),
            new CauseStep(Cause.GRADE_SOLD, CauseStep.Factor.MONEY_OF_A_PLANT, 25, 23.5),
            new CauseStep(Cause.PRICE, CauseStep.Factor.MONEY_OF_A_PLANT, 23.5, 25.28),
            new CauseStep(Cause.BUYERS, CauseStep.Factor.SHARE_SOLD, 1, 1));
    State state =
        switch (verdict.kind()) {
          case PAID -> State.REACHED;
          case DID_NOT_PAY -> State.NEVER;
          case UNDECIDED, TOO_YOUNG -> State.EXPECTED;
        };
    Optional<YearMonth> back =
        state == State.NEVER ? Optional.empty() : Optional.of(YearMonth.of(2028, 4));
    Optional<ToBeEven> even =
        verdict.kind() == Kind.PAID || standing == 0
            ? Optional.empty()
            : Optional.of(new ToBeEven(9, 28.5, standing >= 9));
    return BoughtReview.of(
            lot(name),
            new Payback(state, back, Optional.of(YearMonth.of(2028, 1))),
            verdict,
            new BoughtReview.Money(money(-175, 12), money(-175, 5), ranges()))
        .parts(List.of(name, "far larch"))
        .isSeen(true)
        .landed(175)
        .cashSoFar(-160)
        .resultSoFar(-200)
        .resultToCome(250.55)
        .salesToCome(300)
        .standing(standing)
        .unitsToCome(standing)
        .wholeStanding(Math.round(standing))
        .wholeToCome(Math.round(standing))
        .likely(standing > 0 ? Optional.of(new Range(-310, 40, 270)) : Optional.empty())
        .planned(351.10)
        .toBeEven(even)
        .steps(steps)
        .build();
  }

  private static List<Range> ranges() {
    return IntStream.range(0, MONTHS)
        .mapToObj(month -> new Range(-180 + month, -175 + 12 * month, -170 + 20 * month))
        .toList();
  }

  /** Money that rises by so much a month from where it starts. */
  private static List<Double> money(double start, double rise) {
    return IntStream.range(0, MONTHS).mapToObj(month -> start + rise * month).toList();
  }

  private static Trace trace() {
    Trace.Left sale =
        new Trace.Left(
            LocalDate.of(2027, 9, 4),
            What.SOLD,
            2,
            Optional.of("small"),
            Optional.of(Quality.FIRST),
            "K7",
            new Where("daybook.csv", "", 21, ""));
    Trace.Moved moved =
        new Trace.Moved(
            LocalDate.of(2027, 5, 2),
            "far larch",
            "tall larch",
            2,
            new Where("daybook.csv", "", 12, ""));
    return new Trace(
        "XX-1",
        List.of(
            traced("far larch", Optional.empty(), "Ground", 24, List.of(moved), List.of(sale)),
            traced("tall larch", Optional.of("far larch"), "", 0, List.of(moved), List.of())));
  }

  private static Trace.TracedLot traced(
      String lot,
      Optional<String> from,
      String place,
      double alive,
      List<Trace.Moved> moves,
      List<Trace.Left> sales) {
    return new Trace.TracedLot(
        lot, "Larch", "Hill Farm Plants", "hills", from, Optional.of(place), alive, moves, sales);
  }
}
