package growingon.command;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.function.Consumer;
import org.apache.poi.hssf.usermodel.HSSFWorkbook;
import org.apache.poi.poifs.crypt.EncryptionInfo;
import org.apache.poi.poifs.crypt.EncryptionMode;
import org.apache.poi.poifs.crypt.Encryptor;
import org.apache.poi.poifs.filesystem.POIFSFileSystem;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.usermodel.Workbook;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.streaming.SXSSFWorkbook;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Own lists as nobody would wish them: each is read or refused in a sentence. */
class HostileListsTest {
  private static final String[] HEADINGS = {"Plant", "Size", "Qty"};
  private static final Object[][] TREES = {
    {"Field maple", "C10", 40}, {"Hornbeam", "C10", 30}, {"Yew", "C5", 20}
  };

  @TempDir Path folder;

  private Ran plan(Path list) {
    Ran ran =
        Ran.of(
            "plan",
            list.toString(),
            "--draws",
            "0",
            "--force",
            "--out",
            folder.resolve("report").toString());
    assertThat(ran.code()).as(ran.err()).isIn(0, 2, 3);
    assertThat(ran.out() + ran.err()).doesNotContain("Exception", "\tat ", "our fault");
    if (ran.code() != 0) {
      assertThat(ran.err()).isNotBlank();
      assertThat(ran.err().lines().count()).isLessThanOrEqualTo(12);
    }
    return ran;
  }

  private void assertRead(Path list, int lots, int plants) throws IOException {
    Ran ran = plan(list);
    assertThat(ran.err()).isEmpty();
    JsonNode rows =
        new ObjectMapper()
            .readTree(folder.resolve("report/figures.json").toFile())
            .findValue("stock-as-read")
            .get("rows");
    assertThat(rows).hasSize(lots);
    assertThat(ran.out()).contains("%,d plants".formatted(plants));
  }

  private void assertRefused(Path list, String sentence) {
    Ran ran = plan(list);
    assertThat(ran.code()).isEqualTo(3);
    assertThat(ran.err()).contains(sentence);
    assertThat(folder.resolve("report")).doesNotExist();
  }

  private Path csv(String text) throws IOException {
    return Files.writeString(folder.resolve("list.csv"), text);
  }

  private Path book(Consumer<Sheet> fill) throws IOException {
    try (Workbook book = new XSSFWorkbook()) {
      fill.accept(book.createSheet("Sheet1"));
      return written(book, "list.xlsx");
    }
  }

  private Path written(Workbook book, String name) throws IOException {
    Path file = folder.resolve(name);
    try (OutputStream out = Files.newOutputStream(file)) {
      book.write(out);
    }
    return file;
  }

  private static void put(Sheet sheet, int row, Object... cells) {
    Row made = sheet.createRow(row);
    for (int i = 0; i < cells.length; i++) {
      if (cells[i] instanceof Number number) {
        made.createCell(i).setCellValue(number.doubleValue());
      } else {
        made.createCell(i).setCellValue(String.valueOf(cells[i]));
      }
    }
  }

  private static void trees(Sheet sheet, int from) {
    put(sheet, from, (Object[]) HEADINGS);
    for (int i = 0; i < TREES.length; i++) {
      put(sheet, from + 1 + i, TREES[i]);
    }
  }

  @Test
  void noRows() throws IOException {
    assertRefused(csv(""), "this file is empty; fill it or take it out of the folder");
  }

  @Test
  void emptySheet() throws IOException {
    assertRefused(
        book(sheet -> {}),
        "no sheet has among its first 60 rows one of headings with a plant's name and one more");
  }

  @Test
  void headingsAlone() throws IOException {
    assertRefused(csv("Plant,Size,Qty\n"), "the list has no row of plants");
  }

  @Test
  void oneColumn() throws IOException {
    assertRefused(
        csv("Plant\nField maple\nYew\n"),
        "no sheet has among its first 60 rows one of headings with a plant's name and one more");
  }

  @Test
  void threeHundredColumns() throws IOException {
    Path list =
        book(
            sheet -> {
              trees(sheet, 0);
              for (int i = 3; i < 300; i++) {
                sheet.getRow(0).createCell(i).setCellValue("Extra " + i);
                sheet.getRow(1).createCell(i).setCellValue("x" + i);
              }
            });
    assertRead(list, 3, 90);
  }

