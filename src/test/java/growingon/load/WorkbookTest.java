package growingon.load;

import static growingon.load.Books.row;
import static org.assertj.core.api.Assertions.assertThat;

import growingon.load.Books.Formatted;
import growingon.load.Books.Formula;
import growingon.nursery.Inputs;
import growingon.nursery.lot.Lot;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.Arrays;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.UnaryOperator;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;
import org.apache.poi.hssf.usermodel.HSSFWorkbook;
import org.apache.poi.openxml4j.opc.OPCPackage;
import org.apache.poi.poifs.crypt.EncryptionInfo;
import org.apache.poi.poifs.crypt.EncryptionMode;
import org.apache.poi.poifs.crypt.Encryptor;
import org.apache.poi.poifs.filesystem.POIFSFileSystem;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What spreadsheets do to values, and files that only look like workbooks. */
class WorkbookTest {
  private static final Object[] HEADINGS = {
    "lot",
    "species",
    "form",
    "quantity",
    "arrived",
    "trunk mm",
    "first %",
    "second %",
    "pot",
    "place",
    "route",
    "note"
  };

  @TempDir private Path folder;
  private Path file;

  @BeforeEach
  void layOut() throws IOException {
    SmallNursery.copyTidy(folder);
    Files.delete(folder.resolve("stock.csv"));
    Files.delete(folder.resolve("offers.csv"));
    Files.delete(folder.resolve("plan.json"));
    file = folder.resolve("stock.xlsx");
  }

  private static Object[] lot(Object name) {
    return new Object[] {
      name,
      "Rowan",
      "container",
      50,
      LocalDate.of(2025, 3, 1),
      14,
      null,
      null,
      "liner pot",
      "Yard",
      "pot and wire",
      null
    };
  }

  private static Object[] lotWith(int column, Object value) {
    Object[] values = lot("A");
    values[column] = value;
    return values;
  }

  /** A workbook with a sheet "stock" that has the headings and a lot in row 2. */
  private void stock(Object[] lot, Consumer<XSSFWorkbook> more) throws IOException {
    try (XSSFWorkbook book = new XSSFWorkbook()) {
      XSSFSheet sheet = book.createSheet("stock");
      row(sheet, 0, 0, HEADINGS);
      row(sheet, 1, 0, lot);
      more.accept(book);
      Books.save(book, file);
    }
  }

  private void stock(Object[] lot) throws IOException {
    stock(lot, book -> {});
  }

  private Lot onlyLot() {
    Inputs inputs = SmallNursery.read(folder).inputs().orElseThrow();
    assertThat(inputs.scenario().lots()).hasSize(1);
    return inputs.scenario().lots().get(0);
  }

  private List<String> problems() {
    return SmallNursery.problems(folder);
  }

  @Test
  void nameThatIsANumber_hasNoDecimals() throws IOException {
    stock(lot(12));

    assertThat(onlyLot().name()).isEqualTo("12");
  }

  @Test
  void percentFormat_underAPercentHeading_isThatPercentage() throws IOException {
    stock(lotWith(6, new Formatted(0.8, "0%")));

    assertThat(problems()).isEmpty();
    assertThat(onlyLot().quality().first()).isEqualTo(0.8);
  }

  @Test
  void percentFormat_underAnotherHeading_isRefused() throws IOException {
    stock(lotWith(5, new Formatted(0.8, "0%")));

    assertThat(problems())
        .containsExactly(
            "error: stock.xlsx, sheet stock, row 2, column trunk mm: this is a percentage under a"
                + " heading without % (80 %); write the number itself and format the cell as a"
                + " number");
  }

  @Test
  void plainFraction_underAPercentHeading_isRemarkedUpon() throws IOException {
    stock(lotWith(6, 0.8));

    assertThat(problems())
        .containsExactly(
            "notice: stock.xlsx, sheet stock, row 2, column first %: less than 1 % is meant here,"
                + " by the heading (0.8); write 80 for 80 %");
    assertThat(onlyLot().quality().first()).isEqualTo(0.008);
  }

