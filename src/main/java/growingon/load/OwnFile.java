package growingon.load;

import growingon.load.cell.Findings;
import growingon.load.own.Sheet;
import growingon.load.source.OwnCsv;
import growingon.load.source.Workbook;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/** The sheets of a file that is a grower's own list. */
final class OwnFile {
  private OwnFile() {}

  static Optional<List<Sheet>> read(Path file, Findings findings) {
    String extension = NurseryFiles.extensionOf(String.valueOf(file.getFileName()));
    return extension.equals("xlsx") || extension.equals("xls")
        ? Workbook.readOwn(file, findings)
        : OwnCsv.read(file, findings);
  }
}
