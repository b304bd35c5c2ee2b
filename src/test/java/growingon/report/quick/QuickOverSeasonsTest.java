package growingon.report.quick;

import static org.assertj.core.api.Assertions.assertThat;

import growingon.chance.Gamble;
import growingon.load.LoadOptions;
import growingon.load.Loader;
import growingon.money.bought.BoughtLot;
import growingon.nursery.Inputs;
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

  private static String answer(Inputs inputs, Context context) {
    BoughtLot bought = context.bought().get(0);
    return new QuickWords(
            inputs.quick().orElseThrow(),
            context.accounts(),
            context.whole().lot(bought.lot().name()),
            bought,
            context.chances())
        .sentences().stream()
            .filter(line -> line.startsWith("Does it pay? "))
            .map(line -> line.substring("Does it pay? ".length()))
            .findFirst()
            .orElseThrow();
  }

  /** What a plan of the same lot says of it. */
  private static String planned(Context context) {
    Gamble gamble = context.chances().orElseThrow().gambles().get(0);
    return Phrases.sentence(new VerdictWords(context, gamble).told());
  }

  /** At such a price a gamble, and much too dear. */
  @ParameterizedTest
  @CsvSource({"20, 120", "70, 120"})
  void verdict_neverContradictsItself_norIsHopelessBeforeNineTenthsAreSold(
      int price, int sellingPrice) throws IOException {
    Map<String, String> sold = new HashMap<>();
    Map<String, String> paysFrom = new HashMap<>();
    for (int seasons = 3; seasons <= 12; seasons++) {
      type(price, sellingPrice, seasons);
      Inputs inputs =
          Loader.load(folder, new LoadOptions(LocalDate.of(2026, 11, 20))).value().orElseThrow();
      Context context = MapleNursery.drawn(inputs.scenario(), DRAWS);
      String answer = answer(inputs, context);
      assertThat(answer).as("%d seasons", seasons).startsWith(planned(context) + ": ");
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
