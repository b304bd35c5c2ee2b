package growingon.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.LocalDate;
import java.util.List;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A grower's own stock lists of several years, in the grower's own words. */
class OwnEarlierListsTest {
  private static final LocalDate TODAY = LocalDate.of(2026, 11, 20);

  @TempDir private Path folder;
  private Path nursery;
  private Path out;

  @BeforeEach
  void layOut() {
    nursery = folder.resolve("mine");
    out = folder.resolve("out");
  }

  /** Six lots of field maples whose trunks grow by some mm a year, and one nobody measured. */
  private static String list(int year, double mmAYear, int yews) {
    StringBuilder text =
        new StringBuilder("Stock list November " + year + ";;;;;;\n;;;;;;\n")
            .append("Batch;Plant;Number;Caliper mm;Pot;Received;Remarks\n");
    for (int lot = 1; lot <= 6; lot++) {
      double trunk = 15.3 + lot + mmAYear * (year - 2023);
      text.append(
          "F%d;Field maple;%d;%s;C15;03.2020;\n".formatted(lot, 90 - (year - 2023), comma(trunk)));
    }
    return text.append("E1;Yew;%d;;C15;03.2020;\n".formatted(yews)).toString();
  }

  private static String comma(double value) {
    return String.format(java.util.Locale.ROOT, "%.1f", value).replace('.', ',');
  }

  private Path list(String name, int year, double mmAYear, int yews) throws IOException {
    Path file = folder.resolve(name);
    Files.writeString(file, list(year, mmAYear, yews));
    Files.setLastModifiedTime(
        file,
        FileTime.from(
            LocalDate.of(year, 11, 5).atStartOfDay().toInstant(java.time.ZoneOffset.UTC)));
    return file;
  }

  private Ran run(String... words) {
    Ran ran = Ran.on(TODAY, words);
    assertThat(ran.code()).as(ran.err()).isZero();
    return ran;
  }

  private Ran fit() {
    return run("fit", nursery.toString(), "--out", out.toString());
  }

  private List<String> rows(String table) throws IOException {
    return Files.readAllLines(out.resolve("tables").resolve(table + ".csv"));
  }

  @Test
  void lists_inTheFolderEarlier_areReadByTheSameReader() throws IOException {
    Path now = list("Stock.csv", 2026, 1.6, 40);
    run("start", nursery.toString(), "--from", now.toString());
    Files.createDirectories(nursery.resolve("earlier"));
    for (int year = 2023; year <= 2025; year++) {
      Files.writeString(nursery.resolve("earlier/Stock " + year + ".csv"), list(year, 1.6, 40));
    }

    Ran ran = fit();

    assertThat(ran.out())
        .contains("what 21 counts of 7 lots and 0 lines of sales say, Nov 2023 to Oct 2026")
        .contains("18 intervals used, 0 refused");
    assertThat(rows("fit-records"))
        .anyMatch(row -> row.startsWith("E1,") && row.contains("no trunk measured"))
        .noneMatch(row -> row.startsWith("E1,") && row.contains(",yes,"));
    assertThat(rows("fit-values"))
        .anyMatch(row -> row.startsWith("Field maple,training pot,growth speed,"));
  }

  /**
   * A heading that may be a girth or a trunk is asked of today's list, but nobody asks of these.
   */
  @Test
  void list_whoseTrunksAreNotUnderstood_isToldOf() throws IOException {
    Path now = list("Stock.csv", 2026, 1.6, 40);
    run("start", nursery.toString(), "--from", now.toString());
    Files.createDirectories(nursery.resolve("earlier"));
    Files.writeString(nursery.resolve("earlier/Stock 2024.csv"), list(2024, 1.6, 40));
    Files.writeString(
        nursery.resolve("earlier/Stock 2025.csv"),
        list(2025, 1.6, 40).replace("Caliper mm", "Stamm"));

    fit();

    assertThat(Files.readString(out.resolve("problems.txt")))
        .containsOnlyOnce(
            "earlier/Stock 2025.csv: no trunk of this earlier list is read, so it tells of losses and"
                + " not of growth (Stamm); call that heading trunk mm in the list, or say so on the"
                + " sheet own words (kind heading)")
        .doesNotContain("earlier/Stock 2024.csv: no trunk");
  }

