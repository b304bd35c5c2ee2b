package growingon.buying;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

/** What is lacking where a choice goes over its limits. */
class LimitsTest {
  private static final List<String> PLACES = List.of("tunnel", "bench");

  private static Limits limits() {
    double[][] room = {{10, 10}, {20, 20}};
    double[] hours = {100, 100};
    return new Limits(room, room, hours, hours, 0, 0.1, 0);
  }

  private static Outcome needing(double tunnel, double bench, double hours, double cash) {
    double[][] space = {{0, tunnel}, {0, bench}};
    return new Outcome(0, 0, space, new double[] {0, hours}, new double[] {500, cash}, 0);
  }

  @Test
  void lack_ofSeveralLimits_isTheFurthestAndNamesAllOthers() {
    Lack lack = limits().lack(needing(13, 21, 110, 10), PLACES).orElseThrow();

    assertThat(lack)
        .isEqualTo(
            new Lack(Lack.Kind.ROOM, "room in tunnel", 1, 3, List.of("room in bench", "hours")));
  }

  @Test
  void lack_ofOneLimit_namesNoOther() {
    Lack lack = limits().lack(needing(9, 9, 110, 10), PLACES).orElseThrow();

    assertThat(lack).isEqualTo(new Lack(Lack.Kind.HOURS, "hours", 1, 10, List.of()));
  }

  @Test
  void whatFits_lacksNothing() {
    assertThat(limits().lack(needing(9, 9, 90, 10), PLACES)).isEmpty();
  }

  @Test
  void lack_equallyFarInTwoPlaces_isTheEarlier() {
    double[][] space = {{0, 11}, {22, 0}};
    double[] free = {0, 0};
    Outcome outcome = new Outcome(0, 0, space, free, free, 0);

    Lack lack = limits().lack(outcome, PLACES).orElseThrow();

    assertThat(lack)
        .isEqualTo(new Lack(Lack.Kind.ROOM, "room in bench", 0, 2, List.of("room in tunnel")));
  }

  @Test
  void shortage_isTheSumOfSharesOverAllThatIsShort() {
    assertThat(limits().shortage(needing(13, 21, 110, -2))).isEqualTo(0.3 + 0.05 + 0.1 + 2);
  }
}