  @Test
  void formula_countsWithItsStoredValue() throws IOException {
    stock(lotWith(3, new Formula("20+30", 50)));

    assertThat(onlyLot().quantity()).isEqualTo(50);
  }

  @Test
  void formula_thatFailed_isRefused() throws IOException {
    stock(
        lotWith(3, null),
        book -> {
          book.getSheetAt(0).getRow(1).createCell(3).setCellFormula("1/0");
          book.getCreationHelper().createFormulaEvaluator().evaluateAll();
        });

    assertThat(problems())
        .containsExactly(
            "error: stock.xlsx, sheet stock, row 2, column quantity: this cell shows an error"
                + " (#DIV/0!); mend its formula");
  }

  @Test
  void formula_withoutStoredValue_isRefused() throws IOException {
    stock(
        lotWith(3, null),
        book -> book.getSheetAt(0).getRow(1).createCell(3).setCellFormula("20+30"));
    rewrite("xl/worksheets/sheet1.xml", xml -> xml.replaceAll("</f><v>[^<]*</v>", "</f>"));

    assertThat(problems())
        .containsExactly(
            "error: stock.xlsx, sheet stock, row 2, column quantity: this formula has no stored"
                + " value; open the workbook in a spreadsheet program and save it");
  }

  @Test
  void date_withoutAYearToBeSeen_isRemarkedUpon() throws IOException {
    stock(lotWith(4, new Formatted(LocalDate.of(2026, 3, 27), "d-mmm")));

    assertThat(problems())
        .containsExactly(
            "warning: stock.xlsx, sheet stock, row 2, column arrived: this cell shows no year but"
                + " holds one, perhaps that in which it was typed (2026-03-27); see that the year"
                + " is right, and write it as 2027-03");
    assertThat(onlyLot().arrived()).isEqualTo(YearMonth.of(2026, 3));
  }

  @Test
  void dates_countedFrom1904_areRead() throws IOException {
    stock(
        lotWith(4, null),
        book -> {
          book.getCTWorkbook().getWorkbookPr().setDate1904(true);
          row(book.getSheetAt(0), 1, 4, new Formatted(LocalDate.of(2025, 3, 1), "mmm yyyy"));
        });

    assertThat(onlyLot().arrived()).isEqualTo(YearMonth.of(2025, 3));
  }

  @Test
  void bareNumber_underAMonth_isRefused() throws IOException {
    stock(lotWith(4, 202503));

    assertThat(problems())
        .containsExactly(
            "error: stock.xlsx, sheet stock, row 2, column arrived: this is no month of a year"
                + " (202503); write it as 2027-03 or Mar 2027");
  }

  @Test
  void name_thatBecameADate_isRefused() throws IOException {
    stock(lot(LocalDate.of(2026, 5, 3)));

    assertThat(problems())
        .containsExactly(
            "error: stock.xlsx, sheet stock, row 2, column lot: this name has become a date"
                + " (2026-05-03); format the cell as text and type the name again");
  }

  @Test
  void textMergedOverRows_holdsForAllOfThem() throws IOException {
    stock(
        lot("A"),
        book -> {
          row(
              book.getSheetAt(0),
              2,
              0,
              "B",
              null,
              "container",
              5,
              "2025-04",
              9,
              null,
              null,
              "liner pot",
              "Yard",
              "pot and wire");
          book.getSheetAt(0).addMergedRegion(new CellRangeAddress(1, 2, 1, 1));
        });

    assertThat(SmallNursery.read(folder).inputs().orElseThrow().scenario().lots())
        .extracting(Lot::species)
        .containsExactly("Rowan", "Rowan");
  }

