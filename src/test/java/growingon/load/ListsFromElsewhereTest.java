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

  @Test
  void rowThatARemarkSaysIsSoldOrderedOrDead_isNoStock() throws IOException {
    ListRead read =
        read(
            "soort;aantal;maat;opmerking",
            "haagbeuk;12;60/80;VERKOCHT fam. Ploeg",
            "beuk;7;80/100;verk. 12.04.25 aan Ploeg",
            "eik;9;80/100;besteld bij Onland, komt wk 10",
            "linde;8;80/100;commandé, pas encore reçu",
            "iep;6;80/100;se secó en agosto",
            "taxus baccata;5;60/80;dode tak",
            "veldesdoorn;4;60/80;niet verkocht voor 2027",
            "grove den;3;60/80;1 ex. verkocht, staat er nog",
            "jeneverbes;2;60/80;verkocht 1 st");
    assertThat(read.lots().stream().map(OwnLot::row)).containsExactly(7, 8, 9, 10);
    assertThat(read.notices())
        .contains(
            "5 rows with 42 plants are marked as sold, ordered or no stock and not read (rows 2, 3, 4, 5, 6)");
    assertThat(asked(read))
        .contains(
            "9 quantity: is the number right? the note says: 1 ex. verkocht, staat er nog",
            "10 quantity: is the number right? the note says: verkocht 1 st");
  }

  @Test
  void rowThatComesAfterTheCount_isNoStockYet() throws IOException {
    ListRead read =
        read(
            "Giacenze al 02/02/2026;;",
            "pianta;quantità;arrivo",
            "carpino bianco;28;nov 2019",
            "leccio;22;mar 17",
            "tasso;45;ott 2018",
            "faggio;12;nov 2020",
            "olivo;60;mar 26");
    assertThat(read.lots().stream().map(OwnLot::row)).containsExactly(3, 4, 5, 6);
    assertThat(read.notices())
        .contains("1 row with 60 plants is to come after the count and not read (row 7)");
  }

  @Test
  void titleOlderThanMuchOfTheList_isNotTheDayOfTheCount() throws IOException {
    ListRead read =
        read(
            "Giacenze al 02/02/2020;;",
            "pianta;quantità;arrivo",
            "carpino bianco;28;nov 2021",
            "leccio;22;mar 22",
            "tasso;45;ott 2018");
    assertThat(read.lots().stream().map(OwnLot::row)).containsExactly(3, 4, 5);
  }
}
