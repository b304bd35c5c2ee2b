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
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Lists with the habits of those who keep them: invented, as growers write them. */
class ListsAsKeptTest {
  @TempDir Path folder;

  private record Ran(int code, List<String> out, String err) {}

  private static Ran run(String... args) {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    int code = Main.run(new PrintWriter(out, true), new PrintWriter(err, true), args);
    return new Ran(code, out.toString().lines().toList(), err.toString());
  }

  private Path written(String name, String text) throws IOException {
    return Files.writeString(folder.resolve(name), text);
  }

  private Ran plan(Path what, String... more) {
    List<String> args =
        new ArrayList<>(
            List.of(
                "plan",
                what.toString(),
                "--draws",
                "0",
                "--force",
                "--out",
                folder.resolve("report").toString()));
    args.addAll(List.of(more));
    return run(args.toArray(String[]::new));
  }

  /** Rows of a table of the report, each cell by the key of its column. */
  private List<Map<String, JsonNode>> rows(String name) throws IOException {
    JsonNode table =
        new ObjectMapper().readTree(folder.resolve("report/figures.json").toFile()).findValue(name);
    List<Map<String, JsonNode>> rows = new ArrayList<>();
    for (JsonNode cells : table.get("rows")) {
      Map<String, JsonNode> row = new LinkedHashMap<>();
      for (int i = 0; i < cells.size(); i++) {
        row.put(table.get("columns").get(i).get("key").asText(), cells.get(i));
      }
      rows.add(row);
    }
    return rows;
  }

  private List<String> column(String table, String key) throws IOException {
    return rows(table).stream().map(row -> row.get(key).asText()).toList();
  }

  private String problems() throws IOException {
    return Files.readString(folder.resolve("report/problems.txt"));
  }

  @Test
  void title_withTheMonthOfTheCount_isSaid() throws IOException {
    Path list = written("stock.csv", "Yard stock at 3 Oct 2026\nPlant,Size,Qty\nHornbeam,C5,40\n");
    assertThat(plan(list).out()).contains("The title says that it was counted in October 2026.");
  }

  @Test
  void numbersAndDates_thatAreAbout_areShownAsTheyStand() throws IOException {
    Path list =
        written(
            "stock.csv",
            "Plant,Size,Qty,Bought\nHornbeam,C5,ca. 40,autumn 2024\nBeech,C5,30,2023\n");
    assertThat(plan(list).out())
        .contains("1 number and 2 dates are about (ca. 40, autumn 2024, 2023).");
  }

  @Test
  void total_thatIsWrong_isHeldAgainstTheNearerSum() throws IOException {
    Path list =
        written(
            "stock.csv",
            "Plant,Size,Qty\nHornbeam,C5,400\nBeech,C5,300\nSub-total,,700\nField maple,C5,50\nTotal,,760\n");
    assertThat(plan(list).out())
        .contains("Your total in row 6 says 760: the rows add up to another number. 750 is read.");
  }

  @Test
  void total_ofRowsLeftOut_saysWhich() throws IOException {
    Path list =
        written(
            "stock.csv",
            "Plant,Size,Qty\nHornbeam,C5,400\nBeech,C5,some\nField maple,C5,50\nTotal,,470\n");
    assertThat(plan(list).out())
        .contains("Your total in row 5 says 470: row 3 is left out till you answer. 450 is read.");
  }

  @Test
  void total_underOneSize_isThatOfItsColumn() throws IOException {
    Path right =
        written("stock.csv", "Plant,P9,2L,5L\nHornbeam,10,20,30\nBeech,1,some,3\ntotal,11,,33\n");
    assertThat(plan(right).out())
        .anyMatch(line -> line.contains("64 plants"))
        .noneMatch(line -> line.contains("Your total"));
    Path wrong =
        written(
            "stock.csv",
            "Plant,P9,2L,5L\nHornbeam,10,20,30\nBeech,1,some,3\nYew,2,4,6\ntotal,,60,\n");
    assertThat(plan(wrong).out())
        .contains("Your total in row 5 says 60: row 3 is left out till you answer. 24 is read.");
  }

