package growingon.command;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What suppliers send becomes offers of the plan, none of them taken. */
class OffersOfSuppliersTest {
  private static final Path LISTS = Path.of("src/test/resources/own");

  @TempDir Path folder;

  private Ran plan(Path what) {
    return Ran.of(
        "plan",
        what.toString(),
        "--draws",
        "0",
        "--force",
        "--out",
        folder.resolve("report").toString());
  }

  private Ran start(String... lists) {
    List<String> arguments = new java.util.ArrayList<>(List.of("start", mine().toString()));
    arguments.addAll(List.of(lists));
    return Ran.of(arguments.toArray(String[]::new));
  }

  private Path mine() {
    return folder.resolve("mine");
  }

  private Path written(String name, String text) throws IOException {
    return Files.writeString(folder.resolve(name), text);
  }

  private JsonNode table(String name) throws IOException {
    Path figures = folder.resolve("report/figures.json");
    return new ObjectMapper().readTree(figures.toFile()).findValue(name);
  }

  @Test
  void stockAndOffers_startAndPlan_takeNothing() throws IOException {
    Path list = Files.copy(LISTS.resolve("hollin wood.xlsx"), folder.resolve("stock.xlsx"));
    Path offers =
        Files.copy(LISTS.resolve("penwick availability.csv"), folder.resolve("penwick.csv"));
    byte[] before = Files.readAllBytes(offers);
    Ran started = start("--from", list.toString(), "--offers", offers.toString());
    assertThat(started.err()).isEmpty();
    assertThat(started.out())
        .contains(
            "penwick.csv: 196 offers, 69,100 plants, 29 taxa in 206 rows (2 titles, 1 heading row,"
                + " 196 offers, 3 groups, 2 gone, 2 asked).",
            "196 offers may be bought and none is taken; buying says which pay.");
    Ran planned = plan(mine());
    assertThat(planned.err()).isEmpty();
    assertThat(planned.code()).isZero();
    assertThat(table("offers-as-read").get("rows")).hasSize(196);
    assertThat(Files.readString(folder.resolve("report/figures.json")))
        .doesNotContain("\"bought-lots\"");
    assertThat(Files.readAllBytes(offers)).isEqualTo(before);
  }

  @Test
  void offers_withoutAStockList_makeANurseryToBuyFor() {
    Ran started = start("--offers", LISTS.resolve("penwick availability.csv").toString());
    assertThat(started.err()).isEmpty();
    Ran planned = plan(mine());
    assertThat(planned.err()).isEmpty();
    assertThat(planned.code()).isZero();
  }

  @Test
  void offerNamedInThePlan_isBought() throws IOException {
    Path stock = written("stock.csv", "Plant,Size,Qty\nField maple,C10,40\nHornbeam,C10,30\n");
    Path offers =
        written(
            "liners.csv",
            "Plant,Size,Price,Min qty,Pack size,Available,Ready\n"
                + "Hornbeam,P9,2.10,20,20,400,November\nBeech,3L,4.50,,,60,\n");
    start("--from", stock.toString(), "--offers", offers.toString());
    Files.writeString(
        mine().resolve("buy.json"), "{\"nursery\": \".\", \"take\": {\"Hornbeam P9\": 40}}");
    Ran planned = plan(mine().resolve("buy.json"));
    assertThat(planned.err()).isEmpty();
    assertThat(table("bought-lots").get("rows")).hasSize(1);
    assertThat(table("bought-lots").get("rows").get(0).toString()).contains("Hornbeam P9", "40");
    Files.writeString(
        mine().resolve("buy.json"), "{\"nursery\": \".\", \"take\": {\"Hornbeam P9\": 30}}");
    assertThat(plan(mine().resolve("buy.json")).err()).contains("multiple");
  }

