package growingon.load.own.plant;

import growingon.load.own.text.Keys;
import growingon.load.own.text.Meaning;
import growingon.load.own.text.Remembered;
import growingon.load.own.text.Resources;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVRecord;

/**
 * Which taxon of the library a plant's name means: by 840 names in seven languages, by a shortened
 * botanical name, or by the genus that a group row or column gives. What stands behind a name never
 * makes another taxon of it.
 */
public final class PlantNames {
  private final Remembered<PlantMatch> found = new Remembered<>();
  private static final int LEAST_EPITHET = 3;

  /** Letters of a word that names end with, as Kiefer does Waldkiefer. */
  private static final int LEAST_OF_COMPOUND = 5;

  private static final PlantNames SHIPPED = new PlantNames();

  private final Map<String, String> taxa = new HashMap<>();
  private final Set<String> open = new TreeSet<>();
  private final Map<String, List<String>> byGenus = new TreeMap<>();
  private final Map<String, String> genusWords = new HashMap<>();
  private final Epithets epithets;
  private int longest = 1;

  private PlantNames() {
    for (CSVRecord row : Resources.rows(PlantNames.class, "species-names.csv")) {
      add(Keys.of(row.get("name")), row.get("species"));
      add(Keys.withUmlautsSpelt(row.get("name")), row.get("species"));
    }
    for (String taxon : new TreeSet<>(taxa.values())) {
      byGenus.computeIfAbsent(genusOf(Keys.of(taxon)), each -> new ArrayList<>()).add(taxon);
    }
    epithets = new Epithets(taxa, byGenus);
    addGenusWords();
  }

  private void addGenusWords() {
    for (CSVRecord row : Resources.rows(PlantNames.class, "genus-words.csv")) {
      genusWords.put(Keys.of(row.get("word")), row.get("genus"));
      genusWords.put(Keys.withUmlautsSpelt(row.get("word")), row.get("genus"));
    }
  }

  public static PlantNames shipped() {
    return SHIPPED;
  }

  private void add(String key, String taxon) {
    if (taxon.equals(Meaning.OPEN)) {
      open.add(key);
    } else {
      taxa.put(key, taxon);
    }
    longest = Math.max(longest, Keys.words(key).size());
  }

  /** First word, without the cross of a hybrid. */
  public static String genusOf(String key) {
    List<String> words = Keys.words(key);
    return words.isEmpty()
        ? ""
        : words.get(0).equals("x") && words.size() > 1 ? words.get(1) : words.get(0);
  }

  /** The taxon that a grower says a name is: by any name of it, else by its own. */
  public PlantMatch saidToBe(String ours) {
    PlantMatch match = find(ours, "");
    return match.isKnown() ? PlantMatch.certain(match.taxon().get()) : match;
  }

  /** The first word of a title; where it is the plural of a genus, that genus. */
  public String genusIn(String title) {
    String first = genusOf(Keys.of(title));
    return Keys.withAndWithoutPlural(first).stream()
        .filter(this::isGenus)
        .findFirst()
        .or(
            () ->
                Keys.withAndWithoutPlural(first).stream()
                    .flatMap(word -> genusOfWord(word).stream())
                    .findFirst())
        .orElse(first);
  }

  /** Whether a word is a genus of which the library has a taxon, in full. */
  public boolean isGenus(String word) {
    return byGenus.containsKey(word);
  }

  /** Whether a text is a name by itself, word for word. */
  public boolean isName(String text) {
    return taxa.containsKey(Keys.of(text));
  }

  /** Every taxon of the genus. */
  List<String> ofGenus(String genus) {
    return byGenus.getOrDefault(genus, List.of());
  }

  /**
   * What a plant's name means.
   *
   * @param name as the list has it
   * @param genus of the group row or column it stands under, empty if none
   */
  public PlantMatch find(String name, String genus) {
    return found.get(name + '\n' + genus, key -> looked(name, genus));
  }

  private PlantMatch looked(String name, String genus) {
    if (OtherPlants.isOne(name)) {
      return PlantMatch.unknown();
    }
    PlantMatch match = byName(name, genus);
    return CultivarNames.shipped()
        .at(name)
        .filter(taxon -> mayBe(taxon, match, name))
        .map(PlantMatch::likely)
        .orElse(match);
  }

  /**
   * Whether a cultivar's taxon is one that the rest of the name leaves open: of the same genus, or
   * of one whose name it begins with.
   */
  private boolean mayBe(String taxon, PlantMatch match, String name) {
    String genus = genusOf(Keys.of(taxon));
    String first = genusOf(Keys.of(name));
    if (match.isKnown()) {
      return !match.taxon().get().equals(taxon)
          && genusOf(Keys.of(match.taxon().get())).equals(genus)
          && !isGenus(first);
    }
    boolean named = match.candidates().contains(taxon) || match.genus().equals(genus);
    return named
        || first.length() > LEAST_EPITHET
            && genusWords.entrySet().stream()
                .anyMatch(each -> each.getValue().equals(genus) && each.getKey().startsWith(first));
  }

