package growingon.nursery.library;

import java.text.Normalizer;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The name of a plant as it is compared: without regard to case, accents, punctuation, the cross of
 * a hybrid, and what introduces a subspecies or variety.
 *
 * @param words in lower case
 * @param cultivar what stood in quotes
 */
record PlantName(List<String> words, Optional<String> cultivar) {
  private static final Pattern CULTIVAR =
      Pattern.compile("(?<!\\S)['‘’\"“”`](\\S(?:.*?\\S)??)['‘’\"“”`](?![\\p{L}\\p{N}])");
  private static final Pattern APOSTROPHES = Pattern.compile("['‘’`]");
  private static final Pattern MARKS = Pattern.compile("\\p{M}+");
  private static final Pattern BETWEEN = Pattern.compile("[^\\p{L}\\p{N}]+");
  private static final Set<String> NO_NAMES = Set.of("x", "subsp", "ssp", "var");

  PlantName {
    words = List.copyOf(words);
  }

  static PlantName of(String typed) {
    Matcher quoted = CULTIVAR.matcher(typed);
    Optional<String> cultivar = quoted.find() ? Optional.of(quoted.group(1)) : Optional.empty();
    return new PlantName(words(quoted.replaceAll(" ")), cultivar);
  }

  private static List<String> words(String text) {
    String plain = MARKS.matcher(Normalizer.normalize(text, Normalizer.Form.NFKD)).replaceAll("");
    String lower = APOSTROPHES.matcher(plain).replaceAll("").toLowerCase(Locale.ROOT);
    return Arrays.stream(BETWEEN.split(lower))
        .filter(word -> !word.isEmpty() && !NO_NAMES.contains(word))
        .toList();
  }

  /** Words run together, so that crab-apple, crab apple and crabapple are one. */
  String key() {
    return String.join("", words);
  }

  /** The first word: the genus, where the name is a botanical one. */
  String first() {
    return words.isEmpty() ? "" : words.get(0);
  }

  /** Whether the name ends with the words of another, as Japanese larch with larch. */
  boolean endsWith(PlantName other) {
    int before = words.size() - other.words.size();
    return before >= 0
        && !other.words.isEmpty()
        && words.subList(before, words.size()).equals(other.words);
  }
}