  @Test
  void offersInAnotherMoney_areLeftOutTillItsRateIsSaid() throws IOException {
    Path stock = written("stock.csv", "Plant,Size,Qty,Selling price\nField maple,C10,40,£45\n");
    Path offers = written("liners.csv", "Plant,Size,Price\nHornbeam,P9,€2.10\nBeech,3L,€4.50\n");
    Ran started = start("--from", stock.toString(), "--offers", offers.toString());
    assertThat(started.err()).isEmpty();
    assertThat(plan(mine()).code()).isZero();
    assertThat(table("to-fill").toString())
        .contains("Offers are in EUR: what is 1 EUR in GBP? till then they are left out");
    assertThat(Files.readString(folder.resolve("report/problems.txt")))
        .contains(
            "these offers are in EUR and left out till it is said what 1 EUR is in GBP; answer in to"
                + " fill");
    Path csv = Files.createDirectories(folder.resolve("typed"));
    Files.writeString(
        csv.resolve("own words.csv"),
        "kind,yours,ours\nlist,../stock.csv,\noffers list,../liners.csv,\n");
    Files.writeString(
        csv.resolve("to fill.csv"),
        "fill in,table,row,column\n0.85,settings,exchange rate EUR,value\n");
    Files.writeString(
        csv.resolve("plan.json"), "{\"nursery\": \".\", \"take\": {\"Hornbeam P9\": 10}}");
    assertThat(plan(csv).err()).isEmpty();
    assertThat(table("bought-lots").get("rows")).hasSize(1);
  }

  @Test
  void answers_reachARowThatWasLeftOut() throws IOException {
    written("stock.csv", "Plant,Size,Qty\nField maple,C10,40\n");
    written(
        "liners.csv",
        "Plant,Size,Price\nHornbeam,P9,POA\nBeech,3L,4.50\nYew,3L,4.50\nOak,3L,4.50\n");
    Path csv = Files.createDirectories(folder.resolve("typed"));
    Files.writeString(
        csv.resolve("own words.csv"),
        "kind,yours,ours\nlist,../stock.csv,\noffers list,../liners.csv,\n");
    Files.writeString(
        csv.resolve("to fill.csv"),
        "fill in,table,row,column\n2.20,offers,Hornbeam P9,unit cost\n");
    Files.writeString(
        csv.resolve("plan.json"), "{\"nursery\": \".\", \"take\": {\"Hornbeam P9\": 10}}");
    assertThat(plan(csv).err()).isEmpty();
    assertThat(table("bought-lots").get("rows")).hasSize(1);
  }

  @Test
  void wordOfAnOffersHeading_isNotThatOfTheStockList() throws IOException {
    written("stock.csv", "Plant,Size,Qty,Price\nField maple,C10,40,50\n");
    written("liners.csv", "Plant,Size,Price,Wanted\nHornbeam,P9,2.10,20\n");
    Path csv = Files.createDirectories(folder.resolve("typed"));
    Files.writeString(
        csv.resolve("own words.csv"),
        "kind,yours,ours\nlist,../stock.csv,\noffers list,../liners.csv,\n"
            + "heading,Price,selling price\noffers heading,Wanted,least\n");
    assertThat(plan(csv).err()).isEmpty();
    assertThat(table("offers-as-read").get("rows").get(0).toString())
        .contains("2.1", "20")
        .doesNotContain("50");
    assertThat(table("stock-as-read").get("rows").get(0).toString()).contains("50");
  }

  @Test
  void moreThan500Offers_areRefused() throws IOException {
    StringBuilder rows = new StringBuilder("Plant,Size,Price\n");
    for (int i = 0; i <= 500; i++) {
      rows.append("Hornbeam,P9,2.").append(10 + i % 80).append('\n');
    }
    Ran started = start("--offers", written("long.csv", rows.toString()).toString());
    assertThat(started.code()).isEqualTo(3);
    assertThat(started.err())
        .contains(
            "501 offers are more than can be looked through (500); keep in the list what you may"
                + " buy");
  }

  @Test
  void listWithoutPrices_isRefused() throws IOException {
    Ran started =
        start("--offers", written("l.csv", "Plant,Size,Available\nHornbeam,P9,20\n").toString());
    assertThat(started.code()).isEqualTo(3);
    assertThat(started.err()).contains("no column is the price of a plant");
  }

  @Test
  void listThatIsGone_isToldAsOwnListsAre() throws IOException {
    Path offers = written("liners.csv", "Plant,Size,Price\nHornbeam,P9,2.10\n");
    start("--offers", offers.toString());
    Files.delete(offers);
    Ran planned = plan(mine());
    assertThat(planned.code()).isEqualTo(3);
    assertThat(planned.err()).contains("your list is not there any more (../liners.csv)");
  }

  @Test
  void monthOfAnOffer_whichIsAsked_isThePlansFirstTillThen() throws IOException {
    Path offers =
        written(
            "offers.csv", "Plant,Pot,Available,Ready,Unit price\nHornbeam,C10,20,Nov-Mar,9.50\n");
    assertThat(start("--offers", offers.toString()).out())
        .contains("\"Nov-Mar\": which month", "; till then the plan's first month is taken.");
  }
}
