package growingon.load.own.plant;

import growingon.load.own.text.Keys;
import growingon.load.own.text.Resources;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.csv.CSVRecord;

/**
 * Cultivars that growers name without their species, as in Juniper Itoigawa: they are of one taxon
 * only. Common practice, from memory.
 */
final class CultivarNames {
  private static final CultivarNames SHIPPED = new CultivarNames();

  private final Map<String, String> taxa = new HashMap<>();

  private CultivarNames() {
    for (CSVRecord row : Resources.rows(CultivarNames.class, "cultivar-names.csv")) {
      taxa.put(Keys.of(row.get("cultivar")), row.get("species"));
    }
  }

  static CultivarNames shipped() {
    return SHIPPED;
  }

  /** The taxon of the cultivar with which a name ends. */
  Optional<String> at(String name) {
    List<String> words =
        Keys.words(Keys.of(name.replaceAll("['‘’´`](?!\\p{L})|(?<!\\p{L})['‘’´`]", " ")));
    for (int from = 1; from < words.size(); from++) {
      for (int to = words.size(); to > from; to--) {
        String taxon = taxa.get(String.join(" ", words.subList(from, to)));
        if (taxon != null) {
          return Optional.of(taxon);
        }
      }
    }
    return Optional.empty();
  }
}
