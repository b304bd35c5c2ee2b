package growingon.load;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A heading or table that is missing is one error, however many rows suffer from it. */
class OneCauseOneErrorTest {
  @TempDir private Path folder;

  @BeforeEach
  void layOut() throws IOException {
    SmallNursery.copyTidy(folder);
  }

  private void stockOf(int lots, String trunkHeading) throws IOException {
    StringBuilder stock =
        new StringBuilder("lot,species,form,quantity,arrived," + trunkHeading + ",pot,route\n");
    for (int lot = 1; lot <= lots; lot++) {
      stock.append("lot " + lot + ",Rowan,container,20,2025-03,14,liner pot,pot and wire\n");
    }
    Files.writeString(folder.resolve("stock.csv"), stock);
    SmallNursery.change(folder.resolve("plan.json"), "\"spring liners\": 200", "");
  }

  @Test
  void headingOfTrunks_thatIsMistyped_isOneErrorForAllLots() throws IOException {
    stockOf(21, "trnk mm");

    assertThat(SmallNursery.problems(folder))
        .containsExactly(
            "warning: stock.csv, row 1: this heading is not known, its column is not read (trnk"
                + " mm); the nearest known one is trunk mm",
            "error: stock.csv, row 1: the heading trunk mm is missing (trnk mm); rename trnk mm if"
                + " it is meant");
  }

  @Test
  void headingThatSomeRowsNeed_isOneErrorAtTheHeadings() throws IOException {
    StringBuilder daybook = new StringBuilder("date,lot,what,quantty\n");
    for (int day = 1; day <= 21; day++) {
      daybook.append("2027-03-%02d,Yews,died,1\n".formatted(day));
    }
    Files.writeString(folder.resolve("daybook.csv"), daybook);

    assertThat(SmallNursery.problems(folder))
        .containsExactly(
            "warning: daybook.csv, row 1: this heading is not known, its column is not read"
                + " (quantty); the nearest known one is quantity",
            "error: daybook.csv, row 1: the heading quantity is missing (quantty); rename quantty"
                + " if it is meant");
  }

  @Test
  void valueUnderAHeadingThatIsThere_isStillAskedForInItsRow() throws IOException {
    stockOf(3, "trunk mm");
    SmallNursery.change(
        folder.resolve("stock.csv"), "lot 2,Rowan,container,20", "lot 2,Rowan,container,");

    assertThat(SmallNursery.problems(folder))
        .containsExactly(
            "error: stock.csv, row 3, column quantity: this value is missing; fill it in");
  }

  @Test
  void speciesThatAreNowhereGiven_areOneError() throws IOException {
    stockOf(18, "trunk mm");
    Files.delete(folder.resolve("species.csv"));
    Files.delete(folder.resolve("species.json"));

    assertThat(SmallNursery.problems(folder))
        .containsExactly(
            "error: "
                + folder.getFileName()
                + ": there is neither a table species nor species.json; add one of them");
  }

  @Test
  void tableThatIsNotThere_isOneErrorAtTheFirstRowThatNamesIt() throws IOException {
    stockOf(18, "trunk mm");
    Files.delete(folder.resolve("pots.csv"));

    assertThat(SmallNursery.problems(folder))
        .containsExactly(
            "error: routes.csv, row 2, column pot: there is no table pots, which should define"
                + " this (liner pot); add a sheet of that name to a workbook of the folder, or"
                + " pots.csv");
  }

  @Test
  void headingsOfAQuickSheet_thatAreWrong_areNotFollowedByItsTenCells() throws IOException {
    Files.writeString(
        folder.resolve("quick.csv"), "line,fil in,example\nspecies,Rowan,\nhow many,20,\n");
    Files.delete(folder.resolve("stock.csv"));
    Files.delete(folder.resolve("plan.json"));

    assertThat(SmallNursery.problems(folder))
        .containsExactly(
            "error: quick.csv, row 1: the heading fill in is missing (fil in); rename fil in if it"
                + " is meant",
            "warning: quick.csv, row 1: this heading is not known, its column is not read (fil"
                + " in); the nearest known one is fill in");
  }
}
