package growingon.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import growingon.Office;
import growingon.nursery.library.Library;
import growingon.nursery.library.Taxon;
import java.io.File;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.apache.poi.ss.SpreadsheetVersion;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.usermodel.Workbook;
import org.apache.poi.ss.usermodel.WorkbookFactory;
import org.apache.poi.ss.util.AreaReference;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A folder to type over, and the ten cells. */
class StartTest {
  private static final Map<String, Object> TEN = ten();

  @TempDir private Path temp;
  private Path folder;

  private static Map<String, Object> ten() {
    Map<String, Object> ten = new LinkedHashMap<>();
    ten.put("species", "Hornbeam");
    ten.put("how many", 40);
    ten.put("price each", 30);
    ten.put("carriage for all", 150);
    ten.put("arrival month", "Feb 2027");
    ten.put("trunk mm or girth cm", 38);
    ten.put("firsts and seconds in ten", "5 and 3");
    ten.put("pot litres", 15);
    ten.put("sold at trunk mm", 45);
    ten.put("selling price each", 140);
    return ten;
  }

  @BeforeEach
  void start() {
    folder = temp.resolve("my nursery");
    assertThat(Ran.of("start", folder.toString()).code()).isZero();
  }

  private Ran plan(Path what) {
    return Ran.of("plan", what.toString(), "--out", temp.resolve("report").toString(), "--force");
  }

  private void fill(Map<String, Object> cells) throws IOException {
    change(
        book -> {
          Map<String, Object> left = new LinkedHashMap<>(cells);
          for (Row row : book.getSheet("quick")) {
            Cell line = row.getCell(0);
            Object value = line == null ? null : left.remove(line.getStringCellValue());
            if (value instanceof Number number) {
              row.getCell(1).setCellValue(number.doubleValue());
            } else if (value != null) {
              row.getCell(1).setCellValue(value.toString());
            }
          }
          assertThat(left).isEmpty();
        });
  }

  private interface Change {
    void on(Workbook book);
  }

  private void change(Change change) throws IOException {
    Path file = folder.resolve("nursery.xlsx");
    try (InputStream in = Files.newInputStream(file);
        Workbook book = new XSSFWorkbook(in)) {
      change.on(book);
      Path changed = temp.resolve("changed.xlsx");
      try (OutputStream out = Files.newOutputStream(changed)) {
        book.write(out);
      }
      Files.move(changed, file, StandardCopyOption.REPLACE_EXISTING);
    }
  }

  @Test
  void startedFolder_plannedUntouched_hasNoProblem() throws IOException {
    Ran ran = plan(folder);

    assertThat(ran.err()).isEmpty();
    assertThat(ran.code()).isZero();
    assertThat(ran.out()).contains("Hollow Lane Trees", "0 errors, 0 warnings, 0 notices");
    assertThat(temp.resolve("report/plan.xlsx")).exists();
  }

  @Test
  void quickAnswer_printed_isThreePagesAtMost() throws Exception {
    Office office = Office.in(temp.resolve("office"));
    fill(TEN);
    assertThat(plan(folder).code()).isZero();

    assertThat(office.pages(temp.resolve("report/plan.xlsx"))).isBetween(1L, 3L);
  }

  @Test
  void tenCells_filledIn_areAnsweredWithoutAProblem() throws IOException {
    fill(TEN);

    Ran ran = plan(folder);

    assertThat(ran.err()).isEmpty();
    assertThat(ran.code()).isZero();
    assertThat(ran.out())
        .contains("40 Hornbeam in Feb 2027 at EUR 30.00 each")
        .contains(
            "Does it pay? A fair gamble: it pays in ",
            " of 100 draws",
            "Not known: growth of 3.1 mm")
        .contains("When:", "By season:", "Needs:", "Space:", "Costs:")
        .contains("Most to pay:", "Fewest usable:", "Least price:")
        .contains("when they are ready: kind deciduous, growth mm a year 3.1")
        .contains("0 errors, 0 warnings, 0 notices")
        .contains("empty it to plan the tables");
    assertThat(ran.out().lines().count()).isLessThan(40);
  }

