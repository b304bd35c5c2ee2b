package growingon.load.own.lot;

import growingon.load.own.plant.PlantNames;
import growingon.load.own.text.Keys;
import growingon.nursery.library.Library;
import growingon.nursery.library.Match;
import growingon.nursery.species.Habit;
import java.util.Set;

/** Which plants keep their leaves: by the library, else conifers by their genus. */
public final class Evergreens {
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

  public static boolean isOne(OwnLot lot) {
    String known = lot.taxon().orElse(lot.standIn());
    if (!known.isEmpty() && Library.shipped().find(known) instanceof Match.One one) {
      return one.taxon().habit() == Habit.EVERGREEN;
    }
    return CONIFERS.contains(PlantNames.genusOf(Keys.of(lot.called())));
  }
}
