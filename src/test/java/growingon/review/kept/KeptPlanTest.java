package growingon.review.kept;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import growingon.chance.Chances;
import growingon.chance.Quantiles;
import growingon.money.Accounts;
import growingon.money.LotAccount;
import growingon.nursery.Inputs;
import growingon.nursery.Scenario;
import growingon.project.Lots;
import growingon.project.Nurseries;
import growingon.project.Projector;
import growingon.review.Diary;
import growingon.review.PlanKeeping;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A plan frozen. */
class KeptPlanTest {
  private static Scenario scenario() {
    return Nurseries.working()
        .lot(
            Lots.lot("maples")
                .species("maple")
                .quantity(120)
                .trunks(21, 0.22)
                .unseen(0.55, 0.3, 0.6)
                .arrived(2027, 2)
                .bought(14, 120, 0.7, 0.03)
                .place("ground")
                .route("field tree")
                .build())
        .lot(Lots.pottedElms("elms").build())
        .scenario();
  }

  private static Inputs inputs(int draws) {
    return new Diary().of(scenario()).withPlan(scenario().plan().withDraws(draws));
  }

  private static KeptPlan kept(int draws, int threads) {
    return PlanKeeping.keep(inputs(draws), threads, done -> {});
  }

  @Test
  void keptResult_atTheEnd_isThatOfTheAccounts() {
    Accounts accounts = Accounts.of(Projector.project(scenario()));
    for (KeptLot lot : kept(0, 1).lots()) {
      LotAccount account = accounts.lot(lot.name());
      assertThat(last(lot.result())).isCloseTo(account.result(), within(1e-6));
      assertThat(last(lot.living())).isCloseTo(account.standing(), within(1e-9));
      double sold = lot.sales().stream().mapToDouble(KeptSale::units).sum();
      assertThat(sold).isCloseTo(account.sold(), within(1e-9));
      double costs =
          lot.costs().values().stream()
              .flatMap(List::stream)
              .mapToDouble(Double::doubleValue)
              .sum();
      assertThat(costs).isCloseTo(account.costs(), within(1e-6));
      double byGrade = lot.byGrade().values().stream().mapToDouble(KeptPlanTest::last).sum();
      assertThat(byGrade).isCloseTo(account.standing(), within(1e-9));
      assertThat(lot.chances()).isEqualTo(KeptChances.NONE);
    }
  }

  private static double last(List<Double> values) {
    return values.get(values.size() - 1);
  }

  @Test
  void draws_atTheEnd_areThoseOfTheChances() {
    Scenario scenario = inputs(60).scenario();
    Accounts accounts = Accounts.of(Projector.project(scenario));
    Chances chances = Chances.draw(accounts, List.of(), 1, done -> {});
    for (KeptLot lot : kept(60, 1).lots()) {
      Quantiles result = chances.lotResults().get(lot.name());
      KeptQuantiles kept = lot.chances().result();
      assertThat(last(kept.p10())).isCloseTo(result.p10(), within(1e-2));
      assertThat(last(kept.p50())).isCloseTo(result.p50(), within(1e-2));
      assertThat(last(kept.p90())).isCloseTo(result.p90(), within(1e-2));
    }
  }

  @Test
  void draws_areOrdered_andBeginWithWhatIsThere() {
    KeptPlan kept = kept(60, 2);
    KeptLot elms = kept.lots().get(1);
    for (KeptQuantiles figure :
        List.of(elms.chances().living(), elms.chances().trunkMm(), kept.nursery().sales())) {
      for (int month = 0; month < figure.p50().size(); month++) {
        assertThat(figure.p10().get(month)).isLessThanOrEqualTo(figure.p50().get(month));
        assertThat(figure.p50().get(month)).isLessThanOrEqualTo(figure.p90().get(month));
      }
    }
    assertThat(elms.chances().living().p90().get(0)).isBetween(85.0, 90.0);
    assertThat(kept.lots().get(0).chances().living().p50().get(0)).isZero();
    assertThat(kept.nursery().trunkMm().p50()).isEmpty();
  }

  @Test
  void draws_withinTheOthers_areAboutAsManyAsTheSpanHas() {
    KeptPlan kept = kept(60, 1);
    KeptJudging judging = kept.lots().get(1).judging().orElseThrow();
    for (KeptWithin within :
        List.of(judging.within().orElseThrow(), judging.luckWithin().orElseThrow())) {
      for (List<String> months : List.of(within.trunkMm(), within.deaths(), within.living())) {
        assertThat(months).hasSize(kept.lots().get(1).living().size());
      }
    }
    KeptSpan trunks = judging.all().trunkMm();
    for (int month = 6; month < trunks.p10().size(); month++) {
      String digits = judging.within().orElseThrow().trunkMm().get(month);
      assertThat(digits).hasSize(15);
      double inside =
          digits.chars().map(digit -> Integer.bitCount(Character.digit(digit, 16))).sum();
      // Of the others at most one more on either side lies outside.
      assertThat(1 - inside / 60).isCloseTo(trunks.outside().get(month), within(2.1 / 60));
    }
  }

  @Test
  void draws_onManyThreads_areTheSame() {
    assertThat(kept(40, 3)).isEqualTo(kept(40, 1));
  }
}