  @Test
  void total_ofAllSizes_mayStandUnderTheFirst() throws IOException {
    Path list =
        written("stock.csv", "Plant,P9,2L\nHornbeam,10,20\nBeech,1,3\nYew,2,4\ntotal,40,\n");
    assertThat(plan(list).out()).noneMatch(line -> line.contains("Your total"));
  }

  @Test
  void title_notForSale_asksOfTheRowsBelow() throws IOException {
    Path list =
        written(
            "stock.csv",
            "Plant,Qty,Size,Note\nHornbeam,10,C5,\nBy the house - not for sale,,,\nBeech,2,C20,planted 1990\n"
                + "Tilia,1,C20,dead this summer\ncounted (not the yews),12,,\n");
    assertThat(plan(list).out()).anyMatch(line -> line.contains("2 lots, 12 plants"));
    assertThat(column("to-fill", "question"))
        .filteredOn(question -> question.contains("to be sold"))
        .containsExactly(
            "row 4, Qty, \"By the house - not for sale\": are these to be sold? type 0 if not");
  }

  @Test
  void prices_underSizes_areNoPlants() throws IOException {
    Path list =
        written(
            "stock.csv", "Plant,P9,2L,5L\nvkp excl. btw,3,6,12\nHornbeam,10,20,30\nBeech,1,2,3\n");
    assertThat(plan(list).out()).anyMatch(line -> line.contains("66 plants"));
    assertThat(column("stock-as-read", "own_name")).doesNotContain("vkp excl. btw");
    assertThat(problems()).contains("what a plant of each size costs is not read (row 2)");
  }

  @Test
  void pots_ofTwoSides_areNoHeights() throws IOException {
    Path list =
        written(
            "stock.csv",
            "Plant,Pot,Qty\nHolm oak,godet 9x9,640\nYew,9x9 cm,100\nHornbeam,P 1,200\nBeech,P9,50\n");
    plan(list);
    assertThat(column("stock-as-read", "pot")).containsExactly("P9", "P9", "1 litre", "P9");
    assertThat(rows("stock-as-read")).allMatch(row -> row.get("height_cm").isNull());
    assertThat(column("to-fill", "question"))
        .contains("size: P 1 is a pot of litres (row 4); is that right? with no, it is not read");
  }

  @Test
  void doubt_inANote_asksForTheNumber() throws IOException {
    Path list =
        written("stock.csv", "Plant,Size,Qty,Remarks\nHornbeam,C5,300,label lost on one tray\n");
    plan(list);
    assertThat(column("to-fill", "question"))
        .contains(
            "row 2, Qty, \"label lost on one tray\": is the number right? the note says: label lost"
                + " on one tray");
  }

  @Test
  void title_inThePlural_isTheGenus() throws IOException {
    Path list =
        written("stock.csv", "Plant,Size,Qty\nACERS,,\ncampestre,C5,40\nplatanoides,C10,20\n");
    plan(list);
    assertThat(column("stock-as-read", "library"))
        .containsExactly("Acer campestre", "Acer platanoides");
  }

  @Test
  void name_inSeveralRows_isAskedOnce() throws IOException {
    Path list =
        written(
            "stock.csv", "Plant,Size,Qty\nMixed maples,C5,40\nMixed maples,C10,20\nBeech,C5,9\n");
    plan(list);
    List<String> asked =
        rows("to-fill").stream()
            .filter(row -> row.get("column").asText().equals("species"))
            .map(row -> row.get("moves").asText())
            .toList();
    assertThat(asked).containsExactly("60 plants");
  }

  @Test
  void problems_nameTheRowsOfTheList() throws IOException {
    Path list =
        written(
            "stock.csv",
            "Yard\n\nPlant,Size,Qty,Form,Bought\nHornbeam,60-80,40,root ball,July 2024\n");
    plan(list);
    assertThat(problems())
        .contains("stock.csv, row 4, column arrived: plants of the form root ball arrive in July");
  }

