package growingon.command;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is taken as likely is taken no more once the grower says no. */
class NodsTest {
  @TempDir Path folder;

  private String err = "";

  private int plan() throws IOException {
    StringWriter told = new StringWriter();
    int code =
        Main.run(
            new PrintWriter(new StringWriter()),
            new PrintWriter(told, true),
            "plan",
            folder.resolve("mine").toString(),
            "--draws",
            "0",
            "--out",
            folder.resolve("report").toString());
    err = told.toString();
    return code;
  }

  /** Writes a list and a nursery around it, and plans. */
  private void planned(String kind, String list) throws IOException {
    Files.writeString(folder.resolve("list.csv"), list);
    Path mine = Files.createDirectories(folder.resolve("mine"));
    Files.writeString(
        mine.resolve("own words.csv"), "kind,yours,ours\n%s,../list.csv,\n".formatted(kind));
    assertThat(plan()).as(err).isZero();
  }

  private List<JsonNode> rows(String table) throws IOException {
    JsonNode found =
        new ObjectMapper()
            .readTree(folder.resolve("report/figures.json").toFile())
            .findValue(table);
    List<JsonNode> rows = new ArrayList<>();
    found.get("rows").forEach(rows::add);
    return rows;
  }

  private String cell(String table, int row, String column) throws IOException {
    JsonNode found =
        new ObjectMapper()
            .readTree(folder.resolve("report/figures.json").toFile())
            .findValue(table);
    List<String> columns = new ArrayList<>();
    found
        .get("columns")
        .forEach(each -> columns.add(each.isTextual() ? each.asText() : each.get("key").asText()));
    return found.get("rows").get(row).get(columns.indexOf(column)).asText();
  }

  private List<String> questions() throws IOException {
    return rows("to-fill").stream().map(row -> row.get(2).asText()).toList();
  }

  /** Answers the only question that wants a nod, as it was laid out, and plans again. */
  private void answer(String said) throws IOException {
    List<JsonNode> nods =
        rows("to-fill").stream()
            .filter(
                row -> row.get(1).asText().equals("yes") && row.get(8).asText().equals("reading"))
            .toList();
    assertThat(nods).as(questions().toString()).hasSize(1);
    JsonNode nod = nods.get(0);
    Files.writeString(
        folder.resolve("mine/to fill.csv"),
        "fill in,table,row,column\n%s,%s,\"%s\",%s\n"
            .formatted(said, nod.get(5).asText(), nod.get(6).asText(), nod.get(7).asText()));
    assertThat(plan()).as(err).isZero();
  }

  @Test
  void girth_refused_leavesTheSizesUnreadAndTakesTheUsualTrunk() throws IOException {
    planned("list", "Plant,Size,Qty\nField maple,8-10,40\nHornbeam,10-12,30\n");
    assertThat(questions())
        .contains(
            "size: 8-10 is a girth in cm (rows 2, 3) and the like; is that right? with no, it is"
                + " not read");
    assertThat(cell("stock-as-read", 0, "trunk_basis")).isEqualTo("list");
    answer("no");
    for (int row = 0; row < 2; row++) {
      assertThat(cell("stock-as-read", row, "trunk_basis")).isEqualTo("usual");
      assertThat(cell("stock-as-read", row, "trunk_from_mm")).isEqualTo("10");
      assertThat(cell("stock-as-read", row, "height_cm")).isEqualTo("null");
    }
    assertThat(questions()).noneMatch(each -> each.contains("is a girth"));
  }

  @Test
  void girth_nodded_isAsBefore() throws IOException {
    planned("list", "Plant,Size,Qty\nField maple,8-10,40\nHornbeam,10-12,30\n");
    String trunk = cell("stock-as-read", 1, "trunk_from_mm");
    answer("yes");
    assertThat(cell("stock-as-read", 1, "trunk_from_mm")).isEqualTo(trunk);
  }

  @Test
  void nod_answeredOtherwise_isToldAndTaken() throws IOException {
    planned("list", "Plant,Size,Qty\nField maple,8-10,40\nHornbeam,10-12,30\n");
    answer("perhaps");
    assertThat(cell("stock-as-read", 0, "trunk_basis")).isEqualTo("list");
    assertThat(Files.readString(folder.resolve("report/problems.txt")))
        .contains(
            "the answer is neither yes nor no (perhaps); type yes or no; till then it is read so");
  }

  @Test
  void pot_refused_isAskedAndUnread() throws IOException {
    planned("list", "Plant,Pot,Qty\nField maple,P 1,40\nHornbeam,C10,30\n");
    assertThat(cell("stock-as-read", 0, "pot_litres")).isEqualTo("1");
    answer("no");
    assertThat(cell("stock-as-read", 0, "pot_litres")).isEqualTo("null");
    assertThat(cell("stock-as-read", 1, "pot_litres")).isEqualTo("10");
    assertThat(questions()).contains("row 2, Pot, \"P 1\": which pot is it?");
  }

  @ParameterizedTest
  @CsvSource({
    "50-60,,row 2,how many plants are these?",
    "7 + 2,,row 2,how many plants are these?",
    "20,PR,row 2,how many plants are in one PR?"
  })
  void number_refused_leavesItsRowOutAndAsksForIt(
      String number, String unit, String row, String question) throws IOException {
    planned(
        "list",
        "Plant,Pot,Qty,Unit\nField maple,C10,%s,%s\nHornbeam,C10,30,\n"
            .formatted(number, unit == null ? "" : unit));
    assertThat(rows("stock-as-read")).hasSize(2);
    answer("no");
    assertThat(rows("stock-as-read")).hasSize(1);
    assertThat(questions()).anyMatch(each -> each.startsWith(row) && each.endsWith(question));
  }

  @Test
  void month_refused_isAskedAndTheUsualHolds() throws IOException {
    planned("offers list", "Plant,Pot,Price,Ready\nField maple,C10,4.50,March\n");
    assertThat(cell("offers-as-read", 0, "month_basis")).isEqualTo("list");
    answer("no");
    assertThat(cell("offers-as-read", 0, "month_basis")).isEqualTo("usual");
    assertThat(questions()).anyMatch(each -> each.endsWith("which month is it?"));
  }

  @Test
  void heading_refused_isNotRead() throws IOException {
    planned("list", "Plant,Pot,Qty,Height 25\nField maple,C10,40,180\nHornbeam,C10,30,200\n");
    assertThat(cell("stock-as-read", 0, "height_cm")).isEqualTo("180");
    answer("no");
    assertThat(cell("stock-as-read", 0, "height_cm")).isEqualTo("null");
  }

  @Test
  void name_refused_standsInAsOneOfItsKind() throws IOException {
    planned("list", "Plant,Pot,Qty\nGinkgo,C10,40\nHornbeam,C10,30\n");
    assertThat(cell("stock-as-read", 0, "library")).isEqualTo("Ginkgo biloba");
    Files.writeString(
        folder.resolve("mine/own words.csv"),
        "kind,yours,ours\nlist,../list.csv,\nspecies,Ginkgo,no\n");
    assertThat(plan()).as(err).isZero();
    assertThat(cell("stock-as-read", 0, "library")).isEqualTo("null");
    assertThat(questions())
        .contains("Ginkgo is not in the library: which plant there is it most like?");
  }
}
