package growingon.load.cell;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import growingon.problem.Where;
import java.util.Locale;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class AmountTest {
  @ParameterizedTest
  @CsvSource({
    "12, POINT, 12",
    "-12.5, POINT, -12.5",
    "−12.5, POINT, -12.5",
    "+3, POINT, 3",
    ".5, POINT, 0.5",
    "1.234, POINT, 1.234",
    "'1,234,567', POINT, 1234567",
    "'1,234.5', POINT, 1234.5",
    "12 000, POINT, 12000",
    "1'234.5, POINT, 1234.5",
    "1e3, POINT, 1000",
    "'3,5', COMMA, 3.5",
    "'1,234', COMMA, 1.234",
    "'1.234,5', COMMA, 1234.5",
    "2.5, COMMA, 2.5",
    "'3,5', EITHER, 3.5",
    "3.5, EITHER, 3.5",
    "'0,125', EITHER, 0.125",
    "'1234,567', EITHER, 1234.567",
    "'1.234,5', EITHER, 1234.5",
    "'1,234.5', EITHER, 1234.5",
    "1.234.567, EITHER, 1234567"
  })
  void number_inTheStyleOfItsFile_isRead(String text, NumberStyle style, double value) {
    assertThat(Amount.of(text, style)).isEqualTo(new Amount("", value, ""));
  }

  @ParameterizedTest
  @CsvSource({
    "12 mm, '', 12, mm",
    "3.5l, '', 3.5, l",
    "€ 2.40, €, 2.4, ''",
    "2.40 EUR, '', 2.4, EUR"
  })
  void number_withWordsAround_isParted(String text, String before, double value, String behind) {
    assertThat(Amount.of(text, NumberStyle.POINT)).isEqualTo(new Amount(before, value, behind));
  }

  @ParameterizedTest
  @CsvSource({"'1,234', POINT", "1.234, COMMA", "'1,234', EITHER", "1.234, EITHER"})
  void number_thatMayBeThousandsOrDecimals_isRefused(String text, NumberStyle style) {
    assertThatThrownBy(() -> Amount.of(text, style))
        .isInstanceOfSatisfying(
            CellFault.class,
            fault ->
                assertThat(fault.at(Where.NOWHERE).sentence())
                    .hasToString("this may be thousands or decimals"));
  }

  @ParameterizedTest
  @CsvSource({"'1,234', 1234", "1.234, 1234", "'12,5', 12.5", "240, 240", "'240,000', 240000"})
  void numberOfPlants_withAMarkBeforeThreeDigits_isThousands(String text, double plants) {
    assertThat(Amount.of(text, NumberStyle.PLANTS).value()).isEqualTo(plants);
  }

  @ParameterizedTest
  @CsvSource({"'1,234', POINT, 1234 or 1.234", "1.230, COMMA, '1230 or 1,23'"})
  void number_thatMayBeTwo_isAskedAboutWithBoth(String text, NumberStyle style, String readings) {
    assertThatThrownBy(() -> Amount.of(text, style))
        .isInstanceOfSatisfying(
            CellFault.class,
            fault -> assertThat(fault.at(Where.NOWHERE).remedy()).hasToString("write " + readings));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "abc",
        "1,2,3",
        "12.34.5",
        "5 3",
        "1 2345",
        "NaN",
        "Infinity",
        "٣",
        "--5",
        "1.",
        "1e999"
      })
  void text_thatIsNoNumber_isNone(String text) {
    assertThat(Amount.find(text, NumberStyle.POINT)).isEmpty();
  }

  @Test
  void text_ofTenThousandDigits_isNone() {
    assertThat(Amount.find("1".repeat(10_000), NumberStyle.POINT)).isEmpty();
  }

  @Property
  void number_writtenWithTwoDecimals_comesBack(
      @ForAll @IntRange(min = -99_999_999, max = 99_999_999) int hundredths) {
    double value = hundredths / 100.0;
    String point = String.format(Locale.ROOT, "%.2f", value);

    assertThat(Amount.of(point, NumberStyle.POINT).value()).isEqualTo(value);
    assertThat(Amount.of(point.replace('.', ','), NumberStyle.COMMA).value()).isEqualTo(value);
    assertThat(Amount.of(point, NumberStyle.EITHER).value()).isEqualTo(value);
    assertThat(Amount.of(point.replace('.', ','), NumberStyle.EITHER).value()).isEqualTo(value);
  }

  @Property
  void number_writtenWithThousands_comesBack(
      @ForAll @IntRange(min = 0, max = 2_000_000_000) int hundredths) {
    double value = hundredths / 100.0;
    String english = String.format(Locale.ROOT, "%,.2f", value);

    assertThat(Amount.of(english, NumberStyle.POINT).value()).isEqualTo(value);
    assertThat(Amount.of(english, NumberStyle.EITHER).value()).isEqualTo(value);
    assertThat(Amount.of(english.replace(',', ' '), NumberStyle.POINT).value()).isEqualTo(value);
  }

  @Property
  void anyText_isANumberOrNone_neverACrash(@ForAll String text) {
    for (NumberStyle style : NumberStyle.values()) {
      try {
        Amount.find(text, style).ifPresent(amount -> assertThat(amount.value()).isFinite());
      } catch (CellFault refused) {
        assertThat(refused.at(Where.NOWHERE).isError()).isTrue();
      }
    }
  }
}
