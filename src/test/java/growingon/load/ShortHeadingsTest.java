package growingon.load;

import static org.assertj.core.api.Assertions.assertThat;

import growingon.load.cell.Findings;
import growingon.load.list.OwnFile;
import growingon.load.own.ListReader;
import growingon.load.own.heading.OwnWords;
import growingon.load.own.lot.OwnLot;
import growingon.load.own.lot.Site;
import growingon.load.own.row.ListRead;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Headings so short that they may be several things: what stands below and beside them decides. */
class ShortHeadingsTest {
  @TempDir Path folder;

  private ListRead read(String text) throws IOException {
    Path file = folder.resolve("list.csv");
    Files.writeString(file, text);
    return ListReader.read(
        file, OwnFile.read(file, new Findings()).orElseThrow(), OwnWords.NONE, Site.USUAL);
  }

  private static String ours(ListRead list, String heading) {
    return list.headings().stream()
        .filter(head -> head.heading().equals(heading))
        .findFirst()
        .orElseThrow()
        .ours();
  }

  private static List<Integer> numbers(ListRead list) {
    return list.lots().stream().map(OwnLot::quantity).map(each -> each.orElse(0)).toList();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        // the number, where nothing else is
        "Pianta;Vaso;N | Acero campestre;C10;40 | Carpino;C10;30 | quantity",
        // codes that all differ
        "Pianta;Vaso;Qta;N | Acero campestre;C10;40;A7 | Carpino;C10;30;B3 | lot",
        // a count of the rows
        "Pianta;Vaso;Qta;N | Acero campestre;C10;40;1 | Carpino;C10;30;2 | not read",
        // a side of the yard, stems, or a feed
        "Plant;Pot;Qty;N | Field maple;C10;40;N | Hornbeam;C10;30;N | ?",
        "Plant;Pot;Qty;N | Field maple;C10;40;3 | Hornbeam;C10;30;3 | ?",
        "Plant;Pot;N;Qty | Field maple;C10;NE;40 | Hornbeam;C10;NE;30 | ?"
      })
  void n_isTakenForTheNumberOnlyWhereItIs(String heads, String one, String two, String ours)
      throws IOException {
    ListRead list = read(String.join("\n", heads, one, two) + "\n");
    assertThat(ours(list, "N")).isEqualTo(ours);
    assertThat(numbers(list)).containsExactly(40, 30);
  }

  @Test
  void now_isWhatThereIs() throws IOException {
    ListRead list = read("Plant,Pot,Now,Price\nField maple,C10,40,9.50\nHornbeam,C10,30,9.00\n");
    assertThat(ours(list, "Now")).isEqualTo("quantity");
    assertThat(numbers(list)).containsExactly(40, 30);
  }

  @ParameterizedTest
  @CsvSource({"£9.50,£9.00", "9.50,9.25"})
  void now_behindWhatItWas_isThePrice(String one, String two) throws IOException {
    ListRead list =
        read(
            "Plant,Pot,Qty,Was,Now\nField maple,C10,40,£12.50,%s\nHornbeam,C10,30,£11.00,%s\n"
                .formatted(one, two));
    assertThat(ours(list, "Now")).isEqualTo("selling price");
    assertThat(numbers(list)).containsExactly(40, 30);
    assertThat(list.lots().get(0).sellingPrice()).hasValue(9.5);
  }

  @Test
  void now_thatMayBeEither_isAsked() throws IOException {
    ListRead list = read("Plant,Pot,Qty,Now\nField maple,C10,40,12\nHornbeam,C10,30,9\n");
    assertThat(ours(list, "Now")).isEqualTo("?");
    assertThat(numbers(list)).containsExactly(40, 30);
  }

  /** In German and Dutch lists the plants of a pack, which the number of plants already counts. */
  @ParameterizedTest
  @CsvSource({"10,8", "St,Pal."})
  void ve_leavesTheNumberOfPlantsAsItIs(String one, String two) throws IOException {
    ListRead list =
        read(
            "Pflanze;Topf;Menge;VE\nFeldahorn;C10;40;%s\nHainbuche;C10;30;%s\n"
                .formatted(one, two));
    assertThat(numbers(list)).containsExactly(40, 30);
    assertThat(list.asked()).isEmpty();
  }
}