  @Test
  void twoHundredThousandFormattedEmptyRows() throws IOException {
    try (SXSSFWorkbook book = new SXSSFWorkbook()) {
      Sheet sheet = book.createSheet("Sheet1");
      trees(sheet, 0);
      CellStyle style = book.createCellStyle();
      style.setWrapText(true);
      for (int i = 4; i < 200_000; i++) {
        Row row = sheet.createRow(i);
        for (int c = 0; c < 3; c++) {
          row.createCell(c).setCellStyle(style);
        }
      }
      assertRead(written(book, "list.xlsx"), 3, 90);
    }
  }

  @Test
  void headingsInRow61() throws IOException {
    assertRefused(
        book(sheet -> trees(sheet, 60)),
        "no sheet has among its first 60 rows one of headings with a plant's name and one more");
    assertRead(book(sheet -> trees(sheet, 59)), 3, 90);
  }

  @Test
  void formulasWithoutValues() throws IOException {
    Path list =
        book(
            sheet -> {
              trees(sheet, 0);
              put(sheet, 4, "Beech", "C5", 10);
              formula(sheet, 1, "10*4");
              formula(sheet, 2, "SUM(C5,B9:B10)+1/2*20");
              formula(sheet, 3, "VLOOKUP(A1,A1:B9,2)");
              put(sheet, 5, "Yew", "C5", 0);
              formula(sheet, 5, "SUM(D1,7)");
              sheet.getRow(0).createCell(3).setCellFormula("UNHEARDOF(1)");
            });
    Ran ran = plan(list);
    assertThat(ran.code()).as(ran.err()).isZero();
    assertThat(ran.out())
        .as("40, 20 and 10 of the row that was typed")
        .contains("3 lots, 70 plants")
        .contains("row 4 \"=VLOOKUP(A1,A1:B9,2)\"")
        .contains("row 6 \"=SUM(D1,7)\"");
  }

  private static void formula(Sheet sheet, int row, String formula) {
    sheet.getRow(row).removeCell(sheet.getRow(row).getCell(2));
    sheet.getRow(row).createCell(2).setCellFormula(formula);
  }

  @Test
  void mergedHeadingRows() throws IOException {
    Path list =
        book(
            sheet -> {
              put(sheet, 0, "Plant", "What there is", "");
              put(sheet, 1, "", "Size", "Qty");
              sheet.addMergedRegion(new CellRangeAddress(0, 0, 1, 2));
              sheet.addMergedRegion(new CellRangeAddress(0, 1, 0, 0));
              put(sheet, 2, TREES[0]);
              put(sheet, 3, TREES[1]);
            });
    assertRead(list, 2, 70);
  }

  @Test
  void allRowsHidden() throws IOException {
    Path list =
        book(
            sheet -> {
              trees(sheet, 0);
              for (int i = 1; i < 4; i++) {
                sheet.getRow(i).setZeroHeight(true);
              }
            });
    assertRead(list, 3, 90);
    assertThat(Files.readString(folder.resolve("report/problems.txt")))
        .contains("3 rows with 90 plants are hidden, and read (rows 2, 3, 4)");
  }

  @ParameterizedTest
  @ValueSource(strings = {"stock", "species", "Offers", "routes", "quick"})
  void sheetCalledAsATableOfOurs(String name) throws IOException {
    try (Workbook book = new XSSFWorkbook()) {
      trees(book.createSheet(name), 0);
      assertRead(written(book, "list.xlsx"), 3, 90);
    }
  }

  @Test
  void twoFilesOfOneNameByCase() throws IOException {
    Path small = csv("Plant,Size,Qty\nField maple,C10,40\n");
    Path large = Files.writeString(folder.resolve("LIST.csv"), "Plant,Size,Qty\nHornbeam,C10,30\n");
    Path mine = folder.resolve("mine");
    Ran started =
        Ran.of("start", mine.toString(), "--from", small.toString(), "--from", large.toString());
    assertThat(started.err()).isEmpty();
    assertRead(mine, 2, 70);
  }

  @Test
  void oldWorkbook() throws IOException {
    try (Workbook book = new HSSFWorkbook()) {
      trees(book.createSheet("Sheet1"), 0);
      assertRefused(
          written(book, "list.xls"), "this is none of the files that can be planned from");
      assertRefused(
          written(book, "renamed.xlsx"),
          "this is a workbook of the old kind (.xls); save it as an Excel workbook (.xlsx)");
    }
  }

