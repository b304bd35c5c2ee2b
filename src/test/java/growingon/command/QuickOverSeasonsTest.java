package growingon.command;

import static org.assertj.core.api.Assertions.assertThat;

import growingon.chance.Gamble;
import growingon.load.LoadOptions;
import growingon.load.Loader;
import growingon.nursery.Scenario;
import growingon.report.MapleNursery;
import growingon.report.figures.Context;
import growingon.report.text.Phrases;
import growingon.report.words.VerdictWords;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** One lot asked about quickly and planned, looking three to twelve seasons ahead. */
class QuickOverSeasonsTest {
  private static final int DRAWS = 40;

  private static final Pattern ANSWER = Pattern.compile("Does it pay\\? (.*?) Most to pay: ");
  private static final Pattern PAYS_FROM = Pattern.compile("pays from ([\\d/]+)");
  private static final Pattern WHEN_SOLD = Pattern.compile("([\\w ]+) when sold, by ([\\d/]+):");

  @TempDir private Path folder;

  private void type(int price, int sellingPrice, int seasons) throws IOException {
    String cells =
        """
        line;fill in
        species;Scots pine
        how many;50
        price each;%d
        carriage for all;100
        arrival month;Mar 2027
        trunk mm or girth cm;30
        firsts and seconds in ten;6 and 2
        pot litres;15
        sold at trunk mm;45
        selling price each;%d
        seasons looked ahead;%d
        """;
    Files.writeString(folder.resolve("quick.csv"), cells.formatted(price, sellingPrice, seasons));
  }

  private String answer(Path file) {
    Ran ran =
        Ran.of(
            "plan",
            file.toString(),
            "--draws",
            Integer.toString(DRAWS),
            "--out",
            folder.resolve("report").toString());
    assertThat(ran.code()).as(ran.err()).isZero();
    // The terminal breaks its lines.
    Matcher told = ANSWER.matcher(ran.out().replaceAll("\\s+", " "));
    assertThat(told.find()).as(ran.out()).isTrue();
    return told.group(1);
  }

  /** What a plan of the same lot says of it. */
  private String planned() {
    Scenario scenario =
        Loader.load(folder, new LoadOptions(LocalDate.of(2026, 11, 20)))
            .value()
            .orElseThrow()
            .scenario();
    Context context = MapleNursery.drawn(scenario, DRAWS);
    Gamble gamble = context.chances().orElseThrow().gambles().get(0);
    return Phrases.sentence(new VerdictWords(context, gamble).told());
  }

  /** At such a price a gamble, and much too dear. */
  @ParameterizedTest
  @CsvSource({"20, 120, 1", "70, 120, 3"})
  void verdict_neverContradictsItself_norIsHopelessBeforeNineTenthsAreSold(
      int price, int sellingPrice, int step) throws IOException {
    Map<String, String> sold = new HashMap<>();
    Map<String, String> paysFrom = new HashMap<>();
    for (int seasons = 3; seasons <= 12; seasons += step) {
      type(price, sellingPrice, seasons);
      String answer = answer(folder);
      assertThat(answer).as("%d seasons", seasons).startsWith(planned() + ": ");
      Matcher later = WHEN_SOLD.matcher(answer);
      if (later.find()) {
        sold.putIfAbsent(later.group(2), later.group(1).strip());
        assertThat(later.group(1).strip()).isEqualTo(sold.get(later.group(2)));
      } else if (answer.contains("not back by")) {
        assertThat(answer).doesNotContain("opeless");
      }
      Matcher from = PAYS_FROM.matcher(answer);
      if (from.find()) {
        paysFrom.putIfAbsent("from", from.group(1));
        assertThat(from.group(1)).isEqualTo(paysFrom.get("from"));
      }
    }
  }
}
