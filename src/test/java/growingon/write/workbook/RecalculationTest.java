package growingon.write.workbook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import growingon.Office;
import growingon.write.ReportFolder;
import growingon.write.SampleReport;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import java.util.zip.ZipOutputStream;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The totals as LibreOffice works them out, against those written beside the formulas. */
class RecalculationTest {
  /** Recalculate every workbook on opening: LibreOffice's setting of that name, 0 is always. */
  private static final String ALWAYS_RECALCULATE =
      """
      <?xml version="1.0" encoding="UTF-8"?>
      <oor:items xmlns:oor="http://openoffice.org/2001/registry"
          xmlns:xs="http://www.w3.org/2001/XMLSchema"
          xmlns:xsi="http://www.w3.org/2001/XMLSchema-instance">
      <item oor:path="/org.openoffice.Office.Calc/Formula/Load">
      <prop oor:name="OOXMLRecalcMode" oor:op="fuse"><value>0</value></prop>
      </item></oor:items>
      """;

  @TempDir Path temporary;

  @Test
  void everyTotal_recalculatedByLibreOffice_agreesToTheCent() throws Exception {
    Office office = Office.in(Files.createDirectory(temporary.resolve("office")));
    office.configure(ALWAYS_RECALCULATE);
    Path folder = temporary.resolve("report");
    ReportFolder.write(SampleReport.report(), folder);
    Path spoilt = Files.createDirectory(temporary.resolve("spoilt")).resolve("plan.xlsx");
    spoilCachedValues(folder.resolve("plan.xlsx"), spoilt);

    Map<String, Double> recalculated = totals(office.convert(spoilt, "xlsx"));

    Map<String, Double> written = totals(folder.resolve("plan.xlsx"));
    assertThat(written).isNotEmpty();
    assertThat(totals(spoilt).values()).as("nothing to copy from").containsOnly(-1.0);
    assertThat(recalculated).containsOnlyKeys(written.keySet());
    written.forEach(
        (cell, value) ->
            assertThat(recalculated.get(cell)).as(cell).isCloseTo(value, within(0.004)));
  }

  private static Map<String, Double> totals(Path workbook) throws IOException {
    try (XSSFWorkbook book = Reopened.open(workbook)) {
      return Reopened.totals(book);
    }
  }

  /** Replaces each value cached beside a formula, so that only a new calculation can be right. */
  private static void spoilCachedValues(Path from, Path to) throws IOException {
    try (ZipFile zip = new ZipFile(from.toFile());
        ZipOutputStream out = new ZipOutputStream(Files.newOutputStream(to))) {
      for (ZipEntry entry : (Iterable<ZipEntry>) zip.stream().map(e -> (ZipEntry) e)::iterator) {
        byte[] bytes = zip.getInputStream(entry).readAllBytes();
        out.putNextEntry(new ZipEntry(entry.getName()));
        out.write(entry.getName().startsWith("xl/worksheets/sheet") ? spoil(bytes) : bytes);
        out.closeEntry();
      }
    }
  }

  private static byte[] spoil(byte[] sheet) {
    return new String(sheet, StandardCharsets.UTF_8)
        .replaceAll("</f><v>[^<]*</v>", "</f><v>-1</v>")
        .getBytes(StandardCharsets.UTF_8);
  }
}
