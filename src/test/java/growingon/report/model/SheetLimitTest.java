package growingon.report.model;

import static org.assertj.core.api.Assertions.assertThat;

import growingon.report.text.Phrases;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;

class SheetLimitTest {
  private static Table table(String name, int rows) {
    return new Table(
        name,
        "All " + name,
        List.of(),
        List.of(Column.of("lot", "lot", "", Kind.TEXT)),
        Collections.nCopies(rows, List.of("maple")));
  }

  @Test
  void tableOfMoreRowsThanTheLimit_leavesItsSheet_andASentenceTellsWhereItIs() {
    Table longOne = table("jobs", 6);
    Table shortOne = table("pots", 5);
    Sheet sheet =
        new Sheet("Jobs", List.of("By month."), List.of(longOne, shortOne), List.of(), true);

    SheetLimit limited = SheetLimit.of(List.of(sheet), 5, Phrases.PLAIN);

    assertThat(limited.tables()).containsExactly(longOne);
    assertThat(limited.sheets())
        .containsExactly(
            new Sheet(
                "Jobs",
                List.of(
                    "By month.",
                    "All jobs: 6 lines, too many for a sheet; they are in tables/jobs.csv."),
                List.of(shortOne),
                List.of(),
                true));
  }

  @Test
  void tablesWithinTheLimit_stayWhereTheyAre() {
    Sheet sheet = Sheet.of("Pots", table("pots", 5));

    SheetLimit limited = SheetLimit.of(List.of(sheet), 5, Phrases.PLAIN);

    assertThat(limited.sheets()).containsExactly(sheet);
    assertThat(limited.tables()).isEmpty();
  }
}