  @Test
  void workbookUnderAPassword() throws Exception {
    Path file = folder.resolve("list.xlsx");
    try (POIFSFileSystem system = new POIFSFileSystem();
        Workbook book = new XSSFWorkbook()) {
      trees(book.createSheet("Sheet1"), 0);
      Encryptor encryptor = new EncryptionInfo(EncryptionMode.agile).getEncryptor();
      encryptor.confirmPassword("secret");
      try (OutputStream out = encryptor.getDataStream(system)) {
        book.write(out);
      }
      try (OutputStream out = Files.newOutputStream(file)) {
        system.writeFilesystem(out);
      }
    }
    assertRefused(file, "this workbook is locked with a password; save it without the password");
  }

  @Test
  void textFile_renamed() throws IOException {
    Path text = Files.writeString(folder.resolve("list.txt"), "Plant,Size,Qty\nYew,C5,20\n");
    assertRefused(text, "this is none of the files that can be planned from");
    Path book = Files.writeString(folder.resolve("list.xlsx"), "Plant,Size,Qty\nYew,C5,20\n");
    assertRefused(book, "this file has the name of a workbook but is none");
  }

  @ParameterizedTest
  @CsvSource({"UTF-16LE", "UTF-16BE", "windows-1252", "UTF-8"})
  void textOfAnyEncoding(String name) throws IOException {
    Charset charset = Charset.forName(name);
    String mark = name.startsWith("UTF") ? "\ufeff" : "";
    Path list = folder.resolve("list.csv");
    Files.write(
        list,
        (mark + "Pflanze\tGröße\tStück\nFeldahorn\tC10\t40\nWeißdorn\tC5\t20\n").getBytes(charset));
    assertRead(list, 2, 60);
  }

  @Test
  void textLikeFormulas() throws IOException {
    Path list =
        csv(
            "Plant,Size,Qty,Note\nField maple,C10,40,=HYPERLINK(\"x\")\nHornbeam,C10,30,+1+1\n"
                + "Yew,C5,20,-2\nBeech,C5,10,@SUM(1)\n");
    assertRead(list, 4, 100);
    assertThat(Files.readString(folder.resolve("report/tables/stock-as-read.csv")))
        .doesNotContainPattern("(?m)(^|,)\"?[=+@-][A-Z1]");
  }

  @Test
  void marksThatAreNotSeen() throws IOException {
    assertRead(
        csv(
            "\u200fPlant\u200f,\u200bSize,Q\u200bty\n\u202bField maple\u202c,C10,40\u200b\n"
                + "Horn\u00adbeam,C10,30\n"),
        2,
        70);
  }

  @Test
  void noteOf32000Letters() throws IOException {
    assertRead(
        csv("Plant,Size,Qty,Note\nField maple,C10,40," + "word ".repeat(6400) + "\n"), 1, 40);
  }

  @Test
  void nameOf32000Letters() throws IOException {
    assertRefused(
        csv("Plant,Size,Qty\n" + "a".repeat(32_000) + ",C10,40\n"), "1 of 1 rows cannot be read");
  }

  @ParameterizedTest
  @ValueSource(strings = {"1e9", "NaN", "1e308", "Infinity", "-5", "40-", "99999999999"})
  void numbersThatAreNone(String number) throws IOException {
    Path list =
        csv(
            "Plant,Size,Qty\nField maple,C10,%s\nHornbeam,C10,30\nYew,C5,20\nBeech,C5,10\n"
                .formatted(number));
    assertRead(list, 3, 60);
    assertThat(Files.readString(folder.resolve("report/problems.txt")))
        .contains("1 row cannot be read and is left out (row 2 \"%s\")".formatted(number));
  }

  @Test
  void numberInACell_thatIsFarTooLarge() throws IOException {
    Path list =
        book(
            sheet -> {
              trees(sheet, 0);
              sheet.getRow(1).getCell(2).setCellValue(1e308);
            });
    assertRead(list, 2, 50);
  }

  @ParameterizedTest
  @CsvSource({"false", "true"})
  void datesOfEitherSystem(boolean from1904) throws IOException {
    try (XSSFWorkbook book = new XSSFWorkbook()) {
      book.getCTWorkbook().addNewWorkbookPr().setDate1904(from1904);
      Sheet sheet = book.createSheet("Sheet1");
      put(sheet, 0, "Plant", "Size", "Qty", "Arrived");
      put(sheet, 1, "Field maple", "C10", 40);
      // 1 March 2024 is day 45352 of the one system and day 43890 of the other (ECMA-376,
      // 18.17.4.1).
      sheet.getRow(1).createCell(3).setCellValue(from1904 ? 43_890 : 45_352);
      CellStyle date = book.createCellStyle();
      date.setDataFormat(book.createDataFormat().getFormat("yyyy-mm-dd"));
      sheet.getRow(1).getCell(3).setCellStyle(date);
      assertRead(written(book, "list.xlsx"), 1, 40);
    }
    assertThat(Files.readString(folder.resolve("report/tables/stock-as-read.csv")))
        .contains(",2024-03,list,");
  }

