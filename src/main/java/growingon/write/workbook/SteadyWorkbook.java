package growingon.write.workbook;

import growingon.write.text.SafeText;
import growingon.write.text.Utf8Writer;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.Date;
import java.util.Optional;
import java.util.zip.Deflater;
import org.apache.commons.compress.archivers.zip.Zip64Mode;
import org.apache.commons.compress.archivers.zip.ZipArchiveEntry;
import org.apache.commons.compress.archivers.zip.ZipArchiveOutputStream;
import org.apache.poi.ooxml.POIXMLProperties;
import org.apache.poi.xssf.streaming.SXSSFWorkbook;
import org.apache.poi.xssf.streaming.SheetDataWriter;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/**
 * A workbook whose bytes depend on its content only, not on when or where it is written, and that
 * leaves no temporary files behind. Rows are streamed: a workbook held as XML objects takes more
 * than twice the time.
 */
final class SteadyWorkbook extends SXSSFWorkbook {
  private static final int QUICK = 2;
  static final int ROWS_HELD = 50;
  private static final LocalDateTime EPOCH = LocalDateTime.of(2000, 1, 1, 0, 0);

  SteadyWorkbook(String title) {
    super(new XSSFWorkbook(), ROWS_HELD, false, false);
    POIXMLProperties.CoreProperties core = getXSSFWorkbook().getProperties().getCoreProperties();
    core.setCreator("growing-on planner");
    core.setTitle(SafeText.forXml(title));
    core.getUnderlyingProperties()
        .setCreatedProperty(Optional.of(Date.from(EPOCH.toInstant(ZoneOffset.UTC))));
  }

  byte[] bytes() throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream(1 << 18);
    writeAvoidingTempFiles(bytes);
    return bytes.toByteArray();
  }

  @Override
  protected SheetDataWriter createSheetDataWriter() throws IOException {
    return new MemoryWriter(new ByteArrayOutputStream(1 << 15));
  }

  @Override
  protected ZipArchiveOutputStream createArchiveOutputStream(OutputStream out) {
    ZipArchiveOutputStream zip = new SteadyZip(out);
    zip.setUseZip64(Zip64Mode.AsNeeded);
    return zip;
  }

  /** Zip entries with one fixed time, the same in every time zone. */
  private static final class SteadyZip extends ZipArchiveOutputStream {
    SteadyZip(OutputStream out) {
      super(out);
    }

    @Override
    public void putArchiveEntry(ZipArchiveEntry entry) throws IOException {
      entry.setTime(EPOCH.atZone(ZoneId.systemDefault()).toInstant().toEpochMilli());
      boolean packed = entry.getName().endsWith(".png");
      setLevel(packed ? Deflater.NO_COMPRESSION : QUICK);
      super.putArchiveEntry(entry);
    }
  }

  /** Rows of a sheet, kept in memory as they will be zipped. */
  private static final class MemoryWriter extends SheetDataWriter {
    private static final int NO_BREAK_SPACE = 0xA0;

    private final ByteArrayOutputStream bytes;

    MemoryWriter(ByteArrayOutputStream bytes) throws IOException {
      super(new Utf8Writer(bytes));
      this.bytes = bytes;
    }

    /** Text that needs no escaping, as nearly all, is written whole instead of sign by sign. */
    @Override
    protected void outputEscapedString(String text) throws IOException {
      if (isPlain(text)) {
        _out.write(text);
      } else {
        super.outputEscapedString(text);
      }
    }

    private static boolean isPlain(String text) {
      for (int i = 0; i < text.length(); i++) {
        if (!isPlain(text.charAt(i))) {
          return false;
        }
      }
      return true;
    }

    private static boolean isPlain(char character) {
      return character >= ' ' && character <= '~'
          ? "&<>\"".indexOf(character) < 0
          : character > NO_BREAK_SPACE && character < Character.MIN_SURROGATE;
    }

    @Override
    public InputStream getWorksheetXMLInputStream() {
      return new ByteArrayInputStream(bytes.toByteArray());
    }
  }
}
