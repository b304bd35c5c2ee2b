package growingon.load.own.heading;

import growingon.load.own.text.Keys;
import growingon.load.own.text.Meaning;
import growingon.load.own.text.MonthText;
import growingon.load.own.text.Remembered;
import growingon.load.own.text.Resources;
import growingon.load.own.text.TaxWords;
import growingon.load.own.text.Units;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVRecord;
import org.apache.commons.text.similarity.LevenshteinDistance;

/**
 * What 1,850 headings in six languages stand for. First what is written as it is, then without a
 * unit at its end, in the singular, without remarks in brackets, without a lone initial or a year.
 */
public final class HeadingWords {
  private static final int LONGEST = 200;
  private static final int SHORTEST_NEAR = 5;

  /** Letters that a shortened heading must have. */
  private static final int LEAST_SHORTENED = 4;

  private static final Pattern REMARK = Pattern.compile("\\([^)]*\\)|\\[[^]]*]");
  private static final Pattern INITIAL = Pattern.compile("^\\p{L} (?=\\S{2})");
  private static final Pattern YEAR = Pattern.compile(" '?(?:20)?[0-9]{2}$");
  private static final Pattern MONTH_OR_WEEK =
      Pattern.compile(
          " (?:(?:wk|week|kw) ?[0-9]{1,2}(?: '?(?:20)?[0-9]{2})?"
              + "|(?:(?:0?[1-9]|[12][0-9]|3[01]) )?(?:0?[1-9]|1[0-2]) (?:20)?[0-9]{2})$");

  /** Boek 28-11; a price of 1-9 is one by number. */
  private static final Pattern DAY_AND_MONTH = Pattern.compile(" [0-3]?[0-9] (?:0?[1-9]|1[0-2])$");

  private static final Set<String> PRICES = Set.of("unit cost", "selling price");
  private static final Pattern A_HUNDRED =
      Pattern.compile(
          "(?i)\\s*[,(]?\\s*(?:(?:per|je|pro|par|por|à|a)\\s+|/\\s*)(1000|100|%|‰|hundert|hundred|cent|cento|cien)"
              + "(?:\\s*(?:st(?:ück|k)?|pcs|plants|pièces|stuks))?\\.?\\)?$");
  private static final Pattern AT_A_METRE =
      Pattern.compile("(?i)\\s*[,(]?\\s*(?:@|at|à|a|bei|in|op|um)?\\s*1(?:[.,]0+)?\\s*m\\b.*$");
  private static final Pattern FIGURE = Pattern.compile("[0-9][0-9.,:/ -]*");
  private static final Pattern NUMERO = Pattern.compile("(?i)\\bn(?:o\\.?)?[°º]\\s*");
  private static final Pattern INNER_POINT = Pattern.compile("(?<=\\p{L})\\.(?=\\p{L})");

  /** Several headings of sizes in one: Pot / height, Container & caliper. */
  private static final Pattern JOINED =
      Pattern.compile("\\s*(?:[/&+,]|\\b(?:or|and|oder|und|et|ou|en|of|e|o|y)\\b)\\s*");

  private static final Set<String> SIZES =
      Set.of(
          "size",
          "pot",
          "girth cm",
          "height cm",
          "trunk mm",
          "form",
          "age",
          "height x width",
          "quality word");

  /** Where what is in no pot stands: Pot / ground. */
  private static final Set<String> IN_THE_GROUND =
      Set.of(
          "ground",
          "field",
          "open ground",
          "bed",
          "freiland",
          "feld",
          "beet",
          "pleine terre",
          "volle grond",
          "vollegrond",
          "terra",
          "pieno campo",
          "suelo",
          "tierra");

  private static final Map<ListKind, HeadingWords> SHIPPED = new ConcurrentHashMap<>();

  private final Map<String, Meaning> meanings = new HashMap<>();
  private final Map<String, String> spellings = new HashMap<>();
  private final Remembered<Optional<Found>> known = new Remembered<>();