  @Test
  void numberMergedOverRows_isRefused() throws IOException {
    stock(
        lot("A"),
        book -> {
          row(
              book.getSheetAt(0),
              2,
              0,
              "B",
              "Rowan",
              "container",
              null,
              "2025-04",
              9,
              null,
              null,
              "liner pot",
              "Yard",
              "pot and wire");
          book.getSheetAt(0).addMergedRegion(new CellRangeAddress(1, 2, 3, 3));
        });

    assertThat(problems())
        .contains(
            "error: stock.xlsx, sheet stock, row 3, column quantity: a number or date is merged"
                + " over several rows (50); part them and give each row its value");
  }

  @Test
  void cellsMergedOverColumns_areRefused() throws IOException {
    stock(lot("A"), book -> book.getSheetAt(0).addMergedRegion(new CellRangeAddress(1, 1, 5, 6)));

    assertThat(problems())
        .containsExactly(
            "error: stock.xlsx, sheet stock, row 2, column first %: this cell is merged with the"
                + " one before it; part them and give each its value");
  }

  @Test
  void emptySheet_countsAsNotThere() throws IOException {
    stock(lot("A"), book -> book.createSheet("offers"));

    assertThat(problems())
        .containsExactly(
            "notice: stock.xlsx, sheet offers: this sheet is empty and counts as not there");
  }

  @Test
  void hiddenTable_isNotRead() throws IOException {
    stock(
        lot("A"),
        book -> {
          row(book.createSheet("offers"), 0, 0, "offer");
          book.setSheetHidden(1, true);
        });

    assertThat(problems())
        .containsExactly(
            "notice: stock.xlsx, sheet offers: this sheet is hidden and is not read; show it if it"
                + " is to count");
  }

  @Test
  void tableGivenTwice_isRefused() throws IOException {
    stock(lot("A"), book -> row(book.createSheet("Care"), 0, 0, "place kind", "minutes"));

    assertThat(problems())
        .containsExactly(
            "error: stock.xlsx, sheet Care: the table care is given twice, here and in care.csv;"
                + " keep one of them");
  }

