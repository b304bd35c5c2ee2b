package growingon.write.workbook;

import growingon.report.model.Book;
import growingon.report.model.Chart;
import growingon.report.model.Report;
import growingon.write.text.SafeText;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.poi.ss.usermodel.Drawing;
import org.apache.poi.ss.usermodel.Workbook;
import org.apache.poi.ss.util.WorkbookUtil;
import org.apache.poi.xssf.streaming.SXSSFSheet;

/** Writes a workbook of a report. */
public final class WorkbookWriter {
  private static final int LONGEST_NAME = 31;

  private WorkbookWriter() {}

  /** Gives a chart drawn as PNG; waits for it if it is still being drawn. */
  public interface DrawnCharts {
    byte[] png(String chart) throws IOException;
  }

  /**
   * The bytes of a workbook.
   *
   * @param home the folder in which it will lie
   */
  public static byte[] write(Report report, Book which, DrawnCharts drawn, Path home)
      throws IOException {
    try (SteadyWorkbook book = new SteadyWorkbook(report.plan())) {
      CellStyles styles = new CellStyles(book.getXSSFWorkbook(), report.writing());
      Map<String, Chart> charts =
          report.charts().stream().collect(Collectors.toMap(Chart::name, Function.identity()));
      ListLinks links = new ListLinks(home);
      Set<String> names = new HashSet<>();
      List<SheetWriter.Placement> placements = new ArrayList<>();
      Stream<SheetLayout> parts = report.sheets(which).flatMap(SheetDivision::of);
      for (SheetLayout each : (Iterable<SheetLayout>) parts::iterator) {
        SXSSFSheet target = book.createSheet(sheetName(each.sheet().name(), names));
        placements.addAll(new SheetWriter(target, each, styles, links).write(report, charts));
      }
      if (names.isEmpty()) {
        book.createSheet("Nothing to show");
      }
      place(book, placements, drawn);
      return book.bytes();
    }
  }

  private static void place(
      Workbook book, List<SheetWriter.Placement> placements, DrawnCharts drawn) throws IOException {
    Map<String, Integer> pictures = new HashMap<>();
    Map<SXSSFSheet, Drawing<?>> drawings = new IdentityHashMap<>();
    for (SheetWriter.Placement each : placements) {
      String name = each.chart().name();
      if (!pictures.containsKey(name)) {
        pictures.put(name, book.addPicture(drawn.png(name), Workbook.PICTURE_TYPE_PNG));
      }
      Drawing<?> drawing =
          drawings.computeIfAbsent(each.target(), SXSSFSheet::createDrawingPatriarch);
      each.place(drawing, pictures.get(name));
    }
  }

  /** A name that a workbook allows and that no sheet before has, in whatever case. */
  private static String sheetName(String wished, Set<String> taken) {
    String safe = WorkbookUtil.createSafeSheetName(SafeText.forXml(wished));
    String name = safe;
    for (int i = 2; !taken.add(name.toLowerCase(Locale.ROOT)); i++) {
      String end = " (" + i + ")";
      name = safe.substring(0, Math.min(safe.length(), LONGEST_NAME - end.length())) + end;
    }
    return name;
  }
}
