package growingon.write.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import growingon.report.model.Column;
import growingon.report.model.Kind;
import growingon.report.model.Sheet;
import growingon.report.model.Table;
import growingon.write.SampleReport;
import growingon.write.text.TextSize;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class SheetLayoutTest {
  private static final Column LOT = Column.of("lot", "lot", "", Kind.TEXT);
  private static final Column SALES = Column.of("sales", "sales", "EUR", Kind.MONEY);
  private static final Column WORDS = Column.of("words", "words", "", Kind.LONG_TEXT);
  private static final String LONG = "many words ".repeat(9).strip();

  @Test
  void textColumn_aloneOnItsSheet_isAsWideAsItsText() {
    SheetLayout layout = layout(table("one", List.of(LOT), 3, "Field maple of 2024"));
    assertThat(layout.width(0)).isBetween(17.0, 22.0);
  }

  @Test
  void longText_besideNumbersOfAnotherTable_doesNotWidenThem() {
    Table numbers = table("numbers", List.of(LOT, SALES), 3, "a", 10.0);
    Table words = table("words", List.of(LOT, WORDS, SALES), 3, "a", LONG, 10.0);
    assertThat(layout(numbers, words).width(1)).isLessThan(30);
    assertThat(layout(words).width(1)).isGreaterThan(60);
  }

  @Test
  void wideSheet_givesUpTextBeforeNumbers() {
    double[] widths =
        SheetLayout.shrunk(new double[] {10, 60, 40, 30}, new double[] {10, 13, 40, 13}, 100);
    assertThat(widths).containsExactly(10, 25, 40, 25);
  }

  @Test
  void wideSheet_thatCannotShrink_stays() {
    double[] widths = SheetLayout.shrunk(new double[] {80, 80}, new double[] {80, 80}, 100);
    assertThat(widths).containsExactly(80, 80);
  }

  @Test
  void heading_ofTheLastTableOnly_isRepeatedInPrint() {
    Table first = table("first", List.of(LOT), 3, "a");
    Table second = table("second", List.of(LOT, SALES), 3, "a", 1.0);
    Table third = table("third", List.of(LOT, SALES), 9, "a", 1.0);
    assertThat(layout(first, second, third).repeated()).isSameAs(second);
    assertThat(layout(first).repeated()).isSameAs(first);
  }

  @Test
  void heading_servingAnotherTableThanTheLongest_isNotKeptInSight() {
    Table first = table("first", List.of(LOT), 3, "a");
    Table longest = table("longest", List.of(LOT, SALES), 9, "a", 1.0);
    assertThat(layout(first, longest).filtered()).isSameAs(longest);
    assertThat(layout(first, longest).headed()).isNull();
    assertThat(layout(longest, first).headed()).isSameAs(longest);
  }

  @Test
  void charts_ofASheetWithALongTable_standBesideIt() {
    assertThat(layout(table("short", List.of(LOT), 30, "a")).chartsAbove()).isTrue();
    assertThat(layout(table("long", List.of(LOT), 31, "a")).chartsAbove()).isFalse();
  }

  @Test
  void group_startsWhereTheFirstColumnChanges_ifItRepeats() {
    Table repeats =
        new Table(
            "t",
            "t",
            List.of(),
            List.of(LOT),
            List.of(
                SampleReport.row("a"),
                SampleReport.row("a"),
                SampleReport.row("b"),
                SampleReport.row((Object) null),
                SampleReport.row("c")));
    Table allDiffer =
        new Table(
            "t",
            "t",
            List.of(),
            List.of(LOT),
            List.of(SampleReport.row("a"), SampleReport.row("b")));
    assertThat(RowGroups.starts(repeats)).containsExactly(false, false, true, false, true);
    assertThat(RowGroups.starts(allDiffer)).containsExactly(false, false);
  }

  @Test
  void text_wrapped_takesTheLinesItNeeds() {
    assertThat(TextSize.lines("short", 20)).isEqualTo(1);
    assertThat(TextSize.lines(LONG, 1000)).isEqualTo(1);
    assertThat(TextSize.lines(LONG, TextSize.width(LONG) / 3)).isBetween(3, 4);
    assertThat(TextSize.lines("one\ntwo", 20)).isEqualTo(2);
    assertThat(TextSize.lines("x".repeat(100), 20)).isBetween(5, 6);
  }

  private static SheetLayout layout(Table... tables) {
    return new SheetLayout(Sheet.of("Sheet", tables));
  }

  private static Table table(String name, List<Column> columns, int rows, Object... cells) {
    List<List<Object>> all = new ArrayList<>();
    for (int i = 0; i < rows; i++) {
      all.add(SampleReport.row(cells));
    }
    return new Table(name, name, List.of(), columns, all);
  }

  /** One wide column would be cut at the edge of the paper: it cannot be shrunk to one page. */
  @Test
  void sheetOfSentencesOnly_hasColumnsThatAPageCanBreakAt() {
    Sheet sheet = new Sheet("Notes", List.of("Something to read."), List.of(), List.of(), true);
    SheetLayout layout = new SheetLayout(sheet);

    assertThat(layout.columns()).isGreaterThan(1);
    assertThat(layout.lastColumnOfText()).isEqualTo(layout.columns() - 1);
  }
}