  @Test
  void proposal_ofOwnLists_isATableOfSpecies_thatIsReadBack() throws IOException {
    Path now = list("Stock.csv", 2026, 1.6, 40);
    run("start", nursery.toString(), "--from", now.toString());
    Files.createDirectories(nursery.resolve("earlier"));
    for (int year = 2023; year <= 2025; year++) {
      Files.writeString(nursery.resolve("earlier/Stock " + year + ".csv"), list(year, 1.6, 40));
    }
    fit();
    Path proposal = out.resolve("proposal");

    assertThat(Files.readString(proposal.resolve("species.csv")))
        .contains("mm a year training pot")
        .contains("prior growth training pot")
        .containsPattern("Field maple,deciduous pot trees,[^,]+,training pot,");
    Path planned = folder.resolve("planned");
    run(
        "plan",
        nursery.toString(),
        "--species",
        proposal.toString(),
        "--draws",
        "0",
        "--out",
        planned.toString());
  }

  private Ran review(String what) {
    return run("review", what, "--out", out.toString(), "--force");
  }

  /** A nursery started from the list of 2025, whose list now is that of 2026. */
  private void startedAYearAgo(String today) throws IOException {
    Path now = list(today, 2025, 1.6, 40);
    run("start", nursery.toString(), "--from", now.toString());
    Files.createDirectories(nursery.resolve("earlier"));
    Files.writeString(nursery.resolve("earlier/Stock 2025-11.csv"), list(2025, 1.6, 40));
    list(today, 2026, 1.6, 31);
  }

  @Test
  void ownListOfNoMonth_whereAnEarlierOneBeginsThePlan_isACountOfThisMonth() throws IOException {
    startedAYearAgo("Stock.csv");
    Path plan = nursery.resolve("last year.json");
    Files.writeString(plan, "{ \"nursery\": \".\", \"first month\": \"2025-11\", \"seasons\": 4 }");

    String counted =
        "There is no daybook; the stock list of Nov 2026 counts as a count; figures are those of the"
            + " end of Oct 2026.";
    assertThat(review(plan.toString()).out()).contains(counted);
    assertThat(rows("gone-without-a-line")).anyMatch(row -> row.startsWith("E1,"));
    // A plan that states no first month is reviewed from the oldest list, a folder too.
    assertThat(review(nursery.toString()).out()).contains(counted);
    Files.delete(nursery.resolve("plan.json"));
    assertThat(review(nursery.toString()).out()).contains(counted);
  }

  @Test
  void ownListWhoseNameSaysItsMonth_isACountOfThatMonth() throws IOException {
    startedAYearAgo("Stock 2026-10.csv");

    assertThat(review(nursery.toString()).out())
        .contains(
            "the stock list of Oct 2026 counts as a count; figures are those of the end of Sep");
  }

  @Test
  void ownListOfNoMonth_withoutAnEarlierOneOfThePlansFirstMonth_isWhatThePlanBeginsWith()
      throws IOException {
    startedAYearAgo("Stock.csv");
    Path plan = nursery.resolve("since summer.json");
    Files.writeString(plan, "{ \"nursery\": \".\", \"first month\": \"2026-06\", \"seasons\": 4 }");

    assertThat(run("plan", plan.toString(), "--draws", "0", "--out", out.toString()).out())
        .contains("7 lots, 553 plants");
  }

  @Test
  void lists_ofOneNameWithAStar_areTodaysAndEarlierOnes() throws IOException {
    for (int year = 2023; year <= 2026; year++) {
      list("Stock Nov " + year + ".csv", year, 1.6, 40);
    }
    run("start", nursery.toString(), "--from", folder.resolve("Stock Nov 2026.csv").toString());
    Files.writeString(
        nursery.resolve("own words.csv"), "kind,yours,ours\nlist,stock,../Stock Nov *.csv\n");
    takeOutSheet(nursery.resolve("nursery.xlsx"), "own words");

    assertThat(fit().out()).contains("what 21 counts of 7 lots");
  }

  private static void takeOutSheet(Path workbook, String name) throws IOException {
    byte[] bytes = Files.readAllBytes(workbook);
    try (XSSFWorkbook book = new XSSFWorkbook(new ByteArrayInputStream(bytes))) {
      book.removeSheetAt(book.getSheetIndex(name));
      try (OutputStream to = Files.newOutputStream(workbook)) {
        book.write(to);
      }
    }
  }
}