  /**
   * A heading understood.
   *
   * @param nod whether it is likely only, and a nod is asked for
   */
  record Found(Meaning meaning, boolean nod) {}

  private HeadingWords(ListKind kind) {
    if (kind.isOffers()) {
      for (CSVRecord row : Resources.rows(HeadingWords.class, "offer-headings.csv")) {
        add(row.get("heading"), Meaning.of(row.get("ours"), row.get("unit")));
      }
    }
    for (CSVRecord row : Resources.rows(HeadingWords.class, "headings.csv")) {
      Meaning meaning =
          new Meaning(
              row.get("ours"),
              row.get("unit"),
              Integer.parseInt(row.get("rank")),
              Arrays.stream(row.get("choices").split(";"))
                  .map(String::strip)
                  .filter(each -> !each.isEmpty())
                  .toList());
      add(row.get("heading"), kind.meaning(meaning));
    }
    OwnColumns.all()
        .forEach((name, unit) -> add(Keys.of(name), kind.meaning(Meaning.of(name, unit)), name));
  }

  private void add(String heading, Meaning meaning) {
    add(Keys.of(heading), meaning, heading);
    add(Keys.withUmlautsSpelt(heading), meaning, heading);
  }

  private void add(String key, Meaning meaning, String heading) {
    meanings.putIfAbsent(key, meaning);
    spellings.putIfAbsent(key, heading);
  }

  /** What headings stand for in lists of a kind. */
  static HeadingWords of(ListKind kind) {
    return SHIPPED.computeIfAbsent(kind, HeadingWords::new);
  }

  /** What a heading stands for; empty if it is not understood. */
  Optional<Found> find(String heading) {
    return known.get(heading, this::found);
  }

  private Optional<Found> found(String heading) {
    if (heading.length() > LONGEST || heading.isBlank() || FIGURE.matcher(heading).matches()) {
      return Optional.empty();
    }
    String bare = Keys.withoutFootnotes(Units.inWords(heading));
    return certain(bare)
        .or(() -> taxed(bare))
        .or(() -> certain(REMARK.matcher(bare).replaceAll(" ")))
        .or(() -> girth(bare))
        .or(() -> certain(A_HUNDRED.matcher(bare).replaceFirst("")).filter(HeadingWords::isPrice))
        .or(() -> new CountedWords(meanings).of(Keys.of(bare)))
        .or(() -> same(bare))
        .map(meaning -> new Found(meaning, meaning.isInDoubt()))
        .or(
            () ->
                likely(bare)
                    .or(() -> joined(bare))
                    .or(() -> shortened(bare))
                    .map(meaning -> new Found(meaning, true)));
  }

  private Optional<Meaning> certain(String heading) {
    return spelt(heading).stream()
        .flatMap(key -> asWritten(key).stream())
        .findFirst()
        .or(() -> spelt(heading).stream().flatMap(key -> singular(key).stream()).findFirst());
  }

  /**
   * Whole first, then parted at inner capitals, without the points of P.U. and Q.tà, with # for
   * number.
   */
  private static List<String> spelt(String heading) {
    List<String> keys = new ArrayList<>();
    keys.add(Keys.of(heading));
    for (String other :
        List.of(
            Keys.parted(heading),
            INNER_POINT.matcher(heading).replaceAll(""),
            heading.replace("#", " no "),
            NUMERO.matcher(heading).replaceAll("N. "))) {
      String key = Keys.of(other);
      if (!keys.contains(key)) {
        keys.add(key);
      }
    }
    return keys;
  }

  private Optional<Meaning> asWritten(String key) {
    return Optional.ofNullable(meanings.get(key)).or(() -> withoutUnit(key));
  }

  private Optional<Meaning> withoutUnit(String key) {
    List<String> words = Keys.words(key);
    for (int take = Math.min(2, words.size() - 1); take > 0; take--) {
      int split = words.size() - take;
      String unit = String.join(" ", words.subList(split, words.size()));
      Optional<Meaning> rest =
          Units.named(unit)
              .flatMap(named -> stem(String.join(" ", words.subList(0, split))))
              .flatMap(meaning -> Units.said(meaning, unit));
      if (rest.isPresent()) {
        return rest;
      }
    }
    return Optional.empty();
  }