  @Test
  void twoLists_withTheSameNames_keepBoth() throws IOException {
    Path home = written("home.csv", "Plant,Size,Qty\nHornbeam,C5,40\n");
    Path farm = written("farm.csv", "Plant,Size,Qty\nHornbeam,C5,30\n");
    Path mine = folder.resolve("mine");
    assertThat(
            run("start", mine.toString(), "--from", home.toString(), "--from", farm.toString())
                .err())
        .isEmpty();
    assertThat(plan(mine).err()).isEmpty();
    assertThat(column("stock-as-read", "lot")).containsExactly("Hornbeam", "Hornbeam (farm)");
    assertThat(column("stock-as-read", "quantity")).containsExactly("40", "30");
  }

  @Test
  void twoSuppliers_withTheSameNames_keepTheirMoney() throws IOException {
    Path stock = written("stock.csv", "Plant,Size,Qty,Selling price\nBeech,C5,40,£9\n");
    Path first = written("first.csv", "Plant,Size,Price\nHornbeam,P9,£2.10\n");
    Path second = written("second.csv", "Plant,Size,Price\nHornbeam,P9,€1.50\n");
    Path mine = folder.resolve("mine");
    run(
        "start",
        mine.toString(),
        "--from",
        stock.toString(),
        "--offers",
        first.toString(),
        "--offers",
        second.toString());
    assertThat(plan(mine).err()).isEmpty();
    assertThat(column("offers-as-read", "offer"))
        .containsExactly("Hornbeam P9", "Hornbeam P9 (second)");
    assertThat(problems()).contains("these offers are in EUR and left out");
    assertThat(column("offers-as-read", "unit_price")).containsExactly("2.1", "1.5");
  }

  @Test
  void headings_thatStartTookByTheirCells_areNotTheGrowersWord() throws IOException {
    Path list =
        written(
            "stock.csv", "Plant,Size,Cost,Price,Qty\nHornbeam,C5,2.10,9.50,40\nBeech,C5,3,11,20\n");
    Path mine = folder.resolve("mine");
    assertThat(run("start", mine.toString(), "--from", list.toString()).err()).isEmpty();
    plan(mine);
    assertThat(
            rows("own-words").stream()
                .filter(row -> row.get("yours").asText().equals("Price"))
                .map(row -> row.get("ours").asText() + ", " + row.get("how").asText()))
        .containsExactly("selling price, by its cells");
  }

  @Test
  void offers_withPriceBreaksAndTitlesOfSizes_areReadSo() throws IOException {
    Path offers =
        written(
            "liners.csv",
            "Plant,Size,Available,1-9,10-49,50+\nBare root,,,,,\nHornbeam,40-60,5000,1.20,0.95,0.70\n"
                + "Container grown 3 litre,,,,,\nField maple,,400,6.50,5.50,4.80\nP9,,,,,\nOak,,300,1.10,,0.75\n");
    Path mine = folder.resolve("mine");
    assertThat(run("start", mine.toString(), "--offers", offers.toString()).err()).isEmpty();
    assertThat(plan(mine).err()).isEmpty();
    assertThat(column("offers-as-read", "unit_price")).containsExactly("1.2", "6.5", "1.1");
    assertThat(column("offers-as-read", "more_at"))
        .containsExactly("10: 0.95; 50: 0.7", "10: 5.5; 50: 4.8", "50: 0.75");
    assertThat(column("offers-as-read", "form"))
        .containsExactly("bare root", "container", "container");
    assertThat(column("offers-as-read", "pot")).containsExactly("null", "3 litre", "P9");
  }

  @Test
  void titleThatSaysWhatThePaperIs_isNoPlace() throws IOException {
    String rows = "Plant,Pot,No.,Bench\nHornbeam,C5,85,Top tunnel\nScots pine,C15,18,Yard\n";
    assertThat(plan(written("walked.csv", "Bench list\n" + rows)).err()).isEmpty();
    assertThat(column("stock-as-read", "place")).containsExactly("Top tunnel", "Yard");
    assertThat(plan(written("walked.csv", "Bench 4\n" + rows)).err()).isEmpty();
    assertThat(column("stock-as-read", "place")).containsExactly("Bench 4", "Bench 4");
  }

