package growingon.command;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Paid may be the price of a row or of a tree: it is taken as the row's, and asked. */
class HeadingInDoubtTest {
  private static final String HEADS = "Plant,Size,Qty,Paid\n";
  private static final String LIKE_A_TREE = HEADS + "Field maple,C10,40,12.50\n";
  private static final String LIKE_A_ROW = HEADS + "Field maple,C10,40,500\n";
  private static final String WARNING =
      "column Paid: this column is taken as row cost, and may be unit cost";

  @TempDir Path folder;

  private String planned(String list, String answers) throws IOException {
    Path file = Files.writeString(folder.resolve("stock.csv"), list);
    if (!answers.isEmpty()) {
      Files.writeString(
          folder.resolve("to fill.csv"), "fill in,table,row,column\n" + answers + "\n");
    }
    Ran ran =
        Ran.of(
            "plan", file.toString(), "--draws", "0", "--out", folder.resolve("report").toString());
    assertThat(ran.err()).isEmpty();
    return Files.readString(folder.resolve("report").resolve("problems.txt"));
  }

  private List<JsonNode> rows(String table) throws IOException {
    Path figures = folder.resolve("report").resolve("figures.json");
    List<JsonNode> rows = new ArrayList<>();
    new ObjectMapper().readTree(figures.toFile()).findValue(table).get("rows").forEach(rows::add);
    return rows;
  }

  private double unitCost() throws IOException {
    return rows("stock-as-read").get(0).get(18).asDouble();
  }

  private List<String> questions() throws IOException {
    return rows("to-fill").stream()
        .map(row -> row.get(1).asText() + " | " + row.get(2).asText())
        .filter(question -> question.contains("column Paid"))
        .toList();
  }

  @ParameterizedTest
  @ValueSource(strings = {"Bezahlt", "Betaald", "Payé", "Pagato", "Pagado"})
  void paid_inOtherLanguages_isInDoubtToo(String heading) throws IOException {
    String list = "Plant,Size,Qty,%s\nField maple,C10,40,500\n".formatted(heading);
    assertThat(planned(list, "")).contains(WARNING.replace("Paid", heading));
    assertThat(unitCost()).isEqualTo(12.5);
  }

  @Test
  void boughtFor_isThePriceOfATree_withANodAsked() throws IOException {
    assertThat(planned("Plant,Size,Qty,Bought for\nField maple,C10,40,6.20\n", ""))
        .contains("column Bought for: this column is taken as unit cost, and may be row cost");
    assertThat(unitCost()).isEqualTo(6.2);
  }

  @ParameterizedTest
  @CsvSource({"12.50, 0.3125", "500, 12.5"})
  void paid_isTheRows_withANodAsked(String paid, double each) throws IOException {
    assertThat(planned(HEADS + "Field maple,C10,40," + paid + "\n", "")).contains(WARNING);
    assertThat(unitCost()).isEqualTo(each);
    assertThat(questions())
        .containsExactly(
            "yes | What is the column Paid (as in "
                + paid
                + ")? it is read as row cost; or is it unit cost?");
    assertThat(rows("own-words").toString())
        .contains("[\"heading\",\"Paid\",\"row cost\",\"every list\",\"likely\",");
  }

  @Test
  void paid_saidToBeATrees_isRead() throws IOException {
    assertThat(planned(LIKE_A_TREE, "unit cost,own words,Paid,heading")).doesNotContain(WARNING);
    assertThat(unitCost()).isEqualTo(12.5);
    assertThat(questions()).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({"yes", "row cost"})
  void paid_saidToBeTheRows_isAskedNoMore(String answer) throws IOException {
    assertThat(planned(LIKE_A_ROW, answer + ",own words,Paid,heading")).doesNotContain(WARNING);
    assertThat(unitCost()).isEqualTo(12.5);
    assertThat(questions()).isEmpty();
  }

  @Test
  void paid_withoutACell_orWithWordsThatLeaveNoDoubt_isNotAsked() throws IOException {
    assertThat(planned(HEADS + "Field maple,C10,40,\n", "")).doesNotContain("column Paid");
    assertThat(questions()).isEmpty();
    assertThat(planned(LIKE_A_ROW.replace("Paid", "Total paid"), "")).doesNotContain("and may be");
    assertThat(unitCost()).isEqualTo(12.5);
    assertThat(planned(LIKE_A_TREE.replace("Paid", "Paid each"), "")).doesNotContain("and may be");
    assertThat(unitCost()).isEqualTo(12.5);
  }

  @Test
  void paid_whereARowIsATree_leavesNoDoubt() throws IOException {
    String list = "Plant,Height,Paid\nField maple,120,12.50\nHornbeam,140,9.25\n";
    assertThat(planned(list, ""))
        .contains("every row is taken as one")
        .doesNotContain("column Paid");
    assertThat(questions()).isEmpty();
    assertThat(unitCost()).isEqualTo(12.5);
  }

  /** 8.50 may be a price, or August 1950 or 2050. */
  @Test
  void bought_overPrices_isAskedWithThePricesThatItMayBe() throws IOException {
    String list = "Plant,Size,Qty,Bought\nField maple,C10,40,12.50\nHornbeam,C10,20,8.00\n";
    assertThat(planned(list, ""))
        .contains(
            "say in own words whether it is arrived or quantity or potted or unit cost or row cost");
    assertThat(rows("stock-as-read").get(0).get(18).isNull()).isTrue();
    planned(list, "unit cost,own words,Bought,heading");
    assertThat(unitCost()).isEqualTo(12.5);
  }

  @Test
  void heading_ofWhichAPartIsKnown_isSaidToBeTaken_tillThereIsAYes() throws IOException {
    String list = "Plant,Size,Qty 2026\nField maple,C10,40\n";
    String warning = "column Qty 2026: by a part of its heading this column is taken as quantity";
    assertThat(planned(list, "")).contains(warning);
    assertThat(planned(list, "yes,own words,Qty 2026,heading")).doesNotContain(warning);
  }
}