  @Test
  void oneCodeInFortyRows() throws IOException {
    StringBuilder rows = new StringBuilder("Lot,Plant,Size,Qty\n");
    for (int i = 0; i < 40; i++) {
      rows.append("A1,Field maple,C10,").append(10 + i).append('\n');
    }
    assertRead(csv(rows.toString()), 40, 1180);
    assertThat(Files.readString(folder.resolve("report/tables/to-fill.csv")))
        .contains("A1 stands in the list twice: more plants, or the same?");
  }

  @Test
  void folderWithBlanksAndUmlauts() throws IOException {
    Path place = Files.createDirectories(folder.resolve("Bäume im Süd feld"));
    Path list = Files.writeString(place.resolve("Bestand März.csv"), "Plant,Size,Qty\nYew,C5,20\n");
    Path mine = place.resolve("meine Gärtnerei");
    assertThat(Ran.of("start", mine.toString(), "--from", list.toString()).err()).isEmpty();
    assertRead(mine, 1, 20);
  }

  @Test
  void linkInPlaceOfAFile() throws IOException {
    Path list = csv("Plant,Size,Qty\nYew,C5,20\n");
    Path link = Files.createSymbolicLink(folder.resolve("link.csv"), list);
    assertRead(link, 1, 20);
    Path lost = Files.createSymbolicLink(folder.resolve("lost.csv"), folder.resolve("nothing.csv"));
    Ran ran = plan(lost);
    assertThat(ran.code()).isEqualTo(3);
    assertThat(ran.err()).contains("there is no such file or folder");
  }

  @Test
  void listOpenInAnotherProgram() throws IOException {
    Path list = csv("Plant,Size,Qty\nYew,C5,20\n");
    Files.writeString(folder.resolve("~$list.csv"), "\u0005owner");
    Path mine = Files.createDirectories(folder.resolve("mine"));
    Files.writeString(mine.resolve("own words.csv"), "kind,yours,ours\nlist,../*list.csv,\n");
    assertRead(mine, 1, 20);
    Ran atWork = plan(Files.writeString(folder.resolve("~$other.xlsx"), "\u0005owner"));
    assertThat(atWork.code()).isEqualTo(3);
    assertThat(atWork.err()).contains("this file has the name of a workbook but is none");
    assertThat(list).exists();
  }

  @Test
  void listLockedBetweenStartAndPlan() throws IOException {
    Path list = csv("Plant,Size,Qty\nYew,C5,20\n");
    Path mine = folder.resolve("mine");
    assertThat(Ran.of("start", mine.toString(), "--from", list.toString()).code()).isZero();
    Files.delete(list);
    Files.createDirectory(list);
    assertRefused(
        mine,
        "your list is not there any more (../list.csv); put it back, or type its new name under");
  }

  @Test
  void headingThatEndsInAMonth_isTheHeadingOfThatMonth() throws IOException {
    Path list = csv("Plant,Size,Stock Nov 26\nField maple,C10,40\nHornbeam,C10,30\n");
    assertRead(list, 2, 70);
    assertRead(csv("Plant,Size,Qty November\nField maple,C10,40\nHornbeam,C10,30\n"), 2, 70);
    assertRead(csv("Plant,Size,Count 11/2026\nField maple,C10,40\nHornbeam,C10,30\n"), 2, 70);
  }

  @Test
  void planOfAList_isReadByOwnWordsBesideIt() throws IOException {
    Path list = csv("Plant,Size,Heads,Gone\nField maple,C10,40,1\nElm,C10,30,2\n");
    Files.writeString(
        folder.resolve("own words.csv"),
        "kind,yours,ours\nheading,Heads,quantity\nheading,Gone,not read\n"
            + "species,Elm,Ulmus parvifolia\n");
    Files.writeString(
        folder.resolve("to fill.csv"), "fill in,table,row,column\n55,settings,hourly rate,value\n");
    assertRead(list, 2, 70);
    assertThat(Files.readString(folder.resolve("report/tables/stock-as-read.csv")))
        .contains("Ulmus parvifolia");
    assertThat(Files.readString(folder.resolve("report/tables/assumptions.csv")))
        .contains("hourly rate,55");
    assertThat(Files.readString(folder.resolve("report/problems.txt")))
        .contains("read by what stands beside it: own words.csv, to fill.csv");
  }

