package growingon.write.workbook;

import growingon.report.model.Origin;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.stream.Collectors;
import java.util.stream.StreamSupport;
import org.apache.poi.common.usermodel.HyperlinkType;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFHyperlink;

/**
 * Links from cells of a workbook to the file of the grower's own that they come from: relative, so
 * that they last where both move together.
 */
final class ListLinks {
  private static final int LONGEST_SHEET = 31;

  private final Path home;

  /**
   * Links of a workbook.
   *
   * @param home the folder in which it lies
   */
  ListLinks(Path home) {
    this.home = whole(home);
  }

  private static Path whole(Path path) {
    return path.toAbsolutePath().normalize();
  }

  /** Makes a cell lead to where it comes from. */
  void link(Cell cell, Origin from) {
    XSSFHyperlink link =
        (XSSFHyperlink)
            cell.getSheet().getWorkbook().getCreationHelper().createHyperlink(HyperlinkType.FILE);
    link.setAddress(address(from.file()));
    link.setLocation(place(from));
    cell.setHyperlink(link);
  }

  /** The file from the folder, as a relative reference of RFC 3986; whole on another drive. */
  String address(Path file) {
    Path itsWhole = whole(file);
    return itsWhole.getRoot().equals(home.getRoot())
        ? StreamSupport.stream(home.relativize(itsWhole).spliterator(), false)
            .map(name -> escaped(name.toString()))
            .collect(Collectors.joining("/"))
        : itsWhole.toUri().toASCIIString();
  }

  /** All but the unreserved characters of RFC 3986, 2.3, as the bytes of their UTF-8. */
  private static String escaped(String name) {
    StringBuilder escaped = new StringBuilder();
    for (byte each : name.getBytes(StandardCharsets.UTF_8)) {
      char letter = (char) (each & 0xff);
      boolean plain = letter < 128 && Character.isLetterOrDigit(letter);
      escaped.append(
          plain || "-._~".indexOf(letter) >= 0 ? "" + letter : "%%%02X".formatted((int) letter));
    }
    return escaped.toString();
  }

  /** The cell; a file without sheets opens as one that is called like it. */
  private static String place(Origin from) {
    String sheet =
        from.sheet().isEmpty() ? sheetOfText(from.file().getFileName().toString()) : from.sheet();
    return "'%s'!%s"
        .formatted(
            sheet.replace("'", "''"),
            new CellReference(from.row() - 1, from.column()).formatAsString());
  }

  private static String sheetOfText(String file) {
    String base = file.substring(0, Math.max(file.lastIndexOf('.'), 0));
    return base.substring(0, Math.min(base.length(), LONGEST_SHEET));
  }
}
