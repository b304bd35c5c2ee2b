package growingon.load.own.lot;

import growingon.load.own.plant.PlantNames;
import growingon.load.own.text.Keys;
import growingon.nursery.library.Library;
import growingon.nursery.library.Match;
import growingon.nursery.species.Habit;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Which plants keep their leaves: by the library, else conifers by their genus. */
public final class Evergreens {
  private static final String EVERGREEN = "evergreen";
  private static final String DECIDUOUS = "deciduous";
  private static final Set<String> CONIFERS =
      Set.of(
          "abies",
          "cedrus",
          "chamaecyparis",
          "cryptomeria",
          "cupressus",
          "cuprocyparis",
          "juniperus",
          "picea",
          "pinus",
          "podocarpus",
          "pseudotsuga",
          "sciadopitys",
          "sequoia",
          "sequoiadendron",
          "taxus",
          "thuja",
          "thujopsis",
          "torreya",
          "tsuga",
          "araucaria",
          "calocedrus");

  private Evergreens() {}

  /** The kind that all these taxa are, empty if they are of both. */
  static String kindOf(List<String> taxa) {
    Set<String> kinds = new HashSet<>();
    taxa.forEach(
        taxon ->
            kinds.add(
                habit(taxon).filter(Habit.EVERGREEN::equals).isPresent() ? EVERGREEN : DECIDUOUS));
    return kinds.size() == 1 ? kinds.iterator().next() : "";
  }

  private static Optional<Habit> habit(String plant) {
    return !plant.isEmpty() && Library.shipped().find(plant) instanceof Match.One one
        ? Optional.of(one.taxon().habit())
        : Optional.empty();
  }

  /** Whether what stands in for a plant is a kind, not a genus. */
  public static boolean isKind(String standIn) {
    return standIn.equals(EVERGREEN) || standIn.equals(DECIDUOUS);
  }

  public static boolean isOne(OwnLot lot) {
    String known = lot.taxon().orElse(lot.standIn());
    if (isKind(known)) {
      return known.equals(EVERGREEN);
    }
    return habit(known)
        .map(Habit.EVERGREEN::equals)
        .orElseGet(() -> CONIFERS.contains(PlantNames.genusOf(Keys.of(lot.called()))));
  }
}