  @Test
  void daybook_withHeadingsOnly_isNoFault() throws IOException {
    stock(lot("A"), book -> row(book.createSheet("daybook"), 0, 0, "date", "lot", "what"));

    assertThat(problems()).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "=HYPERLINK(\"http://example.invalid\",\"look\")",
        "<script>alert(1)</script>",
        "+1-2",
        "@SUM(A1)",
        "line\nbreak",
        "'; DROP TABLE lots; --",
        "../../etc/passwd",
        "🌳 maple",
        "قيقب"
      })
  void hostileText_isJustText(String text) throws IOException {
    Object[] values = lot(text);
    values[11] = text;
    stock(values);

    assertThat(problems()).isEmpty();
    assertThat(onlyLot().name()).isEqualTo(text.replace('\n', ' '));
    assertThat(onlyLot().papers().note()).isEqualTo(text.replace('\n', ' '));
  }

  @Test
  void unseenMarks_doNotMakeAnotherName() throws IOException {
    stock(lotWith(1, "\u202ERo\u200Bwan\u200F"));

    assertThat(onlyLot().species()).isEqualTo("Rowan");
  }

  @Test
  void tenThousandLetters_areANoteButNoName() throws IOException {
    Object[] values = lotWith(11, "x".repeat(10_000));
    values[8] = "y".repeat(10_000);
    stock(values);

    assertThat(problems())
        .containsExactly(
            "error: stock.xlsx, sheet stock, row 2, column pot: a name has at most 100 letters ("
                + "y".repeat(100)
                + "...); shorten it; longer texts belong under note");
  }

  @Test
  void threeHundredColumns_areRemarkedUponInTwentyOneLines() throws IOException {
    stock(
        lot("A"),
        book -> {
          for (int column = HEADINGS.length; column < 300; column++) {
            row(book.getSheetAt(0), 0, column, "measured " + column);
          }
        });

    assertThat(problems())
        .hasSize(21)
        .last()
        .isEqualTo(
            "warning: stock.xlsx, sheet stock, row 1: 268 more headings are not known, their"
                + " columns are not read");
    assertThat(onlyLot().quantity()).isEqualTo(50);
  }

  @Test
  void millionRowsOfUsedRange_costOnlyTheFilledOnes() throws IOException {
    stock(lot("A"));
    StringBuilder rows = new StringBuilder();
    for (int row = 3; row <= 1_048_576; row++) {
      rows.append("<row r=\"").append(row).append("\"/>");
    }
    rewrite("xl/worksheets/sheet1.xml", xml -> xml.replace("</sheetData>", rows + "</sheetData>"));

    assertThat(problems()).isEmpty();
    assertThat(onlyLot().quantity()).isEqualTo(50);
  }

  @Test
  void lastRowOfASheet_isReadLikeAnyOther() throws IOException {
    stock(lot("A"), book -> row(book.getSheetAt(0), 1_048_575, 0, "Total", null, null, 50));

    assertThat(problems())
        .containsExactly(
            "error: stock.xlsx, sheet stock, row 1048576: this row lacks species, form, arrived"
                + " and route (Total); complete it, or move totals and remarks out of the table");
  }

  @Test
  void lockedWorkbook_isRefused() throws Exception {
    stock(lot("A"));
    try (POIFSFileSystem system = new POIFSFileSystem()) {
      Encryptor encryptor = new EncryptionInfo(EncryptionMode.agile).getEncryptor();
      encryptor.confirmPassword("secret");
      try (OPCPackage contents = OPCPackage.open(file.toFile());
          OutputStream locked = encryptor.getDataStream(system)) {
        contents.save(locked);
        contents.revert();
      }
      try (OutputStream out = Files.newOutputStream(file)) {
        system.writeFilesystem(out);
      }
    }

    assertThat(problems())
        .contains(
            "error: stock.xlsx: this workbook is locked with a password; save it without the"
                + " password");
  }

  @Test
  void oldWorkbook_underANewName_isRefused() throws IOException {
    try (HSSFWorkbook book = new HSSFWorkbook()) {
      book.createSheet("stock");
      Books.save(book, file);
    }

    assertThat(problems())
        .contains(
            "error: stock.xlsx: this is a workbook of the old kind (.xls); save it as an Excel"
                + " workbook (.xlsx)");
  }

  @Test
  void strictWorkbook_isRefused() throws IOException {
    stock(lot("A"));
    rewrite(
        "_rels/.rels",
        xml ->
            xml.replace(
                "http://schemas.openxmlformats.org/officeDocument/2006/relationships/officeDocument",
                "http://purl.oclc.org/ooxml/officeDocument/relationships/officeDocument"));

    assertThat(problems())
        .contains(
            "error: stock.xlsx: this workbook is saved as \"Strict Open XML\", which cannot be"
                + " read; save it as an Excel workbook (.xlsx)");
  }

  @Test
  void settingsSheet_withFaults_saysEachInItsRow() throws IOException {
    Files.delete(folder.resolve("nursery.json"));
    stock(
        lot("A"),
        book -> {
          Sheet sheet = book.createSheet("settings");
          row(sheet, 0, 0, "name", "value");
          row(sheet, 1, 0, "currency", "EUR");
          row(sheet, 2, 0, "hourly rat", 20);
          row(sheet, 3, 0, "discount rate % a year", "three");
          row(sheet, 4, 0, "currency", "GBP");
          row(sheet, 5, 0, null, 7);
          row(sheet, 6, 0, "exchange rate CHF", 0);
        });

    assertThat(problems())
        .containsSubsequence(
            "error: stock.xlsx, sheet settings, row 3, column name: this setting is not known"
                + " (hourly rat); the nearest known one is hourly rate",
            "error: stock.xlsx, sheet settings, row 5, column name: this is given already"
                + " (currency); keep one of them, or rename it",
            "error: stock.xlsx, sheet settings, row 6, column name: this value is missing; fill it"
                + " in",
            "error: stock.xlsx, sheet settings: the settings lack hourly rate; add to nursery.json"
                + " or to a table settings what is missing",
            "error: stock.xlsx, sheet settings, row 7, column value: this must be more than 0 (0);"
                + " correct it",
            "error: stock.xlsx, sheet settings, row 4, column value: this is no number (three);"
                + " write digits, such as 12.5");
  }

  @Test
  void settingsGivenTwice_areRefused() throws IOException {
    stock(lot("A"), book -> row(book.createSheet("settings"), 0, 0, "name", "value"));

    assertThat(problems())
        .containsExactly(
            "error: nursery.json: the settings are given twice, here and in stock.xlsx, sheet"
                + " settings; keep one of them");
  }

  @Test
  void settingsAsCsv_besideNurseryJson_areGivenTwice() throws IOException {
    Files.writeString(folder.resolve("settings.csv"), "name,value\ncurrency,EUR\n");
    stock(lot("A"));

    assertThat(problems())
        .containsExactly(
            "error: nursery.json: the settings are given twice, here and in settings.csv; keep one"
                + " of them");
  }

  @Test
  void zipThatIsNoWorkbook_isRefused() throws IOException {
    try (ZipOutputStream zip = new ZipOutputStream(Files.newOutputStream(file))) {
      zip.putNextEntry(new ZipEntry("letter.txt"));
      zip.write("hello".getBytes(StandardCharsets.UTF_8));
    }

    assertThat(problems())
        .contains(
            "error: stock.xlsx: this workbook is damaged; open it in a spreadsheet program, let it"
                + " be repaired, and save it again");
  }

  @Test
  void workbookCutShort_isRefused() throws IOException {
    stock(lot("A"));
    byte[] whole = Files.readAllBytes(file);
    Files.write(file, Arrays.copyOf(whole, whole.length / 2));

    assertThat(problems())
        .contains(
            "error: stock.xlsx: this workbook is damaged; open it in a spreadsheet program, let it"
                + " be repaired, and save it again");
  }

  @Test
  void zipBomb_isRefused() throws IOException {
    stock(lot("A"));
    String bomb = "<!--" + " ".repeat(60_000_000) + "-->";
    rewrite("xl/worksheets/sheet1.xml", xml -> xml.replace("</worksheet>", bomb + "</worksheet>"));

    assertThat(problems())
        .contains(
            "error: stock.xlsx: this workbook would unpack to far more than its size, as made-up"
                + " files do; copy its values into a new workbook");
  }

  @Test
  void externalEntity_isNotFollowed() throws IOException {
    stock(lot("A"));
    rewrite(
        "xl/worksheets/sheet1.xml",
        xml ->
            xml.replaceFirst(
                "<worksheet",
                "<!DOCTYPE x [<!ENTITY e SYSTEM \"file:///etc/hostname\">]><worksheet"));

    assertThat(problems())
        .contains(
            "error: stock.xlsx: this workbook is damaged; open it in a spreadsheet program, let it"
                + " be repaired, and save it again");
  }

  /** Changes one part of the workbook behind the back of the library. */
  private void rewrite(String part, UnaryOperator<String> change) throws IOException {
    Path changed = folder.resolve("changed.tmp");
    try (ZipInputStream in = new ZipInputStream(Files.newInputStream(file));
        ZipOutputStream out = new ZipOutputStream(Files.newOutputStream(changed))) {
      for (ZipEntry entry = in.getNextEntry(); entry != null; entry = in.getNextEntry()) {
        out.putNextEntry(new ZipEntry(entry.getName()));
        byte[] bytes = in.readAllBytes();
        out.write(
            entry.getName().equals(part)
                ? change
                    .apply(new String(bytes, StandardCharsets.UTF_8))
                    .getBytes(StandardCharsets.UTF_8)
                : bytes);
      }
    }
    Files.move(changed, file, StandardCopyOption.REPLACE_EXISTING);
  }
}
