package growingon.chance.luck;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import growingon.nursery.lot.QualityShares;
import org.junit.jupiter.api.Test;

class FixedLuckTest {
  /** Every split of whole and tenth percent into firsts, seconds and thirds. */
  @Test
  void otherShareOfFirsts_ofEverySplit_leavesSharesThatAreShares() {
    int splits = 0;
    for (int first = 0; first <= 1000; first++) {
      for (int second = 0; first + second <= 1000; second++) {
        QualityShares stated = new QualityShares(first / 10.0 / 100, second / 10.0 / 100, false, 0);
        for (double firsts : new double[] {0, 0.37, 1}) {
          QualityShares moved = FixedLuck.withFirsts(stated, firsts);
          assertThat(moved.first() + moved.second()).isLessThanOrEqualTo(1 + 1e-12);
        }
        splits++;
      }
    }
    assertThat(splits).isEqualTo(1001 * 1002 / 2);
  }

  @Test
  void otherShareOfFirsts_secondsAndThirdsKeepTheirProportion() {
    QualityShares moved = FixedLuck.withFirsts(new QualityShares(0.5, 0.3, false, 0.5), 0.2);
    assertThat(moved.second()).isCloseTo(0.8 * 0.6, within(1e-12));
  }
}
