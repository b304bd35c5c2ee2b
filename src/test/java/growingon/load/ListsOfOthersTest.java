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
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.YearMonth;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Lists as unlike each other as nurseries keep them, each against what was read in it by eye: one
 * line a lot. The lists and all names of firms in them are invented.
 */
class ListsOfOthersTest {
  private static final Path LISTS = Path.of("src/test/resources/own/others");

  /** Set to write anew what is read; then read every line that changed. */
  private static final boolean WRITE = Boolean.getBoolean("lists.write");

  static Stream<String> lists() throws IOException {
    try (Stream<Path> files = Files.list(LISTS)) {
      return files
          .map(file -> file.getFileName().toString())
          .filter(name -> !name.endsWith(".read.txt"))
          .sorted()
          .toList()
          .stream();
    }
  }

  private static ListRead read(String file) {
    Findings findings = new Findings();
    Path path = LISTS.resolve(file);
    var sheets = OwnFile.read(path, findings).orElseThrow();
    return file.matches("09.*|6\\d .*supplier.*")
        ? ListReader.readOffers(path, sheets, OwnWords.NONE, Site.USUAL, YearMonth.of(2026, 11))
        : ListReader.read(path, sheets, OwnWords.NONE, Site.USUAL);
  }

  private static String line(OwnLot lot) {
    return Stream.of(
            lot.sheet() + " " + lot.row(),
            lot.ownName(),
            lot.taxon().orElse("? " + lot.standIn()),
            lot.quantity().isPresent() ? "" + lot.quantity().getAsInt() : "-",
            lot.about() ? "about" : "",
            shown("trunk", lot.trunkFromMm()) + shown("-", lot.trunkToMm()),
            lot.pot(),
            shown("height", lot.heightCm()),
            lot.form(),
            lot.place(),
            lot.arrived().map(Object::toString).orElse(""),
            lot.potted().map(month -> "potted " + month).orElse(""),
            shown("cost", lot.unitCost()),
            shown("price", lot.sellingPrice()),
            lot.note())
        .collect(Collectors.joining(" | "));
  }

  private static String shown(String what, OptionalDouble value) {
    return value.isPresent()
        ? what + " " + String.format(Locale.ROOT, "%.2f", value.getAsDouble())
        : "";
  }

  @ParameterizedTest
  @MethodSource("lists")
  void list_ofAnotherKind_isReadAsAPersonReadsIt(String file) throws IOException {
    ListRead read = read(file);
    List<String> lines =
        Stream.of(
                read.lots().stream().map(ListsOfOthersTest::line),
                read.leftOut(read.asked()).stream().map(row -> "left out: " + row),
                read.headings().stream()
                    .filter(head -> head.ours().equals("?"))
                    .map(head -> "asked: " + head.heading() + " " + head.choices()))
            .flatMap(each -> each)
            .toList();
    Path expected = LISTS.resolve(file + ".read.txt");
    if (WRITE) {
      Files.write(expected, lines, StandardCharsets.UTF_8);
    }
    assertThat(lines).isEqualTo(Files.readAllLines(expected, StandardCharsets.UTF_8));
  }
}
