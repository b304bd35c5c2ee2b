package growingon.load.own.plant;

import growingon.load.own.text.Keys;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/** The second words of botanical names, by which C bet and F sylv are known. */
final class Epithets {
  private static final int LEAST = 3;
  private static final int LEAST_AFTER_GENUS = 2;

  /** Few whole epithets are shorter. */
  private static final int LEAST_WHOLE = 6;

  private final Map<String, Set<String>> epithets = new HashMap<>();
  private final Map<String, List<String>> byGenus;

  /**
   * Those of a library.
   *
   * @param taxa by each of their names; other botanical names too, as laevigata of a hawthorn
   * @param byGenus taxa by genus
   */
  Epithets(Map<String, String> taxa, Map<String, List<String>> byGenus) {
    this.byGenus = byGenus;
    taxa.forEach(
        (name, taxon) -> {
          if (name.equals(Keys.of(taxon)) || isBotanical(name)) {
            epithets.computeIfAbsent(taxon, each -> new TreeSet<>()).addAll(of(name));
          }
        });
  }

  private boolean isBotanical(String name) {
    List<String> words = Keys.words(name);
    return words.size() == 2
        && byGenus.containsKey(words.get(0))
        && PlantText.isEpithet(words.get(1));
  }

  /** Taxa that a genus and an epithet may be, both in full or their beginnings. */
  Collection<String> fitting(String genus, String epithet) {
    if (byGenus.containsKey(genus)) {
      return begun(epithet, LEAST_AFTER_GENUS, byGenus.get(genus));
    }
    List<String> all = new ArrayList<>();
    byGenus.forEach(
        (name, taxa) -> {
          if (name.startsWith(genus)) {
            all.addAll(taxa);
          }
        });
    return begun(epithet, LEAST, all);
  }

  /** Taxa of a genus that an epithet or the beginning of one may be. */
  Collection<String> of(String genus, String epithet) {
    return begun(epithet, LEAST, byGenus.getOrDefault(genus, List.of()));
  }

  /** The taxon that words fit; with a nod where their epithet is written as a whole one is. */
  PlantMatch match(List<String> words, String taxon) {
    String epithet = words.size() > 1 ? words.get(1) : "";
    boolean other =
        epithet.length() >= LEAST_WHOLE
            && PlantText.isEpithet(epithet)
            && !epithets.getOrDefault(taxon, Set.of()).contains(epithet);
    return other ? PlantMatch.nodded(taxon) : PlantMatch.likely(taxon);
  }

  private Collection<String> begun(String typed, int least, List<String> of) {
    Map<String, String> byEpithet = new LinkedHashMap<>();
    Set<String> begun = new LinkedHashSet<>();
    for (String taxon : of) {
      for (String epithet : epithets.getOrDefault(taxon, Set.of())) {
        byEpithet.put(epithet, taxon);
        if (typed.length() >= least && epithet.startsWith(typed)) {
          begun.add(taxon);
        }
      }
    }
    return byEpithet.containsKey(typed) ? Set.of(byEpithet.get(typed)) : begun;
  }

  private static List<String> of(String name) {
    return Keys.words(name).stream()
        .skip(1)
        .filter(word -> !word.equals("x") && !word.equals("subsp"))
        .toList();
  }
}
