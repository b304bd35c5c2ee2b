package growingon.load.own.plant;

import growingon.load.own.text.Keys;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A plant's name taken apart: what names the plant, without cultivar, rootstock, shape, age and
 * size.
 *
 * @param cultivar in quotes, if there is one
 * @param turned words of it turned round, as in Hornbeam, Korean or Hornbeam (Korean): a name only
 *     if they are one whole
 * @param readings words of the name in the ways in which they are tried, the first first
 */
public record PlantText(
    Optional<String> cultivar, List<List<String>> turned, List<List<String>> readings) {
  private static final Pattern QUOTED =
      Pattern.compile(
          "(?<!\\p{L})['‘’´`]([^'‘’´`]{2,}(?:['’´`]\\p{L}+[^'‘’´`]*)?)['‘’´`](?!\\p{L})|[\"“”„]([^\"“”„]{2,})[\"“”„]");
  private static final Pattern ROOTSTOCK =
      Pattern.compile("(?i)\\s(?:on|auf|sur|op|su|sobre)\\s+\\p{L}.*$");
  private static final Pattern BRACKETS = Pattern.compile("\\([^)]*\\)|\\[[^]]*]");
  private static final Pattern NUMBERS = Pattern.compile("(?:(?<!\\p{L})[xX×]\\s*|#\\s*)?[0-9].*$");
  private static final Pattern LATIN =
      Pattern.compile("[a-z]+(?:us|um|a|is|e|ii|i|ora|ens|ans|er|x|o|on)");
  private static final Set<String> NOISE =
      Set.of(
          "x",
          "×",
          "sp",
          "spp",
          "species",
          "var",
          "ssp",
          "subsp",
          "cv",
          "std",
          "stds",
          "standard",
          "standards",
          "half",
          "hst",
          "hochstamm",
          "halbstamm",
          "tige",
          "whip",
          "whips",
          "liner",
          "liners",
          "seedling",
          "seedlings",
          "samling",
          "samlinge",
          "saemlinge",
          "zaailing",
          "zaailingen",
          "zl",
          "semis",
          "prebonsai",
          "bonsai",
          "grafted",
          "gr",
          "veredelt",
          "stamm",
          "feathered",
          "maiden",
          "maidens",
          "transplant",
          "transplants",
          "cutting",
          "cuttings",
          "hoogstam",
          "bush",
          "multistem",
          "yr",
          "yrs",
          "year",
          "old",
          "clump",
          "plugs",
          "plug",
          "cl",
          "leivorm",
          "dakvorm",
          "meerst",
          "meerstammig",
          "mehrst",
          "mehrstammig",
          "bol",
          "kugel",
          "kegel",
          "spalier",
          "espalier",
          "pleached",
          "niwaki",
          "gartenbonsai",
          "cepee",
          "heister",
          "solitar");

  /** What names a plant no nearer but stays in what it is called: a cross, Yew - old hedge. */
  private static final Set<String> KEPT = Set.of("x", "×", "old");

  public PlantText {
    turned = List.copyOf(turned);
    readings = List.copyOf(readings);
  }

  public static PlantText of(String name) {
    Optional<String> cultivar = cultivarOf(name);
    String bare = QUOTED.matcher(name).replaceAll(" ");
    bare = ROOTSTOCK.matcher(bare).replaceFirst(" ");
    Set<List<String>> readings = new LinkedHashSet<>();
    String without = BRACKETS.matcher(bare).replaceAll(" ");
    for (String each : List.of(without, bare, inBrackets(bare))) {
      readings.add(words(Keys.of(each)));
      readings.add(words(Keys.withUmlautsSpelt(each)));
      turned(each).ifPresent(turned -> readings.add(words(Keys.of(turned))));
    }
    readings.add(words(Keys.of(inBrackets(bare) + " " + without)));
    readings.removeIf(List::isEmpty);
    Set<List<String>> turned = new LinkedHashSet<>();
    turned(without).ifPresent(each -> turned.add(words(Keys.of(each))));
    if (BRACKETS.matcher(bare).find()) {
      turned.add(words(Keys.of(inBrackets(bare) + " " + without)));
    }
    return new PlantText(cultivar, new ArrayList<>(turned), new ArrayList<>(readings));
  }

  private static Optional<String> cultivarOf(String name) {
    Matcher quoted = QUOTED.matcher(name);
    return quoted.find()
        ? Optional.of((quoted.group(1) == null ? quoted.group(2) : quoted.group(1)).strip())
        : Optional.empty();
  }

  private static String inBrackets(String name) {
    return BRACKETS.matcher(name).results().map(found -> found.group()).findFirst().orElse("");
  }

  /** Maple, field. */
  private static Optional<String> turned(String name) {
    String[] parts = name.split(",");
    return parts.length == 2 && !parts[1].isBlank()
        ? Optional.of(parts[1].strip() + " " + parts[0].strip())
        : Optional.empty();
  }

  private static List<String> words(String key) {
    String bare = NUMBERS.matcher(key).replaceFirst("");
    return Keys.words(bare.strip()).stream().filter(word -> !NOISE.contains(word)).toList();
  }

  /** Whether a word looks like the second one of a botanical name, not like a cultivar's. */
  public static boolean isEpithet(String word) {
    return word.length() > 3 && LATIN.matcher(word).matches();
  }

  /** The name without the size and age behind it, as it is called in a plan. */
  public static String called(String name) {
    String bare = ROOTSTOCK.matcher(QUOTED.matcher(name).replaceAll(" ")).replaceFirst("");
    String plain = NUMBERS.matcher(BRACKETS.matcher(bare).replaceAll(" ")).replaceFirst("");
    List<String> kept = new ArrayList<>();
    for (String word : plain.strip().split("\\s+")) {
      if (!NOISE.contains(Keys.of(word)) || KEPT.contains(word)) {
        kept.add(word);
      }
    }
    String called = String.join(" ", kept).replaceAll("[,;:]$", "").strip();
    return called.isEmpty() ? name.strip() : called;
  }

  /** Yew - old hedge is Yew; Hornbeam - Japanese is no Hornbeam. */
  public static String withoutRemark(String called, PlantMatch match) {
    int dash = called.indexOf(" - ");
    boolean same = dash > 0 && match.isMeantBy(called.substring(0, dash));
    return same ? called.substring(0, dash) : called;
  }
}
