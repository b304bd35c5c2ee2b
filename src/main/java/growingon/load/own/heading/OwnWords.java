package growingon.load.own.heading;

import growingon.load.own.plant.PlantNames;
import growingon.load.own.text.Keys;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

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

  private static final Set<String> NODS = Set.of("size", "quantity", "arrived");
  private static final Set<String> NO =
      Set.of("no", "n", "nein", "non", "nee", "not read", "wrong", "false");

  /** Kind of the headings of a list. */
  static final String HEADING = "heading";

  /** Nothing said. */
  public static final OwnWords NONE = new OwnWords(List.of());

  private static final String SIZE = "quantity of ";

  private final Map<String, Map<String, String>> words = new HashMap<>();
  private final List<Word> unknown = new ArrayList<>();
  private final List<Word> unclear = new ArrayList<>();
  private final ListKind list;

  /**
   * Words said.
   *
   * @param said with {@code ours} filled
   */
  public OwnWords(List<Word> said) {
    this.list = ListKind.STOCK;
    for (Word word : said) {
      if (saysNoMore(word)) {
        continue;
      }
      if (isHeading(word) && !OwnColumns.has(word.ours())) {
        unknown.add(word);
        continue;
      }
      if (NODS.contains(word.kind()) && !NO.contains(Keys.of(word.ours()))) {
        unclear.add(word);
      }
      words
          .computeIfAbsent(word.kind(), each -> new LinkedHashMap<>())
          .put(Keys.of(word.yours()), word.ours());
    }
  }

  private static boolean isHeading(Word word) {
    return Arrays.stream(ListKind.values()).anyMatch(kind -> word.kind().equals(kind.heading()));
  }

  /** Whether the word would be read so anyway. */
  private static boolean saysNoMore(Word word) {
    return switch (word.kind()) {
      case HEADING -> saysNoMore(word, ListKind.STOCK);
      case "offers heading" -> saysNoMore(word, ListKind.OFFERS);
      case "species" ->
          PlantNames.shipped()
              .find(word.yours(), "")
              .taxon()
              .filter(word.ours()::equals)
              .isPresent();
      default -> word.yours().equals(word.ours());
    };
  }

  private OwnWords(OwnWords same, ListKind list) {
    this.list = list;
    words.putAll(same.words);
    unknown.addAll(same.unknown);
    unclear.addAll(same.unclear);
  }

  /** A list of the same kind of which nothing was said. */
  OwnWords unsaid() {
    return NONE.in(list);
  }

  /** The same words in a list of a kind. */
  public OwnWords in(ListKind kind) {
    return new OwnWords(this, kind);
  }

  /** What the rows of the list are in which these words stand. */
  public ListKind list() {
    return list;
  }

  /** What headings stand for in the list, where nothing else is said. */
  HeadingWords headings() {
    return HeadingWords.of(list);
  }

  private static boolean saysNoMore(Word word, ListKind kind) {
    return word.ours().startsWith(SIZE)
        || PriceBreaks.isOne(word.ours())
        || HeadingWords.of(kind)
            .find(word.yours())
            .filter(found -> found.meaning().ours().equals(word.ours()))
            .isPresent();
  }

  /** What likely readings of one kind have in common: 8-10 and 10-12 are both girths. */
  public static String alike(String reading) {
    return reading.replaceAll("[0-9.,]+", "…");
  }

  /**
   * Whether a likely reading was said to be wrong.
   *
   * @param column that it is of
   * @param reading what is taken for what
   */
  public boolean refuses(String column, String reading) {
    return !reading.isEmpty()
        && find(column, alike(reading)).filter(said -> NO.contains(Keys.of(said))).isPresent();
  }

  /** Answers to likely readings that are neither yes nor no. */
  public List<Word> unclear() {
    return List.copyOf(unclear);
  }

  /** Headings said to be what no column of a list can be. */
  public List<Word> unknown() {
    return List.copyOf(unknown);
  }

  /** What a word of a kind was said to mean. */
  public Optional<String> find(String kind, String yours) {
    String ofList = kind.equals(HEADING) ? list.heading() : kind;
    return words.containsKey(ofList)
        ? Optional.ofNullable(words.get(ofList).get(Keys.of(yours)))
        : Optional.empty();
  }

  /** Whether a text is a heading of prices, or may be one. */
  public boolean saysPrices(String text) {
    return headings().find(text).filter(found -> HeadingWords.isPrice(found.meaning())).isPresent();
  }
}
