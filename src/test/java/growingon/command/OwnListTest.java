package growingon.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.YearMonth;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.apache.poi.openxml4j.exceptions.InvalidFormatException;
import org.apache.poi.ss.util.CellAddress;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** From a grower's own list to a first plan, and to the plan of the next month. */
class OwnListTest {
  private static final Path LISTS = Path.of("src/test/resources/own");

  @TempDir Path folder;

  private record Ran(int code, List<String> out, String err) {}

  private static Ran run(String... args) {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    int code = Main.run(new PrintWriter(out, true), new PrintWriter(err, true), args);
    return new Ran(code, out.toString().lines().toList(), err.toString());
  }

  private Ran plan(Path what, String report) {
    return run("plan", what.toString(), "--draws", "0", "--out", folder.resolve(report).toString());
  }

  private JsonNode table(String report, String name) throws IOException {
    Path file = folder.resolve(report).resolve("figures.json");
    return new ObjectMapper().readTree(file.toFile()).findValue(name);
  }

  @ParameterizedTest
  @CsvSource({"hollin wood.xlsx", "brookfold tunnels.xlsx", "muehlgrund bestand.csv"})
  void list_startedAndPlanned_needsNoTypedCell(String name) throws IOException {
    Path list = Files.copy(LISTS.resolve(name), folder.resolve(name));
    byte[] before = Files.readAllBytes(list);
    Path mine = folder.resolve("mine");
    Ran started = run("start", mine.toString(), "--from", list.toString());
    assertThat(started.err()).isEmpty();
    assertThat(started.out()).hasSizeLessThanOrEqualTo(12);
    Ran planned = plan(mine, "report");
    assertThat(planned.err()).isEmpty();
    assertThat(planned.code()).isZero();
    assertThat(planned.out()).hasSizeLessThanOrEqualTo(12).noneMatch(line -> line.endsWith(","));
    assertThat(Files.readAllBytes(list)).isEqualTo(before);
    assertThat(table("report", "stock-as-read").get("rows").size()).isGreaterThan(5);
  }

  @Test
  void sentences_ofHollinWood_sayWhatMustBeDoneFirst() {
    Ran started =
        run(
            "start",
            folder.resolve("mine").toString(),
            "--from",
            LISTS.resolve("hollin wood.xlsx").toString());
    assertThat(started.out().get(0))
        .isEqualTo(
            "hollin wood.xlsx, Sheet1: 9 lots, 990 plants, 7 taxa in 16 rows (2 titles, 1 heading"
                + " row, 9 lots, 3 groups, 1 total).");
    assertThat(started.out().get(1))
        .isEqualTo(
            "Do this first: row 8, Date bought, \"02/11/2024\": is it 2 November or 11 February"
                + " 2024 (to fill, row 2); till then a year ago is taken.");
    assertThat(started.out().get(2))
        .isEqualTo(
            "Your total in row 18 says 565: it leaves out three numbers typed as text (rows 6, 11,"
                + " 16). 990 is read.");
  }

  @Test
  void total_changedByOne_isSeen() throws IOException {
    String text = Files.readString(LISTS.resolve("muehlgrund bestand.csv"), StandardCharsets.UTF_8);
    Path list = folder.resolve("bestand.csv");
    Files.writeString(list, text.replace("Summe Haus 1;1741", "Summe Haus 1;1742"));
    assertThat(plan(list, "report").out())
        .contains(
            "Your total in row 11 says 1,742: the rows add up to another number. 1,741 is read.");
  }

  @Test
  void list_savedAgainWithNewNames_isPlannedWithoutTyping() throws IOException {
    Path list = folder.resolve("stock.csv");
    Files.writeString(
        list, "Plant,Size,Qty,Place\nField maple,C10,40,Tunnel 1\nHornbeam,C10,30,Tunnel 1\n");
    Path mine = folder.resolve("mine");
    assertThat(run("start", mine.toString(), "--from", list.toString()).code()).isZero();
    assertThat(plan(mine, "first").code()).isZero();
    Files.writeString(
        list,
        "Plant,Size,Qty,Place\nField maple,C10,39,Tunnel 1\nHornbeam,C10,30,Tunnel 1\nScots pine,P9,200,New bed\n");
    Ran next = plan(mine, "next");
    assertThat(next.err()).isEmpty();
    assertThat(next.out().get(0)).startsWith("stock.csv: 3 lots, 269 plants");
  }

