package growingon.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Learning from records, from the command line, with a small nursery of two species. */
class FitCommandTest {
  private static final List<String> TABLES =
      List.of(
          "grades.csv",
          "pots.csv",
          "places.csv",
          "qualities.csv",
          "mixes.csv",
          "components.csv",
          "materials.csv",
          "routes.csv",
          "nursery.json");

  private static final String HEADINGS =
      "lot,species,form,quantity,arrived,counted,trunk mm,trunk spread %,pot,route,measured\n";

  @TempDir private Path folder;
  private Path nursery;
  private Path out;

  @BeforeEach
  void layOut() throws IOException {
    nursery = Files.createDirectories(folder.resolve("larkfield"));
    out = folder.resolve("out");
    for (String table : TABLES) {
      Files.copy(Path.of("demo-data", "two-seasons-on", table), nursery.resolve(table));
    }
    write(
        "species.json",
        """
        // my own figures
        {
          "species": {
            "Hazel": {
              "ladder": "patio trees",
              "usual condition": "training pot",
              "growth": {
                // from callipers in 2019
                "training pot": { "curve": "steady", "g": 3.6 },
              },
              "first-year loss %": 5,
              "later loss %": 2, // a guess
              "pot-bound months": 240,
            },
            "Quince": {
              "ladder": "patio trees",
              "usual condition": "training pot",
              "growth": { "training pot": { "curve": "steady", "g": 2.5 } },
              "first-year loss %": 5,
              "later loss %": 2,
              "pot-bound months": 240,
            },
          },
        }
        """);
  }

  private void write(String name, String text) throws IOException {
    Path file = nursery.resolve(name);
    Files.createDirectories(file.getParent());
    Files.writeString(file, text);
  }

  /** Three lots of hazels that grow 2.5 mm a year and one of quinces, counted each November. */
  private void lists() throws IOException {
    for (int year = 2022; year <= 2026; year++) {
      StringBuilder rows = new StringBuilder(HEADINGS);
      int years = year - 2022;
      for (int lot = 1; lot <= 3; lot++) {
        rows.append(row("Hazel " + lot, "Hazel", 100 - 2 * years, year, 16.1 + lot + 2.5 * years));
      }
      if (year >= 2025) {
        rows.append(row("Quince A", "Quince", year == 2025 ? 96 : 55, year, 15.3 + (year - 2025)));
      }
      write(year == 2026 ? "stock.csv" : "earlier/stock " + year + "-11.csv", rows.toString());
    }
  }

  private static String row(String lot, String species, int plants, int year, double trunk) {
    return "%s,%s,container,%d,2020-03,%d-11,%s,15,7.5 litre,liners in pots,20%n"
        .formatted(lot, species, plants, year, Math.round(trunk * 10) / 10.0)
        .replace(System.lineSeparator(), "\n");
  }

  private Ran fit(String... more) {
    String[] words = {"fit", nursery.toString(), "--out", out.toString()};
    return Ran.of(
        java.util.stream.Stream.concat(
                java.util.stream.Stream.of(words), java.util.stream.Stream.of(more))
            .toArray(String[]::new));
  }

  @Test
  void lists_ofFiveYears_changeWhatTheyContradict_andRefuseWhatNoLineExplains() throws IOException {
    lists();
    String own = Files.readString(nursery.resolve("species.json"));

    Ran ran = fit();

    assertThat(ran.code()).as(ran.err()).isZero();
    assertThat(ran.out())
        .contains("Hazel, training pot")
        .contains("on your records")
        .contains("Spread between seasons: not to be told from 4 seasons; it takes 6.")
        .contains("317 saleable plants, as many as before (Hazel branched 236, not 221)")
        .contains(
            "Your own files are as they were. Try it: plan \"%s\" --species \"%s\""
                .formatted(nursery, out.resolve("proposal")));
    assertThat(out)
        .isDirectoryContaining("glob:**fit.xlsx")
        .isDirectoryContaining("glob:**report.html")
        .isDirectoryContaining("glob:**figures.json");
    assertThat(Files.readString(out.resolve("tables").resolve("fit-records.csv")))
        .contains(
            "Quince A: 41 of 96 plants gone between Oct 2025 and Oct 2026, 2 to be expected, and no"
                + " line says how; were they sold?");
    assertThat(nursery.resolve("species.json")).hasContent(own);
  }

