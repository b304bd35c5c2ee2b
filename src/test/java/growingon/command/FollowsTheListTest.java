package growingon.command;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * What was laid out around a list and not typed over follows the list and the answers: the plan is
 * that of a nursery laid out today, which is the other way to the same figures.
 */
class FollowsTheListTest {
  /** What tells where something was read, or goes by the order of the demand's rows. */
  private static final Set<String> OF_THE_FILES =
      Set.of(
          "assumptions",
          "own-words",
          "to-fill",
          "stock-as-read",
          "rows-read",
          "problems",
          "demand-met",
          "sales-lines",
          "sales-by-season");

  @TempDir Path folder;
  private Path list;

  @BeforeEach
  void list() throws IOException {
    list =
        Files.writeString(
            folder.resolve("stock.csv"),
            """
            Plant,Size,Qty,Place,Zettel,Dickum
            Field maple,C3,240,Tunnel 1,,12
            Hornbeam,C10,130,Tunnel 1,38,25
            Scots pine,C15,60,Bed 2,45,30
            Yew,60-80,300,Field,,
            """);
  }

  private void start(String mine) {
    Ran ran = Ran.of("start", folder.resolve(mine).toString(), "--from", list.toString());
    assertThat(ran.err()).isEmpty();
  }

  /** Every table of figures of a plan, but what says which files were read. */
  private List<String> planned(String mine) throws IOException {
    Path report = folder.resolve(mine + " report");
    Ran ran =
        Ran.of(
            "plan",
            folder.resolve(mine).toString(),
            "--draws",
            "0",
            "--force",
            "--out",
            report.toString());
    assertThat(ran.err()).isEmpty();
    JsonNode tables =
        new ObjectMapper().readTree(report.resolve("figures.json").toFile()).get("tables");
    List<String> figures = new ArrayList<>();
    for (Map.Entry<String, JsonNode> table : tables.properties()) {
      if (!OF_THE_FILES.contains(table.getKey())) {
        figures.add(table.getKey() + table.getValue().get("rows"));
      }
    }
    assertThat(figures).hasSizeGreaterThan(20);
    return figures;
  }

  private interface Change {
    void in(XSSFWorkbook book);
  }

  private void change(String mine, Change change) throws IOException {
    Path file = folder.resolve(mine).resolve("nursery.xlsx");
    try (InputStream in = Files.newInputStream(file);
        XSSFWorkbook book = new XSSFWorkbook(in)) {
      change.in(book);
      try (OutputStream out = Files.newOutputStream(file)) {
        book.write(out);
      }
    }
  }

  private static int column(Sheet sheet, String heading) {
    for (int i = 0; i < sheet.getRow(0).getLastCellNum(); i++) {
      if (sheet.getRow(0).getCell(i).getStringCellValue().equals(heading)) {
        return i;
      }
    }
    throw new IllegalArgumentException(heading);
  }

  private static void type(XSSFWorkbook book, String sheet, String row, String column, String to) {
    Sheet its = book.getSheet(sheet);
    for (Row each : its) {
      for (int i = 0; i < Math.max(0, each.getLastCellNum()); i++) {
        if (each.getCell(i) != null && each.getCell(i).toString().equals(row)) {
          int at = column(its, column);
          each.getCell(at, Row.MissingCellPolicy.CREATE_NULL_AS_BLANK).setCellValue(to);
          return;
        }
      }
    }
    throw new IllegalArgumentException(row);
  }

  @Test
  void headingsAnsweredAfterwards_giveThePlanOfAListThatSaysThem() throws IOException {
    start("asked");
    List<String> before = planned("asked");
    change(
        "asked",
        book -> {
          type(book, "own words", "Zettel", "ours", "selling price");
          type(book, "own words", "Dickum", "ours", "trunk mm");
        });
    Files.writeString(
        list,
        Files.readString(list).replace("Zettel", "Selling price").replace("Dickum", "Trunk mm"));
    start("said");
    List<String> said = planned("said");
    Files.writeString(
        list,
        Files.readString(list).replace("Selling price", "Zettel").replace("Trunk mm", "Dickum"));
    assertThat(planned("asked")).isEqualTo(said).isNotEqualTo(before);
  }

  @Test
  void nextMonthsList_isPlannedAsIfLaidOutThen() throws IOException {
    start("old");
    List<String> before = planned("old");
    Files.writeString(
        list,
        Files.readString(list).replace("240,Tunnel 1", "900,Tunnel 1")
            + "Ginkgo biloba,C7,40,,,\n");
    start("new");
    assertThat(planned("old")).isEqualTo(planned("new")).isNotEqualTo(before);
  }

  @Test
  void whatIsTypedOver_stays() throws IOException {
    start("typed");
    change("typed", book -> type(book, "places", "Tunnel 1", "square metres", "77"));
    Files.writeString(list, Files.readString(list).replace("240,Tunnel 1", "900,Tunnel 1"));
    planned("typed");
    JsonNode assumptions =
        new ObjectMapper()
            .readTree(folder.resolve("typed report").resolve("figures.json").toFile())
            .get("tables")
            .get("assumptions")
            .get("rows");
    assertThat(assumptions.toString()).contains("\"Tunnel 1\",\"square metres\",\"77\"");
  }

  /** Without its growth there would be no plan. */
  @Test
  void rowLeftOut_ofANameThatTheListHas_isUsualAgain() throws IOException {
    start("left out");
    change(
        "left out",
        book -> {
          Sheet species = book.getSheet("species");
          for (Row row : species) {
            if (row.getCell(0) != null && row.getCell(0).toString().equals("Hornbeam")) {
              species.removeRow(row);
              return;
            }
          }
          throw new IllegalArgumentException("Hornbeam");
        });
    start("whole");
    assertThat(planned("left out")).contains(ofTable("lots", planned("whole")));
  }

  private static String ofTable(String table, List<String> figures) {
    return figures.stream().filter(each -> each.startsWith(table + "[")).findFirst().orElseThrow();
  }

  /** Nobody but the grower knows which column counts; once said, it is the plan of that list. */
  @Test
  void number_thatNoHeadingIsSurely_isAskedForInOwnWords() throws IOException {
    String good = "Plant,Size,Good,Poor\nField maple,C3,240,4\nHornbeam,C10,130,2\n";
    Files.writeString(list, good);
    Ran ran = Ran.of("start", folder.resolve("asked").toString(), "--from", list.toString());
    assertThat(ran.code()).isZero();
    assertThat(ran.out())
        .startsWith(
            "Do this first: which heading of stock.csv is the number of plants, Good or Poor?");
    Ran stopped = Ran.of("plan", folder.resolve("asked").toString());
    assertThat(stopped.code()).isEqualTo(3);
    assertThat(stopped.err()).contains("no column is the number of plants; is it Good or Poor?");
    change("asked", book -> type(book, "own words", "Good", "ours", "quantity"));
    List<String> asked = planned("asked");
    Files.writeString(list, good.replace("Good", "Qty"));
    start("plain");
    assertThat(asked).isEqualTo(planned("plain"));
  }
}