  @Test
  void list_thatIsGone_namesTheNewestBesideIt() throws IOException {
    Path list = folder.resolve("stock nov.csv");
    Files.writeString(list, "Plant,Size,Qty\nField maple,C10,40\nHornbeam,C10,30\n");
    Path mine = folder.resolve("mine");
    assertThat(run("start", mine.toString(), "--from", list.toString()).err()).isEmpty();
    Files.move(list, folder.resolve("stock dec.csv"));
    Ran gone = plan(mine, "report");
    assertThat(gone.code()).isEqualTo(3);
    assertThat(gone.err())
        .contains(
            "your list is not there any more (../stock nov.csv); is it ../stock dec.csv now?");
    assertThat(
            run(
                    "plan",
                    mine.toString(),
                    "--draws",
                    "0",
                    "--stock",
                    folder.resolve("stock dec.csv").toString(),
                    "--out",
                    folder.resolve("r").toString())
                .code())
        .isZero();
  }

  @Test
  void windowsTextWithTabs_isReadAndSaid() throws IOException {
    Path list = folder.resolve("lijst.csv");
    Files.write(
        list,
        "Pflanze\tGröße\tStück\nFächerahorn\tC5\t40\nWeißdorn\t60-80\t25\n"
            .getBytes("windows-1252"));
    Ran planned = plan(list, "report");
    assertThat(planned.err()).isEmpty();
    assertThat(table("report", "stock-as-read").toString())
        .contains("Acer palmatum", "Crataegus monogyna");
  }

  /** A nursery folder of CSV tables alone: what a grower types into the two sheets. */
  private Path typed(String words, String fills) throws IOException {
    Files.writeString(
        folder.resolve("stock.csv"),
        "Plant,Size,Qty,What\nField maple,C10,40,7\nHornbeam,C10,4O,8\n"
            + "Scots pine,C10,20,9\nBeech,C5,20,9\nYew,C5,20,9\nOak (English),C5,20,9\nBox,C5,20,9\n"
            + "Holly,C5,20,9\nWhite cedar,C5,20,9\nElm,C5,20,9\nGinkgo,C5,20,9\n");
    Path mine = Files.createDirectories(folder.resolve("mine"));
    Files.writeString(
        mine.resolve("own words.csv"), "kind,yours,ours\nlist,../stock.csv,\n" + words);
    Files.writeString(mine.resolve("to fill.csv"), "fill in,table,row,column\n" + fills);
    return mine;
  }

  @Test
  void answers_takeThePlaceOfWhatIsUsual() throws IOException {
    Path mine =
        typed(
            "heading,What,unit cost\nspecies,Elm,Ulmus parvifolia\n",
            "12,stock,Hornbeam,quantity\n33,stock,pot 10 litre,trunk mm\n55,settings,hourly rate,value\n1.3,settings,site speed,value\n7,stock,gone lot,quantity\n");
    Ran planned = plan(mine, "report");
    assertThat(planned.err()).isEmpty();
    String lots = table("report", "stock-as-read").toString();
    assertThat(lots).contains("Ulmus parvifolia");
    String assumptions = Files.readString(folder.resolve("report/tables/assumptions.csv"));
    assertThat(assumptions)
        .contains("hourly rate,55")
        .contains("quantity,12")
        .contains("trunk mm,33")
        .contains("site speed,1.3");
    assertThat(Files.readString(folder.resolve("report/problems.txt")))
        .contains(
            "to fill.csv, row 6: nothing in stock is called so, and the answer is not used (gone lot);"
                + " take the answer away, or name a row that is there");
  }

  @Test
  void ownWord_thatIsNoColumn_isOneError() throws IOException {
    Ran planned = plan(typed("heading,What,thing\n", ""), "report");
    assertThat(planned.code()).isEqualTo(3);
    assertThat(planned.err())
        .contains(
            "mine: own words say of the heading What what no column of a list is (thing); choose a"
                + " word of the drop-down list under ours, such as quantity or not read");
  }

