package growingon.load.own;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What a grower has said that words of a list mean; beats all else. */
public final class OwnWords {
  /**
   * A row of the sheet own words.
   *
   * @param kind list, sheet, heading, species, place, pot or lot
   * @param yours the word as the list has it
   * @param ours what it means
   */
  public record Word(String kind, String yours, String ours) {}

  /** Nothing said. */
  public static final OwnWords NONE = new OwnWords(List.of());

  private final Map<String, Map<String, String>> words = new HashMap<>();

  /**
   * Words said.
   *
   * @param said with {@code ours} filled
   */
  public OwnWords(List<Word> said) {
    for (Word word : said) {
      words
          .computeIfAbsent(word.kind(), each -> new LinkedHashMap<>())
          .put(Keys.of(word.yours()), word.ours());
    }
  }

  /** What a word of a kind was said to mean. */
  public Optional<String> find(String kind, String yours) {
    return Optional.ofNullable(words.getOrDefault(kind, Map.of()).get(Keys.of(yours)));
  }
}