  private Optional<Meaning> stem(String key) {
    return Optional.ofNullable(meanings.get(key))
        .or(() -> singularOf(key))
        .or(() -> withoutUnit(key));
  }

  private Optional<Meaning> singular(String key) {
    return singularOf(key);
  }

  private Optional<Meaning> singularOf(String key) {
    List<String> tries = new ArrayList<>();
    List<String> words = Keys.words(key);
    if (words.isEmpty()) {
      return Optional.empty();
    }
    String last = words.get(words.size() - 1);
    String front = key.substring(0, key.length() - last.length());
    if (last.length() > 3 && last.endsWith("ies")) {
      tries.add(front + last.substring(0, last.length() - 3) + "y");
    }
    if (last.length() > 3 && last.endsWith("es")) {
      tries.add(front + last.substring(0, last.length() - 2));
    }
    if (last.length() > 2 && last.endsWith("s")) {
      tries.add(front + last.substring(0, last.length() - 1));
    }
    if (words.size() > 1 && words.get(0).endsWith("s")) {
      tries.add(
          words.get(0).substring(0, words.get(0).length() - 1)
              + key.substring(words.get(0).length()));
    }
    tries.add(key + "s");
    if (last.endsWith("y")) {
      tries.add(key.substring(0, key.length() - 1) + "ies");
    }
    return tries.stream()
        .flatMap(each -> Optional.ofNullable(meanings.get(each)).stream())
        .findFirst();
  }

  /** A price that says whether it is with VAT: Vraagprijs (6% btw incl.). */
  private Optional<Meaning> taxed(String heading) {
    return TaxWords.of(heading)
        .flatMap(
            unit ->
                certain(TaxWords.without(heading))
                    .filter(HeadingWords::isPrice)
                    .map(meaning -> meaning.inUnit(unit)));
  }

  /** Several words that say the same in one heading: Status / remarks. */
  private Optional<Meaning> same(String heading) {
    List<Optional<Meaning>> parts =
        Arrays.stream(heading.split("[/&+]"))
            .filter(part -> !part.isBlank())
            .map(this::certain)
            .toList();
    boolean same =
        parts.size() > 1
            && parts.stream().allMatch(Optional::isPresent)
            && parts.stream().map(part -> part.get().ours()).distinct().count() == 1;
    return same ? parts.get(0).filter(meaning -> !meaning.isOpen()) : Optional.empty();
  }

  /**
   * Words that a point shortens, where all headings that begin so say the same: Empl., P. achat.
   */
  private Optional<Meaning> shortened(String heading) {
    List<String> typed = Keys.words(Keys.of(heading));
    boolean pointed =
        heading.contains(".")
            && heading.chars().noneMatch(Character::isDigit)
            && String.join("", typed).length() >= LEAST_SHORTENED;
    String lower = pointed ? Keys.withPoints(heading) : "";
    List<Meaning> found =
        !pointed
            ? List.of()
            : meanings.entrySet().stream()
                .filter(each -> isBegun(typed, Keys.words(each.getKey()), lower))
                .map(Map.Entry::getValue)
                .toList();
    return found.stream().map(Meaning::ours).distinct().count() == 1
        ? found.stream().min(Comparator.comparingInt(Meaning::rank))
        : Optional.empty();
  }

  private static boolean isBegun(List<String> typed, List<String> whole, String lower) {
    boolean fits = typed.size() == whole.size();
    for (int i = 0; fits && i < typed.size(); i++) {
      fits =
          whole.get(i).equals(typed.get(i))
              || lower.contains(" " + typed.get(i) + ".") && whole.get(i).startsWith(typed.get(i));
    }
    return fits;
  }

  /** Whether a meaning is a price or may be one. */
  static boolean isPrice(Meaning meaning) {
    return meaning.possible().stream().anyMatch(PRICES::contains);
  }