  @Test
  void quickSheet_alone_isAnsweredLikeThatOfTheFolder() throws IOException {
    fill(TEN);
    List<String> inFolder = answer(plan(folder));
    change(
        book -> {
          for (int i = book.getNumberOfSheets() - 1; i >= 0; i--) {
            if (!book.getSheetName(i).equals("quick")) {
              book.removeSheetAt(i);
            }
          }
          book.getAllNames().stream().toList().forEach(book::removeName);
        });
    Path alone = Files.move(folder.resolve("nursery.xlsx"), temp.resolve("quick.xlsx"));

    Ran ran = plan(alone);

    assertThat(ran.err()).isEmpty();
    assertThat(answer(ran)).isEqualTo(inFolder);
  }

  private static List<String> answer(Ran ran) {
    return ran.out()
        .lines()
        .filter(line -> !line.startsWith("Report:") && !line.contains("quick sheet is filled in"))
        .filter(line -> !line.contains("the tables"))
        .toList();
  }

  @Test
  void tenCells_withOneMissing_sayWhich() throws IOException {
    Map<String, Object> nine = new LinkedHashMap<>(TEN);
    nine.remove("pot litres");
    fill(nine);

    Ran ran = plan(folder);

    assertThat(ran.code()).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(ran.err()).contains("sheet quick", "pot litres");
  }

  @Test
  void tenCells_withAFaultyOne_sayWhatToWrite() throws IOException {
    Map<String, Object> faulty = new LinkedHashMap<>(TEN);
    faulty.put("firsts and seconds in ten", "8 and 4");
    faulty.put("trunk mm or girth cm", "thick");
    fill(faulty);

    Ran ran = plan(folder);

    assertThat(ran.code()).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(ran.err())
        .contains("write them as 6 and 2, or one number if you cannot tell them apart")
        .contains("write 35 for a trunk of 35 mm, or 12-14 cm for a girth");
  }

  @Test
  void freeSquareMetres_tooFew_sayHowManyFind() throws IOException {
    Map<String, Object> eleven = new LinkedHashMap<>(TEN);
    eleven.put("free square metres", 3);
    fill(eleven);

    assertThat(plan(folder).out()).containsPattern("but only 3\\.0 m² are free: room for \\d+ of");
  }

  @Test
  void usualValue_typedOver_isNoLongerListedAndMovesTheAnswer() throws IOException {
    fill(TEN);
    Ran usual = plan(folder);
    fill(Map.of("growth mm a year", 9));

    Ran quicker = plan(folder);

    assertThat(quicker.out()).doesNotContain("growth mm a year");
    assertThat(answer(quicker)).doesNotContainSubsequence(answer(usual).get(2));
  }

  @Test
  void folderThatIsNotEmpty_isLeftAsItIs() throws IOException {
    byte[] before = Files.readAllBytes(folder.resolve("nursery.xlsx"));

    Ran ran = Ran.of("start", folder.toString());

    assertThat(ran.code()).isEqualTo(ExitCode.WRONG_USAGE);
    assertThat(ran.err().strip())
        .isEqualTo(folder + " is not empty; name a folder that is new or empty.");
    assertThat(Files.readAllBytes(folder.resolve("nursery.xlsx"))).isEqualTo(before);
    try (Stream<Path> left = Files.list(temp)) {
      assertThat(left.map(path -> path.getFileName().toString())).containsExactly("my nursery");
    }
  }

  @Test
  void startedTwice_hasTheSameBytes() throws IOException {
    Path again = temp.resolve("again");
    assertThat(Ran.of("start", again.toString()).code()).isZero();

    for (String file : List.of("nursery.xlsx", "plan.json")) {
      assertThat(again.resolve(file)).hasSameBinaryContentAs(folder.resolve(file));
    }
  }

  @Test
  void headings_haveNotes_andExpertColumnsAreClosed() throws IOException {
    try (Workbook book = WorkbookFactory.create(folder.resolve("nursery.xlsx").toFile())) {
      for (Sheet sheet : book) {
        if (!List.of("read me", "lists").contains(sheet.getSheetName())) {
          for (Cell heading : sheet.getRow(0)) {
            assertThat(heading.getCellComment())
                .as("%s, %s", sheet.getSheetName(), heading)
                .isNotNull();
          }
        }
      }
      Sheet stock = book.getSheet("stock");
      Cell spread = heading(stock, "trunk spread %");
      assertThat(stock.isColumnHidden(spread.getColumnIndex())).isTrue();
      assertThat(stock.getColumnOutlineLevel(spread.getColumnIndex())).isEqualTo(1);
      assertThat(spread.getCellComment().getString().getString())
          .contains("Unit: %", "If empty: 15");
      assertThat(stock.isColumnHidden(heading(stock, "quantity").getColumnIndex())).isFalse();
    }
  }

