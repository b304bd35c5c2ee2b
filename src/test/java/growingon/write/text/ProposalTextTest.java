package growingon.write.text;

import static org.assertj.core.api.Assertions.assertThat;

import growingon.report.fit.SpeciesEdit;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** A proposal as edits of the grower's own species.json. */
class ProposalTextTest {
  private static SpeciesEdit edit(String species, String key, double number, String comment) {
    return new SpeciesEdit(
        species,
        "",
        List.of("pot"),
        key,
        key,
        true,
        OptionalDouble.empty(),
        number,
        2,
        OptionalDouble.empty(),
        OptionalDouble.empty(),
        comment);
  }

  private static List<String> lines(String text, SpeciesEdit... edits) {
    return ProposalText.json(text, List.of(edits), "2026-10", "head").lines().toList();
  }

  @Test
  void numberWithoutAComment_getsOne() {
    String text = "{ \"species\": { \"Elm\": {\n\"later loss %\": 2,\n} } }\n";
    assertThat(lines(text, edit("Elm", "later loss %", 3, "was 2")))
        .contains("\"later loss %\": 3,  // was 2");
  }

  @Test
  void numberWithTheGrowersComment_goesOnWithIt_soThatALineHasOne() {
    String text =
        "{ \"species\": { \"Elm\": { \"note\": \"see http://elm\",\n"
            + "\"later loss %\": 2, // a guess\n} } }\n";
    assertThat(lines(text, edit("Elm", "later loss %", 3, "was 2")))
        .contains("\"later loss %\": 3, // a guess; was 2");
  }

  @Test
  void slashesThatAreQuoted_areNoComment() {
    String text =
        "{ \"species\": { \"Elm\": {\n\"note\": \"http://elm\", \"later loss %\": 2,\n} } }\n";
    assertThat(lines(text, edit("Elm", "later loss %", 3, "was 2")))
        .contains("\"note\": \"http://elm\", \"later loss %\": 3,  // was 2");
  }

  @Test
  void twoNumbersOfALine_haveOneComment() {
    String text =
        "{ \"species\": { \"Elm\": {\n\"first-year loss %\": 8, \"later loss %\": 2,\n} } }\n";
    assertThat(
            lines(
                text,
                edit("Elm", "first-year loss %", 9, "was 8"),
                edit("Elm", "later loss %", 3, "was 2")))
        .contains("\"first-year loss %\": 9, \"later loss %\": 3,  // was 8; was 2");
  }
}