  @Test
  void shortList_withAnOddRow_goesInWithThatRowNamed() throws IOException {
    Path list = folder.resolve("small.csv");
    Files.writeString(
        list,
        "Plant,Qty on hand,Pot,Place\nField maple,120,3L,Tunnel 1\nHornbeam,80,3L,Tunnel 1\n"
            + "Beech,a few,10L,Yard\nEnglish oak,40,10L,Yard\nScots pine,24,10L,Yard\n"
            + "Silver birch,90,3L,Tunnel 1\nYew,25,15L,Yard\nHolly,60,10L,Yard\n");
    Ran planned = plan(list, "report");
    assertThat(planned.code()).isZero();
    assertThat(planned.out().get(0))
        .isEqualTo(
            "small.csv: 7 lots, 439 plants, 7 taxa in 9 rows (1 heading row, 7 lots, 1 asked).");
    assertThat(planned.out().get(1)).isEqualTo("Left out till you answer: row 4 \"a few\".");
    assertThat(Files.readString(folder.resolve("report/problems.txt")))
        .contains("1 row cannot be read and is left out (row 4 \"a few\"); answer in to fill");
  }

  @Test
  void list_ofWhichMostCannotBeRead_isRefusedWithItsRows() throws IOException {
    Path list = folder.resolve("small.csv");
    Files.writeString(list, "Plant,Qty\nField maple,120\nHornbeam,some\nBeech,a few\nYew,enough\n");
    Ran planned = plan(list, "report");
    assertThat(planned.code()).isEqualTo(3);
    assertThat(planned.err())
        .contains(
            "3 of 4 rows cannot be read (row 3 \"some\", row 4 \"a few\", row 5 \"enough\");"
                + " see which column is the number; write whole numbers there");
  }

  @Test
  void list_withoutANumber_isAskedWhetherItIsTheColumnOfNumbers() throws IOException {
    Path list = folder.resolve("small.csv");
    Files.writeString(list, "Plant,Heads,Pot\nField maple,120,3L\nHornbeam,80,3L\n");
    assertThat(plan(list, "report").err())
        .contains(
            "no column is the number of plants; is it Heads? write number above it, or say so in own"
                + " words");
  }

  private String read(String list) throws IOException {
    Path file = folder.resolve("list.csv");
    Files.writeString(file, list);
    Ran planned = plan(file, "report");
    assertThat(planned.err()).isEmpty();
    return table("report", "stock-as-read").toString();
  }

  private JsonNode cell(String name, int row) throws IOException {
    JsonNode read = table("report", "stock-as-read");
    for (int i = 0; i < read.get("columns").size(); i++) {
      if (read.get("columns").get(i).get("key").asText().equals(name)) {
        return read.get("rows").get(row).get(i);
      }
    }
    throw new AssertionError(name + " is no column");
  }

  @Test
  void number_besideSold_isAskedAndTheLowerHoldsTillThen() throws IOException {
    read("Plant,Pot,Qty,Sold,Dead\nField maple,10L,120,20,5\nHornbeam,10L,80,,\nYew,10L,30,30,\n");
    assertThat(cell("quantity", 0).asInt()).isEqualTo(95);
    assertThat(cell("quantity", 1).asInt()).isEqualTo(80);
    assertThat(table("report", "stock-as-read").get("rows").size()).isEqualTo(2);
    assertThat(table("report", "to-fill").toString())
        .contains("is Qty the number before or after Sold and Dead?");
  }

  @Test
  void number_withMoreSoldThanThere_isWhatIsLeft() throws IOException {
    read("Plant,Pot,Qty,Sold\nField maple,10L,20,120\nHornbeam,10L,80,10\n");
    assertThat(cell("quantity", 0).asInt()).isEqualTo(20);
    assertThat(cell("quantity", 1).asInt()).isEqualTo(80);
  }

  @Test
  void number_thatSaysItIsWhatIsLeft_isNotLessenedBySales() throws IOException {
    read("Plant,Pot,On hand,Sold\nField maple,10L,120,20\nHornbeam,10L,80,10\n");
    assertThat(cell("quantity", 0).asInt()).isEqualTo(120);
  }

