package growingon.write;

import growingon.report.model.Book;
import growingon.report.model.Chart;
import growingon.report.model.Report;
import growingon.report.model.Sheet;
import growingon.report.model.Table;
import growingon.write.chart.ChartPainter;
import growingon.write.chart.PngPicture;
import growingon.write.chart.SvgPicture;
import growingon.write.chart.look.Format;
import growingon.write.folder.FileList;
import growingon.write.page.PageWriter;
import growingon.write.text.CsvTables;
import growingon.write.text.ProblemsText;
import growingon.write.workbook.WorkbookWriter;
import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Writes the files of a report into an empty folder, and their names and digests into figures.json.
 * Charts are drawn by other threads while this one writes the workbook; the bytes do not depend on
 * which is first.
 */
final class ReportFiles {
  /** The next twelve months for a calendar. */
  static final String CALENDAR = "jobs.ics";

  private static final int THREADS = 2;
  private static final int BUFFER = 1 << 16;
  private static final Pattern NAME = Pattern.compile("[a-z0-9]+(-[a-z0-9]+)*");

  private ReportFiles() {}

  static void write(Report report, Path folder, FileNames names) throws IOException {
    write(report, folder, folder, names, Map.of());
  }

  /**
   * The same with further texts.
   *
   * @param home where the folder will lie
   * @param beside by their paths in the folder, with / between folders
   */
  static void write(
      Report report, Path folder, Path home, FileNames names, Map<String, String> beside)
      throws IOException {
    check(report);
    writeBeside(folder, beside);
    Path charts = folder.resolve("charts");
    if (!report.charts().isEmpty()) {
      Files.createDirectory(charts);
    }
    Path tables = Files.createDirectory(folder.resolve("tables"));
    ExecutorService workers = Executors.newFixedThreadPool(THREADS, ReportFiles::daemon);
    try {
      Map<String, Future<Drawn>> drawn = new LinkedHashMap<>();
      Map<String, Future<PageWriter.Pictures>> onPage = new LinkedHashMap<>();
      for (Chart chart : report.charts()) {
        Path file = charts.resolve(chart.name() + ".png");
        drawn.put(chart.name(), workers.submit(() -> save(file, chart)));
      }
      for (Chart chart : report.charts()) {
        Future<Drawn> wide = drawn.get(chart.name());
        onPage.put(chart.name(), workers.submit(() -> onPage(chart, wide)));
      }
      List<Future<?>> texts = texts(report, folder, tables, workers);
      Path page = folder.resolve(names.page());
      texts.add(
          submit(
              workers,
              page,
              out -> out.write(PageWriter.bytes(report, chart -> get(onPage.get(chart.name()))))));
      writeBooks(report, folder, home, names, name -> get(drawn.get(name)).png());
      texts.addAll(drawn.values());
      for (Future<?> each : texts) {
        get(each);
      }
    } finally {
      stop(workers);
    }
    FileList.seal(folder);
  }

  private static void writeBeside(Path folder, Map<String, String> beside) throws IOException {
    for (Map.Entry<String, String> each : beside.entrySet()) {
      Path file = folder.resolve(each.getKey());
      Files.createDirectories(file.getParent());
      Files.writeString(file, each.getValue());
    }
  }

  private static void writeBooks(
      Report report, Path folder, Path home, FileNames names, WorkbookWriter.DrawnCharts pictures)
      throws IOException {
    Files.write(
        folder.resolve(names.workbook()), WorkbookWriter.write(report, Book.PLAN, pictures, home));
    if (report.sheets(Book.DETAILS).findAny().isPresent()) {
      Files.write(
          folder.resolve(names.details()),
          WorkbookWriter.write(report, Book.DETAILS, pictures, home));
    }
  }

  /** Waits until nobody writes any more, so that a half filled folder can be deleted. */
  private static void stop(ExecutorService workers) {
    workers.shutdownNow();
    boolean interrupted = Thread.interrupted();
    try {
      if (!workers.awaitTermination(1, TimeUnit.MINUTES)) {
        throw new IllegalStateException("a chart is still being drawn after a minute");
      }
    } catch (InterruptedException again) {
      interrupted = true;
    }
    if (interrupted) {
      Thread.currentThread().interrupt();
    }
  }

  /** Every table of the report once, those of the sheets first. */
  public static Collection<Table> tables(Report report) {
    Map<String, Table> tables = new LinkedHashMap<>();
    Stream.concat(
            report.sheets().stream().flatMap(sheet -> sheet.tables().stream()),
            report.extra().stream())
        .forEach(table -> add(tables, table));
    return tables.values();
  }

