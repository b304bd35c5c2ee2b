package growingon.load.file;

import static org.assertj.core.api.Assertions.assertThat;

import growingon.load.cell.Findings;
import growingon.load.cell.Range;
import growingon.load.row.As;
import growingon.load.row.Heading;
import growingon.load.row.Row;
import growingon.load.table.place.PlacesTable;
import growingon.problem.Where;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Tables that are read more than once. */
class TablesTest {
  private static final Heading<Double> SQUARE_METRES =
      Heading.number("square metres", As.number(Range.FROM_ZERO));
  private static final Heading<Double> DEPTH =
      Heading.number("bench depth mm", As.number(Range.FROM_ZERO));

  private final Findings first = new Findings();
  private final Tables tables = new Tables(first);

  TablesTest() {
    tables.extend(
        PlacesTable.FORMAT,
        TextRows.grid(
            Where.file("places"),
            List.of(
                Map.of("place", "Bench", "kind", "bench", "square metres", "many"),
                Map.of("place", "Tunnel", "kind", "tunnel", "square metres", "120"))),
        first);
  }

  private static List<Row> rows(Tables of) {
    return of.find(PlacesTable.FORMAT).orElseThrow().rows();
  }

  private static void read(Tables of, Heading<Double> heading) {
    rows(of).forEach(row -> row.get(heading));
  }

  @Test
  void afresh_whatIsFoundIsToldWhereItIsReadAndNowhereElse() {
    Findings second = new Findings();
    read(tables.afresh(second), SQUARE_METRES);
    assertThat(second.problems()).hasSize(1);
    assertThat(second.assumptions()).hasSize(1);
    assertThat(first.problems()).isEmpty();
    assertThat(first.assumptions()).isEmpty();
  }

  @Test
  void afresh_aRowThatFailedIsReadAgain() {
    read(tables, SQUARE_METRES);
    assertThat(first.problems()).hasSize(1);
    Findings again = new Findings();
    List<Row> rows = rows(tables.afresh(again));
    assertThat(rows).allMatch(row -> row.accept(() -> true).isPresent());
    rows.forEach(row -> row.get(SQUARE_METRES));
    assertThat(again.problems()).hasSize(1);
  }

  @Test
  void afresh_aColumnThatIsNotThere_isToldOnceAReading() {
    for (int reading = 0; reading < 2; reading++) {
      Findings told = new Findings();
      read(tables.afresh(told), DEPTH);
      assertThat(told.problems()).hasSize(1);
    }
    assertThat(first.problems()).isEmpty();
  }
}
