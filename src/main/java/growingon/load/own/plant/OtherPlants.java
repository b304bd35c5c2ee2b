package growingon.load.own.plant;

import growingon.load.own.text.Keys;
import growingon.load.own.text.Resources;
import java.util.Set;
import java.util.stream.Collectors;

/** Plants that the library lacks, though their names begin as those of others: laurier tin. */
final class OtherPlants {
  private static final Set<String> NAMES =
      Resources.rows(OtherPlants.class, "other-plants.csv").stream()
          .map(row -> Keys.of(row.get("name")))
          .collect(Collectors.toSet());

  private OtherPlants() {}

  static boolean isOne(String name) {
    String key = Keys.of(name) + " ";
    return NAMES.stream().anyMatch(other -> key.startsWith(other + " "));
  }
}