  @Test
  void priceBreaks_inAPlan_areThoseOfTheNumberBought() throws IOException {
    Path offers = written("liners.csv", "Plant,Size,1-9,10-49,50+\nHornbeam,P9,1.20,0.95,0.70\n");
    Path mine = folder.resolve("mine");
    assertThat(run("start", mine.toString(), "--offers", offers.toString()).err()).isEmpty();
    Path buy = mine.resolve("buy.json");
    Files.writeString(buy, "{\"nursery\": \".\", \"take\": {\"Hornbeam P9\": 40}}");
    assertThat(plan(buy).err()).isEmpty();
    // 40 plants at the price of 10 to 49.
    assertThat(column("bought-lots", "landed")).containsExactly("38");
  }

  @Test
  void list_givenThisOnce_doesNotHideTheNewestBeforeIt() throws IOException {
    Path first = written("Stock Oct 2025.csv", "Plant,Size,Qty\nHornbeam,C5,50\n");
    Path newest = written("Stock Oct 2026.csv", "Plant,Size,Qty\nHornbeam,C5,40\n");
    Path given = written("walked.csv", "Plant,Size,Qty\nHornbeam,C5,38\n");
    Path mine = Files.createDirectories(folder.resolve("mine"));
    Files.writeString(
        mine.resolve("own words.csv"), "kind,yours,ours\nlist,../x.csv,../Stock *.csv\n");
    Files.writeString(mine.resolve("plan.json"), "{}");
    assertThat(growingon.load.OlderLists.of(mine, Optional.of(given)))
        .containsExactlyInAnyOrder(first.getFileName().toString(), newest.getFileName().toString());
    assertThat(growingon.load.OlderLists.of(mine, Optional.empty())).hasSize(1);
  }

  /** He would be held to a price that is not his. */
  @Test
  void pricesForCustomers_thatNobodyTyped_areToldToTheGrower() throws IOException {
    Path list = written("stock.csv", "Plant,Size,Qty\nHornbeam,C10,600\n");
    String out = folder.resolve("for customers").toString();
    String told = "Before you hand it out: 4 list prices were laid out";
    assertThat(run("plan", list.toString(), "--for", "customer", "--out", out).out())
        .noneMatch(line -> line.startsWith(told));
    assertThat(
            run(
                    "plan",
                    list.toString(),
                    "--for",
                    "customer",
                    "--with-prices",
                    "--force",
                    "--out",
                    out)
                .out())
        .anyMatch(line -> line.startsWith(told));
  }

  /** A copy, or an old list that was saved again, is no newer for that. */
  @Test
  void newestList_isThatOfTheLatestMonthInItsName() throws IOException {
    Path november = written("Stock Nov 26.csv", "Plant,Size,Qty\nHornbeam,C5,40\n");
    Path october = written("Stock Oct 26.csv", "Plant,Size,Qty\nHornbeam,C5,50\n");
    Files.setLastModifiedTime(november, java.nio.file.attribute.FileTime.fromMillis(0));
    Path mine = Files.createDirectories(folder.resolve("mine"));
    Files.writeString(
        mine.resolve("own words.csv"), "kind,yours,ours\nlist,../x.csv,../Stock *.csv\n");
    Files.writeString(mine.resolve("plan.json"), "{}");
    assertThat(growingon.load.OlderLists.of(mine, Optional.empty()))
        .containsExactly(october.getFileName().toString());
  }

  @Test
  void lastYear_inToFill_scalesUsualUnitsAndPrices() throws IOException {
    Path list = written("stock.csv", "Plant,Size,Qty\nHornbeam,C10,600\nBeech,C5,300\n");
    plan(list);
    List<Map<String, JsonNode>> asked = rows("to-fill");
    List<String> usual =
        asked.stream()
            .filter(row -> row.get("row").asText().equals("last year"))
            .map(row -> row.get("usual").asText())
            .toList();
    double sales = Double.parseDouble(usual.get(0));
    double trees = Double.parseDouble(usual.get(1));
    double youngBefore = priceOf(asked, "deciduous pot trees, young");
    written(
        "to fill.csv",
        "fill in,table,row,column\n\"%.0f\",demand,last year,sales\n%.0f,demand,last year,trees\n"
            .formatted(sales * 3, trees * 2));
    assertThat(plan(list).err()).isEmpty();
    assertThat(assumed("price")).isEqualTo(youngBefore * 1.5);
    assertThat(assumed("units")).isEqualTo(300);
  }

