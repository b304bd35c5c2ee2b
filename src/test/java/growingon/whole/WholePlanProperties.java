package growingon.whole;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import growingon.nursery.time.Horizon;
import growingon.project.Nurseries;
import growingon.project.Projection;
import growingon.project.history.Happening;
import growingon.project.history.SeasonStock;
import growingon.project.lot.LotHistory;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/** What holds exactly and what within one plant, for every projection. */
class WholePlanProperties {
  private static final double ONE = 1 - 1e-6;

  @Provide
  Arbitrary<Nurseries> nurseries() {
    return RandomNurseries.any();
  }

  @Property(tries = 300, seed = "20261101")
  void everyLot_inEveryMonth_balances(@ForAll("nurseries") Nurseries nursery) {
    for (WholeLot lot : WholePlan.of(nursery.project()).lots()) {
      assertThat(lot.start()).isEqualTo(lot.history().lot().quantity());
      int standing = lot.standingAtStart();
      assertThat(lot.start()).isEqualTo(lot.diedBefore() + standing);
      for (int month = lot.history().start(); month < lot.history().months(); month++) {
        assertThat(lot.died(month)).isNotNegative();
        assertThat(lot.culled(month)).isNotNegative();
        assertThat(lot.sold(month)).isNotNegative();
        standing -= lot.died(month) + lot.culled(month) + lot.sold(month);
        assertThat(lot.standing(month)).isEqualTo(standing).isNotNegative();
        assertThat(lot.standingAfterWork(month))
            .isBetween(standing + lot.sold(month), lot.standing(month - 1) + lot.start());
      }
      assertThat(lot.lost() + lot.sold() + lot.standing()).isEqualTo(lot.start());
    }
  }

  @Property(tries = 300, seed = "20261102")
  void everyLot_inEveryMonth_isWithinOnePlant(@ForAll("nurseries") Nurseries nursery) {
    for (WholeLot lot : WholePlan.of(nursery.project()).lots()) {
      LotHistory exact = lot.history();
      double died = exact.diedBefore();
      double culled = 0;
      double sold = 0;
      assertThat((double) lot.diedBefore()).isCloseTo(died, within(ONE));
      for (int month = exact.start(); month < exact.months(); month++) {
        died += exact.died(month);
        culled += exact.culled(month);
        sold += exact.sold(month);
        assertThat((double) lot.diedUpTo(month)).isCloseTo(died, within(ONE));
        assertThat((double) lot.culledUpTo(month)).isCloseTo(culled, within(ONE));
        assertThat((double) lot.soldUpTo(month)).isCloseTo(sold, within(ONE));
        assertThat((double) lot.standing(month)).isCloseTo(exact.standing(month), within(ONE));
        assertThat((double) lot.died(month)).isCloseTo(exact.died(month), within(2 * ONE));
        if (exact.stood(month) != null) {
          assertThat((double) lot.standingAfterWork(month))
              .isCloseTo(exact.stood(month).plants(), within(ONE));
        }
      }
    }
  }

  @Property(tries = 200, seed = "20261103")
  void everyStep_isDoneOnWhatStands(@ForAll("nurseries") Nurseries nursery) {
    for (WholeLot lot : WholePlan.of(nursery.project()).lots()) {
      for (int i = 0; i < lot.history().happenings().size(); i++) {
        Happening done = lot.history().happenings().get(i);
        assertThat((double) lot.workedOn(i)).isCloseTo(done.plants(), within(ONE));
        assertThat((double) lot.diedOf(i)).isCloseTo(done.died(), within(ONE));
        assertThat((double) lot.culledAt(i)).isCloseTo(done.culled(), within(ONE));
      }
    }
  }

  @Property(tries = 200, seed = "20261104")
  void everySeasonEnd_gradesQualitiesAndKept_addUp(@ForAll("nurseries") Nurseries nursery) {
    Projection projection = nursery.project();
    for (WholeLot lot : WholePlan.of(projection).lots()) {
      assertThat(lot.seasons()).hasSameSizeAs(lot.history().seasons());
      for (int i = 0; i < lot.seasons().size(); i++) {
        SeasonStock exact = lot.history().seasons().get(i);
        WholeStock whole = lot.seasons().get(i);
        int sum = whole.kept() + whole.ungraded();
        for (int grade = 0; grade < lot.history().grades().size(); grade++) {
          sum += whole.ofGrade(grade);
          double ofGrade = exact.standing().ofGrade(grade);
          assertThat((double) whole.ofGrade(grade)).isCloseTo(ofGrade, within(ONE));
        }
        int month = projection.horizon().seasonLast(exact.season());
        assertThat(sum).isEqualTo(lot.standing(month));
      }
    }
  }

  @Property(tries = 300, seed = "20261105")
  void everySale_addsUpToTheLotsMonth_andHasPlants(@ForAll("nurseries") Nurseries nursery) {
    WholePlan plan = WholePlan.of(nursery.project());
    double receipts = 0;
    double money = 0;
    int sold = 0;
    for (WholeLot lot : plan.lots()) {
      int[] byMonth = new int[lot.history().months()];
      for (WholeSale sale : lot.sales()) {
        byMonth[sale.month()] += sale.whole();
        receipts += sale.receipts();
        money += sale.money();
      }
      for (int month = 0; month < byMonth.length; month++) {
        assertThat(byMonth[month]).isEqualTo(lot.sold(month));
      }
      sold += lot.sold();
    }
    assertThat(receipts).isCloseTo(money, within(1e-6 * Math.max(1, money)));
    boolean sells = sold > 0;
    for (WholeLot lot : plan.lots()) {
      assertThat(lot.sales())
          .allMatch(sale -> !sells || sale.whole() > 0 || Math.abs(sale.receipts()) < 1e-9);
    }
  }

  @Property(tries = 500, seed = "20261106")
  void everyDemandRow_inEverySeason_wantsWhatItSellsAndMisses(
      @ForAll("nurseries") Nurseries nursery) {
    Projection projection = nursery.project();
    Horizon horizon = projection.horizon();
    WholePlan plan = WholePlan.of(projection);
    int[][] sold = new int[horizon.seasons()][nursery.nursery().demand().size()];
    for (WholeLot lot : plan.lots()) {
      lot.sales().forEach(s -> sold[horizon.season(s.month())][s.row()] += s.whole());
    }
    for (WholeDemand row : plan.demand()) {
      assertThat(row.sold()).isEqualTo(sold[row.season()][row.row()]).isNotNegative();
      assertThat(row.missed()).isNotNegative();
      if (row.demand().units().isPresent()) {
        assertThat((double) row.wanted()).isCloseTo(row.units() + row.missing(), within(2.0));
      }
    }
  }

  /**
   * What a row wants shows as it is typed, but for one row's season in 500 at most, in which the
   * lots leave no other way: these nurseries have few lots, and rows that overlap.
   */
  @Example
  void demandRows_ofManyNurseries_wantWhatIsTyped() {
    int all = 0;
    int off = 0;
    for (int number = 0; number < 400; number++) {
      for (WholeDemand row : WholePlan.of(RandomNurseries.of(number).project()).demand()) {
        double wanted = row.units() + row.missing();
        if (row.demand().units().isPresent()) {
          all++;
          off += Math.abs(row.wanted() - wanted) < 1 ? 0 : 1;
        }
      }
    }
    assertThat(all).isGreaterThan(2000);
    assertThat(off).isLessThanOrEqualTo(all / 500);
  }
}