  @Test
  void prices_inTwoCurrencies_areAskedAndNotRead() throws IOException {
    read("Plant,Pot,Qty,Selling price\nField maple,10L,120,£4.50\nHornbeam,10L,80,€ 5.20\n");
    assertThat(cell("selling_price", 0).isNull()).isTrue();
    assertThat(cell("selling_price", 1).isNull()).isTrue();
    assertThat(table("report", "to-fill").toString())
        .contains("Selling price has prices in EUR and GBP: which of them is read?");
  }

  @Test
  void costs_inAnotherCurrencyThanPrices_areAskedAtWhichRate() throws IOException {
    read(
        "Plant,Pot,Qty,Selling price,Cost price\nField maple,10L,120,£45,€ 5\nHornbeam,10L,80,£40,€ 4\n");
    assertThat(cell("selling_price", 0).asDouble()).isEqualTo(45);
    assertThat(cell("unit_cost", 0).isNull()).isTrue();
    assertThat(table("report", "to-fill").toString())
        .contains("Cost price is in EUR, other prices are in GBP: what is 1 EUR in GBP?");
  }

  @Test
  void answersOfAColumn_holdForIt() throws IOException {
    Files.writeString(
        folder.resolve("stock.csv"),
        "Plant,Pot,Qty,Sold,Selling price,Cost price\nField maple,10L,120,20,£45,€ 5\n"
            + "Hornbeam,10L,80,10,£40,€ 4\n");
    Path mine = Files.createDirectories(folder.resolve("mine"));
    Files.writeString(mine.resolve("own words.csv"), "kind,yours,ours\nlist,../stock.csv,\n");
    Files.writeString(
        mine.resolve("to fill.csv"),
        "fill in,table,row,column\nafter,own words,stock.csv,sold and lost\n"
            + "0.8,own words,Cost price,exchange rate\n");
    assertThat(plan(mine, "report").err()).isEmpty();
    assertThat(cell("quantity", 0).asInt()).isEqualTo(120);
    assertThat(cell("unit_cost", 0).asDouble()).isEqualTo(4);
  }

  @Test
  void girths_areTakenByTheFactorOfTheSettings_alsoWhereAnswered() throws IOException {
    Files.writeString(
        folder.resolve("stock.csv"),
        "Plant,Girth (cm),Qty\nField maple,8-10,40\nHornbeam,,30\nYew,10-12,20\n");
    Path mine = Files.createDirectories(folder.resolve("mine"));
    Files.writeString(mine.resolve("own words.csv"), "kind,yours,ours\nlist,../stock.csv,\n");
    Files.writeString(
        mine.resolve("settings.csv"),
        "name,value\ncurrency,GBP\nhourly rate,15\ndiscount rate % a year,4\nhours a week,40\n"
            + "girth base factor,1\n");
    Files.writeString(
        mine.resolve("to fill.csv"), "fill in,table,row,column\n8-10,stock,Hornbeam,girth cm\n");
    assertThat(plan(mine, "report").err()).isEmpty();
    assertThat(cell("trunk_from_mm", 0).asDouble()).isCloseTo(80 / Math.PI, within(0.01));
  }

  private static List<String> offered(XSSFSheet sheet, CellAddress cell) {
    return sheet.getDataValidations().stream()
        .filter(
            each ->
                Arrays.stream(each.getRegions().getCellRangeAddresses())
                    .anyMatch(range -> range.isInRange(cell)))
        .map(each -> each.getValidationConstraint().getFormula1())
        .toList();
  }

  @Test
  void openHeading_inTheStartedWorkbook_choosesFromItsOwnReadings() throws IOException {
    Path list = folder.resolve("stock.csv");
    Files.writeString(list, "Plant,Pot,Qty,Price\nField maple,10L,40,12\nHornbeam,10L,30,14\n");
    Path mine = folder.resolve("mine");
    assertThat(run("start", mine.toString(), "--from", list.toString()).err()).isEmpty();
    try (XSSFWorkbook book = new XSSFWorkbook(mine.resolve("nursery.xlsx").toFile())) {
      XSSFSheet words = book.getSheet("own words");
      assertThat(words.getRow(2).getCell(1).getStringCellValue()).isEqualTo("Price");
      assertThat(offered(words, new CellAddress(2, 2)))
          .containsExactly("\"unit cost,selling price,not read\"");
      assertThat(offered(words, new CellAddress(3, 2))).containsExactly("list_ours");
      XSSFSheet fills = book.getSheet("to fill");
      assertThat(offered(fills, new CellAddress(1, 0)))
          .containsExactly("\"unit cost,selling price,not read\"");
      assertThat(offered(fills, new CellAddress(3, 0))).isEmpty();
    } catch (InvalidFormatException broken) {
      throw new AssertionError(broken);
    }
  }

