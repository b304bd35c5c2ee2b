package growingon.review;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import growingon.nursery.Scenario;
import growingon.nursery.market.Quality;
import growingon.nursery.record.DaybookLine;
import growingon.nursery.record.DaybookLine.What;
import growingon.project.Lots;
import growingon.project.Nurseries;
import growingon.review.bought.BoughtReview;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Collectors;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/** What holds for every daybook, also for one that cannot be true. */
class ReviewProperties {
  private static final LocalDate FIRST = LocalDate.of(2026, 9, 1);
  private static final List<String> LOTS =
      List.of("maples", "elms", "larches", "maples A", "elms A", "larches A");
  private static final List<String> GRADES = List.of("started", "branched", "specimen");

  /** A line in the making; only what suits what happened is used. */
  private record Draft(
      int day, String lot, What what, int plants, int more, boolean says, double number) {}

  private static Scenario scenario() {
    return Nurseries.working()
        .lot(Lots.boughtMaples("maples").hold("branched", 0.3).build())
        .lot(Lots.pottedElms("elms").kept(10).counted(2026, 9).unitCost(5).build())
        .lot(
            Lots.lot("larches")
                .species("larch")
                .quantity(150)
                .sizeClass(9, 16)
                .arrived(2025, 11)
                .pot("7 litre")
                .place("bench")
                .route("liner")
                .build())
        .scenario();
  }

  @Provide
  Arbitrary<Diary> diary() {
    Arbitrary<Draft> line =
        Combinators.combine(
                Arbitraries.integers().between(0, 1000),
                Arbitraries.of(LOTS),
                Arbitraries.of(What.class),
                Arbitraries.integers().between(0, 130),
                Arbitraries.integers().between(0, 5),
                Arbitraries.of(true, false),
                Arbitraries.doubles().between(0.01, 60))
            .as(Draft::new);
    return line.list().ofMaxSize(40).map(ReviewProperties::write);
  }

  private static Diary write(List<Draft> drafts) {
    Diary diary = new Diary();
    for (Draft draft : drafts) {
      write(draft, diary);
    }
    return diary;
  }

  private static void write(Draft draft, Diary diary) {
    boolean goes = draft.what.mayJoin();
    String to = LOTS.get((LOTS.indexOf(draft.lot) + 1 + draft.more % 5) % LOTS.size());
    boolean isOfBought = draft.lot.equals("maples") || goes && to.equals("maples");
    if (isOfBought && draft.what == What.ARRIVED) {
      return;
    }
    // The reader takes no line of a lot before it is there.
    String day = FIRST.plusDays(isOfBought ? Math.max(153, draft.day) : draft.day).toString();
    if (draft.what == What.SPENT) {
      diary.on(day, draft.lot, draft.what).hours(draft.number);
    } else {
      diary.on(day, draft.lot, draft.what, draft.plants);
    }
    if (goes) {
      diary.to(to);
    }
    if (draft.says && !goes) {
      diary.grade(GRADES.get(draft.more % 3)).quality(Quality.values()[draft.more % 3]);
      diary.amount(draft.number * 10);
    }
    if (draft.says && draft.what == What.COUNTED) {
      diary.trunks(draft.number, draft.more / 10.0);
    }
  }

  private static Review review(Diary diary) {
    return Review.of(diary.of(scenario()), YearMonth.of(2029, 12), Optional.empty());
  }

  @Property(tries = 150)
  void review_ofAnyDaybook_keepsItsBalances(@ForAll("diary") Diary diary) {
    Review review = review(diary);
    Map<String, Double> parts = new HashMap<>();
    Map<String, String> parents =
        review.lots().stream()
            .filter(lot -> lot.splitFrom().isPresent())
            .collect(Collectors.toMap(lot -> lot.lot().name(), lot -> lot.splitFrom().get()));
    for (LotReview lot : review.lots()) {
      assertThat(lot.balance().difference()).isCloseTo(0, within(1e-6));
      assertThat(lot.balance().lost()).isGreaterThan(-1e-6);
      assertThat(lot.balance().found()).isGreaterThan(-1e-6);
      assertThat(lot.alive().real()).isNotNegative().isFinite();
      assertThat(lot.costToDate()).isFinite();
      String root = lot.lot().name();
      while (parents.containsKey(root)) {
        root = parents.get(root);
      }
      parts.merge(root, lot.part(), Double::sum);
    }
    parts.values().forEach(part -> assertThat(part).isCloseTo(1, within(1e-9)));
  }

  @Property(tries = 80)
  void review_ofAnyDaybook_explainsEveryDifference(@ForAll("diary") Diary diary) {
    for (BoughtReview bought : review(diary).bought()) {
      double difference = (bought.expected() - bought.planned()) * 100;
      assertThat((double) bought.differenceCents()).isCloseTo(difference, within(0.5 + 1e-4));
      List<Double> expected = bought.money().expected();
      double last = expected.get(expected.size() - 1);
      assertThat(bought.expected()).isCloseTo(last, within(1e-6));
    }
  }

  @Property(tries = 60)
  void review_ofLinesInAnyOrder_isTheSame(@ForAll("diary") Diary diary, @ForAll Random random) {
    List<DaybookLine> shuffled = new ArrayList<>(diary.lines());
    Collections.shuffle(shuffled, random);
    Review other =
        Review.of(Diary.inputs(scenario(), shuffled), YearMonth.of(2029, 12), Optional.empty());
    assertThat(other).isEqualTo(review(diary));
  }
}
