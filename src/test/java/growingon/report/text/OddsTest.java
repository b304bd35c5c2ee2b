package growingon.report.text;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class OddsTest {
  @Test
  void chanceOfHundred_inATable_isWholeAndNeverSaysAlwaysOfWhatDoesNot() {
    assertThat(Odds.whole(0.795)).isEqualTo(80);
    assertThat(Odds.whole(0.9975)).isEqualTo(99);
    assertThat(Odds.whole(0.0025)).isEqualTo(1);
    assertThat(Odds.whole(1)).isEqualTo(100);
    assertThat(Odds.whole(0)).isZero();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "0.834; 1000; in 83 of 100 draws; in 83",
        "0.001; 1000; in fewer than 1 of 100 draws; in fewer than 1",
        "0.999; 1000; in more than 99 of 100 draws; in more than 99",
        "0; 1000; in none of 100 draws; in none",
        "1; 1000; in all of 100 draws; in all",
        "0.7; 10; in 7 of 10 draws; in 7",
        "0.01; 100; in 1 of 100 draws; in 1",
        "0.5; 2; in 1 of 2 draws; in 1",
        "1; 1; in the one draw made; in the one draw made",
        "0; 1; not in the one draw made; not in the one draw made"
      })
  void odds_inWords_nameADrawForEachHundredOrTheDrawsThemselves(
      double chance, int draws, String whole, String brief) {
    assertThat(Odds.in(chance, draws)).isEqualTo(whole);
    assertThat(Odds.briefly(chance, draws)).isEqualTo(brief);
  }
}