  /** For how many plants the prices of a heading are. */
  public static int pricedFor(String heading) {
    Matcher many = A_HUNDRED.matcher(Keys.withoutFootnotes(heading));
    return !many.find()
        ? 1
        : many.group(1).startsWith("1000") || many.group(1).equals("‰") ? 1000 : 100;
  }

  /** Girth is taken a metre above the ground, and the heading may say so: Girth @ 1m. */
  private Optional<Meaning> girth(String heading) {
    return certain(AT_A_METRE.matcher(heading).replaceFirst(""))
        .filter(meaning -> meaning.ours().equals("girth cm"));
  }

  /** Two or more sizes in one heading: their cells say which each is. */
  private Optional<Meaning> joined(String heading) {
    List<String> parts =
        Arrays.stream(JOINED.split(heading.toLowerCase(Locale.ROOT)))
            .filter(part -> !part.isBlank())
            .toList();
    boolean sizes =
        parts.size() > 1
            && parts.stream()
                .filter(part -> !IN_THE_GROUND.contains(Keys.of(part)))
                .allMatch(part -> certain(part).filter(HeadingWords::isSize).isPresent());
    boolean places =
        parts.size() > 1
            && parts.stream().allMatch(part -> certain(part).filter(Meaning::isPlace).isPresent());
    return sizes
        ? Optional.of(Meaning.of("size", ""))
        : places ? Optional.of(Meaning.of("place", "")) : Optional.empty();
  }

  private static boolean isSize(Meaning meaning) {
    return meaning.possible().stream().anyMatch(SIZES::contains);
  }

  private Optional<Meaning> likely(String heading) {
    String key = Keys.of(heading);
    String withoutInitial = INITIAL.matcher(key).replaceFirst("");
    String withoutYear = YEAR.matcher(key).replaceFirst("");
    return Stream.of(
            withoutInitial,
            withoutYear,
            YEAR.matcher(withoutInitial).replaceFirst(""),
            withoutMonth(key))
        .filter(each -> !each.equals(key))
        .flatMap(each -> asWritten(each).stream())
        .findFirst()
        .or(
            () ->
                asWritten(DAY_AND_MONTH.matcher(key).replaceFirst(""))
                    .filter(meaning -> !isPrice(meaning)));
  }

  /** Without a month, with its year or not, or a week behind it: Stock Nov 26, Qty 11/2026. */
  private static String withoutMonth(String key) {
    String numbered = MONTH_OR_WEEK.matcher(key).replaceFirst("");
    if (!numbered.equals(key)) {
      return numbered;
    }
    String bare = YEAR.matcher(key).replaceFirst("");
    int last = bare.lastIndexOf(' ');
    return last > 0 && MonthText.named(bare.substring(last + 1)).isPresent()
        ? bare.substring(0, last)
        : key;
  }

  /** The same without words that say nothing, else within two letters: offered, never taken. */
  Optional<Near> nearest(String heading) {
    String key = Keys.of(heading);
    if (key.length() < SHORTEST_NEAR || key.length() > LONGEST) {
      return Optional.empty();
    }
    LevenshteinDistance distance = new LevenshteinDistance(2);
    return Optional.of(Keys.withoutFillers(key))
        .filter(meanings::containsKey)
        .or(
            () ->
                meanings.keySet().stream()
                    .filter(each -> Math.abs(each.length() - key.length()) <= 2)
                    .filter(each -> each.charAt(0) == key.charAt(0))
                    .filter(each -> distance.apply(each, key) >= 0)
                    .min(Comparator.comparingInt(each -> distance.apply(each, key))))
        .map(found -> new Near(spellings.get(found), meanings.get(found)));
  }

  /**
   * A heading that is spelt nearly so.
   *
   * @param heading as it is usually written
   */
  record Near(String heading, Meaning meaning) {
    /** What a column of that heading may be. */
    List<String> choices() {
      return meaning.possible();
    }
  }
}
