package growingon.report.build;

import static org.assertj.core.api.Assertions.assertThat;

import growingon.report.model.Column;
import growingon.report.model.Column.Flag;
import growingon.report.model.Kind;
import growingon.report.model.Table;
import growingon.report.text.Plants;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Tables of columns that know what they show. */
class TableOfTest {
  private record Tree(String name, double height, Plants plants) {}

  private static final Tree ELM = new Tree("elm", 4, Plants.of(2.2, 2));
  private static final Tree ASH = new Tree("ash", Double.NaN, Plants.of(0.3, 0));

  private static TableOf<Tree> trees() {
    return TableOf.<Tree>table("trees", "Trees")
        .note("As they stand.")
        .text("name of tree", Tree::name)
        .column("tall", "height", "m", Kind.NUMBER, Tree::height)
        .belowNil()
        .wide(7)
        .plants("plants", Tree::plants);
  }

  @Test
  void columns_haveTheirHeadingForAKeyUnlessTheyHaveTheirOwn() {
    assertThat(trees().of(List.of()).columns())
        .containsExactly(
            Column.of("name_of_tree", "name of tree", "", Kind.TEXT),
            Column.of("tall", "height", "m", Kind.NUMBER).flagged(Flag.BELOW_ZERO).wide(7),
            Column.summed("plants", "plants", "", Kind.PLANTS));
  }

  @Test
  void rows_areOfTheThingsInTheirOrder_andEmptyWhereThereIsNoNumber() {
    Table table = trees().of(List.of(ELM, ASH));
    assertThat(table.notes()).containsExactly("As they stand.");
    assertThat(table.rows())
        .containsExactly(List.of("elm", 4.0, ELM.plants), Arrays.asList("ash", null, ASH.plants));
    assertThat(table.inFull()).isEqualTo(table.rows());
  }

  @Test
  void rowsWithoutAWholePlant_whereTheyAreLeftOut_areForFiguresAlone() {
    Table table = trees().leavingOutParts().of(List.of(ELM, ASH));
    assertThat(table.rows()).containsExactly(List.of("elm", 4.0, ELM.plants));
    assertThat(table.inFull()).hasSize(2);
  }

  @Test
  void rowsMadeWhenAskedFor_areTheSame() {
    assertThat(trees().lazily(List.of(ELM, ASH)).rows())
        .isEqualTo(trees().of(List.of(ELM, ASH)).rows());
    Table table = trees().lazily(List.of(ELM), List.of(ELM, ASH));
    assertThat(table.rows()).hasSize(1);
    assertThat(table.inFull()).hasSize(2);
  }

  @Test
  void columnsOfSeveralTables_standWhereTheyAreNamed() {
    List<ColumnOf<Tree>> shared =
        List.of(new ColumnOf<>(Column.of("at", "at", "", Kind.TEXT), tree -> "field"));
    assertThat(trees().columns(shared).text("last", tree -> "x").of(List.of(ELM)).rows())
        .containsExactly(List.of("elm", 4.0, ELM.plants, "field", "x"));
  }
}