  @Test
  void list_withHundredsOfQuestions_isLaidOutWithTheRestClosed() throws Exception {
    StringBuilder rows = new StringBuilder("Plant,Qty,Pot\n");
    for (int i = 0; i < 300; i++) {
      rows.append("Unknown shrub ").append((char) ('A' + i % 26)).append(i).append(",9,10L\n");
    }
    Path list = Files.writeString(folder.resolve("strange.csv"), rows);
    Path mine = folder.resolve("mine");
    assertThat(run("start", mine.toString(), "--from", list.toString()).err()).isEmpty();
    try (XSSFWorkbook book = new XSSFWorkbook(mine.resolve("nursery.xlsx").toFile())) {
      XSSFSheet fills = book.getSheet("to fill");
      assertThat(fills.getLastRowNum()).isGreaterThan(300);
      assertThat(fills.getRow(5).getZeroHeight()).isFalse();
      assertThat(fills.getRow(200).getZeroHeight()).isTrue();
      assertThat(fills.getRow(200).getOutlineLevel()).isEqualTo(1);
    }
    assertThat(plan(mine, "report").err()).isEmpty();
  }

  @Test
  void list_ofMoreLotsThanCanBePlannedTogether_isRefusedWithoutReckoning() throws IOException {
    StringBuilder rows = new StringBuilder("Plant,Qty,Pot\n");
    for (int i = 0; i <= 10_000; i++) {
      rows.append("Hornbeam,").append(1 + i % 90).append(",10L\n");
    }
    Path list = folder.resolve("long.csv");
    Files.writeString(list, rows);
    Ran planned = plan(list, "report");
    assertThat(planned.code()).isEqualTo(3);
    assertThat(planned.err())
        .contains(
            "10001 lots are more than can be planned together (10000); plan a sheet or a place at a"
                + " time, or put rows of one plant and size together");
  }

  /** A list beside which answers lie, planned. */
  private Ran answered(String list, String words, String fills) throws IOException {
    Files.writeString(folder.resolve("stock.csv"), list);
    Path mine = Files.createDirectories(folder.resolve("mine"));
    Files.writeString(
        mine.resolve("own words.csv"), "kind,yours,ours\nlist,../stock.csv,\n" + words);
    Files.writeString(mine.resolve("to fill.csv"), "fill in,table,row,column\n" + fills);
    return plan(mine, "report");
  }

  @ParameterizedTest
  @CsvSource({"'',''", "'20,own words,Retail,vat',20", "'0,own words,Retail,vat',24"})
  void price_besideARateOfVat_isReadOnceItIsSaidWhetherItIsWithIt(String fill, String price)
      throws IOException {
    answered(
        "Plant,Size,Qty,Retail,VAT\nField maple,C10,40,24.00,20.00\nHornbeam,C10,30,24.00,20.00\n",
        "",
        fill + "\n");
    List<String> lines = Files.readAllLines(folder.resolve("report/tables/stock-as-read.csv"));
    int column = List.of(lines.get(0).split(",")).indexOf("selling_price");
    assertThat(lines.get(1).split(",", -1)[column]).isEqualTo(price);
  }

  @ParameterizedTest
  @CsvSource({"'',70", "'0,stock,Hornbeam,quantity',50"})
  void plants_keptPrivate_areAskedAndLeftOutWhereSaidSo(String fill, int plants)
      throws IOException {
    Ran planned =
        answered(
            "Plant,Size,Qty,Place\nField maple,C10,40,Tunnel\nHornbeam,C10,20,Private\nBeech,C10,10,Tunnel\n",
            "",
            fill + "\n");
    assertThat(planned.err()).isEmpty();
    assertThat(planned.out().toString()).contains("3 lots, " + plants + " plants.");
    assertThat(
            table("report", "to-fill")
                .toString()
                .contains("row 3, Qty, \\\"Private\\\": are these to be sold? type 0 if not"))
        .isEqualTo(fill.isEmpty());
  }

