package growingon.load.list;

import growingon.load.cell.Findings;
import growingon.load.file.NurseryFiles;
import growingon.load.own.ListReader;
import growingon.load.own.sheet.Sheet;
import growingon.load.source.OwnCsv;
import growingon.load.source.Workbook;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.YearMonth;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The sheets of a file that is a grower's own list. */
public final class OwnFile {
  private static final Pattern MONTH = Pattern.compile("(\\d{4})-(\\d{1,2})(?!\\d)");

  private OwnFile() {}

  public static Optional<List<Sheet>> read(Path file, Findings findings) {
    String extension = NurseryFiles.extensionOf(String.valueOf(file.getFileName()));
    return extension.equals("xlsx") || extension.equals("xls")
        ? Workbook.readOwn(file, findings)
        : OwnCsv.read(file, findings);
  }

  /** The month that the name of a file says, in numbers or in words. */
  public static Optional<YearMonth> monthSaid(String file) {
    return monthInNumbers(file).or(() -> ListReader.monthIn(NurseryFiles.baseOf(file)));
  }

  /** The month that the name of a file says in numbers. */
  public static Optional<YearMonth> monthInNumbers(String name) {
    Matcher found = MONTH.matcher(name);
    if (!found.find()) {
      return Optional.empty();
    }
    try {
      return Optional.of(
          YearMonth.of(Integer.parseInt(found.group(1)), Integer.parseInt(found.group(2))));
    } catch (DateTimeException noMonth) {
      return Optional.empty();
    }
  }
}
