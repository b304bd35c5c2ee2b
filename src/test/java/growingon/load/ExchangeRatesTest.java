package growingon.load;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Exchange rates in a sheet of settings: whoever guesses their name is told it. */
class ExchangeRatesTest {
  @TempDir private Path folder;

  @BeforeEach
  void layOut() throws IOException {
    SmallNursery.copyTidy(folder);
    Files.delete(folder.resolve("nursery.json"));
  }

  private void settings(String rate) throws IOException {
    Files.writeString(
        folder.resolve("settings.csv"),
        "name,value\ncurrency,EUR\nhourly rate,21\ndiscount rate % a year,3.5\n" + rate + "\n");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "exchange rate CHF",
        "Exchange rate chf",
        "exchange rate (CHF)",
        "exchange-rate CHF"
      })
  void rate_underItsName_isRead(String name) throws IOException {
    settings(name + ",1.05");

    assertThat(SmallNursery.problems(folder))
        .containsExactly("notice: settings.csv, row 5, column value: 1 CHF counts as 1.05 EUR");
  }

  @ParameterizedTest
  @CsvSource({
    "exchange rates, exchange rate EUR",
    "rate CHF, exchange rate CHF",
    "CHF rate, exchange rate CHF",
    "CHF/EUR exchange, exchange rate CHF",
    "exchange, exchange rate EUR",
    "rates CHF, exchange rate CHF",
    "hourly rat, hourly rate"
  })
  void rate_underAnotherName_isToldItsOwn(String typed, String name) throws IOException {
    settings(typed + ",1.05");

    assertThat(SmallNursery.problems(folder))
        .first()
        .isEqualTo(
            "error: settings.csv, row 5, column name: this setting is not known ("
                + typed
                + "); the nearest known one is "
                + name);
  }

  @Test
  void rate_thatIsEmpty_isNone() throws IOException {
    settings("exchange rate CHF,");

    assertThat(SmallNursery.problems(folder))
        .containsExactly(
            "error: offers.csv, row 4, column currency: there is no exchange rate for this"
                + " currency (CHF); add a setting exchange rate CHF, or CHF under exchange rates in"
                + " nursery.json");
  }
}