  @Test
  void total_thatCountsCanesToo_isNoLotAndSaysSo() throws IOException {
    Path list = folder.resolve("till.csv");
    Files.writeString(
        list,
        "Code,Description,On hand,Value\n1,Field maple 10L,40,400\n2,Hornbeam 10L,30,300\n"
            + "3,Bamboo cane 6ft,100,20\n4,Oak stake,10,20\n,,180,740\n");
    assertThat(plan(list, "report").out())
        .contains(
            "till.csv: 2 lots, 70 plants, 2 taxa in 6 rows (1 heading row, 2 lots, 1 total, 2 not read).",
            "Your total in row 6 says 180: rows 4 and 5 are not read. 70 is read.");
  }

  @Test
  void rows_thatAreAPlantEach_arePlannedAndAskedInPlainWords() throws IOException {
    Path list = folder.resolve("tags.csv");
    Files.writeString(
        list,
        "Tag,Species,Girth 1m\n101,Field maple,20\n102-104,Hornbeam,22\n105,Beech,18\n106,Yew,30\n");
    Path mine = folder.resolve("mine");
    assertThat(run("start", mine.toString(), "--from", list.toString()).err()).isEmpty();
    Ran planned = plan(mine, "report");
    assertThat(planned.err()).isEmpty();
    assertThat(planned.out().get(0))
        .isEqualTo("tags.csv: 4 lots, 6 plants, 4 taxa in 5 rows (1 heading row, 4 lots).");
    assertThat(table("report", "to-fill").toString())
        .contains("No column says how many there are: is every row one plant, as 101?");
    assertThat(Files.readString(folder.resolve("report/problems.txt")))
        .contains(
            "tags.csv: no column says how many plants there are, and every row is taken as one; say"
                + " not read of a plant a row in own words if that is wrong");
  }

  @Test
  void usualValues_areNotWarnedOf() throws IOException {
    Path list = folder.resolve("stock.csv");
    Files.writeString(
        list,
        "Plant,Trunk mm,Qty,Arrived,Place\nScots pine,22,40,May 2024,Field\nYew,24,30,May 2024,Field\n");
    assertThat(plan(list, "report").code()).isZero();
    assertThat(Files.readString(folder.resolve("report/problems.txt")))
        .doesNotContain("dormant season");
  }

  private List<String[]> lines(String report, String name) throws IOException {
    return Files.readAllLines(folder.resolve(report).resolve("tables").resolve(name)).stream()
        .skip(1)
        .map(line -> line.split(",", -1))
        .toList();
  }

  @ParameterizedTest
  @CsvSource({"hollin wood.xlsx", "brookfold tunnels.xlsx", "muehlgrund bestand.csv"})
  void trees_inPotsOfTheUsualNursery_neverStandOverFourYearsOnTheSameRoots(String name)
      throws IOException {
    plan(Files.copy(LISTS.resolve(name), folder.resolve(name)), "report");
    Set<String> work = Set.of("pot up", "pot on", "re-pot", "re-pot again", "reduce and pot");
    Map<String, YearMonth> worked = new HashMap<>();
    List<String[]> jobs = new ArrayList<>(lines("report", "jobs-next.csv"));
    jobs.addAll(lines("report", "jobs.csv"));
    int first = 0;
    for (String[] month : lines("report", "lot-months.csv")) {
      String lot = month[0];
      YearMonth now = YearMonth.parse(month[1]);
      boolean potted = jobs.stream().anyMatch(job -> job[2].equals(lot) && work.contains(job[3]));
      if (!potted || month[2].equals("0")) {
        continue;
      }
      worked.putIfAbsent(lot, now);
      if (jobs.stream()
          .anyMatch(
              job -> job[0].equals(month[1]) && job[2].equals(lot) && work.contains(job[3]))) {
        worked.put(lot, now);
        first++;
      }
      assertThat(ChronoUnit.MONTHS.between(worked.get(lot), now))
          .as("%s in %s", lot, now)
          .isLessThanOrEqualTo(48);
    }
    assertThat(first).isGreaterThan(5);
  }

