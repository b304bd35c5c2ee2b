package growingon.nursery.library;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.apache.commons.text.similarity.LevenshteinDistance;

/** Names of the library that a name may have been meant for: to be offered, never to be taken. */
final class NearNames {
  /** From this length on the end of a word counts, as in hawthorn. */
  private static final int LONG = 5;

  private static final int SLIP = 2;

  /** Beyond this no name is a slip of the finger, and the search would take long. */
  private static final int LONGEST = 200;

  private final Map<String, PlantName> names = new LinkedHashMap<>();
  private final Map<String, Taxon> taxa = new LinkedHashMap<>();

  NearNames(List<Taxon> library) {
    for (Taxon taxon : library) {
      taxon.ownNames().forEach(name -> add(name, taxon));
      taxon.standsInFor().forEach(name -> add(name, taxon));
    }
  }

  private void add(String name, Taxon taxon) {
    names.put(name, PlantName.of(name));
    taxa.put(name, taxon);
  }

  /** The rows that have a name ending so, as European larch and Japanese larch end with larch. */
  List<Taxon> endingWith(PlantName typed) {
    Set<Taxon> found = new LinkedHashSet<>();
    names.forEach(
        (name, words) -> {
          if (words.endsWith(typed) || endsWithin(words, typed)) {
            found.add(taxa.get(name));
          }
        });
    return List.copyOf(found);
  }

  private static boolean endsWithin(PlantName name, PlantName typed) {
    return typed.words().size() == 1
        && typed.key().length() >= LONG
        && name.key().endsWith(typed.key());
  }

  /** Names that end so first, then the nearest by spelling. */
  List<String> to(PlantName typed, int most) {
    Set<String> near = new LinkedHashSet<>();
    endingWith(typed).forEach(taxon -> near.add(taxon.name()));
    near.addAll(bySpelling(typed.key(), Math.max(1, typed.key().length() / 3)));
    return near.stream().limit(most).toList();
  }

  /** The nearest name that differs in one or two letters. */
  Optional<String> slip(PlantName typed) {
    return bySpelling(typed.key(), SLIP).stream().findFirst();
  }

  /** The nearest first. */
  private List<String> bySpelling(String key, int letters) {
    if (key.length() > LONGEST) {
      return List.of();
    }
    LevenshteinDistance distance = new LevenshteinDistance(letters);
    Map<String, Integer> far = new LinkedHashMap<>();
    names.forEach((name, words) -> far.put(name, distance.apply(key, words.key())));
    List<String> near = new ArrayList<>(far.keySet());
    near.removeIf(name -> far.get(name) < 0);
    near.sort(Comparator.comparing(far::get));
    return near;
  }
}
