package growingon.command;

import java.io.IOException;
import java.io.OutputStream;
import java.io.Reader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** The well-made files that a fuzzer changes: small nurseries, a question, a plan that is kept. */
final class FuzzSeeds {
  private static final Path TIDY = Path.of("src/test/resources/load/tidy");

  private static final Path DAYBOOK = Path.of("src/test/resources/load/daybook");
  private static final Pattern YEAR = Pattern.compile("\\b(20[0-9]{2})(?:/([0-9]{2}))?\\b");

  private FuzzSeeds() {}

  static Path lay(Path seeds) throws IOException {
    Path tables = Files.createDirectories(seeds.resolve("nursery"));
    copyYearsEarlier(TIDY, tables);
    copyYearsEarlier(DAYBOOK, tables);
    FuzzTarget.copy(tables, seeds.resolve("review"));
    workbook(tables, seeds.resolve("workbook"));
    Files.writeString(
        seeds.resolve("settings.csv"),
        """
        name,value,note
        name,Mossgate Trees,
        hemisphere,north,
        currency,EUR,
        exchange rate CHF,1.05,
        hourly rate,21,
        hours paid in cash %,60,
        discount rate % a year,3.5,
        month pattern of sales,2; 3; 10; 18; 20; 12; 5; 4; 10; 10; 4; 2,
        season start month,10,
        order lead months,1,
        winter from,11,
        winter gap mm,20,
        girth base factor,1.25,
        selling cost %,3,
        """);
    quick(Files.createDirectories(seeds.resolve("quick")));
    keep(seeds.resolve("review"));
    return seeds;
  }

  /** Two years earlier, so that what the daybook tells has happened by today. */
  private static void copyYearsEarlier(Path from, Path to) throws IOException {
    try (Stream<Path> files = Files.list(from)) {
      for (Path file : files.toList()) {
        String text = Files.readString(file);
        Files.writeString(
            to.resolve(file.getFileName()),
            YEAR.matcher(text).replaceAll(year -> earlier(year.group(1), year.group(2))));
      }
    }
  }

  /** 2025, or 2025/26 for a season. */
  private static String earlier(String year, String next) {
    int earlier = Integer.parseInt(year) - 2;
    return next == null ? String.valueOf(earlier) : earlier + "/" + (earlier + 1) % 100;
  }

  private static void quick(Path folder) throws IOException {
    Files.writeString(
        folder.resolve("quick.csv"),
        """
        line,fill in
        species,Scots pine
        how many,50
        price each,20
        carriage for all,100
        arrival month,Mar 2027
        trunk mm or girth cm,12-14 cm
        firsts and seconds in ten,6 and 2
        pot litres,15
        sold at trunk mm,45
        selling price each,120
        free square metres,15
        root-work check 1,0.6
        pot-bound factor,0.6
        old ball in the pot %,30
        grit in the mix %,40
        seasons looked ahead,6
        kind,
        hourly rate,15
        """);
  }

  private static void keep(Path folder) {
    Ran ran =
        Ran.of(
            "plan",
            folder.toString(),
            "--keep",
            "--draws",
            "3",
            "--out",
            folder.resolveSibling("kept-report").toString());
    if (ran.code() != ExitCode.DONE) {
      throw new IllegalStateException(ran.err());
    }
  }

  /** The tables of the tidy nursery as sheets, numbers as numbers. */
  private static void workbook(Path tables, Path folder) throws IOException {
    Files.createDirectories(folder);
    try (XSSFWorkbook book = new XSSFWorkbook();
        OutputStream out = Files.newOutputStream(folder.resolve("nursery.xlsx"));
        Stream<Path> files = Files.list(tables)) {
      for (Path file : files.sorted().toList()) {
        String name = file.getFileName().toString();
        if (name.endsWith(".csv")) {
          fill(book.createSheet(name.substring(0, name.length() - ".csv".length())), file);
        } else {
          Files.copy(file, folder.resolve(name));
        }
      }
      book.write(out);
    }
  }

  private static void fill(Sheet sheet, Path table) throws IOException {
    char delimiter = Files.readAllLines(table).get(0).contains(";") ? ';' : ',';
    CSVFormat format = CSVFormat.RFC4180.builder().setDelimiter(delimiter).get();
    try (Reader reader = Files.newBufferedReader(table)) {
      List<CSVRecord> records = format.parse(reader).getRecords();
      for (int r = 0; r < records.size(); r++) {
        Row row = sheet.createRow(r);
        for (int c = 0; c < records.get(r).size(); c++) {
          set(row, c, records.get(r).get(c));
        }
      }
    }
  }

  private static void set(Row row, int column, String text) {
    if (text.isEmpty()) {
      return;
    }
    Cell cell = row.createCell(column);
    if (text.matches("-?[0-9]+(\\.[0-9]+)?")) {
      cell.setCellValue(Double.parseDouble(text));
    } else {
      cell.setCellValue(text);
    }
  }
}