  @Test
  void demonstration_hasACaseOfEachKind() throws IOException {
    Ran ran = Ran.of("fit", "plans/four-seasons-on.json", "--out", out.toString());

    assertThat(ran.code()).as(ran.err()).isZero();
    assertThat(ran.out())
        .startsWith(
            "Withyfold Nursery: what 29 counts of 8 lots, 20 tagged plants and 47 lines of sales"
                + " say, Nov 2022 to Oct 2026 (4 seasons). 30 intervals used, 1 refused (sheet"
                + " Records).\n")
        .contains("  Hornbeam, training pot   grows 0.63 (0.56 to 0.71) as fast as assumed")
        .contains("Agrees: growth of Crab apple, training pot")
        .contains("Too few counts to tell: ")
        .contains("Best: tag 20 of English yew, training pot")
        .contains(
            "Forecasts: 53 of 79 figures inside P10 to P90 (1 kept plan): as wide as they should"
                + " be.\n");
    assertThat(
            Files.readString(out.resolve("report.html"))
                .contains("Other sales than planned: 5 trunks not scored."))
        .isTrue();
    assertThat(Files.readString(out.resolve("tables").resolve("fit-records.csv")))
        .contains("Crabs of 2021: 36 of 70 plants gone between Oct 2024 and Oct 2025");
    assertThat(Files.readString(out.resolve("proposal").resolve("species.json")))
        .contains("// read in a book");
    assertPlanBringsWhatFitPromises("plans/four-seasons-on.json");
  }

  /** Plants for sale of each season and species, as fit foresees them and as a plan does. */
  private void assertPlanBringsWhatFitPromises(String plan) throws IOException {
    Path planned = folder.resolve("planned");
    Ran ran =
        Ran.of(
            "plan",
            plan,
            "--species",
            out.resolve("proposal").toString(),
            "--draws",
            "0",
            "--out",
            planned.toString());
    assertThat(ran.code()).as(ran.err()).isZero();
    Map<String, Double> promised = saleable(out, "fit-saleable", "new");
    Map<String, Double> brought = saleable(planned, "saleable", "in_all");
    assertThat(promised).isNotEmpty();
    promised.forEach(
        (season, plants) ->
            assertThat(brought.get(season)).as(season).isCloseTo(plants, within(1e-9)));
  }

  /** At full precision, lines of less than a plant among them. */
  private static Map<String, Double> saleable(Path report, String table, String column)
      throws IOException {
    JsonNode figures = new ObjectMapper().readTree(report.resolve("figures.json").toFile());
    JsonNode read = figures.get("tables").get(table);
    List<String> keys = new ArrayList<>();
    read.get("columns").forEach(each -> keys.add(each.get("key").asText()));
    Map<String, Double> sums = new TreeMap<>();
    for (JsonNode row : read.get("rows")) {
      String key = row.get(0).asText() + " " + row.get(keys.indexOf("species")).asText();
      sums.merge(key, row.get(keys.indexOf(column)).asDouble(), Double::sum);
    }
    return sums;
  }

  @Test
  void proposal_keepsComments_andIsReadBySpecies() throws IOException {
    lists();
    fit();

    Path proposal = out.resolve("proposal");
    String text = Files.readString(proposal.resolve("species.json"));

    assertThat(text)
        .startsWith("// Proposed by fit: ")
        .contains("// my own figures\n")
        .contains("// from callipers in 2019\n")
        .contains("\"later loss %\": 2, // a guess\n")
        .containsPattern(
            "\"g\": 2\\.\\d+ },  // was 3\\.6; 80 % 2\\.\\d+ to 3\\.\\d+; 12 counts of 3 lots, 4 seasons\n")
        .contains("\"g\": 2.5 }");
    Ran planned =
        Ran.of(
            "plan",
            nursery.toString(),
            "--species",
            proposal.toString(),
            "--out",
            folder.resolve("p").toString(),
            "--draws",
            "0");
    assertThat(planned.code()).as(planned.err()).isZero();
    Ran checked =
        Ran.of("check", nursery.toString(), "--species", folder.resolve("none").toString());
    assertThat(checked.code()).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(checked.err()).contains("neither species.csv nor species.json is in this folder");
  }

  @Test
  void proposal_copiedOver_isProposedNoMore() throws IOException {
    lists();
    fit();
    Path proposed = out.resolve("proposal").resolve("species.json");
    assertThat(Files.readString(proposed))
        .contains("\"prior\": { \"growth training pot\": 3.6, \"later loss %\": 2 },\n")
        .contains("\"prior sure %\": { \"growth training pot\": 80, \"later loss %\": 80 },\n")
        .containsPattern("\"growth sure %\": 9\\d(\\.\\d)?,\n")
        .containsPattern("\"later loss sure %\": 9\\d(\\.\\d)?,\n")
        .contains("\"learnt until\": \"2026-10\",\n");
    String values = Files.readString(out.resolve("tables").resolve("fit-values.csv"));
    Files.copy(proposed, nursery.resolve("species.json"), StandardCopyOption.REPLACE_EXISTING);

    Ran again = fit();

    assertThat(again.code()).as(again.err()).isZero();
    assertThat(again.out()).contains("Nothing is proposed");
    assertThat(out.resolve("proposal")).doesNotExist();
    assertThat(out.resolve("tables").resolve("fit-values.csv")).hasContent(values);
  }

