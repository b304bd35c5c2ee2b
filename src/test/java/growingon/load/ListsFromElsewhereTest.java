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
 * Habits of lists in German, French, Dutch, Italian and Spanish, each by itself: invented rows, and
 * what a careful person reads in them.
 */
class ListsFromElsewhereTest {
  @TempDir Path folder;

  private ListRead read(String... lines) throws IOException {
    Path file = Files.write(folder.resolve("list.csv"), List.of(lines));
    var sheets = OwnFile.read(file, new Findings()).orElseThrow();
    return ListReader.read("list.csv", sheets, OwnWords.NONE, Site.USUAL);
  }

  private static List<String> lots(ListRead read) {
    return read.lots().stream().map(ListsFromElsewhereTest::line).toList();
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
            shown("cost", lot.unitCost(), lot.unitCost()),
            shown("price", lot.sellingPrice(), lot.sellingPrice()),
            lot.note())
        .filter(text -> !text.isEmpty())
        .collect(Collectors.joining(" | "));
  }

  private static String shown(String what, OptionalDouble from, OptionalDouble to) {
    return from.isEmpty()
        ? ""
        : String.format(Locale.ROOT, "%s %.2f", what, from.getAsDouble())
            + (from.equals(to) ? "" : String.format(Locale.ROOT, "-%.2f", to.getAsDouble()));
  }

  private static List<String> asked(ListRead read) {
    return read.questions().stream()
        .filter(each -> !each.nod())
        .map(each -> each.row() + " " + each.column() + ": " + each.question())
        .toList();
  }

  @Test
  void wordsBesideTheRows_withoutAHeading_areRemarks() throws IOException {
    ListRead read =
        read(
            "soort;aantal;maat;;;",
            "haagbeuk;12;60/80;scheef;;",
            "beuk;7;80/100;;;een tafel ernaast",
            "totaal;19;;;;");
    assertThat(lots(read))
        .containsExactly("2 haagbeuk | 12 | height 70.00 | scheef", "3 beuk | 7 | height 90.00");
    assertThat(read.headings())
        .anyMatch(head -> head.heading().equals("D (no heading)") && head.is("note"));
  }
}
