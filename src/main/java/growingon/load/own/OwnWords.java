package growingon.load.own;

import java.util.ArrayList;
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

  private static final String SIZE = "quantity of ";

  private final Map<String, Map<String, String>> words = new HashMap<>();
  private final List<Word> unknown = new ArrayList<>();

  /**
   * Words said.
   *
   * @param said with {@code ours} filled
   */
  public OwnWords(List<Word> said) {
    for (Word word : said) {
      if (saysNoMore(word)) {
        continue;
      }
      if (word.kind().equals("heading") && !OwnColumns.has(word.ours())) {
        unknown.add(word);
        continue;
      }
      words
          .computeIfAbsent(word.kind(), each -> new LinkedHashMap<>())
          .put(Keys.of(word.yours()), word.ours());
    }
  }

  /** Whether the word would be read so anyway. */
  private static boolean saysNoMore(Word word) {
    return switch (word.kind()) {
      case "heading" ->
          word.ours().startsWith(SIZE)
              || HeadingWords.shipped()
                  .find(word.yours())
                  .filter(found -> found.meaning().ours().equals(word.ours()))
                  .isPresent();
      case "species" ->
          PlantNames.shipped()
              .find(word.yours(), "")
              .taxon()
              .filter(word.ours()::equals)
              .isPresent();
      default -> word.yours().equals(word.ours());
    };
  }

  /** Headings said to be what no column of a list can be. */
  public List<Word> unknown() {
    return List.copyOf(unknown);
  }

  /** What a word of a kind was said to mean. */
  public Optional<String> find(String kind, String yours) {
    return Optional.ofNullable(words.getOrDefault(kind, Map.of()).get(Keys.of(yours)));
  }
}
