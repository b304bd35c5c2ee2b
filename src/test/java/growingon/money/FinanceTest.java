package growingon.money;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** Values of money against published examples; yearly flows stand twelve months apart. */
class FinanceTest {
  /** Yearly flows as monthly ones, the first after {@code firstYear} years. */
  private static double[] yearly(int firstYear, double... flows) {
    double[] months = new double[12 * (firstYear + flows.length)];
    for (int i = 0; i < flows.length; i++) {
      months[12 * (firstYear + i)] = flows[i];
    }
    return months;
  }

  /** Microsoft's NPV example 1: 10 %, first flow one period away. */
  @Test
  void presentValue_tenPercentFirstFlowAfterAYear_is1188_44() {
    assertThat(Finance.presentValue(yearly(1, -10000, 3000, 4200, 6800), 0.10))
        .isCloseTo(1188.44, within(0.005));
  }

  /** Microsoft's NPV example 2: 8 %, the outlay today; and with a loss of 9,000 after. */
  @Test
  void presentValue_eightPercentOutlayToday_is1922_06_andWithALossAfter_isMinus3749_47() {
    assertThat(Finance.presentValue(yearly(0, -40000, 8000, 9200, 10000, 12000, 14500), 0.08))
        .isCloseTo(1922.06, within(0.005));
    assertThat(
            Finance.presentValue(yearly(0, -40000, 8000, 9200, 10000, 12000, 14500, -9000), 0.08))
        .isCloseTo(-3749.47, within(0.005));
  }

  /** Adobe FormCalc reference: NPV at 2.75 %/12 a period of 50 60 40 100 25, first one away. */
  @Test
  void presentValue_monthlyFlows_isTheReferencesNpv() {
    double yearRate = Math.pow(1 + 0.0275 / 12, 12) - 1;
    assertThat(Finance.presentValue(new double[] {0, 50, 60, 40, 100, 25}, yearRate))
        .isCloseTo(273.14193838457, within(1e-9));
  }

  /** Microsoft's IRR example: after five, four and two years. */
  @Test
  void ratesOfReturn_microsoftsExample_areTheirs() {
    assertThat(Finance.ratesOfReturn(yearly(0, -70000, 12000, 15000, 18000, 21000, 26000)))
        .singleElement()
        .satisfies(rate -> assertThat(rate).isCloseTo(0.0866, within(0.00005)));
    assertThat(Finance.ratesOfReturn(yearly(0, -70000, 12000, 15000, 18000, 21000)))
        .singleElement()
        .satisfies(rate -> assertThat(rate).isCloseTo(-0.0212, within(0.00005)));
    assertThat(Finance.ratesOfReturn(yearly(0, -70000, 12000, 15000)))
        .singleElement()
        .satisfies(rate -> assertThat(rate).isCloseTo(-0.4435, within(0.00005)));
  }

  /** The textbook flow +100, −230, +132 has the two roots 10 % and 20 %. */
  @Test
  void ratesOfReturn_twoSignChanges_findsBothRoots() {
    assertThat(Finance.ratesOfReturn(yearly(0, 100, -230, 132)))
        .hasSize(2)
        .satisfies(rates -> assertThat(rates.get(0)).isCloseTo(0.10, within(1e-9)))
        .satisfies(rates -> assertThat(rates.get(1)).isCloseTo(0.20, within(1e-9)));
  }

  @Test
  void ratesOfReturn_onlyReceipts_areNone() {
    assertThat(Finance.ratesOfReturn(new double[] {5, 5, 5})).isEmpty();
    assertThat(Finance.ratesOfReturn(new double[] {0, 0})).isEmpty();
  }

  /**
   * Microsoft's XNPV/XIRR example, whose flows stand on days; on whole months it is near but not
   * the same, so the tolerance is that of rounding its dates to months (both 1st of the month but
   * one).
   */
  @Test
  void presentValue_xnpvExample_onMonths_isNearTheDatedValue() {
    double[] flows = new double[16];
    flows[0] = -10000;
    flows[2] = 2750;
    flows[10] = 4250;
    flows[13] = 1625;
    flows[14] = 1625;
    flows[15] = 2750;
    assertThat(Finance.presentValue(flows, 0.09)).isCloseTo(2086.647602, within(8.0));
    assertThat(Finance.ratesOfReturn(flows).get(0)).isCloseTo(0.3733625335, within(0.003));
  }

  /** Textbook: 200,000 at 40,000 a year is back after 5 years. */
  @Test
  void payback_evenReceipts_isFiveYears() {
    double[] flows = yearly(0, -200_000, 40_000, 40_000, 40_000, 40_000, 40_000, 40_000);
    assertThat(Finance.payback(flows)).hasValue(60);
  }

  @Test
  void payback_sumFallsBelowNilAgain_isTheMonthFromWhichItStaysAbove() {
    assertThat(Finance.payback(new double[] {-10, 12, -5, 4, 0})).hasValue(3);
    assertThat(Finance.payback(new double[] {-10, 5})).isEmpty();
    assertThat(Finance.payback(new double[] {5, 5})).hasValue(0);
  }

  @Test
  void payback_nothingFlowsAtFirst_isNotBeforeTheFirstFlow() {
    assertThat(Finance.payback(new double[] {0, 0, 5, 5})).hasValue(2);
    assertThat(Finance.payback(new double[] {0, 0, -5, 5})).hasValue(3);
    assertThat(Finance.payback(new double[] {0, 0})).hasValue(0);
  }

  @Test
  void monthRate_twelveMonthsCompound_toTheYear() {
    assertThat(Math.pow(1 + Finance.monthRate(0.08), 12)).isCloseTo(1.08, within(1e-12));
  }
}
