package growingon.report.plan;

import static org.assertj.core.api.Assertions.assertThat;

import growingon.report.Cells;
import growingon.report.SmallNursery;
import growingon.report.figures.Context;
import growingon.report.model.Column;
import growingon.report.model.Sheet;
import growingon.report.model.Table;
import growingon.report.plan.stock.CountSheet;
import growingon.report.text.Cautions;
import growingon.report.text.Plants;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The count sheet, the assumptions and the notes. */
class PaperSheetsTest {
  private final Context context = SmallNursery.context();

  @Test
  void countSheet_headings_areThoseOfTheDaybookButForPlaceAndExpected() {
    Table count = Cells.of(CountSheet.of(context), "count-sheet").table();
    List<String> daybook =
        List.of(
            "date",
            "lot",
            "what",
            "quantity",
            "grade",
            "quality",
            "trunk mm",
            "trunk spread %",
            "note");

    assertThat(count.columns())
        .extracting(Column::headingWithUnit)
        .containsExactlyInAnyOrderElementsOf(concat(daybook, List.of("place", "expected")));
    assertThat(count.columns())
        .filteredOn(column -> daybook.contains(column.heading()))
        .extracting(column -> column.key().replace('_', ' '))
        .containsExactlyInAnyOrderElementsOf(daybook);
  }

  private static List<String> concat(List<String> first, List<String> next) {
    return Stream.concat(first.stream(), next.stream()).toList();
  }

  @Test
  void countSheet_lots_standInPlaceOrderWithCellsToFill() {
    Cells count = Cells.of(CountSheet.of(context), "count-sheet");

    // in November the hornbeams stand in their winter place; the bought lot is not here yet
    assertThat(count.all("place")).containsExactly("Bench", "Tunnel", "Tunnel", "Ground", "Field");
    assertThat(count.all("lot"))
        .containsExactly("larch-bench", "hb-liners", "hb-older", "larch-big", "oak-field");
    assertThat(count.all("what")).containsOnly("counted");
    assertThat(count.all("quantity")).containsOnlyNulls();
    assertThat(count.all("expected"))
        .extracting(each -> ((Plants) each).whole())
        .containsExactly(20L, 137L, 61L, 24L, 53L);
  }

  @Test
  void assumptions_defaults_areMarkedAndCounted() {
    Sheet sheet = AssumptionsSheet.of(context);
    Cells values = Cells.of(sheet, "assumptions");

    assertThat(values.get(values.row("what", "vigour spread %"), "mark")).isEqualTo("default");
    assertThat(values.get(values.row("what", "order lead months"), "mark")).isNull();
    assertThat(values.get(values.row("what", "order lead months"), "where from"))
        .isEqualTo("nursery.json");
    assertThat(sheet.sentences().get(0)).startsWith("Defaults: 1 of the 2 values below");
  }

  @Test
  void notes_problems_standWorstFirstWithWhereAndWhatToDo() {
    Cells problems = Cells.of(NotesSheet.of(context), "problems");

    assertThat(problems.all("severity")).containsExactly("warning", "notice");
    assertThat(problems.get(problems.rows().get(0), "where"))
        .isEqualTo("stock.xlsx, sheet stock, row 7, column arrived");
    assertThat(problems.get(problems.rows().get(0), "what"))
        .hasToString("lot oak-field is a root ball that arrives in July (July 2025)");
    assertThat(problems.get(problems.rows().get(0), "what to do")).hasToString("check the month");
  }

  @Test
  void notes_cautions_areAllThere() {
    Cells cautions = Cells.of(NotesSheet.of(context), "cautions");

    assertThat(cautions.all("caution"))
        .containsExactly(
            Cautions.LIFTING,
            Cautions.BENCH_LOADS,
            Cautions.PLANT_HEALTH,
            Cautions.SPRAYS,
            Cautions.POISON,
            Cautions.NO_PROMISE,
            Cautions.NO_ADVICE);
  }

  @Test
  void notes_healthNotes_areThoseOfSpeciesInThePlan() {
    Cells notes = Cells.of(NotesSheet.of(context), "plant-health");

    assertThat(notes.all("species")).containsExactly("Larch");
  }
}
