package growingon.money.bought;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.OptionalInt;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class FewestThatPayTest {
  private int runs;

  /** The search against trying all hundred and one. */
  @Property
  void found_asTryingAllWould(
      @ForAll @DoubleRange(min = -30, max = 130) double nil,
      @ForAll @DoubleRange(min = 0.2, max = 5) double bend,
      @ForAll @DoubleRange(min = 0, max = 100) double known) {
    DoubleUnaryOperator rising = at -> Math.pow((at + 40) / 100, bend) - pow(nil, bend);
    OptionalInt tried =
        IntStream.rangeClosed(0, 100).filter(at -> rising.applyAsDouble(at) >= 0).findFirst();

    assertThat(found(rising, known)).isEqualTo(tried);
    assertThat(runs).isLessThanOrEqualTo(24);
  }

  private static double pow(double nil, double bend) {
    return Math.pow((nil + 40) / 100, bend);
  }

  @Test
  void found_aLine_inFourRuns() {
    assertThat(found(at -> 12 * at - 700, 75)).hasValue(59);
    assertThat(runs).isLessThanOrEqualTo(4);
  }

  @Test
  void found_allUsableAsPlanned_hundredIsNotRunAgain() {
    assertThat(found(at -> at - 100, 100)).hasValue(100);
    assertThat(found(at -> at - 101, 100)).isEmpty();
  }

  @Test
  void found_aJump_betweenTheNumbersBeforeAndAfter() {
    assertThat(found(at -> at < 37 ? -1000 : 1, 80)).hasValue(37);
  }

  private OptionalInt found(DoubleUnaryOperator value, double known) {
    runs = 0;
    return new FewestThatPay(
            number -> {
              runs++;
              return value.applyAsDouble(number);
            },
            known,
            value.applyAsDouble(known))
        .find();
  }
}