  /** A table of species gets columns for how sure each is, and for what was assumed before. */
  @Test
  void proposal_ofATable_isProposedNoMoreWhereItIsCopiedOver() throws IOException {
    lists();
    Files.delete(nursery.resolve("species.json"));
    write(
        "species.csv",
        """
        species;ladder;usual condition;mm a year training pot;mm a year field;first-year loss %;later loss %;pot-bound months
        Hazel;patio trees;training pot;3,6;8,5;5;2;240
        Quince;patio trees;training pot;2,5;;5;2;240
        """);
    fit();
    Path proposed = out.resolve("proposal").resolve("species.csv");
    String values = Files.readString(out.resolve("tables").resolve("fit-values.csv"));

    assertThat(Files.readString(proposed))
        .contains(
            "later loss %;pot-bound months;prior growth training pot;prior sure % growth training"
                + " pot;growth sure % training pot;prior later loss %;prior sure % later loss"
                + " %;later loss sure %;learnt until\n")
        .containsPattern(
            "Hazel;patio trees;training pot;2,\\d+;8,5;5;2;240;3,6;80;9\\d(,\\d)?;2;80;9\\d(,\\d)?;2026-10\n");
    Files.copy(proposed, nursery.resolve("species.csv"), StandardCopyOption.REPLACE_EXISTING);
    Ran again = fit();
    assertThat(again.code()).as(again.err()).isZero();
    assertThat(again.out()).contains("Nothing is proposed");
    assertThat(out.resolve("tables").resolve("fit-values.csv")).hasContent(values);
  }

  /** Library rows get figures of their own, and three of them tell how fast the site is. */
  @Test
  void libraryRows_learnATypedFigure_andTheSiteSpeed() throws IOException {
    Files.delete(nursery.resolve("species.json"));
    write(
        "species.csv",
        """
        species,ladder,library,usual condition
        Field maple,patio trees,yes,training pot
        Hornbeam,patio trees,yes,training pot
        Scots pine,patio trees,yes,training pot
        Norway spruce,patio trees,yes,training pot
        """);
    List<String> species = List.of("Field maple", "Hornbeam", "Scots pine");
    for (int year = 2022; year <= 2026; year++) {
      StringBuilder rows = new StringBuilder(HEADINGS);
      for (String each : species) {
        for (int lot = 1; lot <= 3; lot++) {
          double trunk = 14.1 + lot + 4.2 * (year - 2022);
          rows.append(row(each + " " + lot, each, 100 - (year - 2022), year, trunk));
        }
      }
      write(year == 2026 ? "stock.csv" : "earlier/stock " + year + "-11.csv", rows.toString());
    }

    Ran ran = fit();

    assertThat(ran.code()).as(ran.err()).isZero();
    assertThat(ran.out()).contains("Your site: 3 library species grow ");
    assertThat(Files.readString(out.resolve("proposal").resolve("settings.txt")))
        .containsPattern("site speed: [\\d.]+\nsite speed from: 3\n");
    assertThat(Files.readString(out.resolve("proposal").resolve("species.csv")))
        .contains("mm a year training pot")
        .contains("prior sure % growth training pot")
        .contains("Norway spruce,patio trees,yes,training pot,,");
    Path planned = folder.resolve("p");
    Ran plan =
        Ran.of(
            "plan",
            nursery.toString(),
            "--species",
            out.resolve("proposal").toString(),
            "--out",
            planned.toString(),
            "--draws",
            "0");
    assertThat(plan.code()).as(plan.err()).isZero();
  }

  /** Figures that the records bear out are surer, which narrows later bands. */
  @Test
  void proposal_ofFiguresThatAgree_saysHowSureTheyAre() throws IOException {
    lists();
    String own = Files.readString(nursery.resolve("species.json"));
    write("species.json", own.replace("\"g\": 3.6", "\"g\": 2.9"));

    Ran ran = fit();

    assertThat(ran.out()).contains("(no figure is changed, but some are surer)");
    assertThat(Files.readString(out.resolve("proposal").resolve("species.json")))
        .contains("\"training pot\": { \"curve\": \"steady\", \"g\": 2.9 },\n")
        .contains("\"prior\": { \"growth training pot\": 2.9, \"later loss %\": 2 },\n")
        .containsPattern("\"growth sure %\": 9\\d(\\.\\d)?,\n");
  }

  @Test
  void fit_ofTheSameFiles_givesTheSameBytes() throws IOException {
    lists();
    fit();
    byte[] first = Files.readAllBytes(out.resolve("figures.json"));
    fit();

    assertThat(Files.readAllBytes(out.resolve("figures.json"))).isEqualTo(first);
  }

