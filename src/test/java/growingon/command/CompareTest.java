package growingon.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Two plans side by side. */
class CompareTest {
  /** Before, after and difference are each rounded to the cent. */
  private static final Offset<Double> EACH_TO_THE_CENT = Offset.offset(0.0151);

  @TempDir private Path temp;
  private Path without;
  private Path with;

  @BeforeEach
  void plans() throws IOException {
    Path nursery = temp.resolve("nursery");
    assertThat(Ran.of("start", nursery.toString()).code()).isZero();
    without = plan("nothing bought", "{}");
    with = plan("larches bought", "{\"larches from a field\": 60}");
  }

  private Path plan(String name, String take) throws IOException {
    return Files.writeString(
        temp.resolve(name + ".json"),
        "{\"name\": \"%s\", \"nursery\": \"nursery\", \"seasons\": 5, \"take\": %s}"
            .formatted(name, take));
  }

  private Ran compare(Path one, Path other) {
    return Ran.of("compare", one.toString(), other.toString(), "--out", out().toString());
  }

  private Path out() {
    return temp.resolve("out");
  }

  @Test
  void plan_againstItself_differsInNothing() {
    Ran ran = compare(with, with);

    assertThat(ran.code()).isZero();
    assertThat(ran.out().lines().toList())
        .first()
        .isEqualTo(
            "larches bought (1) against larches bought (2): nothing differs, neither in the files"
                + " nor in any figure.");
    assertThat(ran.out().lines()).hasSize(2);
  }

  @Test
  void plans_thatTakeOtherOffers_nameTheReasonAndWhatItMoves() throws IOException {
    Ran ran = compare(without, with);

    assertThat(ran.err()).isEmpty();
    assertThat(ran.out())
        .doesNotContain("in their files")
        .doesNotContain(" 0.0 ")
        .contains("Reason: plan: take, larches from a field from none to 60 plants.")
        .contains("Purchases: plants bought")
        .contains("Lots: larches from a field: ");
    assertThat(out().resolve("plan.xlsx")).exists();
  }

  @Test
  void verdict_comesFirst_andIsTheDifferenceOfTheTwoValues() throws IOException {
    List<String> lines = compare(without, with).out().lines().toList();

    String row =
        table("compare-in-all").filter(each -> each.contains("worth in today")).findFirst().get();
    double gain = number(row.substring(row.lastIndexOf(',') + 1));
    assertThat(lines.get(0))
        .startsWith(
            String.format(
                Locale.ENGLISH,
                "Larches bought is worth EUR %,d %s than nothing bought in today's money, on the"
                    + " plan's line",
                Math.round(Math.abs(gain)),
                gain >= 0 ? "more" : "less"));
    assertThat(lines.get(1)).startsWith("Its lowest cash is EUR ");
    assertThat(lines.get(2)).startsWith("It lacks ");
  }

  @Test
  void verdict_ofOneLotMore_holdsInAsManyDrawsAsTheLotPays() throws IOException {
    Ran compared =
        Ran.of(
            "compare",
            without.toString(),
            with.toString(),
            "--draws",
            "100",
            "--out",
            out().toString());
    Ran planned =
        Ran.of(
            "plan", with.toString(), "--draws", "100", "--out", temp.resolve("planned").toString());

    Matcher more = Pattern.compile(", and more in (\\w+) of 100 draws").matcher(compared.out());
    Matcher pays = Pattern.compile(" pays in (\\w+) of 100 draws").matcher(planned.out());
    assertThat(more.find()).as(compared.out()).isTrue();
    assertThat(pays.find()).as(planned.out()).isTrue();
    assertThat(more.group(1)).isEqualTo(pays.group(1));
  }

  @Test
  void differences_areLargestFirst_andAreThoseOfTheTwoPlans() throws IOException {
    compare(without, with);

    List<String> rows = table("compare-cash").toList();
    double last = Double.POSITIVE_INFINITY;
    assertThat(rows).isNotEmpty();
    for (String row : rows) {
      String[] cells = row.split(",", -1);
      int end = cells.length - 1;
      double before = number(cells[end - 2]);
      double after = number(cells[end - 1]);
      double difference = number(cells[end]);

      assertThat(difference).isCloseTo(after - before, EACH_TO_THE_CENT);
      assertThat(Math.abs(difference)).isLessThanOrEqualTo(last).isPositive();
      last = Math.abs(difference);
    }
  }

  @Test
  void plantsSold_ofALotThatIsBought_areWholeAndOfItsSpecies() throws IOException {
    compare(without, with);

    assertThat(table("compare-plants-sold"))
        .isNotEmpty()
        .allSatisfy(
            row -> assertThat(row).matches("\"?Japanese larch, [^,]*,[^,]*,\\d*,\\d+,-?\\d+"));
  }

  private Stream<String> table(String name) throws IOException {
    Path file = out().resolve("tables").resolve(name + ".csv");
    return Files.readAllLines(file, StandardCharsets.UTF_8).stream().skip(1);
  }

  private static double number(String cell) {
    return cell.isEmpty() ? 0 : Double.parseDouble(cell);
  }

  @Test
  void assumption_thatDiffers_isNamedWithBothValues() throws IOException {
    Files.writeString(temp.resolve("longer.json"), Files.readString(with).replace("5", "6"));
    Path longer = temp.resolve("longer.json");

    assertThat(compare(with, longer).out()).contains("Reason: plan: seasons from 5 to 6.");
  }

  @Test
  void planThatCannotBeRead_isRefusedWithItsProblems() throws IOException {
    Path broken = Files.writeString(temp.resolve("broken.json"), "{\"seasons\": \"many\"}");

    Ran ran = compare(with, broken);

    assertThat(ran.code()).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(ran.err()).contains("broken.json", "Nothing was written");
    assertThat(out()).doesNotExist();
  }
}