  private PlantMatch byName(String name, String genus) {
    PlantText text = PlantText.of(name);
    Optional<PlantMatch> round =
        text.turned().stream()
            .flatMap(words -> exact(String.join(" ", words), "").stream())
            .filter(PlantMatch::isKnown)
            .findFirst();
    if (round.isPresent()) {
      return round.get();
    }
    Optional<PlantMatch> whole =
        known(
            first(text, words -> whole(words, genus, name)),
            () -> first(text, words -> turned(words)));
    if (whole.filter(PlantMatch::isKnown).isPresent()) {
      return whole.get();
    }
    Optional<PlantMatch> part =
        first(text, words -> shortened(words, genus))
            .or(() -> first(text, words -> begun(words, name)))
            .or(() -> first(text, words -> genusAlone(words, genus, name)));
    return part.filter(PlantMatch::isKnown)
        .or(() -> whole)
        .or(() -> part)
        .or(() -> first(text, this::ofAGroup))
        .orElse(PlantMatch.unknown());
  }

  private static Optional<PlantMatch> known(
      Optional<PlantMatch> one, Supplier<Optional<PlantMatch>> other) {
    return one.filter(PlantMatch::isKnown).isPresent()
        ? one
        : other.get().filter(PlantMatch::isKnown).or(() -> one);
  }

  /** Maple Field, as tills have it. */
  private Optional<PlantMatch> turned(List<String> words) {
    return words.size() < 2
        ? Optional.empty()
        : exact(words.get(1) + " " + words.get(0), "")
            .filter(PlantMatch::isKnown)
            .map(match -> PlantMatch.likely(match.taxon().get()));
  }

  /** A known taxon before one that must be asked for. */
  private static Optional<PlantMatch> first(
      PlantText text, Function<List<String>, Optional<PlantMatch>> reading) {
    List<PlantMatch> found =
        text.readings().stream().flatMap(words -> reading.apply(words).stream()).toList();
    return found.stream()
        .filter(PlantMatch::isKnown)
        .findFirst()
        .or(() -> found.stream().findFirst());
  }

  /** The longest beginning that is a name, by itself or behind the genus. */
  private Optional<PlantMatch> whole(List<String> words, String genus, String typed) {
    for (int take = Math.min(longest, words.size()); take > 0; take--) {
      String key = String.join(" ", words.subList(0, take));
      Optional<PlantMatch> alone = exact(key, genus);
      Optional<PlantMatch> behind = genus.isEmpty() ? Optional.empty() : under(genus, key);
      boolean otherSpecies =
          take == 1
              && isGenus(key)
              && alone.filter(each -> each.how() == PlantMatch.How.NODDED).isPresent()
              && hasEpithet(words, typed);
      if (!otherSpecies && (alone.isPresent() || behind.isPresent())) {
        return alone.filter(PlantMatch::isKnown).or(() -> behind).or(() -> alone);
      }
    }
    return Optional.empty();
  }

  /** Sylvatica under Fagus, and Trident or Chinese under Maples or Elms. */
  private Optional<PlantMatch> under(String genus, String key) {
    return exact(genus + " " + key, "")
        .or(
            () ->
                genusWords.entrySet().stream()
                    .filter(each -> each.getValue().equals(genus))
                    .flatMap(each -> exact(key + " " + each.getKey(), "").stream())
                    .filter(PlantMatch::isKnown)
                    .findFirst());
  }

  private Optional<PlantMatch> exact(String key, String genus) {
    for (String each : Keys.withAndWithoutPlural(key)) {
      String taxon = taxa.get(each);
      if (taxon != null && !isGenusOfSeveral(each, taxon)) {
        return Optional.of(
            each.equals(genusOf(Keys.of(taxon))) && !Keys.of(taxon).equals(each)
                ? PlantMatch.nodded(taxon)
                : PlantMatch.certain(taxon));
      }
      if (open.contains(each)) {
        return Optional.of(settled(each, genus));
      }
    }
    return Optional.empty();
  }

  private boolean isGenusOfSeveral(String key, String taxon) {
    return byGenus.getOrDefault(key, List.of()).size() > 1 && !Keys.of(taxon).equals(key);
  }

  /** A word that may be two taxa: one of them is left where only one is of the genus. */
  private PlantMatch settled(String word, String genus) {
    List<String> all = genus.isEmpty() ? bearing(word) : ofGenus(genus);
    return all.size() == 1 && !genus.isEmpty()
        ? PlantMatch.likely(all.get(0))
        : PlantMatch.several(all);
  }

  /** Every taxon of which a name ends with the word, or begins with it: Larch, Kiefer, Pin. */
  private List<String> bearing(String word) {
    List<String> behind = of(name -> endsWith(name, word));
    return behind.isEmpty() ? of(name -> name.startsWith(word + " ")) : behind;
  }

  private List<String> of(Predicate<String> name) {
    return taxa.entrySet().stream()
        .filter(each -> name.test(each.getKey()))
        .map(Map.Entry::getValue)
        .distinct()
        .sorted()
        .toList();
  }

