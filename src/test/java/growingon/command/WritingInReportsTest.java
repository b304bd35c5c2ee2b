package growingon.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.apache.commons.io.FileUtils;
import org.apache.poi.openxml4j.exceptions.InvalidFormatException;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;

/**
 * A nursery that writes {@code 1.234,5}, months as {@code 2027-03} and the currency behind: nothing
 * that a person reads in any report is written otherwise.
 */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class WritingInReportsTest {
  /** A name of the demonstration's own and the title of a source, which stay as they are. */
  private static final Pattern OWN_NAMES =
      Pattern.compile("7\\.5 litre|survey of 2,884 Philadelphia");

  private static final String MONTHS =
      "Jan(?:uary)?|Feb(?:ruary)?|Mar(?:ch)?|Apr(?:il)?|May|June?|July?|Aug(?:ust)?|Sep(?:tember)?"
          + "|Oct(?:ober)?|Nov(?:ember)?|Dec(?:ember)?";

  /**
   * Thousands parted by commas, a point before one or two decimals, a month by its name, and a
   * currency before its amount. Rates and growth factors below one may have three decimals.
   */
  private static final List<Pattern> OTHERWISE =
      List.of(
          Pattern.compile("(?<![\\d.,])[1-9]\\d{0,2}(?:,\\d{3})+(?!\\d)"),
          Pattern.compile("(?<![\\d.,])-?\\d+\\.\\d{1,2}(?![\\d.])"),
          Pattern.compile("\\b(?:" + MONTHS + ") (?:19|20)\\d\\d\\b(?!/)"),
          Pattern.compile("\\b(?:GBP|EUR|USD) -?\\d"));

  private Path folder;
  private final List<String> wrong = new ArrayList<>();
  private final List<String> terminal = new ArrayList<>();

  @BeforeAll
  void allFiveReports_areWritten(@TempDir Path temporary) throws IOException {
    folder = temporary;
    FileUtils.copyDirectory(Path.of("demo-data").toFile(), folder.resolve("demo-data").toFile());
    FileUtils.copyDirectory(Path.of("plans").toFile(), folder.resolve("plans").toFile());
    try (Stream<Path> files = Files.walk(folder)) {
      for (Path file : files.filter(each -> each.endsWith(Path.of("nursery.json"))).toList()) {
        String settings = Files.readString(file);
        Files.writeString(
            file,
            settings.replaceFirst(
                "\\{",
                "{ \"number style\": \"1.234,5\", \"date style\": \"year first\","
                    + " \"currency sign\": \"behind\","));
      }
    }
    run("plan", "plans/with-the-field-lot.json", "--draws", "30");
    run("review", "plans/four-seasons-on.json");
    run("compare", "plans/with-the-field-lot.json", "plans/as-it-stands.json", "--draws", "30");
    run("buying", "plans/what-to-buy.json", "--quick");
    run("fit", "plans/four-seasons-on.json");
  }

  @BeforeEach
  void nothingIsWrongYet() {
    wrong.clear();
  }

  private void run(String command, String... arguments) {
    List<String> all = new ArrayList<>(List.of(command));
    for (String argument : arguments) {
      all.add(argument.endsWith(".json") ? folder.resolve(argument).toString() : argument);
    }
    all.addAll(List.of("--out", folder.resolve("report-" + command).toString()));
    Ran ran = Ran.of(all.toArray(String[]::new));
    assertThat(ran.err()).isEmpty();
    ran.out().lines().forEach(terminal::add);
  }

  private void look(String where, String text) {
    String ours = OWN_NAMES.matcher(text).replaceAll("");
    for (Pattern pattern : OTHERWISE) {
      Matcher found = pattern.matcher(ours);
      while (found.find()) {
        int from = Math.max(0, found.start() - 40);
        wrong.add(
            "%s: %s in …%s"
                .formatted(
                    where,
                    found.group(),
                    ours.substring(from, Math.min(ours.length(), found.end() + 30))));
      }
    }
  }

  private List<Path> files(String ending) throws IOException {
    try (Stream<Path> files = Files.walk(folder)) {
      return files
          .filter(file -> file.toString().contains("report-"))
          .filter(file -> file.toString().endsWith(ending))
          .sorted()
          .toList();
    }
  }

  @Test
  void terminal_hasTheStyle() {
    terminal.stream()
        .filter(line -> !line.startsWith("Report:"))
        .forEach(line -> look("out", line));
    assertThat(wrong).isEmpty();
    assertThat(terminal.toString()).containsPattern("\\d\\.\\d{3} GBP").contains("2027-02");
  }

  @Test
  void page_hasTheStyle_inWordsPicturesAndTables() throws IOException {
    List<Path> pages = files("report.html");
    assertThat(pages).hasSize(5);
    int letters = 0;
    for (Path file : pages) {
      String page =
          Files.readString(file).replaceAll("(?s)<style.*?</style>|<script.*?</script>", "");
      letters += page.split("<text\\b").length - 1;
      lookAt(file + " picture", page, "(?:alt|aria-label)=\"([^\"]*)\"");
      lookAt(file.toString(), page, ">([^<>]+)<");
    }
    assertThat(wrong).isEmpty();
    assertThat(letters).isGreaterThan(1000);
  }

  private void lookAt(String where, String markup, String pattern) {
    Matcher texts = Pattern.compile(pattern).matcher(markup);
    while (texts.find()) {
      look(where, texts.group(1));
    }
  }

  @Test
  void workbooks_haveTheStyle_inTextsAndCellFormats() throws Exception {
    List<Path> books = files(".xlsx");
    assertThat(books).hasSizeGreaterThanOrEqualTo(6);
    for (Path file : books) {
      try (XSSFWorkbook book = new XSSFWorkbook(file.toFile())) {
        for (Sheet sheet : book) {
          for (Row row : sheet) {
            row.forEach(cell -> look(file.getFileName() + " " + sheet.getSheetName(), cell));
          }
        }
      } catch (InvalidFormatException broken) {
        throw new IOException(broken);
      }
    }
    assertThat(wrong).isEmpty();
  }

  private void look(String where, Cell cell) {
    if (cell.getCellType() == CellType.STRING) {
      look(where, cell.getStringCellValue());
      return;
    }
    String format = cell.getCellStyle().getDataFormatString();
    boolean number =
        cell.getCellType() == CellType.NUMERIC || cell.getCellType() == CellType.FORMULA;
    if (number && !format.startsWith("[$-407]") && !format.equals("yyyy-mm")) {
      wrong.add(where + " " + cell.getAddress() + ": format " + format);
    }
  }

  @Test
  void problemsAndCalendar_haveTheStyle() throws IOException {
    for (Path file : files("problems.txt")) {
      look(file.toString(), Files.readString(file));
    }
    for (Path file : files(".ics")) {
      look(file.toString(), Files.readString(file).replace("VERSION:2.0", ""));
    }
    assertThat(wrong).isEmpty();
  }

  @Test
  void filesForPrograms_stayPlain() throws IOException {
    String cash = Files.readString(folder.resolve("report-plan/tables/cash-by-season.csv"));
    assertThat(cash)
        .containsPattern(",-?\\d{4,}\\.\\d\\d")
        .doesNotContainPattern("\\d\\.\\d{3},\\d");
    String assumptions = Files.readString(folder.resolve("report-plan/tables/assumptions.csv"));
    assertThat(assumptions).contains(",0.86,");
    assertThat(Files.readString(folder.resolve("report-plan/figures.json")))
        .containsPattern(" -?\\d{4,}\\.\\d+");
  }
}
