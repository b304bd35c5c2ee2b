package growingon.command;

import static org.assertj.core.api.Assertions.assertThat;

import growingon.load.SmallNursery;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.stream.Stream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Two plans in different currencies: no amount of one is set against one of the other. */
class CompareCurrenciesTest {
  private static final LocalDate DAY = LocalDate.of(2027, 4, 30);

  @TempDir private Path folder;

  private Path nursery(String name) throws Exception {
    Path nursery = Files.createDirectories(folder.resolve(name));
    Path tidy = Path.of(CompareCurrenciesTest.class.getResource("/load/tidy").toURI());
    try (Stream<Path> files = Files.list(tidy)) {
      for (Path file : files.toList()) {
        Files.copy(file, nursery.resolve(file.getFileName()));
      }
    }
    return nursery;
  }

  private static void priceIn(Path nursery, String currency) throws IOException {
    SmallNursery.change(nursery.resolve("nursery.json"), "\"EUR\"", "\"" + currency + "\"");
  }

  @ParameterizedTest
  @ValueSource(strings = {"bank", "partner"})
  void edition_ofTwoCurrencies_comparesNoAmounts(String audience) throws Exception {
    Path first = nursery("first");
    Path second = nursery("second");
    priceIn(second, "USD");

    Ran ran =
        Ran.on(
            DAY,
            "compare",
            first.toString(),
            second.toString(),
            "--for",
            audience,
            "--draws",
            "5",
            "--out",
            folder.resolve("out").toString());

    assertThat(ran.code()).as(ran.err()).isZero();
    assertThat(ran.out())
        .contains(
            "Amounts are in EUR in the first plan and in USD in the second;"
                + " their differences say nothing.")
        .doesNotContain("worth more", "worth less");
    assertThat(Files.readString(folder.resolve("out/figures.json")))
        .contains("each plan's own currency");
  }
}
