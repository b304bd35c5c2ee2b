package growingon.write;

import growingon.report.model.Book;
import growingon.report.model.Chart;
import growingon.report.model.Chart.ChartKind;
import growingon.report.model.Chart.Role;
import growingon.report.model.Chart.Series;
import growingon.report.model.Column;
import growingon.report.model.Kind;
import growingon.report.model.Report;
import growingon.report.model.Sheet;
import growingon.report.model.Table;
import growingon.report.text.Phrases;
import growingon.write.chart.ChartPainter;
import growingon.write.chart.PngPicture;
import growingon.write.workbook.WorkbookWriter;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.List;

/** Writes a tiny report to nowhere, so that the classes it takes are loaded. */
final class WarmUp {
  private WarmUp() {}

  static void run() {
    Chart chart =
        new Chart(
            "warm-up",
            "",
            "",
            ChartKind.BARS,
            "",
            List.of("2000-01"),
            List.of(new Series("", Role.VALUE, List.of(1.0), "", 0)));
    Table table =
        new Table(
            "warm-up",
            "",
            List.of(),
            List.of(Column.summed("a", "a", "", Kind.COUNT)),
            List.of(List.of(1)));
    Sheet sheet = new Sheet("a", List.of(), List.of(table), List.of(chart.name()), false);
    Report report =
        Report.of("", "", Phrases.PLAIN, "").sheets(List.of(sheet)).charts(List.of(chart)).build();
    try {
      WorkbookWriter.write(
          report, Book.PLAN, name -> PngPicture.encode(ChartPainter.paint(chart)), Path.of(""));
    } catch (IOException impossible) {
      throw new UncheckedIOException("writing to memory failed", impossible);
    }
  }
}
