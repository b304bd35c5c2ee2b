package growingon.load;

import static org.assertj.core.api.Assertions.assertThat;

import growingon.nursery.Inputs;
import growingon.nursery.market.Quality;
import growingon.nursery.record.DaybookLine;
import growingon.nursery.record.DaybookLine.What;
import growingon.plan.Planned;
import growingon.problem.Problem;
import growingon.report.plan.PlanReport;
import growingon.write.ReportFolder;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The count sheet of a report, filled in and put into the nursery folder, is a daybook. */
class CountSheetReadBackTest {
  private static final LocalDate DAY = LocalDate.of(2026, 11, 21);

  @TempDir private static Path reports;
  @TempDir private Path nursery;
  private static Path report;

  /** Once, because writing a report takes longer than all else here. */
  @BeforeAll
  static void writeReport(@TempDir Path planned) throws IOException {
    SmallNursery.copyTidy(planned);
    Inputs inputs = SmallNursery.read(planned).inputs().orElseThrow();
    report = reports.resolve("first plan");
    ReportFolder.write(PlanReport.of(Planned.weighed(inputs), List.of()), report);
  }

  @BeforeEach
  void layOut() throws IOException {
    SmallNursery.copyTidy(nursery);
  }

  @Test
  void sheet_filledInAndNamedDaybook_isReadBack() throws IOException {
    try (XSSFWorkbook book =
        new XSSFWorkbook(Files.newInputStream(report.resolve("details.xlsx")))) {
      Sheet sheet = book.getSheet("Count sheet");
      Map<String, Integer> columns = Filling.columns(sheet);
      Row rowans = Filling.row(sheet, columns, "12");
      fill(rowans, columns, "date", DAY);
      fill(rowans, columns, "quantity", 228);
      fill(rowans, columns, "grade", "starter");
      fill(rowans, columns, "quality", "first");
      fill(rowans, columns, "trunk mm", 15.25);
      fill(rowans, columns, "trunk spread %", 16);
      Row yews = Filling.row(sheet, columns, "Yews");
      fill(yews, columns, "date", DAY);
      fill(yews, columns, "quantity", 57);
      fill(yews, columns, "note", "three browsed by deer");
      Filling.keepOnly(book, sheet);
      book.setSheetName(0, "daybook");
      Books.save(book, nursery.resolve("counted in November.xlsx"));
    }

    assertThat(SmallNursery.problems(nursery))
        .containsExactly(
            "notice: counted in November.xlsx, sheet daybook: 1 row to count was left blank and is"
                + " passed over");
    assertCounted(SmallNursery.read(nursery).inputs().orElseThrow().daybook());
  }

  private static void assertCounted(List<DaybookLine> daybook) {
    assertThat(daybook).extracting(DaybookLine::lot).containsExactlyInAnyOrder("12", "Yews");
    assertThat(daybook).extracting(DaybookLine::what).containsOnly(What.COUNTED);
    assertThat(daybook).extracting(DaybookLine::date).containsOnly(DAY);
    DaybookLine rowans = of("12", daybook);
    assertThat(rowans.quantity()).hasValue(228);
    assertThat(rowans.grade()).contains("starter");
    assertThat(rowans.quality()).contains(Quality.FIRST);
    assertThat(rowans.trunkMm()).hasValue(15.25);
    assertThat(rowans.trunkSpread()).hasValue(0.16);
    assertThat(of("Yews", daybook).quantity()).hasValue(57);
    assertThat(of("Yews", daybook).note()).isEqualTo("three browsed by deer");
  }

  private static DaybookLine of(String lot, List<DaybookLine> daybook) {
    return daybook.stream().filter(line -> line.lot().equals(lot)).findFirst().orElseThrow();
  }

  /** A date as a spreadsheet keeps one that is typed. */
  private static void fill(Row row, Map<String, Integer> columns, String heading, Object value) {
    Books.row(row.getSheet(), row.getRowNum(), columns.get(heading), value);
  }

  @Test
  void table_filledInAndNamedDaybook_isReadBack() throws IOException {
    List<String> filled = new ArrayList<>();
    for (String line : Files.readAllLines(report.resolve("tables/count-sheet.csv"))) {
      String rest = "counted,,,,,,";
      String rowans = DAY + ",counted,228,starter,first,15.25,16,";
      String yews = DAY + ",counted,57,,,,,three browsed by deer";
      filled.add(
          line.contains(",12,")
              ? line.replace("," + rest, rowans)
              : line.contains(",Yews,") ? line.replace("," + rest, yews) : line);
    }
    Files.write(nursery.resolve("daybook.csv"), filled);

    assertThat(SmallNursery.problems(nursery))
        .as("%s", filled)
        .containsExactly("notice: daybook.csv: 1 row to count was left blank and is passed over");
    assertCounted(SmallNursery.read(nursery).inputs().orElseThrow().daybook());
  }

  @Test
  void sheet_asItIsPrinted_isReadWithoutAFault() throws IOException {
    try (XSSFWorkbook book =
        new XSSFWorkbook(Files.newInputStream(report.resolve("details.xlsx")))) {
      Filling.keepOnly(book, book.getSheet("Count sheet"));
      book.setSheetName(0, "Daybook");
      Books.save(book, nursery.resolve("to count.xlsx"));
    }

    Loader.Reading reading = SmallNursery.read(nursery);

    assertThat(reading.findings().problems()).filteredOn(Problem::isError).isEmpty();
    assertThat(reading.inputs().orElseThrow().daybook()).isEmpty();
  }

  /** Finds its way about a sheet as somebody does who fills it in. */
  private static final class Filling {
    private Filling() {}

    static Map<String, Integer> columns(Sheet sheet) {
      for (Row row : sheet) {
        Map<String, Integer> columns = new HashMap<>();
        row.forEach(cell -> columns.put(text(cell), cell.getColumnIndex()));
        if (columns.containsKey("lot") && columns.containsKey("quantity")) {
          return columns;
        }
      }
      throw new AssertionError("no headings");
    }

    static Row row(Sheet sheet, Map<String, Integer> columns, String lot) {
      for (Row row : sheet) {
        Cell cell = row.getCell(columns.get("lot"));
        if (cell != null && text(cell).equals(lot)) {
          return row;
        }
      }
      throw new AssertionError("no lot " + lot);
    }

    private static String text(Cell cell) {
      return cell.toString();
    }

    static void keepOnly(XSSFWorkbook book, Sheet sheet) {
      for (int i = book.getNumberOfSheets() - 1; i >= 0; i--) {
        if (book.getSheetAt(i) != sheet) {
          book.removeSheetAt(i);
        }
      }
    }
  }
}
