package growingon.load;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Definitions that no lot and no offer makes use of, and slips among them. */
class UnusedTest {
  @TempDir private Path folder;

  @BeforeEach
  void layOut() throws IOException {
    SmallNursery.copyTidy(folder);
  }

  private List<String> problems() {
    return SmallNursery.read(folder).findings().problems().stream()
        .map(problem -> problem.severity() + ": " + problem)
        .filter(sentence -> sentence.contains("no lot and no offer"))
        .toList();
  }

  private void add(String file, String row) throws IOException {
    Path path = folder.resolve(file);
    Files.writeString(path, Files.readString(path).stripTrailing() + "\n" + row + "\n");
  }

  @Test
  void tidyNursery_isToldOfThePotThatNothingUses() {
    assertThat(problems())
        .containsExactly("notice: pots.csv: no lot and no offer uses the pot big tub");
  }

  @Test
  void namesThatNothingUses_areToldOnceATable_withTheNearestInUse() throws IOException {
    add("pots.csv", "tubs,litres,,,,,40,,,9,,,,");
    add("pots.csv", "training pots 2,litres,,,,,40,,,9,,,,");

    assertThat(problems())
        .containsExactly(
            "notice: pots.csv: no lot and no offer uses the pots big tub, tubs and training pots 2"
                + " (nearest in use: training pot)");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "mixes.csv|ligth mix,fine bark,3,,|row 4, column mix|mix|ligth mix|light mix",
        "routes.csv|pot and wirer,stake,arrival,,1,,,,,,,,,,,,,|row 8, column route|route|pot and"
            + " wirer|pot and wire",
        "materials.csv|wirre,m,50,14,,|row 5, column material|material|wirre|wire",
        "components.csv|gritt,20,4,,1.6|row 4, column component|component|gritt|grit",
        "pots.csv|linr pot,square,90,70,95,,,,,1,,,,|row 5, column pot|pot|linr pot|liner pot",
        "places.csv|Yaard,bench,,20,,,,,,,,|row 7, column place|place|Yaard|Yard",
        "grades.csv|smal trees,starter,1,12,,|row 5, column ladder|ladder|smal trees|small trees"
      })
  void nameThatIsNearlyOneInUse_isASlip(
      String file, String row, String where, String what, String name, String near)
      throws IOException {
    add(file, row);

    assertThat(problems())
        .contains(
            "warning: "
                + file
                + ", "
                + where
                + ": no lot and no offer uses this "
                + what
                + ", whose name is nearly that of the "
                + what
                + " "
                + near
                + " in use ("
                + name
                + "); if "
                + near
                + " is meant, write it so");
  }

  @Test
  void namesThatDifferInANumberOnly_areNoSlips() throws IOException {
    add("pots.csv", "training pot 2,litres,,,,,40,,,9,,,,");

    assertThat(problems())
        .containsExactly(
            "notice: pots.csv: no lot and no offer uses the pots big tub and training pot 2"
                + " (nearest in use: training pot)");
  }

  @Test
  void whatAnOfferUsesThatIsNotTaken_isInUse() throws IOException {
    SmallNursery.change(
        folder.resolve("stock.csv"),
        "Yews,Yew,bare root,60,2024-11,,,,20,30,,,,,,,,,Top field,,9,,,field first,,,,,,,,,,,,,\n",
        "");

    assertThat(problems())
        .containsExactly("notice: pots.csv: no lot and no offer uses the pot big tub");
  }

  @Test
  void rowsOfTheStartedExample_areNotTold() throws IOException {
    add("pots.csv", "30 litre,round,30,,,,30.0,training pot,,6.2,10,8,70,1.2");
    SmallNursery.change(folder.resolve("pots.csv"), "30 litre,round,30,,", "30 litre,round,,,");
    add("pots.csv", "15 litre,round,,,,,15,training pot,,3.10,20,45,60,0.6");

    assertThat(problems())
        .as("the price of the second is the grower's own")
        .containsExactly(
            "notice: pots.csv: no lot and no offer uses the pots big tub and 15 litre");
  }

  @Test
  void nurseryWithAnError_isNotToldWhatIsUnused() throws IOException {
    SmallNursery.change(folder.resolve("stock.csv"), "Yews,Yew,", "Yews,Yue,");

    assertThat(problems()).isEmpty();
  }
}