  @Test
  void plants_newInTheList_comeAsRowsToPaste() throws IOException {
    Path list = folder.resolve("stock.csv");
    Files.writeString(list, "Plant,Size,Qty,Place\nField maple,C10,40,Tunnel 1\n");
    Path mine = folder.resolve("mine");
    assertThat(run("start", mine.toString(), "--from", list.toString()).err()).isEmpty();
    Files.writeString(
        list, "Plant,Size,Qty,Place\nField maple,C10,40,Tunnel 1\nScots pine,C12,9,New bed\n");
    assertThat(plan(mine, "next").code()).isZero();
    assertThat(Files.readString(folder.resolve("next/problems.txt")))
        .contains(
            "nursery.xlsx, sheet places: new in your list, with usual values (New bed); to type your"
                + " own, paste this row there: New bed\tstanding ground\t2\t80")
        .contains("sheet pots: new in your list, with usual values (12 litre)")
        .contains("sheet species: new in your list, with usual values (Scots pine)");
  }

  @Test
  void cell_changedAndAnsweredOtherwise_isToldAndTheAnswerHolds() throws IOException {
    Path list = folder.resolve("stock.csv");
    Files.writeString(
        list, "Plant,Size,Qty,Place\nField maple,C10,40,Tunnel\nHornbeam,C10,30,Tunnel\n");
    Path mine = Files.createDirectories(folder.resolve("mine"));
    Files.writeString(mine.resolve("own words.csv"), "kind,yours,ours\nlist,../stock.csv,\n");
    Files.writeString(
        mine.resolve("places.csv"), "place,kind,square metres,usable %\nTunnel,tunnel,90,80\n");
    Files.writeString(
        mine.resolve("to fill.csv"),
        "fill in,usual,table,row,column\n120,14,places,Tunnel,square metres\n");
    assertThat(plan(mine, "report").code()).isZero();
    assertThat(Files.readString(folder.resolve("report/problems.txt")))
        .contains(
            "places.csv, row 2, column square metres: this cell was changed to 90 and to fill says"
                + " 120 (row 2), which holds; empty one of them");
    assertThat(Files.readString(folder.resolve("report/tables/assumptions.csv")))
        .contains("square metres,120");
  }

  @Test
  void check_ofAListAlone_saysHowItIsRead_andNoStepsOfUsualRoutes() throws IOException {
    Path list = folder.resolve("stock.csv");
    Files.writeString(list, "Plant,Size,Qty\nScots pine,60-80,40\nHornbeam,C10,30\n");
    Ran checked = run("check", list.toString());
    assertThat(checked.out())
        .containsExactly(
            "stock.csv: 2 lots, 70 plants, 2 taxa in 3 rows (1 heading row, 2 lots).",
            "3 of 3 headings understood, 0 asked: Plant = species, Qty = quantity, ...; see own"
                + " words.",
            "Prices and the growth of 2 species are usual values, not yours: 15 cells in to fill.",
            "notice: there is no table places, so the plan says nothing about space, and places named"
                + " elsewhere do not count",
            "2 stock rows and 2 lots read; 0 errors, 0 warnings, 1 notice.");
  }

  /**
   * The order of the first potting, from the pots that are filled to what they cost, spelled out:
   * the pot mix is four parts of grit, five of bark and one of coir, as in the started nursery.
   */
  @Test
  void order_ofTheFirstPotting_isWhatIsPottedCountedUpByHand() throws IOException {
    plan(LISTS.resolve("others/13 two houses.xlsx"), "report");
    List<String[]> order = lines("report", "orders-next.csv");
    String needed = order.get(0)[1];
    double litres = 0;
    int trees = 0;
    for (String line : Files.readAllLines(folder.resolve("report/tables/jobs-next.csv"))) {
      String[] job = line.split(",", -1);
      if (job[0].equals(needed) && job[3].equals("pot on")) {
        trees += Integer.parseInt(job[4]);
        litres += Double.parseDouble(job[6]);
      }
    }
    int pots = bought(order, needed, "7.5 litre", 1.42);
    // Pots go by what is expected to stand then, trees by the whole plants of each lot.
    assertThat(pots).isBetween(trees - 8, trees + 8).isGreaterThan(100);
    int grit = bought(order, needed, "grit", 5.40);
    int bark = bought(order, needed, "bark", 7.80);
    int coir = bought(order, needed, "coir", 9.20);
    assertThat(grit).isEqualTo((int) Math.ceil(litres * 0.4 / 25));
    assertThat(bark).isEqualTo((int) Math.ceil(litres * 0.5 / 60));
    assertThat(coir).isEqualTo((int) Math.ceil(litres * 0.1 / 70));
    long cost = Math.round(pots * 1.42 + grit * 5.40 + bark * 7.80 + coir * 9.20);
    assertThat(Files.readString(folder.resolve("report/report.html")))
        .contains("%,d pots (7.5 litre)".formatted(pots))
        .contains("EUR %,d".formatted(cost));
  }

