package growingon.project.history;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

/** Months by which a tenth, half and nine tenths of a lot have a grade. */
class GradesReachedTest {
  @Test
  void tenths_areTheFirstMonthsInWhichTheyAreThere() {
    GradesReached reached = new GradesReached(3);
    double[] shares = {0, 0.09, 0.1, 0.3, 0.5, 0.4, 0.9, 1};
    for (int month = 0; month < shares.length; month++) {
      reached.note(month, 0, shares[month]);
      reached.note(month, 1, shares[month] / 2);
      reached.note(month, 2, 0);
    }

    assertThat(reached.list())
        .containsExactly(
            new Reached(0, OptionalInt.of(2), OptionalInt.of(4), OptionalInt.of(6)),
            new Reached(1, OptionalInt.of(3), OptionalInt.of(7), OptionalInt.empty()),
            new Reached(2, OptionalInt.empty(), OptionalInt.empty(), OptionalInt.empty()));
    assertThat(reached.byAny(0)).isTrue();
    assertThat(reached.byAny(2)).isFalse();
  }
}
