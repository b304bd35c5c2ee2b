package growingon.load.own.text;

import growingon.nursery.market.Quality;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Firsts, seconds and thirds as growers write them in six languages. Common practice, no source.
 */
public final class QualityText {
  private static final Map<Quality, Set<String>> WORDS =
      Map.of(
          Quality.FIRST,
          Set.of(
              "1st",
              "1sts",
              "first",
              "firsts",
              "1a",
              "1a scelta",
              "prima",
              "prima scelta",
              "a",
              "a grade",
              "grade a",
              "a ware",
              "1 wahl",
              "i wahl",
              "1er",
              "1er choix",
              "1e keus",
              "primera",
              "a kwaliteit",
              "i"),
          Quality.SECOND,
          Set.of(
              "2nd",
              "2nds",
              "second",
              "seconds",
              "2a",
              "2a scelta",
              "seconda",
              "seconda scelta",
              "b",
              "b grade",
              "grade b",
              "b ware",
              "2 wahl",
              "ii wahl",
              "2e",
              "2e choix",
              "2eme choix",
              "2e keus",
              "segunda",
              "b kwaliteit",
              "ii"),
          Quality.THIRD,
          Set.of(
              "3rd",
              "3rds",
              "third",
              "thirds",
              "3a",
              "3a scelta",
              "terza",
              "terza scelta",
              "c",
              "c grade",
              "grade c",
              "3 wahl",
              "iii wahl",
              "3e choix",
              "3e keus",
              "tercera",
              "iii"));

  private QualityText() {}

  /** The quality that a cell names; empty if it names none. */
  public static Optional<Quality> of(String text) {
    String key = Keys.of(text);
    return WORDS.entrySet().stream()
        .filter(each -> each.getValue().contains(key))
        .map(Map.Entry::getKey)
        .findFirst();
  }
}
