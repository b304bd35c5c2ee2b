package growingon.load.own.plant;

import growingon.load.own.text.Keys;
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
public record PlantMatch(Optional<String> taxon, How how, List<String> candidates, String genus) {
  /** How sure it is. */
  public enum How {
    CERTAIN,
    LIKELY,
    /** It is taken, and a nod is asked for. */
    NODDED,
    OPEN,
    UNKNOWN
  }

  public PlantMatch {
    candidates = List.copyOf(candidates);
  }

  static PlantMatch certain(String taxon) {
    return new PlantMatch(Optional.of(taxon), How.CERTAIN, List.of(), "");
  }

  static PlantMatch likely(String taxon) {
    return new PlantMatch(Optional.of(taxon), How.LIKELY, List.of(), "");
  }

  /** The only taxon of a genus, or one whose name begins like another species. */
  static PlantMatch nodded(String taxon) {
    return new PlantMatch(Optional.of(taxon), How.NODDED, List.of(), "");
  }

  /** The same of its genus alone, where it is another species. */
  public PlantMatch refused() {
    return new PlantMatch(
        Optional.empty(), How.UNKNOWN, List.of(), PlantNames.genusOf(Keys.of(taxon.orElse(""))));
  }

  public static PlantMatch several(List<String> candidates) {
    return new PlantMatch(Optional.empty(), How.OPEN, candidates, "");
  }

  static PlantMatch ofGenus(String genus) {
    return new PlantMatch(Optional.empty(), How.UNKNOWN, List.of(), genus);
  }

  public static PlantMatch unknown() {
    return new PlantMatch(Optional.empty(), How.UNKNOWN, List.of(), "");
  }

  public boolean isKnown() {
    return taxon.isPresent();
  }

  /** Whether a name by itself means the same taxon. */
  public boolean isMeantBy(String name) {
    return isKnown() && PlantNames.shipped().find(name, "").taxon().equals(taxon);
  }

  /** Whether the name is a plant's at all, as far as the library can tell. */
  public boolean isPlant() {
    return isKnown() || how == How.OPEN || !genus.isEmpty();
  }
}
