package growingon.problem;

import static org.assertj.core.api.Assertions.assertThat;

import growingon.nursery.number.Writing;
import growingon.problem.advice.DaybookAdvice;
import growingon.problem.advice.PlanAdvice;
import growingon.problem.advice.TrunkAdvice;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MarkedTextTest {
  private static final Writing COMMAS =
      new Writing(Writing.Digits.COMMA, Writing.Days.IN_WORDS, Writing.Sign.BEFORE);

  @ParameterizedTest
  @CsvSource({
    "0, 0, 0",
    "999, 999, 999",
    "1000, 1000, 1.000",
    "-1234567.25, -1234567.25, '-1.234.567,25'",
    "0.1, 0.1, '0,1'",
    "1e9, 1000000000, 1.000.000.000",
    "-0.0, 0, 0"
  })
  void number_isPlainOrAsANurseryWritesIt(double number, String plain, String told) {
    MarkedText text = new MarkedText("of " + MarkedText.number(number) + " mm");
    assertThat(text).hasToString("of " + plain + " mm");
    assertThat(COMMAS.told(text)).isEqualTo("of " + told + " mm");
  }

  @Test
  void decimals_areAsManyAsAsked() {
    MarkedText text = new MarkedText(MarkedText.number(1234.5, 2));
    assertThat(text).hasToString("1234.50");
    assertThat(COMMAS.told(text)).isEqualTo("1.234,50");
    assertThat(Writing.USUAL.told(text)).isEqualTo("1,234.50");
  }

  @Test
  void numberThatIsNone_isNamedAsSuch() {
    assertThat(MarkedText.number(Double.NaN)).isEqualTo("NaN");
  }

  @Test
  void namesAndCells_stayAsTheyAre() {
    Problem problem =
        DaybookAdvice.moreThanAlive(
            Where.file("daybook 1,500.csv"),
            1234.5,
            "maple 7.5 litre, block 1,200",
            "are sold",
            1200,
            0,
            List.of());
    assertThat(COMMAS.told(problem.line()))
        .startsWith(
            "daybook 1,500.csv: more plants of maple 7.5 litre, block 1,200 are sold than the 1.200"
                + " alive (1.234,5); ");
    assertThat(problem.toString()).contains("than the 1200 alive (1234.5); ");
  }

  @Test
  void marksInACell_markNothing() {
    String marked = MarkedText.number(1234.5);
    Problem problem = TrunkAdvice.takenForGirth(Where.NOWHERE, marked, marked, 0);
    assertThat(problem.found()).hasToString("1234.5");
    assertThat(COMMAS.told(problem.found())).isEqualTo("1234.5");
    assertThat(COMMAS.told(problem.sentence())).endsWith("a trunk of 1.234,5 mm");
  }

  @Test
  void loneMarks_areNotSeen() {
    String marked = MarkedText.number(12);
    MarkedText broken = new MarkedText(marked.substring(0, 2) + " and " + marked.substring(1));
    assertThat(broken).hasToString("1 and 12");
    assertThat(COMMAS.told(broken)).isEqualTo("1 and 12");
  }

  @Test
  void problemsAlike_areCountedInTheirNumbersStyle() {
    Problem one = TrunkAdvice.trunkConverted(new Where("s.csv", "", 2, "size"), "1", "45", 0);
    List<Problem> told = ProblemGroup.toldOnce(java.util.Collections.nCopies(1001, one));
    assertThat(COMMAS.told(told.get(0).what())).endsWith("(1.001 times: 1 1.001 times; row 2)");
    assertThat(told.get(0).what().toString()).endsWith("(1001 times: 1 1001 times; row 2)");
  }

  @ParameterizedTest
  @CsvSource({
    "IN_WORDS, Mar 2027, 3 March 2027",
    "YEAR_FIRST, 2027-03, 2027-03-03",
    "SLASHES, 03/2027, 03/03/2027",
    "POINTS, 03.2027, 03.03.2027"
  })
  void monthsAndDays_areAsANurseryWritesThem(Writing.Days days, String month, String day) {
    Writing writing = new Writing(Writing.Digits.POINT, days, Writing.Sign.BEFORE);
    String marked =
        "%s, %s"
            .formatted(
                MarkedText.month(YearMonth.of(2027, 3)), MarkedText.day(LocalDate.of(2027, 3, 3)));
    MarkedText text = new MarkedText(marked + ", lot 2027-03");
    assertThat(writing.told(text)).isEqualTo(month + ", " + day + ", lot 2027-03");
    assertThat(text).hasToString("2027-03, 2027-03-03, lot 2027-03");
  }

  @Test
  void monthOfThePlan_isWrittenAsInTheReport_andTheCellAsItIs() {
    Problem problem =
        PlanAdvice.offerOutsidePlan(
            Where.NOWHERE, "2040-01", YearMonth.of(2026, 11), YearMonth.of(2031, 10));
    assertThat(Writing.USUAL.told(problem.line()))
        .isEqualTo(
            "the offer arrives outside the plan, which runs from Nov 2026 to Oct 2031, and is left"
                + " out (2040-01)");
  }
}