  @Test
  void nothing_toLearnFrom_isOneError() throws IOException {
    write("stock.csv", HEADINGS + row("Hazel 1", "Hazel", 100, 2026, 20.1));

    Ran ran = fit();

    assertThat(ran.code()).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(ran.err())
        .contains(
            ": no records to learn from; it takes two stock lists (put last year's as"
                + " earlier/stock ");
  }

  @Test
  void readings_withoutAPair_tellNothingYet() throws IOException {
    write("stock.csv", HEADINGS + row("Hazel 1", "Hazel", 100, 2026, 20.1));
    write("records.csv", "plant,lot,date,trunk mm\nHAZ 1,Hazel 1,2025-10-20,18.2\n");

    Ran ran = fit();

    assertThat(ran.code()).as(ran.err()).isZero();
    assertThat(ran.out())
        .contains("Nothing can be told yet.")
        .contains("Next October: mark 20 trees of each lot");
    assertThat(out.resolve("proposal")).doesNotExist();
  }

  /** Nothing else is written down, so the readings say which months are covered. */
  @Test
  void readingsAlone_areAllThatIsTold() throws IOException {
    write("stock.csv", HEADINGS + row("Hazel 1", "Hazel", 100, 2026, 20.1));
    write(
        "records.csv",
        """
        plant,species,condition,date,trunk mm
        HAZ 1,Hazel,training pot,2025-10-20,18.2
        HAZ 1,Hazel,training pot,2026-10-20,21.3
        HAZ 2,Hazel,training pot,2025-10-20,18.6
        """);

    assertThat(fit().out())
        .startsWith(
            "Withyfold Nursery: what 2 tagged plants say, Nov 2025 to Oct 2026 (1 season). 1 interval"
                + " used, 0 refused (sheet Records).\n");
    assertThat(Files.readString(out.resolve("report.html")))
        .contains("HAZ 2, Oct 2025: one reading only: it takes a second one of the same plant");
  }

  @Test
  void southernNursery_measuresInApril() throws IOException {
    lists();
    Path settings = nursery.resolve("nursery.json");
    Files.writeString(settings, Files.readString(settings).replace("\"north\"", "\"south\""));

    assertThat(fit().out()).contains(" each April.").doesNotContain("October");
    assertThat(Files.readString(out.resolve("tables").resolve("fit-values.csv")))
        .doesNotContain("October");
  }

  /** A list in another unit makes all counts of a kind worthless, which is not their number. */
  @Test
  void counts_thatContradictEachOther_areNotCalledTooFew() throws IOException {
    lists();
    Path list = nursery.resolve("earlier").resolve("stock 2024-11.csv");
    String wider = Files.readString(list).replace(",22.1,", ",30.1,").replace(",23.1,", ",31.1,");
    Files.writeString(list, wider.replace(",24.1,", ",32.1,"));

    assertThat(fit().out()).doesNotContain("grows");
    assertThat(Files.readString(out.resolve("tables").resolve("fit-values.csv")))
        .containsPattern(
            "Counts contradict each other: in all, they lie [\\d.]+ times as far off as measuring and"
                + " luck explain, so that only \\d+ % of this figure rests on your records\\. Look in"
                + " sheet Records \\(column z\\) for a list in another unit or a wrong count\\.");
  }

  @Test
  void earlierList_withoutAMonth_isAskedFor() throws IOException {
    lists();
    write(
        "earlier/old list.csv",
        "lot,species,form,quantity,arrived,trunk mm,route\nHazel 9,Hazel,container,9,2020-03,12,"
            + "liners in pots\n");

    Ran ran = fit();

    assertThat(ran.code()).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(ran.err())
        .contains(
            "error: earlier/old list.csv: neither its rows nor its name say of which month this list"
                + " is; put the month into the file's name, as in \"stock 2025-11.xlsx\", or fill the"
                + " column counted");
  }

  @Test
  void options_thatMakeNoSense_areWrongUsage() throws IOException {
    lists();

    assertThat(fit("--sure", "100").err())
        .contains("--sure is 1 to 99: 80 is a good guess, 50 a book's figure");
    assertThat(fit("--until", "autumn").err())
        .contains("--until is a month such as 2025-10, not 'autumn'");
  }

  @Test
  void sure_ofYourFigures_movesLess() throws IOException {
    lists();

    assertThat(fit("--sure", "98").out()).doesNotContain("grows");
    assertThat(fit("--sure", "50").out()).contains("grows");
  }

  @Test
  void until_aMonth_leavesOutWhatCameLater() throws IOException {
    lists();

    assertThat(fit("--until", "2024-12").out()).contains("Nov 2022 to Oct 2024 (2 seasons)");
  }
}
