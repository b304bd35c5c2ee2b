package growingon.load;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.function.BiFunction;
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
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Workbooks as they come out of a download that broke off, or out of a program that failed. */
class DamagedWorkbookTest {
  private static final String DAMAGED =
      "error: prices.xlsx: this workbook is damaged; open it in a spreadsheet program, let it be"
          + " repaired, and save it again";

  @TempDir private Path folder;
  private Path file;

  @BeforeEach
  void layOut() throws IOException {
    SmallNursery.copyTidy(folder);
    file = folder.resolve("prices.xlsx");
    Files.write(file, workbook());
  }

  private static byte[] workbook() throws IOException {
    Path made = Files.createTempFile("workbook", ".xlsx");
    try (XSSFWorkbook book = new XSSFWorkbook()) {
      Sheet sheet = book.createSheet("care");
      Books.row(sheet, 0, 0, "place kind", "minutes per m2 a month");
      Books.row(sheet, 1, 0, "*", 1.5);
      Books.save(book, made);
      return Files.readAllBytes(made);
    } finally {
      Files.delete(made);
    }
  }

  private void cut(double share) throws IOException {
    byte[] whole = Files.readAllBytes(file);
    Files.write(file, Arrays.copyOf(whole, (int) (whole.length * share)));
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.1, 0.3, 0.5, 0.7, 0.9, 0.99})
  void lockedWorkbook_cutOffInDownload_isDamagedOrLocked(double share) throws Exception {
    lock();
    cut(share);

    assertThat(SmallNursery.problems(folder))
        .isSubsetOf(
            DAMAGED,
            "error: prices.xlsx: this workbook is locked with a password; save it without the"
                + " password")
        .hasSize(1);
  }

  private void lock() throws Exception {
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
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.1, 0.3, 0.5, 0.7, 0.9, 0.99})
  void oldWorkbook_cutOffInDownload_isDamagedOrOld(double share) throws IOException {
    try (HSSFWorkbook book = new HSSFWorkbook()) {
      book.createSheet("care");
      Books.save(book, file);
    }
    cut(share);

    assertThat(SmallNursery.problems(folder))
        .isSubsetOf(
            DAMAGED,
            "error: prices.xlsx: this is a workbook of the old kind (.xls); save it as an Excel"
                + " workbook (.xlsx)")
        .hasSize(1);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "[Content_Types].xml",
        "_rels/.rels",
        "xl/workbook.xml",
        "xl/_rels/workbook.xml.rels",
        "xl/sharedStrings.xml",
        "xl/worksheets/sheet1.xml"
      })
  void workbookWithoutAPart_isDamaged(String part) throws IOException {
    change((name, bytes) -> name.equals(part) ? null : bytes);

    assertThat(SmallNursery.problems(folder)).containsExactly(DAMAGED);
  }

  @Test
  void damagedWorkbook_whoseTablesAreThenMissing_isTheOnlyError() throws IOException {
    cut(0.5);
    for (String table : new String[] {"stock", "offers", "pots", "routes", "places", "demand"}) {
      Files.delete(folder.resolve(table + ".csv"));
    }

    assertThat(SmallNursery.problems(folder)).containsExactly(DAMAGED);
    assertThat(SmallNursery.problems(file)).containsExactly(DAMAGED);
  }

  @Test
  void workbookWithoutASharedText_isDamaged() throws IOException {
    change(
        (name, bytes) ->
            name.equals("xl/sharedStrings.xml")
                ? "<sst xmlns=\"http://schemas.openxmlformats.org/spreadsheetml/2006/main\"/>"
                    .getBytes(StandardCharsets.UTF_8)
                : bytes);

    assertThat(SmallNursery.problems(folder)).containsExactly(DAMAGED);
  }

  @ParameterizedTest
  @ValueSource(strings = {"xl/workbook.xml", "xl/sharedStrings.xml", "xl/worksheets/sheet1.xml"})
  void partThatIsEmpty_isDamaged(String part) throws IOException {
    change((name, bytes) -> name.equals(part) ? new byte[0] : bytes);

    assertThat(SmallNursery.problems(folder)).containsExactly(DAMAGED);
  }

  private void change(BiFunction<String, byte[], byte[]> part) throws IOException {
    byte[] whole = Files.readAllBytes(file);
    try (ZipInputStream in = new ZipInputStream(new java.io.ByteArrayInputStream(whole));
        ZipOutputStream out = new ZipOutputStream(Files.newOutputStream(file))) {
      for (ZipEntry entry = in.getNextEntry(); entry != null; entry = in.getNextEntry()) {
        byte[] bytes = part.apply(entry.getName(), in.readAllBytes());
        if (bytes != null) {
          out.putNextEntry(new ZipEntry(entry.getName()));
          out.write(bytes);
        }
      }
    }
  }
}
