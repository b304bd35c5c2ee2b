package growingon.nursery.number;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;

/** Against the format strings of the JDK. */
class WritingProperties {
  private static String jdk(double number, int decimals) {
    return String.format(Locale.ENGLISH, "%,." + decimals + "f", number);
  }

  @Property
  void decimals_isAsTheJdkFormats(
      @ForAll @DoubleRange(min = -1e12, max = 1e12) double number,
      @ForAll @IntRange(max = 2) int decimals) {
    assertThat(Writing.USUAL.decimals(number, decimals)).isEqualTo(jdk(number, decimals));
  }

  @Property
  void decimals_betweenTwoRoundNumbers_isAsTheJdkFormats(
      @ForAll @IntRange(min = -5_000_000, max = 5_000_000) int thousandths,
      @ForAll @IntRange(max = 2) int decimals) {
    double number = thousandths / 1000.0;
    assertThat(Writing.USUAL.decimals(number, decimals)).isEqualTo(jdk(number, decimals));
  }
}
