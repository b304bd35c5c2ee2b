package growingon.command;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Buying from the command line, with a small nursery. */
class BuyingCommandTest {
  private static final LocalDate DAY = LocalDate.of(2027, 4, 30);

  @TempDir private Path folder;
  private Path nursery;

  @BeforeEach
  void layOut() throws IOException, URISyntaxException {
    nursery = Files.createDirectories(folder.resolve("nursery"));
    Path tidy = Path.of(BuyingCommandTest.class.getResource("/load/tidy").toURI());
    try (Stream<Path> files = Files.list(tidy)) {
      for (Path file : files.toList()) {
        Files.copy(file, nursery.resolve(file.getFileName()));
      }
    }
  }

  private Ran run(String command, Path what, String out, String... more) {
    Stream<String> words =
        Stream.concat(
            Stream.of(command, what.toString(), "--out", folder.resolve(out).toString()),
            Stream.of(more));
    return Ran.on(DAY, words.toArray(String[]::new));
  }

  private JsonNode figures(String out) throws IOException {
    return new ObjectMapper().readTree(folder.resolve(out).resolve("figures.json").toFile());
  }

  @Test
  void recommendedPlan_isPlannedToTheLastDigitOfTheAnswer() throws IOException {
    Ran buying = run("buying", nursery, "b");
    assertThat(buying.code()).as(buying.err()).isZero();
    Path recommended = folder.resolve("b").resolve("recommended-plan.json");

    Ran plan = run("plan", recommended, "p");

    assertThat(plan.code()).as(plan.err()).isZero();
    JsonNode answered = figures("b").get("tables");
    JsonNode planned = figures("p").get("tables");
    int shared = 0;
    for (String table :
        List.of(
            "sales-by-season",
            "bench-space",
            "hours",
            "cash",
            "cash-by-season",
            "bought-lots",
            "lot-verdicts")) {
      if (planned.has(table)) {
        assertThat(answered.get(table)).as(table).isEqualTo(planned.get(table));
        shared++;
      }
    }
    assertThat(shared).isGreaterThanOrEqualTo(4);
  }

  @Test
  void answer_beginsWithTheDecisionAndEndsWithThePlanToRun() throws IOException {
    Ran buying = run("buying", nursery, "b", "--quick");

    assertThat(buying.code()).as(buying.err()).isZero();
    assertThat(buying.out().lines().count()).isLessThanOrEqualTo(9);
    assertThat(buying.out())
        .contains("Quick: without luck, on the plan's line alone")
        .contains("Report: " + folder.resolve("b"))
        .endsWith(
            "To run: plan \"" + folder.resolve("b").resolve("recommended-plan.json") + "\"\n");
    JsonNode offers = figures("b").get("tables").get("buying-offers");
    assertThat(offers.get("columns").findValuesAsText("key"))
        .as("without draws there is nothing to say of them")
        .contains("gain", "most_to_pay")
        .doesNotContain("p10", "p90", "pays");
    for (String word : List.of("optim", "objective", "shadow", "dual", "constraint", "scenario")) {
      assertThat(buying.out().toLowerCase(java.util.Locale.ROOT)).doesNotContain(word);
    }
    assertThat(folder.resolve("b"))
        .isDirectoryContaining(file -> file.endsWith("buying.xlsx"))
        .isDirectoryContaining(file -> file.endsWith("report.html"))
        .isDirectoryNotContaining(file -> file.endsWith("jobs.ics"));
  }

  @Test
  void withoutDraws_isSentToQuick() {
    Ran buying = run("buying", nursery, "b", "--draws", "0");

    assertThat(buying.code()).isEqualTo(2);
    assertThat(buying.err())
        .contains("without draws there is no luck to be judged on: use --quick");
  }

  /** A short plan that counts nothing of what is left makes every late sale look bad. */
  @Test
  void manyUnsoldForNothing_isWarnedOfWithWhatHalfTheirPriceWouldChange() throws IOException {
    Files.writeString(
        nursery.resolve("demand.csv"),
        "species,ladder,grade,units,price\nRowan,,bench,10,65\nYew,small trees,specimen,all,240\n");
    Path plan = folder.resolve("short.json");
    Files.writeString(
        plan,
        "{ \"name\": \"short\", \"nursery\": \"nursery\", \"first month\": \"2026-11\","
            + " \"seasons\": 1, \"horizon value\": 0, \"take\": { \"spring liners\": 500 },"
            + " \"ordered\": [\"spring liners\"] }");

    Ran buying = run("buying", plan, "b", "--quick");

    assertThat(buying.code()).as(buying.err()).isZero();
    Matcher warned =
        Pattern.compile(
                "\\d+ % of all plants stand unsold at the end and count for nothing, so long holds and"
                    + " late purchases look bad: give a horizon value, or plan more seasons\\. At"
                    + " 50 % of list price it would bring EUR -?[\\d,]+")
            .matcher(Files.readString(folder.resolve("b").resolve("report.html")));
    assertThat(warned.find()).isTrue();
  }

  @Test
  void onlyPurchases_saysNothingOfHolds() throws IOException {
    Ran buying = run("buying", nursery, "b", "--quick", "--only", "purchases");

    assertThat(buying.code()).as(buying.err()).isZero();
    assertThat(figures("b").get("tables").has("buying-offers")).isTrue();
    assertThat(figures("b").get("tables").has("buying-holds")).isFalse();
  }

  @Test
  void onlyHolds_leavesTheTakesOfThePlan() throws IOException {
    Ran buying = run("buying", nursery, "b", "--quick", "--only", "holds");

    assertThat(buying.code()).as(buying.err()).isZero();
    assertThat(Files.readString(folder.resolve("b").resolve("recommended-plan.json")))
        .contains("\"take\": { \"spring liners\": 200 }");
  }

  private Path quickSheet(String more) throws IOException {
    Path quick = Files.createDirectories(folder.resolve("quick"));
    Files.writeString(
        quick.resolve("quick.csv"),
        "line;fill in\nspecies;Scots pine\nhow many;50\nprice each;20\ncarriage for all;100\n"
            + "arrival month;Mar 2028\ntrunk mm or girth cm;40\nfirsts and seconds in ten;6 and 3\n"
            + "pot litres;15\nsold at trunk mm;45\nselling price each;220\n"
            + more);
    return quick;
  }

  @Test
  void quickSheet_isToldHowManyFitByBuyingAndByPlan() throws IOException {
    Path quick = quickSheet("free square metres;2\n");

    Ran buying = run("buying", quick, "b", "--quick");
    Ran plan = run("plan", quick, "p", "--draws", "0");

    assertThat(buying.code()).as(buying.err()).isZero();
    Matcher asked = Pattern.compile("buy (\\d+), and so many stand").matcher(plan.out());
    assertThat(asked.find()).as(plan.out()).isTrue();
    assertThat(buying.out()).contains("Buy " + asked.group(1) + " Scots pine lot");
    assertThat(folder.resolve("b").resolve("recommended-plan.json")).doesNotExist();
  }

  @Test
  void quickSheetWithoutRoom_isAskedForIt() throws IOException {
    Ran buying = run("buying", quickSheet(""), "b", "--quick");

    assertThat(buying.code()).isEqualTo(3);
    assertThat(buying.err())
        .contains(
            "a quick sheet is asked how many to buy by the room there is, and that is not filled in;"
                + " fill in free square metres, or ask plan, which answers a quick sheet");
  }
}
