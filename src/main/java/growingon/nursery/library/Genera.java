package growingon.nursery.library;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** The genera of the library, by the first word of a botanical name. */
final class Genera {
  private Genera() {}

  static Map<String, List<Taxon>> of(List<Taxon> taxa) {
    Map<String, List<Taxon>> genera = new LinkedHashMap<>();
    for (Taxon taxon : taxa) {
      String genus = PlantName.of(taxon.species()).first();
      genera.computeIfAbsent(genus, each -> new ArrayList<>()).add(taxon);
    }
    return genera;
  }

  /** With a capital. */
  static String shown(String genus) {
    return genus.substring(0, 1).toUpperCase(Locale.ROOT) + genus.substring(1);
  }
}
