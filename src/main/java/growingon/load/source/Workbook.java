package growingon.load.source;

import growingon.load.cell.Findings;
import growingon.load.cell.Texts;
import growingon.load.cell.Utf8;
import growingon.load.own.sheet.Sheet;
import growingon.problem.Problem;
import growingon.problem.Where;
import growingon.problem.advice.FileAdvice;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.function.Function;
import javax.xml.parsers.ParserConfigurationException;
import org.apache.poi.openxml4j.exceptions.OpenXML4JException;
import org.apache.poi.openxml4j.opc.OPCPackage;
import org.apache.poi.openxml4j.opc.PackageAccess;
import org.apache.poi.openxml4j.util.ZipSecureFile;
import org.apache.poi.poifs.filesystem.FileMagic;
import org.apache.poi.poifs.filesystem.POIFSFileSystem;
import org.apache.poi.util.XMLHelper;
import org.apache.poi.xssf.eventusermodel.ReadOnlySharedStringsTable;
import org.apache.poi.xssf.eventusermodel.XSSFReader;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;
import org.xml.sax.XMLReader;
import org.xml.sax.helpers.DefaultHandler;

/**
 * The sheets of a workbook, read as a stream: a sheet whose used range has a million rows costs
 * only its filled cells. Formulas count with the value that was stored with them.
 */
public final class Workbook {
  private static final Set<String> FOR_WHOEVER_TYPES = Set.of("lists", "read me");

  /** A part that unpacks to more than this is no stock list. */
  private static final long LARGEST_PART = 512L << 20;

  static {
    ZipSecureFile.setMaxEntrySize(LARGEST_PART);
  }

  private Workbook() {}

  /** Every sheet that is not hidden; empty if the file cannot be read, which is reported. */
  public static Optional<List<Grid>> read(Path file, Findings findings) {
    return guarded(
        file,
        findings,
        where -> sheets(file, where, findings, SheetHandler::new, SheetHandler::grid));
  }

  /** Every sheet that is not hidden, as a list of the grower's own. */
  public static Optional<List<Sheet>> readOwn(Path file, Findings findings) {
    return guarded(
        file,
        findings,
        where ->
            WorkedOut.of(
                file, sheets(file, where, findings, OwnSheetHandler::new, OwnSheetHandler::sheet)));
  }

  /** Reads the sheets of a workbook. */
  private interface Sheets<T> {
    List<T> in(Where where)
        throws IOException, OpenXML4JException, SAXException, ParserConfigurationException;
  }

  private static <T> Optional<List<T>> guarded(Path file, Findings findings, Sheets<T> sheets) {
    Where where = Where.file(file.getFileName().toString());
    try {
      return looksRight(file, where, findings) ? Optional.of(sheets.in(where)) : Optional.empty();
    } catch (AccessDeniedException denied) {
      findings.add(FileAdvice.noAccess(where));
    } catch (IOException
        | OpenXML4JException
        | SAXException
        | ParserConfigurationException
        | RuntimeException broken) {
      // On a damaged file the library throws whatever its parsers stumble on, also exceptions that
      // elsewhere tell a fault of the program.
      findings.add(broken(where, broken));
    }
    return Optional.empty();
  }

  private static Problem broken(Where where, Exception broken) {
    String message = String.valueOf(broken.getMessage());
    if (message.contains("Zip bomb")) {
      return FileAdvice.zipBomb(where);
    }
    return message.contains("Strict OOXML")
        ? FileAdvice.strictWorkbook(where)
        : FileAdvice.brokenWorkbook(where);
  }

  /** What a file is, it says in its first bytes, whatever its name. */
  private static boolean looksRight(Path file, Where where, Findings findings) throws IOException {
    if (!Files.isRegularFile(file)) {
      findings.add(FileAdvice.notAFile(where));
      return false;
    }
    long size = Files.size(file);
    if (size == 0 || size > Utf8.LARGEST) {
      findings.add(
          size == 0 ? FileAdvice.emptyFile(where) : FileAdvice.tooLarge(where, size >> 20));
      return false;
    }
    FileMagic magic = FileMagic.valueOf(file.toFile());
    if (magic == FileMagic.OLE2) {
      findings.add(isEncrypted(file) ? FileAdvice.encrypted(where) : FileAdvice.oldWorkbook(where));
    } else if (magic != FileMagic.OOXML) {
      findings.add(FileAdvice.noWorkbook(where));
    }
    return magic == FileMagic.OOXML;
  }

  private static boolean isEncrypted(Path file) throws IOException {
    try (POIFSFileSystem system = new POIFSFileSystem(file.toFile(), true)) {
      return system.getRoot().hasEntryCaseInsensitive("EncryptedPackage");
    }
  }

  private static <H extends SheetHandler, T> List<T> sheets(
      Path file,
      Where where,
      Findings findings,
      Function<SheetValues, H> handlers,
      BiFunction<H, Where, T> results)
      throws IOException, OpenXML4JException, SAXException, ParserConfigurationException {
    try (OPCPackage contents = OPCPackage.open(file.toFile(), PackageAccess.READ)) {
      XSSFReader reader = new XSSFReader(contents);
      WorkbookParts parts = new WorkbookParts();
      parse(reader.getWorkbookData(), parts);
      SheetValues values =
          new SheetValues(
              new ReadOnlySharedStringsTable(contents, false),
              Optional.ofNullable(reader.getStylesTable()),
              parts.from1904());
      List<T> grids = new ArrayList<>();
      for (WorkbookParts.SheetPart sheet : parts.sheets()) {
        Where sheetWhere = new Where(where.file(), sheet.name(), 0, "");
        if (sheet.hidden()) {
          remarkHidden(sheetWhere, findings);
        } else {
          H handler = handlers.apply(values);
          parse(reader.getSheet(sheet.relation()), handler);
          grids.add(results.apply(handler, sheetWhere));
        }
      }
      return grids;
    }
  }

  /** A sheet that would not be read anyway may be hidden. */
  private static void remarkHidden(Where sheet, Findings findings) {
    if (!isForWhoeverTypes(sheet.sheet())) {
      findings.add(FileAdvice.hiddenSheet(sheet));
    }
  }

  private static void parse(InputStream part, DefaultHandler handler)
      throws IOException, SAXException, ParserConfigurationException {
    try (InputStream stream = part) {
      XMLReader xml = XMLHelper.newXMLReader();
      xml.setContentHandler(handler);
      xml.setErrorHandler(handler);
      xml.parse(new InputSource(stream));
    }
  }

  /** Whether a sheet of this name is there for whoever types, and not read. */
  public static boolean isForWhoeverTypes(String sheet) {
    return FOR_WHOEVER_TYPES.contains(Texts.headingKey(sheet));
  }
}
