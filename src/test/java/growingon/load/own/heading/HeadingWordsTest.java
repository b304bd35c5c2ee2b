package growingon.load.own.heading;

import static org.assertj.core.api.Assertions.assertThat;

import growingon.load.own.text.Meaning;
import growingon.load.own.text.Resources;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Headings as growers write them, against a list that was made by hand. */
class HeadingWordsTest {
  private static final HeadingWords WORDS = HeadingWords.of(ListKind.STOCK);

  private static List<CSVRecord> checks() throws IOException {
    CSVFormat format = CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get();
    try (var reader =
        Files.newBufferedReader(
            Path.of("src/test/resources/own/headings-check.csv"), StandardCharsets.UTF_8)) {
      return format.parse(reader).getRecords();
    }
  }

  private static String shown(String heading) {
    return WORDS
        .find(heading)
        .map(found -> found.meaning().ours() + "|" + unit(found.meaning()))
        .orElse("not understood");
  }

  private static String unit(Meaning meaning) {
    return meaning.unit();
  }

  @Test
  void checkedHeadings_comeOutAsTheyMust() throws IOException {
    List<String> wrong = new ArrayList<>();
    for (CSVRecord row : checks()) {
      String expected = row.get("ours") + "|" + row.get("unit");
      String found = shown(row.get("heading"));
      if (!found.equals(expected)) {
        wrong.add(row.get("heading") + ": " + found + " instead of " + expected);
      }
    }
    assertThat(wrong).isEmpty();
  }

  @Test
  void shippedHeadings_inCapitalsWithMarksAndUnits_comeOutTheSame() {
    List<String> wrong = new ArrayList<>();
    for (CSVRecord row : Resources.rows(HeadingWords.class, "headings.csv")) {
      String heading = row.get("heading");
      String ours = row.get("ours");
      for (String typed :
          List.of(
              heading,
              heading.toUpperCase(Locale.ROOT),
              heading.toLowerCase(Locale.ROOT),
              heading + ":",
              heading + " *",
              heading + "†",
              "  " + heading + "\u200b ")) {
        String found =
            WORDS.find(typed).map(each -> each.meaning().ours()).orElse("not understood");
        if (!found.equals(ours)) {
          wrong.add(typed + ": " + found + " instead of " + ours);
        }
      }
    }
    assertThat(wrong).isEmpty();
  }

  @Test
  void heading_twoLettersOff_isOfferedNotTaken() {
    assertThat(WORDS.find("Quantitty")).isEmpty();
    assertThat(WORDS.nearest("Quantitty").orElseThrow().heading()).isEqualTo("Quantity");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "Qty on hand",
        "Quantity on hand",
        "On hand qty",
        "No. in stock",
        "Number left",
        "Qty remaining",
        "Trees on hand",
        "Current qty",
        "Physical count",
        "Anz. auf Lager",
        "Qté en stock",
        "Aantal op voorraad",
        "Cantidad disponible"
      })
  void numberOnHand_inAnyWords_isTheQuantity(String heading) {
    assertThat(shown(heading)).isEqualTo("quantity|count");
  }

  @ParameterizedTest
  @CsvSource({
    "Qty sold,sold|count",
    "Qty value,not understood",
    "Plants per pot,not understood",
    "No sold,sold|count"
  })
  void numberOfSomethingElse_isNotTheQuantity(String heading, String expected) {
    assertThat(shown(heading)).isEqualTo(expected);
  }
}
