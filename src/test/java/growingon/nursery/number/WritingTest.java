package growingon.nursery.number;

import static org.assertj.core.api.Assertions.assertThat;

import growingon.nursery.number.Writing.Days;
import growingon.nursery.number.Writing.Digits;
import growingon.nursery.number.Writing.Sign;
import java.time.LocalDate;
import java.time.YearMonth;
import org.junit.jupiter.api.Test;

class WritingTest {
  private static final Writing COMMA = new Writing(Digits.COMMA, Days.POINTS, Sign.BEHIND);
  private static final Writing BLANK = new Writing(Digits.BLANK, Days.SLASHES, Sign.BEHIND);
  private static final YearMonth MARCH = YearMonth.of(2027, 3);

  @Test
  void numbers_haveTheMarksThatAreSet() {
    assertThat(Writing.USUAL.decimals(-1234567.25, 1)).isEqualTo("-1,234,567.3");
    assertThat(COMMA.decimals(-1234567.25, 1)).isEqualTo("-1.234.567,3");
    assertThat(BLANK.decimals(-1234567.25, 1)).isEqualTo("-1\u00a0234\u00a0567,3");
    assertThat(COMMA.whole(999.6)).isEqualTo("1.000");
    assertThat(COMMA.number(2.5)).isEqualTo("2,5");
  }

  @Test
  void money_hasItsCurrencyWhereItIsSet() {
    assertThat(Writing.USUAL.money("EUR", "12.50")).isEqualTo("EUR 12.50");
    assertThat(COMMA.money("EUR", "12,50")).isEqualTo("12,50 EUR");
  }

  @Test
  void months_areWrittenAsSet() {
    assertThat(Writing.USUAL.month(MARCH)).isEqualTo("Mar 2027");
    assertThat(Writing.USUAL.day(LocalDate.of(2027, 3, 9))).isEqualTo("9 March 2027");
    assertThat(COMMA.month(MARCH)).isEqualTo("03.2027");
    assertThat(COMMA.day(LocalDate.of(2027, 3, 9))).isEqualTo("09.03.2027");
    assertThat(BLANK.longMonth(MARCH)).isEqualTo("03/2027");
    assertThat(new Writing(Digits.POINT, Days.YEAR_FIRST, Sign.BEFORE).month(MARCH))
        .isEqualTo("2027-03");
  }

  @Test
  void sentencesOfOurs_areGivenTheMarks_andNothingElseOfThem() {
    assertThat(COMMA.told("Brussels 6.5-19.7 % (four cohorts, 11,621 trees); 10, 6.7."))
        .isEqualTo("Brussels 6,5-19,7 % (four cohorts, 11.621 trees); 10, 6,7.");
    assertThat(Writing.USUAL.told("6.5 of 11,621")).isEqualTo("6.5 of 11,621");
  }

  @Test
  void values_areGivenTheMarks_whereTheyAreNumbersAndNoNames() {
    assertThat(COMMA.value("0.85")).isEqualTo("0,85");
    assertThat(COMMA.value("6; 5.5; 4")).isEqualTo("6; 5,5; 4");
    assertThat(COMMA.value("0.3 to 1.6")).isEqualTo("0,3 to 1,6");
    assertThat(COMMA.value("3.5 m wire; 1.5 m heavy wire"))
        .isEqualTo("3,5 m wire; 1,5 m heavy wire");
    assertThat(COMMA.value("7.5 litre")).isEqualTo("7.5 litre");
    assertThat(COMMA.value("Bed 2.1")).isEqualTo("Bed 2.1");
  }

  @Test
  void cellsOfAWorkbook_haveTheLanguageOfTheMarksInEachPart() {
    assertThat(Writing.USUAL.cell("#,##0.0;-#,##0.0")).isEqualTo("#,##0.0;-#,##0.0");
    // Language 0407 is German and 040C French (Windows language code identifiers, MS-LCID).
    assertThat(COMMA.cell("#,##0.0;-#,##0.0")).isEqualTo("[$-407]#,##0.0;[$-407]-#,##0.0");
    assertThat(BLANK.cell("0")).isEqualTo("[$-40C]0");
    assertThat(COMMA.monthCell()).isEqualTo("mm.yyyy");
  }
}