  /** Species of a started workbook, each with what it says under library; nothing where empty. */
  private static List<String> species(Path nursery) throws IOException {
    List<String> rows = new ArrayList<>();
    try (Workbook book = WorkbookFactory.create(nursery.resolve("nursery.xlsx").toFile())) {
      Sheet sheet = book.getSheet("species");
      int library = heading(sheet, "library").getColumnIndex();
      for (int row = 1; row <= sheet.getLastRowNum(); row++) {
        Cell name = sheet.getRow(row) == null ? null : sheet.getRow(row).getCell(0);
        if (name != null && !name.getStringCellValue().isEmpty()) {
          Cell cell = sheet.getRow(row).getCell(library);
          rows.add(
              name.getStringCellValue() + ": " + (cell == null ? "" : cell.getStringCellValue()));
        }
      }
    }
    return rows;
  }

  @Test
  void species_ofTheExample_oneIsTheLibrarysAndTwoHaveFiguresOfTheirOwn() throws IOException {
    assertThat(species(folder)).hasSize(3).filteredOn(each -> each.endsWith(": yes")).hasSize(1);
    try (Workbook book = WorkbookFactory.create(folder.resolve("nursery.xlsx").toFile())) {
      String range = book.getName("list_library").getRefersToFormula();
      AreaReference area = new AreaReference(range, SpreadsheetVersion.EXCEL2007);
      List<String> offered = new ArrayList<>();
      for (CellReference each : area.getAllReferencedCells()) {
        Row row = book.getSheet(each.getSheetName()).getRow(each.getRow());
        offered.add(row.getCell(each.getCol()).getStringCellValue());
      }
      assertThat(Library.shipped().taxa()).hasSize(74);
      assertThat(offered)
          .contains("yes", "no", "deciduous", "evergreen")
          .containsAll(Library.shipped().taxa().stream().map(Taxon::name).toList());
    }
  }

  @Test
  void species_thatAreNamed_getARowEach_andAWordThatFitsSeveralIsAsked() throws IOException {
    Path named = temp.resolve("named");
    assertThat(Ran.of("start", named.toString(), "--species", "Field maple; Scots pine").code())
        .isZero();
    assertThat(species(named)).contains("Field maple: yes", "Scots pine: yes");
    assertThat(Ran.of("start", temp.resolve("larch").toString(), "--species", "larch").err())
        .startsWith(
            "The library has several that may be meant by larch: European larch, Japanese larch.");
  }

  private static Cell heading(Sheet sheet, String text) {
    for (Cell cell : sheet.getRow(0)) {
      if (cell.getStringCellValue().equals(text)) {
        return cell;
      }
    }
    throw new AssertionError("no heading " + text);
  }

  @Test
  void dropDownLists_areThereInLibreOffice_andHoldWhatTheSheetsName() throws Exception {
    assumeTrue(hasLibreOffice(), "skipped: LibreOffice (soffice) is not installed");
    Path out = temp.resolve("lo");
    Process process =
        new ProcessBuilder(
                "soffice",
                "-env:UserInstallation=" + temp.resolve("profile").toUri(),
                "--headless",
                "--convert-to",
                "fods",
                "--outdir",
                out.toString(),
                folder.resolve("nursery.xlsx").toString())
            .redirectErrorStream(true)
            .redirectOutput(temp.resolve("lo.txt").toFile())
            .start();
    assertThat(process.waitFor(5, TimeUnit.MINUTES)).isTrue();

    String text = Files.readString(out.resolve("nursery.fods"));

    assertThat(text)
        .contains("cell-content-is-in-list(list_species)")
        .contains("cell-content-is-in-list(list_route)")
        .contains("cell-content-is-in-list(list_form)")
        .contains("table:name=\"list_species\"")
        .contains(">Japanese larch<");
  }

  private static boolean hasLibreOffice() {
    return Stream.of(System.getenv("PATH").split(File.pathSeparator))
        .anyMatch(path -> Files.isExecutable(Path.of(path).resolve("soffice")));
  }
}
