package growingon.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Looking back on stock lists and receipts, with the demonstration nursery. */
class WithoutADaybookTest {
  private static final LocalDate TODAY = LocalDate.of(2026, 11, 28);
  private static final Path WITH_DAYBOOK = Path.of("demo-data", "two-seasons-on");
  private static final String NEXT_LIST =
      "lot,species,form,quantity,arrived,trunk mm,trunk spread %,pot,place,gap mm,plants per m2,"
          + "route\n";

  @TempDir private Path folder;
  private Path plan;
  private Path nursery;

  @BeforeEach
  void layOut() throws IOException {
    nursery = folder.resolve("demo-data").resolve("without-a-daybook");
    copy(Path.of("demo-data", "without-a-daybook"), nursery);
    plan = Files.createDirectories(folder.resolve("plans")).resolve("without-a-daybook.json");
    Files.copy(Path.of("plans", "without-a-daybook.json"), plan);
  }

  private static void copy(Path from, Path to) throws IOException {
    try (Stream<Path> files = Files.walk(from)) {
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        Path copy = to.resolve(from.relativize(file).toString());
        Files.createDirectories(copy.getParent());
        Files.copy(file, copy);
      }
    }
  }

  private Ran review() {
    return Ran.on(TODAY, "review", plan.toString(), "--out", folder.resolve("r").toString());
  }

  private static List<CSVRecord> rows(Path file) {
    try (CSVParser parser =
        CSVParser.parse(
            Files.readString(file),
            CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get())) {
      return parser.getRecords();
    } catch (IOException broken) {
      throw new UncheckedIOException(broken);
    }
  }

  private List<CSVRecord> table(String name) {
    return rows(folder.resolve("r").resolve("tables").resolve(name + ".csv"));
  }

  private static String words(Ran ran) {
    return ran.out().replaceAll("\\s+", " ");
  }

  private void receipts(String... rows) throws IOException {
    Files.writeString(
        nursery.resolve("receipts.csv"),
        "date,species,lot,grade,number,amount without VAT\n" + String.join("\n", rows) + "\n");
  }

  /** Of 70 crabs 13 are listed: 57 are gone. The yews stood 44 and stand 20. */
  @Test
  void twoStockLists_giveVerdicts_andTheRowOfWhatNoLineExplains() throws IOException {
    Files.delete(nursery.resolve("receipts.csv"));

    Ran ran = review();

    assertThat(ran.code()).as(ran.err()).isZero();
    assertThat(words(ran))
        .contains(
            "There is no daybook; the stock list of Nov 2024 counts as a count; figures are those of"
                + " the end of Oct 2024.")
        .contains("Cobnut Farm crabs is undecided: GBP ")
        .contains("are missing, but 57 plants are gone without a line: sold at list price")
        .contains("Hornbeam whips is too young to tell: not all of the 127 plants that stand")
        .contains("Sold by the records: 0 plants for GBP 0")
        .contains("256 plants gone without a line: sold or lost, no line says which.")
        .contains("5 faults in the records: see the sheet Faults.");
    assertThat(table("gone-without-a-line"))
        .extracting(row -> row.get("lot") + " " + row.get("gone"))
        .containsExactly(
            "Cobnut Farm crabs 57",
            "Hornbeam whips 23",
            "Maples of 2020 95",
            "Polder tridents 57",
            "Yews of 2018 24");
    assertThat(table("so-far"))
        .filteredOn(row -> row.get("what").equals("sold or lost, no line says which"))
        .extracting(row -> row.get("by_the_daybook"))
        .containsExactly("256");
    assertThat(table("faults").get(0).get("what_is_wrong"))
        .isEqualTo(
            "57 plants of Cobnut Farm crabs are gone without a line by 2024-10-31: 70 were alive, 13"
                + " were found");
  }

  /** Whips without a grade bring nothing at list price: the row is there, and its worth is nil. */
  @Test
  void whatIsGone_isPricedByWhatHadAGrade() throws IOException {
    Files.delete(nursery.resolve("receipts.csv"));

    review();

    Map<String, Double> worth = new HashMap<>();
    table("gone-without-a-line")
        .forEach(row -> worth.put(row.get("lot"), Double.valueOf(row.get("at_most"))));
    assertThat(worth.get("Hornbeam whips")).isZero();
    assertThat(worth.get("Yews of 2018") / 24)
        .as("a clothed yew is 80 and more")
        .isBetween(80.0, 230.0);
  }

  @Test
  void demonstration_saysWhatTheDaybookOfTwoSeasonsSays() {
    List<CSVRecord> daybook = rows(WITH_DAYBOOK.resolve("daybook.csv"));
    double plants = 0;
    double money = 0;
    for (CSVRecord line : daybook) {
      int sign = line.get("what").equals("sold") ? 1 : line.get("what").equals("returned") ? -1 : 0;
      plants += sign == 0 ? 0 : sign * Double.parseDouble(line.get("quantity"));
      money += sign == 0 ? 0 : sign * Double.parseDouble(line.get("amount"));
    }

    Ran ran = review();

    assertThat(ran.code()).as(ran.err()).isZero();
    assertThat(plants).isEqualTo(178);
    assertThat(money).isCloseTo(12_450, within(0.005));
    assertThat(words(ran))
        .contains("Polder tridents paid: ")
        .contains("Sold by the records: 178 plants for GBP 12,450 ")
        .contains(
            "Plants of the receipts: 178 for GBP 12,450 shared out to the oldest lots that had the"
                + " grade; 12 for GBP 48 fit no lot.");
    Map<String, Integer> counted = new HashMap<>();
    daybook.stream()
        .filter(
            line -> line.get("what").equals("counted") && line.get("date").startsWith("2024-10"))
        .forEach(
            line ->
                counted.merge(
                    line.get("lot").replaceAll("(single|twin) stem", "of 2020"),
                    Integer.valueOf(line.get("quantity")),
                    Integer::sum));
    assertThat(rows(nursery.resolve("stock.csv")))
        .allSatisfy(
            row ->
                assertThat(Integer.valueOf(row.get("quantity")))
                    .isEqualTo(counted.get(row.get("lot"))));
  }

  /** Each receipt is a line of the daybook already, so that no figure changes. */
  @Test
  void receipts_besideADaybook_thatHasTheSales_changeNothing() throws IOException {
    copy(WITH_DAYBOOK, folder.resolve("demo-data").resolve("two-seasons-on"));
    Path other = folder.resolve("plans").resolve("two-seasons-on.json");
    Files.copy(Path.of("plans", "two-seasons-on.json"), other);
    String out = folder.resolve("r").toString();
    Ran alone = Ran.on(TODAY, "review", other.toString(), "--out", out);
    Files.copy(
        nursery.resolve("receipts.csv"),
        folder.resolve("demo-data").resolve("two-seasons-on").resolve("receipts.csv"));
    Ran both = Ran.on(TODAY, "review", other.toString(), "--out", out);

    assertThat(both.code()).as(both.err()).isZero();
    assertThat(words(both))
        .contains(
            "Plants of the receipts: 178 for GBP 12,450 stand in the daybook; 12 for GBP 48 fit");
    assertThat(both.out().lines().filter(line -> line.contains("paid")).toList())
        .isNotEmpty()
        .isEqualTo(alone.out().lines().filter(line -> line.contains("paid")).toList());
  }

  /** The maples came in 2020; a second lot of them came later and is taken up after them. */
  @Test
  void receipt_withoutALot_isOfTheOldestThatHadTheGrade_andWhatIsLeftFitsNone() throws IOException {
    receipts(
        "2023-05-20,Field maple,,started,90,4050",
        "2023-09,Field maple,,started,10,450",
        "2023-10-02,English yew,,clothed,4,352",
        "2023-10-20,English yew,,clothed,-1,-88",
        "2024-02-02,,Polder tridents,started,2,110");

    Ran ran = review();

    assertThat(ran.code()).as(ran.err()).isZero();
    assertThat(table("receipts"))
        .extracting(row -> row.get("taken_for") + ", " + row.get("lot") + ", " + row.get("plants"))
        .containsExactly(
            "shared out, Maples of 2020, 90",
            "shared out, Maples of 2020, 5",
            "fits no lot, , 5",
            "shared out, Yews of 2018, 4",
            "shared out, Yews of 2018, -1",
            "names the lot, Polder tridents, 2");
    assertThat(table("faults"))
        .extracting(row -> row.get("where") + ": " + row.get("what_is_wrong"))
        .contains(
            "receipts.csv, row 3, column number: fits no lot: so many of the species did not leave the"
                + " lots that had the grade; it counts among the receipts of no lot (5 plants)");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '~',
      value = {
        "date,species,number,amount|2023-05-20,Hornbeam,2,60|receipts.csv, column amount: the heading"
            + " does not say whether VAT is in the amounts (amount); head the column \"amount without"
            + " VAT\", or \"amount with VAT\" with a column \"VAT %\" beside it",
        "date,species,number,amount with VAT|2023-05-20,Hornbeam,2,60|receipts.csv, row 2, column VAT"
            + " %: VAT is in the amount, and its rate is not said (60); fill in VAT %, 0 if there is"
            + " none",
        "date,species,number,net|2023-05-20,Hornbeam,-2,60|receipts.csv, row 2, column number: number"
            + " and amount have opposite signs (-2); give both a minus where plants came back, else"
            + " none",
        "date,species,number,net|2023-05-20,Hornbeem,2,60|receipts.csv, row 2, column species: nearly"
            + " the name Hornbeam (Hornbeem); write it as it stands in the nursery's tables",
        "date,species,number,net|2027-05,Hornbeam,2,60|receipts.csv, row 2, column date: this day has"
            + " not come yet, today is 2026-11-28 (2027-05); correct the date",
        "date,lot,species,number,net|2023-05,Yews of 2018,Hornbeam,2,60|receipts.csv, row 2, column"
            + " species: the lot Yews of 2018 is of English yew (Hornbeam); leave the species empty,"
            + " or name the right lot",
        "date,species,number,net|2023-05-20,Hornbeam,many,60|receipts.csv, row 2, column number: this"
            + " is no number (many); write digits, such as 12.5"
      })
  void fault_inTheReceipts_isSaidWithItsPlace_andNothingIsWritten(
      String head, String row, String sentence) throws IOException {
    Files.writeString(nursery.resolve("receipts.csv"), head + "\n" + row + "\n");

    Ran ran = review();

    assertThat(ran.code()).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(ran.err()).contains("error: " + sentence).doesNotContain("Exception");
    assertThat(folder.resolve("r")).doesNotExist();
  }

  @Test
  void rowOfAnEarlierList_thatCannotBeRead_isSaidWithItsPlace() throws IOException {
    Path list = nursery.resolve("earlier").resolve("stock 2022-11.csv");
    Files.writeString(list, Files.readString(list).replace(",200,", ",two hundred,"));

    Ran ran = review();

    assertThat(ran.code()).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(ran.err()).contains("error: stock 2022-11.csv, row 2, column quantity: ");
  }

  @Test
  void lotThatIsNewOnAList_withoutAnOffer_hasNoVerdict_andIsSaidWhatToDo() throws IOException {
    Path list = nursery.resolve("stock.csv");
    Files.writeString(
        list, Files.readString(list).replace("Hornbeam whips,", "Hornbeams in the field,"));

    assertThat(words(review()))
        .contains(
            "No verdict on Hornbeams in the field, new on a list: no offer says what was paid. Enter it"
                + " as an offer taken, with price and month.");
  }

  /**
   * 30 yews stood, then somebody wrote them down without a number, and the last list lacks them.
   */
  @Test
  void lotLastListedWithoutANumber_andThenLacked_isGone() throws IOException {
    Path list = nursery.resolve("stock.csv");
    String header = "lot,species,form,quantity,arrived,counted,trunk mm,pot,place,route\n";
    String yews =
        "Yews of 2018,English yew,container,,2018-10,2023-11,,18 litre,East ground,container trees\n";
    Files.writeString(nursery.resolve("earlier").resolve("stock 2023-11.csv"), header + yews);
    Files.writeString(
        list,
        Files.readAllLines(list).stream()
            .filter(row -> !row.startsWith("Yews"))
            .map(row -> row + "\n")
            .collect(java.util.stream.Collectors.joining()));

    Ran ran = review();

    assertThat(ran.code()).as(ran.err()).isZero();
    assertThat(table("gone-without-a-line"))
        .anyMatch(row -> row.get("lot").equals("Yews of 2018") && row.get("found").equals("0"));
  }

  /** Of 44 yews 20 are listed: 24 can be sold, so of the first 200 there are 176 too many. */
  @Test
  void receiptsThatFitNoLot_areAskedOnce_andEachIsInTheProblems() throws IOException {
    receipts(
        "2023-05-03,English yew,,,200,8000",
        "2023-05-10,English yew,,,210,8100",
        "2023-05-11,Leaf mould,,,2,9",
        "2023-06-10,Leaf mould,,,3,12",
        "2023-06-10,Canes,,,10,4");

    Ran ran = review();

    assertThat(ran.code()).as(ran.err()).isZero();
    assertThat(table("faults"))
        .filteredOn(row -> row.get("where").startsWith("receipts"))
        .extracting(row -> row.get("where") + ": " + row.get("what_is_wrong"))
        .singleElement()
        .asString()
        .startsWith(
            "receipts.csv, column number: fits no lot: so many of the species did not leave")
        .endsWith("(2 times: 176 plants, 210 plants; rows 2, 3)");
    String problems = Files.readString(folder.resolve("r").resolve("problems.txt"));
    String notices = problems.substring(problems.indexOf(" notices\n"));
    assertThat(problems)
        .contains(
            "receipts.csv, column species: none of the nursery's plants has this name; the row counts"
                + " among the receipts of no lot (3 times: Leaf mould 2 times, Canes; rows 4, 5, 6); if it"
                + " is a plant of yours");
    assertThat(notices)
        .contains("receipts.csv, row 2, column number: fits no lot: ")
        .contains("receipts.csv, row 3, column number: fits no lot: ")
        .contains(
            "receipts.csv, row 6, column species: none of the nursery's plants has this name;");
  }

  /** What a list has that the plan had not, and what it lacks, is asked for. */
  @Test
  void lotsThatListsAndPlanDoNotShare_areTold() throws IOException {
    Path list = nursery.resolve("stock.csv");
    Files.writeString(
        list, Files.readString(list).replace("Hornbeam whips,", "Hornbeams in the field,"));

    Ran ran = review();

    assertThat(ran.code()).as(ran.err()).isZero();
    assertThat(table("faults"))
        .extracting(row -> row.get("what_is_wrong"))
        .contains(
            "the plan does not have Hornbeams in the field, and no line says how it came; it counts"
                + " from this list on, and whether it paid cannot be told",
            "by the plan Hornbeam whips came in 2022-12, but this list lacks it; it is left out as"
                + " not bought");
    assertThat(table("lots-alive"))
        .filteredOn(row -> row.get("lot").equals("Hornbeams in the field"))
        .extracting(row -> row.get("by_the_daybook"))
        .containsExactly("127");
  }

  @Test
  void folderWithoutAPlan_isReviewedFromItsOldestList() {
    Ran ran = Ran.on(TODAY, "review", nursery.toString(), "--out", folder.resolve("r").toString());

    assertThat(ran.code()).as(ran.err()).isZero();
    assertThat(words(ran)).contains("figures are those of the end of Oct 2024.");
  }

  private void nextList(String... rows) throws IOException {
    Files.writeString(
        nursery.resolve("earlier").resolve("stock 2023-11.csv"),
        NEXT_LIST + String.join("\n", rows) + "\n");
  }

  private List<String> faults() {
    return table("faults").stream().map(row -> row.get("what_is_wrong")).toList();
  }

  /** Of 200 maples 190 are counted in 2023 and 105 in 2024; their trunks nobody measured. */
  @Test
  void rowOfAList_withoutATrunk_countsPlants_andOneWithoutANumberMeasures() throws IOException {
    Files.delete(nursery.resolve("receipts.csv"));
    nextList(
        "Maples of 2020,Field maple,container,190,2020-03,,,7.5 litre,East ground,50,,liners in"
            + " pots",
        "Yews of 2018,English yew,container,,2018-10,25.5,15,18 litre,East ground,80,,container"
            + " trees",
        "Polder tridents,Trident maple,container,59,2023-02,,,18 litre,East ground,80,,container"
            + " trees",
        "Cobnut Farm crabs,Crab apple,bare root,70,2023-02,,,30 litre tub,West ground,120,,heavy"
            + " field trees",
        "Hornbeam whips,Hornbeam,bare root,150,2022-12,,,,Long Field,,6,field to training pot");

    Ran ran = review();

    assertThat(ran.code()).as(ran.err()).isZero();
    assertThat(faults())
        .anyMatch(each -> each.startsWith("10 plants of Maples of 2020 are gone without a line by"))
        .anyMatch(each -> each.startsWith("85 plants of Maples of 2020 are gone without a line by"))
        .anyMatch(each -> each.startsWith("24 plants of Yews of 2018 are gone without a line by"))
        .noneMatch(each -> each.startsWith("44 plants of Yews of 2018"));
  }

  @Test
  void newLot_withoutATrunkOnAnyList_isTold_andOneWithoutANumberBeginsLater() throws IOException {
    Files.delete(nursery.resolve("receipts.csv"));
    nextList(
        "Maples of 2020,Field maple,container,190,2020-03,,,7.5 litre,East ground,50,,liners in"
            + " pots",
        "Back field,Field maple,container,,2020-03,20,,7.5 litre,East ground,50,,liners in pots",
        "Side field,Field maple,container,12,2020-03,,,7.5 litre,East ground,50,,liners in pots");

    Ran ran = review();

    assertThat(ran.code()).as(ran.err()).isZero();
    assertThat(faults())
        .contains(
            "no number of plants of Back field, with which the lot could begin",
            "no list has measured trunks of Side field, so 10 mm are taken");
  }

  @Test
  void lotOfAnotherSpecies_onALaterList_isNoCount_andIsTold() throws IOException {
    Path list = nursery.resolve("stock.csv");
    Files.writeString(
        list,
        Files.readString(list).replace("Yews of 2018,English yew,", "Yews of 2018,Hornbeam,"));

    Ran ran = review();

    assertThat(ran.code()).as(ran.err()).isZero();
    assertThat(faults())
        .contains(
            "this lot was of the species English yew on the list before, so the row is not used"
                + " (Yews of 2018)");
  }

  /** The plan keeps its names, so that a plan that was kept is still found. */
  @Test
  void lot_renamedByOwnWords_isTheLotOfThePlan_onListsAndInTheDaybook() throws IOException {
    Files.delete(nursery.resolve("receipts.csv"));
    Path list = nursery.resolve("stock.csv");
    Files.writeString(list, Files.readString(list).replace("Yews of 2018,", "Old yews,"));
    Files.writeString(
        nursery.resolve("own words.csv"), "kind,yours,ours\nlot,Yews of 2018,Old yews\n");
    Files.writeString(
        nursery.resolve("daybook.csv"),
        "date,lot,what,quantity,note\n2023-07-01,Old yews,died,4,frost\n");

    Ran ran = review();

    assertThat(ran.code()).as(ran.err()).isZero();
    assertThat(faults())
        .anyMatch(each -> each.startsWith("20 plants of Yews of 2018 are gone without a line"))
        .noneMatch(each -> each.contains("Old yews"));
  }

  /** A list in the grower's own words is a count of the plants that it names. */
  @Test
  void listInOwnWords_countsInAReview() throws IOException {
    Files.delete(nursery.resolve("receipts.csv"));
    Files.writeString(
        nursery.resolve("earlier").resolve("Stock 2023-11.csv"),
        "Stock list November 2023;;;;\n;;;;\nBatch;Plant;Number;Caliper mm;Received\n"
            + "Maples of 2020;Field maple;190;19,5;03.2020\n"
            + "Yews of 2018;English yew;41;25,5;10.2018\n");

    Ran ran = review();

    assertThat(ran.code()).as(ran.err()).isZero();
    assertThat(faults())
        .anyMatch(each -> each.startsWith("10 plants of Maples of 2020 are gone without a line by"))
        .anyMatch(each -> each.startsWith("3 plants of Yews of 2018 are gone without a line by"))
        .anyMatch(each -> each.startsWith("21 plants of Yews of 2018 are gone without a line by"));
  }

  /** A plan may begin with a list in the grower's own words, in {@code plan} and in review. */
  @Test
  void listInOwnWords_isWhatThePlanBeginsWith() throws IOException {
    Files.delete(nursery.resolve("receipts.csv"));
    Files.delete(nursery.resolve("earlier").resolve("stock 2022-11.csv"));
    Files.writeString(
        nursery.resolve("earlier").resolve("Stock 2022-11.csv"),
        "Batch;Plant;Number;Caliper mm;Received\n"
            + "Maples of 2020;Field maple;200;17;03.2020\n"
            + "Yews of 2018;English yew;44;24;10.2018\n");

    Ran ran = review();
    Ran planned =
        Ran.on(
            TODAY,
            "plan",
            plan.toString(),
            "--draws",
            "0",
            "--out",
            folder.resolve("p").toString());

    assertThat(ran.code()).as(ran.err()).isZero();
    assertThat(planned.code()).as(planned.err()).isZero();
    assertThat(faults())
        .anyMatch(each -> each.startsWith("95 plants of Maples of 2020 are gone without a line by"))
        .anyMatch(each -> each.startsWith("24 plants of Yews of 2018 are gone without a line by"));
    assertThat(planned.out() + ran.out() + Files.readString(folder.resolve("r/problems.txt")))
        .contains(
            "the plan of Nov 2022 begins with this list, since today's was counted in Nov 2024");
  }

  /** Of 95 maples and 24 yews that left, the receipts have 88 and 21. */
  @Test
  void fit_learnsFromTheListsAndReceipts_thatReviewReads() {
    Ran ran = Ran.on(TODAY, "fit", plan.toString(), "--out", folder.resolve("r").toString());

    assertThat(ran.code()).as(ran.err()).isZero();
    assertThat(words(ran)).contains("Nov 2022 to Oct 2024").contains("2 intervals used, 0 refused");
    assertThat(table("fit-records"))
        .extracting(row -> row.get("subject") + " " + row.get("sold") + " " + row.get("gone"))
        .containsExactly("Maples of 2020 88 7", "Yews of 2018 21 3");
  }
}