  private static boolean endsWith(String name, String word) {
    return name.endsWith(" " + word) || word.length() >= LEAST_OF_COMPOUND && name.endsWith(word);
  }

  /** Wild cherry and Vogelkirsche are cherries, whichever; tilo is a lime. */
  private Optional<PlantMatch> ofAGroup(List<String> words) {
    String first = words.get(0);
    String last = words.get(words.size() - 1);
    return Stream.of(last, first)
        .flatMap(word -> Keys.withAndWithoutPlural(word).stream())
        .flatMap(word -> genusOfWord(word).or(() -> genusOfCompound(last)).stream())
        .findFirst()
        .map(PlantMatch::ofGenus);
  }

  private Optional<String> genusOfWord(String word) {
    return Optional.ofNullable(genusWords.get(word));
  }

  private Optional<String> genusOfCompound(String word) {
    return genusWords.entrySet().stream()
        .filter(each -> each.getKey().length() >= LEAST_OF_COMPOUND)
        .filter(each -> word.endsWith(each.getKey()))
        .max(Comparator.comparingInt(each -> each.getKey().length()))
        .map(Map.Entry::getValue);
  }

  /**
   * Scots p., Larch (Jap): a name of which words are shortened to three letters, or with a point to
   * fewer, where at least one stands whole.
   */
  private Optional<PlantMatch> begun(List<String> words, String typed) {
    if (words.size() < 2) {
      return Optional.empty();
    }
    Set<String> fitting = new TreeSet<>();
    taxa.forEach(
        (name, taxon) -> {
          if (isBegun(words, Keys.words(name), typed)) {
            fitting.add(taxon);
          }
        });
    if (fitting.size() == 1) {
      return Optional.of(PlantMatch.likely(fitting.iterator().next()));
    }
    return open.stream()
        .filter(name -> isBegun(words, Keys.words(name), typed))
        .findFirst()
        .map(name -> settled(name, ""));
  }

  private static boolean isBegun(List<String> words, List<String> name, String typed) {
    boolean whole = false;
    for (int i = 0; i < name.size(); i++) {
      String word = i < words.size() ? words.get(i) : "";
      boolean same = name.get(i).equals(word);
      boolean shortened = word.length() >= LEAST_EPITHET || hasPoint(word, typed);
      if (word.isEmpty() || !same && !(shortened && name.get(i).startsWith(word))) {
        return false;
      }
      whole |= same;
    }
    return whole && (words.size() == name.size() || name.size() > 1);
  }

  private static boolean hasPoint(String word, String typed) {
    return (" " + typed.toLowerCase(java.util.Locale.ROOT) + " ").contains(" " + word + ". ");
  }

  /** C bet, F sylv, Quercus rob: whole words before beginnings, where one taxon fits. */
  private Optional<PlantMatch> shortened(List<String> words, String genus) {
    Set<String> fitting = new LinkedHashSet<>();
    if (words.size() > 1) {
      fitting.addAll(epithets.fitting(words.get(0), words.get(1)));
    }
    if (fitting.isEmpty() && !genus.isEmpty() && !words.isEmpty()) {
      fitting.addAll(epithets.of(genus, words.get(0)));
    }
    if (fitting.size() == 1) {
      return Optional.of(epithets.match(words, fitting.iterator().next()));
    }
    return fitting.isEmpty()
        ? Optional.empty()
        : Optional.of(PlantMatch.several(List.copyOf(fitting)));
  }

  /** Whether the word behind the genus is that of a species, in full or with a point behind it. */
  private static boolean hasEpithet(List<String> words, String typed) {
    return words.size() > 1
        && (PlantText.isEpithet(words.get(1)) || (typed + " ").contains(" " + words.get(1) + ". "));
  }

  /** The genus whose beginning, with a point behind it, is written: Crat. for Crataegus. */
  private String genusBegun(String word, String typed) {
    if (isGenus(word) || word.length() < LEAST_EPITHET || !hasPoint(word, typed)) {
      return word;
    }
    List<String> begun = byGenus.keySet().stream().filter(genus -> genus.startsWith(word)).toList();
    return begun.size() == 1 ? begun.get(0) : word;
  }

  /**
   * A genus alone or before a cultivar: its only taxon with a nod, else one of several. An epithet
   * that the library lacks is another species of it.
   */
  private Optional<PlantMatch> genusAlone(List<String> words, String group, String typed) {
    if (words.isEmpty()) {
      return Optional.empty();
    }
    String first = genusBegun(words.get(0), typed);
    if (!isGenus(first)) {
      return isGenus(group) ? Optional.of(PlantMatch.ofGenus(group)) : Optional.empty();
    }
    if (hasEpithet(words, typed)) {
      return Optional.of(PlantMatch.ofGenus(first));
    }
    List<String> all = ofGenus(first);
    return Optional.of(all.size() == 1 ? PlantMatch.likely(all.get(0)) : PlantMatch.several(all));
  }
}