  /** What the plan takes of young trees: 900 plants over six, twice, or their price. */
  private double assumed(String what) throws IOException {
    return rows("assumptions").stream()
        .filter(
            row ->
                row.get("subject").asText().equals("*, deciduous pot trees, young")
                    && row.get("what").asText().equals(what))
        .mapToDouble(row -> Double.parseDouble(row.get("value").asText()))
        .findFirst()
        .orElseThrow();
  }

  private static double priceOf(List<Map<String, JsonNode>> fills, String row) {
    return fills.stream()
        .filter(
            fill ->
                fill.get("row").asText().equals(row) && fill.get("column").asText().equals("price"))
        .mapToDouble(fill -> Double.parseDouble(fill.get("usual").asText()))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void twoGirthsInACell_areAsked() throws IOException {
    Path list = written("field.csv", "Plant,Girth,No.\nHornbeam,8-10 / 10-12,150\nLime,12-14,60\n");
    plan(list);
    assertThat(column("stock-as-read", "trunk_basis")).containsExactly("usual", "list");
    assertThat(column("to-fill", "question"))
        .contains("row 2, Girth, \"8-10 / 10-12\": which girth is it: 8-10 or 10-12?");
  }

  @Test
  void twoPrices_areAskedOnce() throws IOException {
    Path list =
        written(
            "field.csv",
            "Plant,Girth,No.,List price,Trade\nLime,12-14,60,140,112\nOak,10-12,9,95,76\n");
    plan(list);
    assertThat(column("stock-as-read", "selling_price")).containsExactly("140", "95");
    assertThat(column("to-fill", "question"))
        .contains("Is List price what you get, or Trade? type note if it is the other");
    written("to fill.csv", "fill in,table,row,column\nnote,own words,List price,heading\n");
    plan(list);
    assertThat(column("stock-as-read", "selling_price")).containsExactly("112", "76");
  }

  @Test
  void reserved_isSaidNotToBeHeldBack() throws IOException {
    Path list = written("stock.csv", "Plant,Size,Qty,Reserved\nHornbeam,C10,60,20\nBeech,C5,30,\n");
    plan(list);
    assertThat(problems())
        .contains("20 plants are reserved by your list; nothing is held back for them");
  }

  @Test
  void usualValues_areMarked_tillTheyAreChanged() throws IOException {
    Path list = written("stock.csv", "Plant,Size,Qty,Bed\nHornbeam,C10,60,Yard\n");
    Path mine = folder.resolve("mine");
    assertThat(run("start", mine.toString(), "--from", list.toString()).err()).isEmpty();
    assertThat(plan(mine).err()).isEmpty();
    assertThat(markOf("settings", "hourly rate")).isEqualTo("usual");
    assertThat(markOf("places", "square metres")).isEqualTo("usual");
    assertThat(markOf("stock", "trunk mm")).isEqualTo("usual");
    assertThat(markOf("stock", "quantity")).isEqualTo("null");
    Path csv = Files.createDirectories(folder.resolve("typed"));
    Files.writeString(csv.resolve("own words.csv"), "kind,yours,ours\nlist,../stock.csv,\n");
    Files.writeString(
        csv.resolve("settings.csv"),
        "name,value\ncurrency,GBP\ndiscount rate % a year,4\nhourly rate,19\n");
    Files.writeString(csv.resolve("plan.json"), "{}");
    assertThat(plan(csv).err()).isEmpty();
    assertThat(markOf("settings", "hourly rate")).isEqualTo("null");
  }

  private String markOf(String table, String what) throws IOException {
    return rows("assumptions").stream()
        .filter(row -> row.get("table").asText().equals(table))
        .filter(row -> row.get("what").asText().equals(what))
        .map(row -> row.get("mark").asText())
        .findFirst()
        .orElseThrow();
  }
}