  private static void add(Map<String, Table> tables, Table table) {
    Table before = tables.putIfAbsent(table.name(), table);
    if (before != null && before != table && !before.equals(table)) {
      throw new IllegalArgumentException("two tables have one name: " + table.name());
    }
  }

  /** A report that breaks these rules is a fault of the program, not of the input. */
  private static void check(Report report) {
    checkNames(report.charts().stream().map(Chart::name).toList());
    checkNames(tables(report).stream().map(Table::name).toList());
    Set<String> charts = new HashSet<>(report.charts().stream().map(Chart::name).toList());
    for (Sheet sheet : report.sheets()) {
      if (!charts.containsAll(sheet.charts())) {
        throw new IllegalArgumentException(
            "sheet " + sheet.name() + " names a chart that is not there: " + sheet.charts());
      }
    }
  }

  private static void checkNames(List<String> names) {
    Set<String> seen = new HashSet<>();
    for (String name : names) {
      if (!NAME.matcher(name).matches() || !seen.add(name)) {
        throw new IllegalArgumentException("not a name, or given twice: " + name);
      }
    }
  }

  private static List<Future<?>> texts(
      Report report, Path folder, Path tables, ExecutorService workers) {
    List<Future<?>> texts = new ArrayList<>();
    texts.add(
        submit(workers, folder.resolve(FileList.FIGURES), out -> FiguresJson.write(report, out)));
    if (!report.isEdition()) {
      texts.add(
          submit(
              workers,
              folder.resolve("problems.txt"),
              out -> out.write(ProblemsText.bytes(report))));
    }
    if (!report.isEdition() && report.madeOn().isPresent() && JobsCalendar.suits(report)) {
      LocalDate made = report.madeOn().get();
      texts.add(
          submit(
              workers,
              folder.resolve(CALENDAR),
              out -> out.write(JobsCalendar.text(report, made).getBytes(StandardCharsets.UTF_8))));
    }
    for (Table table : tables(report)) {
      Path file = tables.resolve(table.name() + ".csv");
      texts.add(submit(workers, file, out -> CsvTables.write(table, out)));
    }
    return texts;
  }

  /** What a file holds; written as it comes about, as the long tables take much room. */
  private interface Content {
    void write(OutputStream out) throws IOException;
  }

  private static Future<?> submit(ExecutorService workers, Path file, Content content) {
    return workers.submit(
        () -> {
          try (OutputStream out = new BufferedOutputStream(Files.newOutputStream(file), BUFFER)) {
            content.write(out);
          }
          return file;
        });
  }

  /** A chart laid out in the wide format, and its picture. */
  private record Drawn(ChartPainter laidOut, byte[] png) {}

  /** A chart as the page holds it; queued after the picture, so that it never waits in vain. */
  private static PageWriter.Pictures onPage(Chart chart, Future<Drawn> wide) throws IOException {
    return SvgPicture.suits(chart)
        ? new PageWriter.Pictures(
            SvgPicture.draw(chart, Format.WIDE, get(wide).laidOut()),
            SvgPicture.draw(chart, Format.NARROW))
        : new PageWriter.Pictures(
            PageWriter.dataUri(get(wide).png()),
            PageWriter.dataUri(
                PngPicture.encode(
                    ChartPainter.paint(chart, Format.NARROW, 2 * Format.NARROW.width()))));
  }

  private static Drawn save(Path file, Chart chart) throws IOException {
    ChartPainter laidOut = new ChartPainter(chart, Format.WIDE);
    byte[] png = PngPicture.encode(laidOut.paint());
    Files.write(file, png);
    return new Drawn(laidOut, png);
  }

  private static <T> T get(Future<T> future) throws IOException {
    try {
      if (Thread.interrupted()) {
        throw new InterruptedException("before a file was done");
      }
      return future.get();
    } catch (InterruptedException interrupted) {
      Thread.currentThread().interrupt();
      throw new IOException("writing the report was interrupted", interrupted);
    } catch (ExecutionException failed) {
      if (failed.getCause() instanceof IOException cause) {
        throw cause;
      }
      throw new IllegalStateException("a file of the report could not be made", failed.getCause());
    }
  }

  /** A thread that does not keep the program alive. */
  private static Thread daemon(Runnable work) {
    Thread thread = new Thread(work, "report-writer");
    thread.setDaemon(true);
    return thread;
  }
}
