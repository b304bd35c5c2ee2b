package growingon.load.cell;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import growingon.load.row.As;
import growingon.problem.Where;
import java.time.LocalDate;
import java.time.Month;
import java.time.YearMonth;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class MonthsTest {
  @ParameterizedTest
  @ValueSource(
      strings = {
        "2027-03",
        "2027-3",
        "2027/03",
        "2027.3",
        "03/2027",
        "3-2027",
        "3.2027",
        "Mar 2027",
        "mar. 2027",
        "MARCH 2027",
        "March 27",
        "Mar-27",
        "March '27",
        "March, 2027",
        "2027 March",
        "2027-Mar",
        "2027-03-15",
        "2027-03-15T00:00",
        "15.03.2027",
        "15.3.2027",
        "15/03/2027",
        "03/15/2027",
        "3/3/2027",
        "15 March 2027",
        "15th Mar 2027",
        "15-Mar-2027",
        "15 Mar 27",
        "15-Mar-27",
        "15 March '27",
        "15/03/27",
        "15.3.27",
        "03/15/27",
        "March 15, 27",
        "March 15, 2027"
      })
  void month_asPeopleTypeIt_isRead(String text) {
    assertThat(Months.month(text)).isEqualTo(YearMonth.of(2027, 3));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "2027",
        "3",
        "March",
        "13/2027",
        "2027-00",
        "2027-02-30",
        "31 June 2027",
        "0/5/2027",
        "5/0/27",
        "Marsh 2027",
        "32.3.2027",
        "March 2027 or so",
        "0027-03",
        "9999-03",
        "",
        "2027-03-15-01",
        "spring 2027"
      })
  void text_thatIsNoMonthOfAYear_isRefused(String text) {
    assertThatThrownBy(() -> Months.month(text))
        .isInstanceOfSatisfying(
            CellFault.class,
            fault ->
                assertThat(fault.at(Where.NOWHERE).sentence())
                    .hasToString("this is no month of a year"));
  }

  @ParameterizedTest
  @CsvSource({
    "12/11/2026, write 2026-11-12 or 2026-12-11",
    "12/11/26, write 2026-11-12 or 2026-12-11",
    "3-4-2027, write 2027-04-03 or 2027-03-04"
  })
  void date_thatMayBeTwo_isAskedAboutWithBoth(String text, String remedy) {
    assertThatThrownBy(() -> Months.date(text))
        .isInstanceOfSatisfying(
            CellFault.class,
            fault -> assertThat(fault.at(Where.NOWHERE).remedy()).hasToString(remedy));
  }

  @Test
  void date_thatMayBeOfTwoMonths_isRefused() {
    assertThatThrownBy(() -> Months.month("03/04/2027"))
        .isInstanceOfSatisfying(
            CellFault.class,
            fault ->
                assertThat(fault.at(Where.NOWHERE).sentence())
                    .hasToString("this date may be day or month first"));
  }

  @Property
  void month_writtenInAnyOfTheWays_comesBack(
      @ForAll @IntRange(min = 1900, max = 2200) int year,
      @ForAll @IntRange(min = 1, max = 12) int month,
      @ForAll @IntRange(min = 1, max = 28) int day) {
    YearMonth expected = YearMonth.of(year, month);
    LocalDate date = expected.atDay(day);
    for (String pattern :
        List.of(
            "uuuu-MM",
            "M/uuuu",
            "MMM uuuu",
            "MMMM uuuu",
            "uuuu-MM-dd",
            "d.M.uuuu",
            "d MMMM uuuu")) {
      String text = date.format(DateTimeFormatter.ofPattern(pattern, Locale.ENGLISH));
      assertThat(Months.month(text)).as(text).isEqualTo(expected);
    }
  }

  @Property
  void twoDigitYear_isOfThisCentury(
      @ForAll @IntRange(min = 0, max = 99) int year, @ForAll Month month) {
    String text = As.nameOf(month) + " " + "%02d".formatted(year);

    assertThat(Months.month(text)).isEqualTo(YearMonth.of(2000 + year, month));
  }

  @Property
  void anyText_isAMonthOrRefused_neverACrash(@ForAll String text) {
    try {
      assertThat(Months.month(text)).isNotNull();
    } catch (CellFault refused) {
      assertThat(refused.at(Where.NOWHERE).isError()).isTrue();
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "2027-03-15",
        "2027-03-15T00:00",
        "15.03.2027",
        "15.3.2027",
        "15/03/2027",
        "03/15/2027",
        "15 March 2027",
        "15th Mar 2027",
        "15-Mar-2027",
        "15 Mar 27",
        "15-Mar-27",
        "15 March '27",
        "15/03/27",
        "15.3.27",
        "03/15/27",
        "March 15, 27",
        "March 15, 2027"
      })
  void date_asPeopleTypeIt_isRead(String text) {
    assertThat(Months.date(text)).isEqualTo(LocalDate.of(2027, 3, 15));
  }

  @ParameterizedTest
  @ValueSource(strings = {"2027-03", "March 27", "2027-02-30", "15.3.", "15.3.1027", "15", "soon"})
  void date_withoutDayOrThatIsNone_isRefused(String text) {
    assertThatThrownBy(() -> Months.date(text))
        .isInstanceOfSatisfying(
            CellFault.class,
            fault ->
                assertThat(fault.at(Where.NOWHERE).sentence())
                    .hasToString("this is no date with its day"));
  }
}