  /** How many packs of a thing are ordered for a month, at this price each. */
  private static int bought(List<String[]> order, String month, String item, double price) {
    String[] row =
        order.stream()
            .filter(each -> each[1].equals(month) && each[2].equals(item))
            .findFirst()
            .orElseThrow();
    int packs = Integer.parseInt(row[4]);
    assertThat(Double.parseDouble(row[7])).isEqualTo(price);
    assertThat(Double.parseDouble(row[8])).isEqualTo(packs * price, within(0.005));
    return packs;
  }

  @Test
  void headingAndTitle_thatAreNotUnderstood_areNamedWithTheirPlaceAndWhatStandsThere()
      throws IOException {
    Path list = folder.resolve("stock.csv");
    Files.writeString(
        list,
        "Yard\n\nPlant,Size,Qty,Dept\nField maple,C10,40,Trees\nall in the shade,,,\nHornbeam,C10,30,Trees\n");
    plan(list, "report");
    assertThat(Files.readString(folder.resolve("report/problems.txt")))
        .contains(
            "stock.csv, row 3, column Dept: this heading is not understood for certain, and its column is"
                + " not read (such as Trees); say in own words what it is")
        .contains(
            "stock.csv, row 5: a title between the lots is not used (all in the shade); make a column"
                + " of it if it says something of the rows below");
  }

  @Test
  void headingThatIsNotKnown_overMonthsOrMoney_offersWhatItMayBe() throws IOException {
    Path list = folder.resolve("stock.csv");
    Files.writeString(
        list,
        "Plant,Size,Qty,Since when,Outlay\nField maple,C10,40,03/2024,£4.50\n"
            + "Hornbeam,C10,30,Nov 22,£3.20\n");
    plan(list, "report");
    List<String> questions = new ArrayList<>();
    table("report", "to-fill").get("rows").forEach(row -> questions.add(row.get(2).asText()));
    assertThat(questions)
        .contains(
            "What is the column Since when (as in 03/2024)? arrived or potted?",
            "What is the column Outlay (as in £4.50)? unit cost or row cost or selling price?");
  }

  @Test
  void question_thatIsAnswered_isAskedNoMore() throws IOException {
    Files.writeString(
        folder.resolve("stock.csv"),
        "Plant,Size,Qty,Notes\nField maple,C10,40,NFS\nHornbeam,C10,30,\n");
    Path mine = Files.createDirectories(folder.resolve("mine"));
    Files.writeString(mine.resolve("own words.csv"), "kind,yours,ours\nlist,../stock.csv,\n");
    Ran asked = plan(mine, "first");
    assertThat(asked.out().get(1)).startsWith("Do this first: row 2").contains("to be sold?");
    String lot = table("first", "stock-as-read").get("rows").get(0).get(3).asText();
    Files.writeString(
        mine.resolve("to fill.csv"),
        "fill in,table,row,column\n35,stock,%s,quantity\n12,settings,hourly rate,value\n"
            .formatted(lot));
    Ran answered = plan(mine, "second");
    assertThat(answered.out()).noneMatch(line -> line.startsWith("Do this first"));
    assertThat(cells(answered)).isEqualTo(cells(asked) - 2);
    assertThat(table("second", "to-fill").toString())
        .doesNotContain("to be sold?", "What does an hour of work cost?");
  }

  /** Cells in to fill, as the last sentence on a list counts them. */
  private static int cells(Ran ran) {
    return ran.out().stream()
        .filter(line -> line.endsWith(" cells in to fill."))
        .map(line -> line.replaceAll(".* (\\d+) cells in to fill\\.", "$1"))
        .mapToInt(Integer::parseInt)
        .findFirst()
        .orElseThrow();
  }
}
