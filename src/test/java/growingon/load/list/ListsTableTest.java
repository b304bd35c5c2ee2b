package growingon.load.list;

import static org.assertj.core.api.Assertions.assertThat;

import growingon.load.LaidOut;
import growingon.load.LoadOptions;
import growingon.load.cell.Findings;
import growingon.load.own.ListReader;
import growingon.load.own.heading.HeadingRead;
import growingon.load.own.heading.OwnWords;
import growingon.load.own.heading.SizeGroup;
import growingon.load.own.lot.Site;
import growingon.load.own.row.ListRead;
import growingon.load.own.row.SheetAccount;
import growingon.load.own.sheet.Sheet;
import growingon.load.own.text.Keys;
import growingon.load.own.text.Meaning;
import growingon.problem.Loaded;
import growingon.problem.Problem;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * How far the lists go that others have written: a table for whoever decides, written to
 * target/lists.md and shown in src/doc/own-list.md.
 */
class ListsTableTest {
  private static final Path LISTS = Path.of("src/test/resources/own");
  private static final LocalDate TODAY = LocalDate.of(2026, 11, 28);
  private static final String HEAD =
      "| list | rows | lots | headings understood | asked | errors | cells before a plan | cells in to fill |\n"
          + "| --- | --- | --- | --- | --- | --- | --- | --- |\n";

  private static List<Path> lists() throws IOException {
    List<Path> lists = new ArrayList<>();
    for (Path folder : List.of(LISTS, LISTS.resolve("others"))) {
      try (Stream<Path> files = Files.list(folder)) {
        files
            .filter(file -> file.toString().matches(".*\\.(csv|xlsx)"))
            .filter(file -> !file.toString().matches(".*(expected|headings-check).*"))
            .sorted()
            .forEach(lists::add);
      }
    }
    return lists;
  }

  private static boolean isOfASupplier(Path file) {
    String name = file.getFileName().toString();
    return name.startsWith("09") || name.contains("supplier") || name.contains("penwick");
  }

  private static ListRead read(Path file) {
    List<Sheet> sheets = OwnFile.read(file, new Findings()).orElseThrow();
    return isOfASupplier(file)
        ? ListReader.readOffers(file, sheets, OwnWords.NONE, Site.USUAL, YearMonth.from(TODAY))
        : ListReader.read(file, sheets, OwnWords.NONE, Site.USUAL);
  }

  private static Loaded<LaidOut> laidOut(Path file) {
    List<Path> one = List.of(file);
    return LaidOut.of(
        isOfASupplier(file) ? List.of() : one,
        isOfASupplier(file) ? one : List.of(),
        Path.of("target/mine"),
        "mine",
        new LoadOptions(TODAY));
  }

  private static String line(Path file) {
    ListRead read = read(file);
    Map<String, HeadingRead> headings = new LinkedHashMap<>();
    read.headings().stream()
        .filter(head -> head.column() < SizeGroup.SIZE_COLUMN)
        .forEach(head -> headings.putIfAbsent(Keys.of(head.heading()), head));
    long open = headings.values().stream().filter(head -> head.is(Meaning.OPEN)).count();
    Loaded<LaidOut> laid = laidOut(file);
    List<List<String>> fills = laid.value().map(LaidOut::fills).orElse(List.of());
    int needed = LaidOut.fillColumns().indexOf("needed");
    return "| %s | %d | %d | %d of %d | %d | %d | %d | %d |\n"
        .formatted(
            file.getFileName(),
            read.accounts().stream().mapToInt(SheetAccount::rows).sum(),
            read.lots().size(),
            headings.size() - open,
            headings.size(),
            open + read.questions().stream().filter(each -> !each.nod()).count(),
            laid.problems().stream().filter(Problem::isError).count(),
            fills.stream().filter(cells -> cells.get(needed).equals("yes")).count(),
            laid.value().map(LaidOut::asked).orElse(0));
  }

  @Test
  void tableOfLists_isAsTheDocumentShowsIt() throws IOException {
    StringBuilder table = new StringBuilder(HEAD);
    for (Path file : lists()) {
      table.append(line(file));
    }
    Files.writeString(Files.createDirectories(Path.of("target")).resolve("lists.md"), table);
    assertThat(Files.readString(Path.of("src/doc/own-list.md"))).contains(table);
  }
}
