package growingon.load.own;

import java.util.List;
import java.util.Optional;

/**
 * What a plant's name was found to mean.
 *
 * @param taxon of the library, if it is one
 * @param how certain, likely, open or unknown
 * @param candidates taxa that it may be, where it is open
 * @param genus the genus of the library that stands in for an unknown species; empty if none
 */
record PlantMatch(Optional<String> taxon, How how, List<String> candidates, String genus) {
  /** How sure it is. */
  enum How {
    CERTAIN,
    LIKELY,
    OPEN,
    UNKNOWN
  }

  PlantMatch {
    candidates = List.copyOf(candidates);
  }

  static PlantMatch certain(String taxon) {
    return new PlantMatch(Optional.of(taxon), How.CERTAIN, List.of(), "");
  }

  static PlantMatch likely(String taxon) {
    return new PlantMatch(Optional.of(taxon), How.LIKELY, List.of(), "");
  }

  static PlantMatch several(List<String> candidates) {
    return new PlantMatch(Optional.empty(), How.OPEN, candidates, "");
  }

  static PlantMatch ofGenus(String genus) {
    return new PlantMatch(Optional.empty(), How.UNKNOWN, List.of(), genus);
  }

  static PlantMatch unknown() {
    return new PlantMatch(Optional.empty(), How.UNKNOWN, List.of(), "");
  }

  boolean isKnown() {
    return taxon.isPresent();
  }

  /** Whether the name is a plant's at all, as far as the library can tell. */
  boolean isPlant() {
    return isKnown() || how == How.OPEN || !genus.isEmpty();
  }
}
