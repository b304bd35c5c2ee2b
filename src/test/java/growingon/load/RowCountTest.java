package growingon.load;

import static org.assertj.core.api.Assertions.assertThat;

import growingon.load.source.RowCount;
import growingon.problem.Problem;
import growingon.problem.Where;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.streaming.SXSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Every row is accepted or reported, whatever stands in it. */
class RowCountTest {
  private static final List<String> TABLES =
      List.of(
          "stock.csv",
          "offers.csv",
          "routes.csv",
          "pots.csv",
          "places.csv",
          "demand.csv",
          "species.csv",
          "mixes.csv",
          "grades.csv",
          "materials.csv",
          "care.csv",
          "hours.csv",
          "other cash.csv",
          "components.csv",
          "qualities.csv",
          "daybook.csv");

  @Provide
  Arbitrary<String> typed() {
    return Arbitraries.oneOf(
        Arbitraries.of(
            "",
            "0",
            "-1",
            "1e9",
            "5 %",
            "abc",
            "Rowan",
            "2027-03",
            "yes",
            "*",
            "every month",
            "100000000000",
            "1,5",
            "arrival",
            "12 mm",
            "liner pot",
            "Yews",
            "pot and wire"),
        Arbitraries.strings().ofMaxLength(12));
  }

  @Property(tries = 150)
  void cellWithAnythingInIt_leavesNoRowUncounted(
      @ForAll @IntRange(min = 0, max = 15) int table,
      @ForAll @IntRange(min = 1, max = 40) int row,
      @ForAll @IntRange(min = 0, max = 40) int column,
      @ForAll("typed") String text)
      throws IOException {
    Path folder = Files.createTempDirectory("rows");
    try {
      SmallNursery.copyTidy(folder);
      SmallNursery.copy("daybook", folder);
      Path file = folder.resolve(TABLES.get(table));
      List<String> lines = new ArrayList<>(Files.readAllLines(file));
      int changed = 1 + row % (lines.size() - 1);
      lines.set(changed, withCell(lines.get(changed), column, text));
      Files.write(file, lines);

      Loader.Reading reading = SmallNursery.read(folder);

      assertThat(reading.rows().accepted() + reading.rows().reported())
          .isEqualTo(reading.rows().read());
      assertThat(reading.rows().reported()).isEqualTo(rowsWithErrors(reading));
      assertThat(reading.inputs().isPresent()).isEqualTo(!reading.findings().hasErrors());
    } finally {
      delete(folder);
    }
  }

  private static String withCell(String line, int column, String text) {
    String delimiter = line.contains(";") ? ";" : ",";
    String[] cells = line.split(delimiter, -1);
    cells[column % cells.length] = '"' + text.replace("\"", "\"\"") + '"';
    return String.join(delimiter, cells);
  }

  private static int rowsWithErrors(Loader.Reading reading) {
    Set<Where> rows =
        reading.findings().problems().stream()
            .filter(Problem::isError)
            .map(problem -> problem.where().column(""))
            .filter(where -> where.file().endsWith(".csv") && where.row() > 1)
            .collect(Collectors.toSet());
    return rows.size();
  }

  private static void delete(Path folder) throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      for (Path file : files.toList()) {
        Files.delete(file);
      }
    }
    Files.delete(folder);
  }

  @Test
  void tidyNursery_hasEveryRowAccepted(@TempDir Path folder) throws IOException {
    SmallNursery.copyTidy(folder);

    assertThat(SmallNursery.read(folder).rows()).isEqualTo(new RowCount(52, 52, 0));
  }

  @Test
  void stockOfFiveThousandRows_isReadWhole(@TempDir Path folder) throws IOException {
    SmallNursery.copyTidy(folder);
    Files.delete(folder.resolve("stock.csv"));
    try (SXSSFWorkbook book = new SXSSFWorkbook()) {
      Sheet sheet = book.createSheet("stock");
      Books.row(
          sheet,
          0,
          0,
          "lot",
          "species",
          "form",
          "quantity",
          "arrived",
          "trunk mm",
          "trunk spread %",
          "pot",
          "place",
          "gap mm",
          "route",
          "last step",
          "kept",
          "supplier");
      for (int row = 1; row <= 5000; row++) {
        Books.row(
            sheet,
            row,
            0,
            "lot " + row,
            "Rowan",
            "container",
            10 + row,
            "2025-03",
            12.5,
            15,
            "liner pot",
            "North bench",
            10,
            "pot and wire",
            "wire",
            1,
            "Uplands Seedlings");
      }
      Books.save(book, folder.resolve("stock.xlsx"));
    }

    Loader.Reading reading = SmallNursery.read(folder);

    assertThat(reading.inputs().orElseThrow().stockRows()).isEqualTo(5000);
  }
}
