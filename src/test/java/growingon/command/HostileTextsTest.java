package growingon.command;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A stock list whose every text wants to be more than text, planned whole and as each edition. */
class HostileTextsTest {
  private static final String LONG = "+" + "x".repeat(9_999);
  private static final List<String> TEXTS =
      List.of(
          "<script>alert(1)</script>",
          "=HYPERLINK(\"http://example.invalid\",\"x\")",
          "@\"quotes' & <b>ampersands</b>",
          "-right \u202Eto left\u202C \u200F\u2066mark \u001B[31mred \u009B2J",
          "\t+1",
          "a;=1+1;\uFF1D2",
          "\uFF1D1+1");

  /** Names of the demonstration nursery that other tables hold too, made hostile in all of them. */
  private static final Map<String, String> NAMES =
      Map.of(
          "Hornbeam", "=Hornbeam<script>alert(2)</script>",
          "East ground", "@East ground</td><b>",
          "liners in pots", "+liners in pots</script>");

  private static final Pattern TURNS_OR_COMMANDS =
      Pattern.compile("[\\p{Cc}\\u200E\\u200F\\u061C\\u202A-\\u202E\\u2066-\\u2069&&[^\\n\\r\\t]]");
  private static final Pattern MARKUP = Pattern.compile("<script>alert|</td><b>|<b>ampersands");
  private static final Pattern NUMBER = Pattern.compile("-?[0-9.]+(E-?[0-9]+)?");

  @TempDir Path temporary;
  private Path folder;

  @BeforeEach
  void nursery() throws IOException {
    folder = Files.createDirectory(temporary.resolve("nursery"));
    try (Stream<Path> files = Files.list(Path.of("demo-data"))) {
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        if (!file.endsWith("stock.xlsx")) {
          Files.writeString(folder.resolve(file.getFileName()), hostile(Files.readString(file)));
        }
      }
    }
    stock(TEXTS);
    Files.writeString(
        temporary.resolve("plan.json"),
        "{\"name\": \"hostile\", \"nursery\": \"nursery\", \"first month\": \"2026-11\","
            + " \"seasons\": 3, \"draws\": 0}");
  }

  private static String hostile(String text) {
    String changed = text;
    for (Map.Entry<String, String> name : NAMES.entrySet()) {
      changed = changed.replace(name.getKey(), name.getValue());
    }
    return changed;
  }

  private void stock(List<String> lots) throws IOException {
    StringBuilder stock =
        new StringBuilder(
            "lot,species,form,quantity,arrived,trunk mm,pot,place,route,unit cost,supplier,"
                + "passport,origin,from lot,note\n");
    int trunk = 22;
    for (String lot : lots) {
      String text = quoted(lot);
      stock.append(
          hostile(
              text
                  + ",Hornbeam,container,100,2024-03,"
                  + trunk++
                  + ",18 litre,East ground,liners in pots,13,"
                  + String.join(",", text, text, text, text)
                  + ","
                  + quoted(lot + LONG)
                  + "\n"));
    }
    Files.writeString(folder.resolve("stock.csv"), stock);
  }

  private static String quoted(String text) {
    return "\"" + text.replace("\"", "\"\"") + "\"";
  }

  private Ran plan(String edition) {
    String[] words = {
      "plan", temporary.resolve("plan.json").toString(), "--out", out().toString(), "--for", edition
    };
    return Ran.of(edition.isEmpty() ? java.util.Arrays.copyOf(words, 4) : words);
  }

  private Path out() {
    return temporary.resolve("report");
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "partner", "bank", "customer"})
  void hostileStockList_planned_isPlainTextEverywhere(String edition) throws IOException {
    Ran ran = plan(edition);

    assertThat(ran.code()).as(ran.err()).isZero();
    assertPlain("terminal", ran.out() + ran.err());
    assertWorkbookIsPlain();
    for (Path file : files(".csv")) {
      assertTableIsPlain(file);
    }
    for (Path file : files(".txt")) {
      assertPlain(file.toString(), Files.readString(file));
    }
    String page = Files.readString(out().resolve("report.html"));
    assertPlain("page", page);
    assertThat(MARKUP.matcher(page).find()).isFalse();
    assertThat(page.split("<script", -1)).as("the page's own script only").hasSize(2);
  }

  @Test
  void hostileStockList_planned_isShownAsItWasWritten() throws IOException {
    plan("");

    String page = Files.readString(out().resolve("report.html"));
    assertThat(page)
        .contains("&lt;script&gt;alert(1)&lt;/script&gt;", "=HYPERLINK(", "right to left mark");
    String figures = new ObjectMapper().readTree(out().resolve("figures.json").toFile()).toString();
    assertThat(figures)
        .contains("=HYPERLINK(\\\"http://example.invalid\\\",\\\"x\\\")", "@East ground</td><b>");
  }

  @Test
  void lotOfTenThousandLetters_planned_isRefusedInOneShortLine() throws IOException {
    stock(List.of(LONG, "\u202E\u001B[2J" + LONG));

    Ran ran = plan("");

    assertThat(ran.code()).isEqualTo(ExitCode.BAD_INPUT);
    assertPlain("terminal", ran.err());
    assertThat(ran.err()).contains("rows 2, 3", "at most 100 letters");
    assertThat(ran.err().lines()).allMatch(line -> line.length() < 400);
  }

  private static void assertPlain(String where, String text) {
    assertThat(TURNS_OR_COMMANDS.matcher(text).find()).as("a raw mark in " + where).isFalse();
  }

  private List<Path> files(String ending) throws IOException {
    try (Stream<Path> walk = Files.walk(out())) {
      return walk.filter(each -> each.toString().endsWith(ending)).toList();
    }
  }

  private static void assertTableIsPlain(Path file) throws IOException {
    try (Reader reader = Files.newBufferedReader(file);
        CSVParser table = CSVParser.parse(reader, CSVFormat.DEFAULT)) {
      for (CSVRecord row : table) {
        row.forEach(cell -> assertCellIsPlain(file, cell));
      }
    }
  }

  private static void assertCellIsPlain(Path file, String cell) {
    assertPlain(file.toString(), cell);
    if (!cell.isEmpty() && !NUMBER.matcher(cell).matches()) {
      assertThat("=+-@\t\r\n\uFF1D".indexOf(cell.charAt(0))).as(file + ": " + cell).isNegative();
      assertThat(cell).as(file.toString()).doesNotContain(";=", ";\uFF1D");
    }
  }

  private void assertWorkbookIsPlain() throws IOException {
    int parts = 0;
    try (InputStream in = Files.newInputStream(out().resolve("plan.xlsx"));
        ZipInputStream zip = new ZipInputStream(in)) {
      for (ZipEntry each = zip.getNextEntry(); each != null; each = zip.getNextEntry()) {
        if (each.getName().endsWith(".xml") || each.getName().endsWith(".rels")) {
          parts++;
          assertPartIsPlain(each.getName(), new String(zip.readAllBytes(), StandardCharsets.UTF_8));
        }
      }
    }
    assertThat(parts).isGreaterThan(5);
  }

  private static void assertPartIsPlain(String name, String part) {
    assertPlain(name, part);
    assertThat(MARKUP.matcher(part).find()).as("markup in " + name).isFalse();
    assertThat(part).as(name).doesNotContainPattern("<f[^>]*>[^<]*(HYPERLINK|Hornbeam|example)");
    assertThat(part).as(name).doesNotContain("TargetMode=\"External\"", "relationships/hyperlink");
  }
}