  @Test
  void hemisphereSouth_turnsRoutesThatWereLaidOut() throws IOException {
    csv("Plant,Size,Qty\nField maple,3L,40\nScots pine,C10,30\n");
    Path mine = Files.createDirectories(folder.resolve("mine"));
    Files.writeString(mine.resolve("own words.csv"), "kind,yours,ours\nlist,../list.csv,\n");
    Files.writeString(
        mine.resolve("settings.csv"),
        "name,value\ncurrency,EUR\nhourly rate,15\ndiscount rate % a year,4\nhemisphere,south\n");
    assertRead(mine, 2, 70);
    String fresh = Files.readString(folder.resolve("report/tables/assumptions.csv"));
    assertThat(fresh).contains("every year in December").doesNotContain("every year in June");
    Files.writeString(
        mine.resolve("routes.csv"),
        "route,step,when,minutes\nyoung 2 to 5 litre next spring,wiring,every 2 years in"
            + " February,15\nyoung 2 to 5 litre next spring,summer pruning,every year in July,5\n");
    assertRead(mine, 2, 70);
    assertThat(Files.readString(folder.resolve("report/tables/assumptions.csv")))
        .contains("every 2 years in August", "every year in July")
        .doesNotContain("in February");
    assertThat(Files.readString(folder.resolve("report/problems.txt")))
        .contains(
            "1 step laid out for the north is half a year later, since the hemisphere is south");
  }

  @ParameterizedTest
  @ValueSource(strings = {"review", "buying", "fit"})
  void listAlone_isEnoughForPlanAndCheckOnly(String command) throws IOException {
    Path list = csv("Plant,Size,Qty\nYew,C5,20\n");
    Ran ran = Ran.of(command, list.toString());
    assertThat(ran.code()).isEqualTo(3);
    assertThat(ran.err())
        .contains(
            "list.csv: a list of your own is enough for plan and check alone; lay out a nursery"
                + " around it: start mine --from \"%s\"".formatted(list));
  }

  @ParameterizedTest
  @ValueSource(strings = {"plan", "check", "review", "compare", "buying", "fit"})
  void all_printsEveryProblem_ofEveryCommandThatReads(String command) throws IOException {
    Path bad = Files.createDirectories(folder.resolve("bad"));
    Files.writeString(bad.resolve("settings.csv"), "name,value\ncurrency,EUR\n");
    StringBuilder rows = new StringBuilder("lot,species,form,quantity,arrived,route\n");
    for (int i = 0; i < 40; i++) {
      rows.append("Lot ").append(i).append(",Tree ").append(i).append(",bare,x,y,z\n");
    }
    Files.writeString(bad.resolve("stock.csv"), rows);
    String[] names = command.equals("compare") ? new String[] {"bad", "bad"} : new String[] {"bad"};
    Ran few = run(command, names, false);
    Ran all = run(command, names, true);
    assertThat(few.code()).isEqualTo(3);
    assertThat(few.err().lines().count()).isLessThanOrEqualTo(12);
    assertThat(all.code()).isEqualTo(3);
    assertThat(all.err().lines().count()).isGreaterThan(100);
    assertThat(all.err()).contains("row 41, column form").doesNotContain("prints every one");
  }

  private Ran run(String command, String[] names, boolean all) {
    java.util.List<String> arguments = new java.util.ArrayList<>();
    arguments.add(command);
    for (String name : names) {
      arguments.add(folder.resolve(name).toString());
    }
    if (all) {
      arguments.add("--all");
    }
    return Ran.of(arguments.toArray(String[]::new));
  }

  @Test
  void bytesOfAnything_areASentence() throws IOException {
    byte[] noise = new byte[5000];
    new java.util.Random(7).nextBytes(noise);
    Path list = Files.write(folder.resolve("list.csv"), noise);
    Ran ran = plan(list);
    assertThat(ran.code()).isEqualTo(3);
    assertThat(new String(Files.readAllBytes(list), StandardCharsets.ISO_8859_1)).hasSize(5000);
  }
}
