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
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Habits of those who write their lists between two jobs, each by itself: invented rows, and what a
 * careful person reads in them.
 */
class ListsFromTheYardTest {
  @TempDir Path folder;

  private ListRead read(String... lines) throws IOException {
    Path file = Files.write(folder.resolve("list.csv"), List.of(lines));
    var sheets = OwnFile.read(file, new Findings()).orElseThrow();
    return ListReader.read("list.csv", sheets, OwnWords.NONE, Site.USUAL);
  }

  private static List<String> lots(ListRead read) {
    return read.lots().stream().map(ListsFromTheYardTest::line).toList();
  }

  private static String line(OwnLot lot) {
    return Stream.of(
            lot.row() + " " + lot.ownName(),
            lot.quantity().isPresent() ? "" + lot.quantity().getAsInt() : "",
            shown("trunk", lot.trunkFromMm(), lot.trunkToMm()),
            shown("height", lot.heightCm(), lot.heightCm()),
            lot.pot(),
            lot.form(),
            lot.place(),
            lot.arrived().map(Object::toString).orElse(""),
            lot.note())
        .filter(text -> !text.isEmpty())
        .collect(Collectors.joining(" | "));
  }

  private static String shown(String what, OptionalDouble from, OptionalDouble to) {
    return from.isEmpty()
        ? ""
        : String.format(Locale.ROOT, "%s %.1f", what, from.getAsDouble())
            + (from.equals(to) ? "" : String.format(Locale.ROOT, "-%.1f", to.getAsDouble()));
  }

  @Test
  void list_aboveOneWithMoreHeadings_isNoTitle() throws IOException {
    ListRead read =
        read(
            "FIELD,,,,",
            "Plant,No,Row,Came,",
            "Hornbeam,40,1,Nov 23,",
            "Beech,25,2,Feb 24,",
            ",,,,",
            "POTS,,,,",
            "No,Plant,Bench,Trade,Retail",
            "12,Yew C15,W1,38,75",
            "8,Holm oak C35,W2,95,180");
    assertThat(lots(read))
        .containsExactly(
            "3 Hornbeam | 40 | FIELD | 2023-11 | Row 1",
            "4 Beech | 25 | FIELD | 2024-02 | Row 2",
            "8 Yew C15 | 12 | 15 litre | W1 | Retail 75",
            "9 Holm oak C35 | 8 | 35 litre | W2 | Retail 180");
  }
}
