package growingon.load.own.text;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Numbers of plants that are told in words: ten, 24 - 3 dead, set 40 took 27, 6 or 7, 8 big 12
 * small. What is worked out wants a nod.
 */
final class CountWords {
  private static final String N = "([0-9]{1,6})";

  /** Words that mean something else in English. */
  private static final Set<String> NO_NUMBERS = Set.of("due", "once");

  private static final Map<String, Integer> WORDS = words();

  /** Less, and what the second number is of. */
  private static final Pattern LESS =
      Pattern.compile(
          "(?i)"
              + N
              + "\\s*(?:[-–−]|less|minus|weniger|abzgl\\.?|moins|min|meno|menos)\\s*"
              + N
              + "\\s*(?:dead|died|sold|gone|lost|stolen|tot|verkauft|weg|morts?|vendus?|perdus?|dood|verkocht|"
              + "mort[io]|vendut[io]|muertos?|vendidos?)\\b.*");

  /** What was begun, and what came of it. */
  private static final Pattern CAME_OF_IT =
      Pattern.compile(
          "(?i)(?:\\p{L}+\\s+)?"
              + N
              + "\\s*(?:\\p{L}+)?\\s*[,;/]?\\s*(?:(?:took|take|left|alive|now|lebend|reste(?:nt)?|over|vivi|vivos|quedan)\\s+"
              + N
              + "|"
              + N
              + "\\s+(?:took|taken|alive|living|left|remaining|angewachsen|lebend|übrig|repris|vivants?|restants?|"
              + "aangeslagen|levend|over|attecchiti|vivi|rimasti|prendidos|vivos|quedan))");

  private static final Pattern EITHER =
      Pattern.compile(
          "(?i)" + N + "\\s*(?:/|\\bor\\b|\\boder\\b|\\bou\\b|\\bof\\b|\\bo\\b)\\s*" + N);

  private static final String SIZES =
      "(?:big|large|small|little|tall|short|gro(?:ss|ß)e?|kleine?|grand(?:e|i|es|s)?|petit(?:e|s|es)?|grote|"
          + "piccol[aie]|piccolo|peque(?:ñ|n)[oa]s?)";
  private static final Pattern BIG_AND_SMALL =
      Pattern.compile("(?i)" + N + "\\s*" + SIZES + "\\s*[,+&]?\\s*" + N + "\\s*" + SIZES);

  /** What stands elsewhere is there too. */
  private static final Pattern SUM_AND_WHERE =
      Pattern.compile("(?i)" + N + "\\s*\\+\\s*" + N + "\\s+(\\p{L}[\\p{L} ]+)");

  private static final Pattern HALF =
      Pattern.compile(
          "(?i)(?:half|1/2|½)\\s*(?:of\\s*)?(?:a\\s*)?(?:tray|bundle|box|bed)?\\s*(?:of\\s*)?" + N);

  /** 10, all promised; 5 - £65 each: what stands behind the number is said of it. */
  private static final Pattern REMARKED =
      Pattern.compile(
          N + "(?:\\s*[,;:]\\s*|\\.\\s+|\\s+[-–—]\\s+|\\s+(?=[£€$]))(\\D.*|.*\\p{L}{3}.*)");

  private CountWords() {}

  private static Map<String, Integer> words() {
    List<String> languages =
        List.of(
            "one two three four five six seven eight nine ten eleven twelve",
            "eins zwei drei vier fünf sechs sieben acht neun zehn elf zwölf",
            "un deux trois quatre cinq six sept huit neuf dix onze douze",
            "een twee drie vier vijf zes zeven acht negen tien elf twaalf",
            "uno due tre quattro cinque sei sette otto nove dieci undici dodici",
            "uno dos tres cuatro cinco seis siete ocho nueve diez once doce");
    Map<String, Integer> words = new HashMap<>();
    for (String language : languages) {
      String[] numbers = language.split(" ");
      for (int i = 0; i < numbers.length; i++) {
        words.put(Keys.of(numbers[i]), i + 1);
      }
    }
    words.keySet().removeAll(NO_NUMBERS);
    words.putAll(
        Map.of(
            "a dozen",
            12,
            "two dozen",
            24,
            "three dozen",
            36,
            "half a dozen",
            6,
            "a score",
            20,
            "ein dutzend",
            12,
            "une douzaine",
            12,
            "een dozijn",
            12,
            "una dozzina",
            12,
            "una docena",
            12));
    return words;
  }

  static Optional<Read<Integer>> of(String text) {
    Integer word = WORDS.get(Keys.of(text));
    if (word != null) {
      return Optional.of(Read.of(word));
    }
    return less(text)
        .or(() -> cameOfIt(text))
        .or(() -> sum(text))
        .or(() -> lower(text))
        .or(() -> half(text))
        .or(() -> remarked(text));
  }

  private static Optional<Read<Integer>> remarked(String text) {
    Matcher remarked = REMARKED.matcher(text);
    return remarked.matches()
        ? Optional.of(
            Read.likely(n(remarked, 1), text + " is read as " + n(remarked, 1))
                .noting(remarked.group(2).strip()))
        : Optional.empty();
  }

  /** The two numbers of which one holds, as they stand; none where there is no doubt of that. */
  static List<String> either(String text) {
    Matcher either = EITHER.matcher(text);
    return either.matches() && n(either, 1) < n(either, 2)
        ? List.of(either.group(1), either.group(2))
        : List.of();
  }

  private static Optional<Read<Integer>> less(String text) {
    Matcher less = LESS.matcher(text);
    return less.matches() && n(less, 1) > n(less, 2)
        ? Optional.of(likely(n(less, 1) - n(less, 2), text))
        : Optional.empty();
  }

  private static Optional<Read<Integer>> cameOfIt(String text) {
    Matcher came = CAME_OF_IT.matcher(text);
    if (!came.matches()) {
      return Optional.empty();
    }
    int left = n(came, came.group(2) == null ? 3 : 2);
    return left <= n(came, 1) ? Optional.of(likely(left, text)) : Optional.empty();
  }

  private static Optional<Read<Integer>> sum(String text) {
    Matcher sizes = BIG_AND_SMALL.matcher(text);
    if (sizes.matches()) {
      return Optional.of(likely(n(sizes, 1) + n(sizes, 2), text));
    }
    Matcher where = SUM_AND_WHERE.matcher(text);
    return where.matches()
        ? Optional.of(likely(n(where, 1) + n(where, 2), text))
        : Optional.empty();
  }

  /** The lower holds. */
  private static Optional<Read<Integer>> lower(String text) {
    return either(text).stream().findFirst().map(Integer::parseInt).map(n -> likely(n, text));
  }

  private static Optional<Read<Integer>> half(String text) {
    Matcher half = HALF.matcher(text);
    return half.matches() && n(half, 1) % 2 == 0
        ? Optional.of(likely(n(half, 1) / 2, text))
        : Optional.empty();
  }

  private static int n(Matcher matcher, int group) {
    return Integer.parseInt(matcher.group(group));
  }

  private static Read<Integer> likely(int number, String text) {
    return Read.likely(number, text + " is read as " + number).noting(text);
  }
}
