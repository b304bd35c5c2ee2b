package growingon.write.workbook;

import growingon.report.model.InputBook;
import growingon.report.model.InputBook.InputSheet;
import growingon.write.text.SafeText;
import growingon.write.text.TextSize;
import java.io.IOException;
import java.nio.file.Path;
import org.apache.poi.ss.usermodel.PrintSetup;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.streaming.SXSSFSheet;

/** Writes a workbook to type into. */
public final class InputWorkbook {
  private static final int WORDS_WIDTH = 100;
  private static final String WORDS = "read me";

  private InputWorkbook() {}

  /**
   * The bytes of the workbook; the same description gives the same bytes.
   *
   * @param home the folder in which it will lie
   */
  public static byte[] bytes(InputBook book, Path home) throws IOException {
    try (SteadyWorkbook target = new SteadyWorkbook(book.title())) {
      InputStyles styles = new InputStyles(target.getXSSFWorkbook());
      words(book, target.createSheet(WORDS), styles);
      for (InputSheet each : book.sheets()) {
        SXSSFSheet sheet = target.createSheet(each.name());
        printing(sheet);
        new InputSheetWriter(sheet, each, styles, new ListLinks(home)).write();
      }
      new ChoiceLists(target, book).write();
      return target.bytes();
    }
  }

  private static void words(InputBook book, SXSSFSheet sheet, InputStyles styles) {
    sheet.setDisplayGridlines(false);
    sheet.setColumnWidth(0, WORDS_WIDTH * 256);
    printing(sheet);
    int next = 0;
    for (String line : book.words()) {
      boolean title = line.startsWith("# ");
      String text = title ? line.substring(2) : line;
      var cell = sheet.createRow(next++).createCell(0);
      cell.setCellValue(SafeText.forCell(text));
      cell.setCellStyle(title ? styles.title() : styles.words());
      double lines = title ? 1.7 : TextSize.lines(text, WORDS_WIDTH - 2);
      cell.getRow().setHeightInPoints((float) (lines * 15 + 2));
    }
  }

  private static void printing(Sheet sheet) {
    sheet.getPrintSetup().setPaperSize(PrintSetup.A4_PAPERSIZE);
    sheet.getPrintSetup().setLandscape(true);
    sheet.setFitToPage(true);
    sheet.getPrintSetup().setFitHeight((short) 0);
  }
}
