package growingon.write.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import growingon.report.model.Column;
import growingon.report.model.Kind;
import growingon.report.model.Sheet;
import growingon.report.model.Table;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;

class SheetDivisionTest {
  private static Table table(String name, int rows) {
    Column column = Column.of("plants", "plants", "", Kind.COUNT);
    return new Table(
        name, name, List.of(), List.of(column), Collections.nCopies(rows, List.of((Object) 1)));
  }

  private static List<List<String>> parts(Table... tables) {
    return SheetDivision.of(Sheet.of("Sales", tables))
        .map(part -> part.tables().stream().map(Table::name).toList())
        .toList();
  }

  @Test
  void tableLongerThanAPage_isTheLastOfItsSheet() {
    assertThat(parts(table("a", 5), table("b", 60), table("c", 5), table("d", 60)))
        .containsExactly(List.of("a", "b"), List.of("c", "d"));
    assertThat(parts(table("a", 60), table("sales-by-lot", 60)))
        .containsExactly(List.of("a"), List.of("sales-by-lot"));
  }

  @Test
  void veryLongTable_hasASheetOfItsOwn() {
    assertThat(parts(table("a", 5), table("line-of-life", 500)))
        .containsExactly(List.of("a"), List.of("line-of-life"));
  }

  @Test
  void longTable_thatIsNarrowAndHasNoCharts_printsUpright() {
    assertThat(SheetDivision.of(Sheet.of("Sales", table("a", 60))))
        .extracting(part -> part.sheet().portrait())
        .containsExactly(true);
    assertThat(SheetDivision.of(Sheet.of("Sales", table("a", 10))))
        .extracting(part -> part.sheet().portrait())
        .containsExactly(false);
  }

  @Test
  void tablesOfAPage_stayTogether() {
    assertThat(parts(table("a", 10), table("b", 10), table("c", 10)))
        .containsExactly(List.of("a", "b", "c"));
  }

  @Test
  void part_isCalledByItsFirstTable() {
    assertThat(
            SheetDivision.of(Sheet.of("Sales", table("a", 60), table("sales-by-lot", 60)))
                .map(part -> part.sheet().name()))
        .containsExactly("Sales", "Sales by lot");
  }

  @Test
  void sheetWithNothingToShow_hasNoParts() {
    assertThat(SheetDivision.of(Sheet.of("Sales", table("a", 0)))).isEmpty();
  }
}
