package growingon.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.apache.commons.io.FileUtils;
import org.apache.poi.openxml4j.exceptions.InvalidFormatException;
import org.apache.poi.ss.usermodel.DataFormatter;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;

/**
 * What is said of an input in a nursery that writes {@code 1.234,5}: numbers of the program's own
 * are written so for people and plainly for programs, names and what was found stay.
 */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class NumbersInProblemsTest {
  private static final String PLAN = "plans/with-the-field-lot.json";

  /** Pots called by numbers, and cells as they were found. */
  private static final Pattern NOT_OURS =
      Pattern.compile("7\\.5 litre|1,500 cell tray|vat 2\\.5|\\((?:12\\.5|2500|2000000)\\)");

  private static final Pattern OTHERWISE =
      Pattern.compile("(?<![\\d.,])(?:\\d{1,3}(?:,\\d{3})+|\\d+\\.\\d{1,2}|\\d{4,})(?![\\d.,-])");

  private static final List<String> TOLD =
      List.of(
          "the measures give 7,59 litres to the brim, but 12,50 litres are stated and used (12.5)",
          "1 USD counts as 1.234,5 GBP",
          "as it is more than 1.000.000 (2000000)",
          "as the pot holds 11.781 litres by its measures (2500)",
          "would need 153,6 m² in 2027-04 and has 0,1 m²",
          "uses the pots 1,500 cell tray and vat 2.5");

  private Path folder;
  private String checked;

  @BeforeAll
  void nurseryWithSlips_isPlanned(@TempDir Path temporary) throws IOException {
    folder = temporary;
    FileUtils.copyDirectory(Path.of("demo-data").toFile(), folder.resolve("demo-data").toFile());
    FileUtils.copyDirectory(Path.of("plans").toFile(), folder.resolve("plans").toFile());
    change(
        "nursery.json",
        "(?s)\\{(.*)\"EUR\": 0.86",
        "{ \"number style\": \"1.234,5\", \"date style\": \"year first\",$1\"EUR\": 0.86, \"USD\": 1234.5");
    change(
        "pots.csv",
        "(?s)7\\.5 litre,round,250,200,190,,,(.*)",
        "7.5 litre,round,250,200,190,,12.5,$1"
            + "\"1,500 cell tray\",square,110,85,120,,,nursery pot,95,0.16,100,,60,0.05,,\n"
            + "vat 2.5,round,2500,2500,2400,,,nursery pot,95,2000000,100,,60,0.05,,\n");
    change("places.csv", "East ground,standing ground,,230", "East ground,standing ground,,0.1");
    checked = done("check", folder.resolve(PLAN).toString());
    done("plan", folder.resolve(PLAN).toString(), "--draws", "0", "--out", report().toString());
  }

  private void change(String file, String from, String to) throws IOException {
    Path path = folder.resolve("demo-data").resolve(file);
    String text = Files.readString(path);
    String changed = text.replaceFirst(from, to);
    assertThat(changed).isNotEqualTo(text);
    Files.writeString(path, changed);
  }

  private static String done(String... arguments) {
    Ran ran = Ran.of(arguments);
    assertThat(ran.err()).isEmpty();
    return ran.out();
  }

  private Path report() {
    return folder.resolve("report");
  }

  private static void assertTold(String text) {
    assertThat(text).contains(TOLD);
    assertThat(NOT_OURS.matcher(text).replaceAll("…").lines())
        .noneMatch(line -> OTHERWISE.matcher(withoutMonths(line)).find());
  }

  private static String withoutMonths(String line) {
    return line.replaceAll("\\b20\\d\\d-\\d\\d\\b", "");
  }

  @Test
  void terminal_hasTheStyle() {
    String problems =
        String.join(
            "\n",
            checked
                .lines()
                .filter(line -> line.startsWith("warning: ") || line.startsWith("notice: "))
                .toList());
    assertTold(problems);
  }

  @Test
  void problemsFile_hasTheStyle() throws IOException {
    assertTold(Files.readString(report().resolve("problems.txt")));
  }

  @Test
  void notesSheet_hasTheStyle() throws IOException, InvalidFormatException {
    List<String> cells = new ArrayList<>();
    try (XSSFWorkbook book = new XSSFWorkbook(report().resolve("plan.xlsx").toFile())) {
      DataFormatter formatter = new DataFormatter();
      for (Row row : book.getSheet("Notes")) {
        String severity = formatter.formatCellValue(row.getCell(0));
        if (severity.equals("warning") || severity.equals("notice")) {
          row.forEach(cell -> cells.add(formatter.formatCellValue(cell)));
        }
      }
    }
    assertTold(String.join("\n", cells));
  }

  @Test
  void filesForPrograms_arePlain() throws IOException {
    String csv = Files.readString(report().resolve("tables/problems.csv"));
    String json = Files.readString(report().resolve("figures.json"));
    for (String text : List.of(csv, json)) {
      assertThat(text)
          .contains(
              "the measures give 7.59 litres to the brim, but 12.50 litres are stated and used (12.5)",
              "1 USD counts as 1234.5 GBP",
              "as it is more than 1000000 (2000000)",
              "as the pot holds 11781 litres by its measures",
              "would need 153.6 m² in 2027-04 and has 0.1 m²",
              "1,500 cell tray and vat 2.5");
    }
  }

  @Test
  void list_isTalliedInTheStyle() throws IOException {
    Path list = folder.resolve("lists");
    Files.createDirectories(list.resolve("mine"));
    Files.writeString(
        list.resolve("stock.csv"),
        "plant,pot,number,reserved\nField maple,7.5 litre,2400,1200\nBeech,10 litre,30,\nTotal,,2500,\n");
    Files.writeString(
        list.resolve("mine").resolve("own words.csv"), "kind,yours,ours\nlist,../stock.csv,\n");
    Files.writeString(
        list.resolve("mine").resolve("settings.csv"),
        "name,value\nnumber style,\"1.234,5\"\ncurrency,EUR\nhourly rate,15\ndiscount rate % a year,4\n");
    assertThat(done("check", list.resolve("mine").toString()))
        .contains("the total says 2.500, the rows add up to 2.430")
        .contains("1.200 plants are reserved by your list");
  }

  @Test
  void refusal_isPlain() throws IOException {
    Path broken = folder.resolve("broken");
    FileUtils.copyDirectory(folder.resolve("demo-data").toFile(), broken.toFile());
    Path places = broken.resolve("places.csv");
    Files.writeString(places, Files.readString(places).replace(",0.1,75,", ",0.1,275,"));
    Ran ran = Ran.of("check", broken.toString(), "--all");
    assertThat(ran.code()).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(ran.err()).contains("1 USD counts as 1234.5 GBP").contains("12.50 litres");
  }
}
