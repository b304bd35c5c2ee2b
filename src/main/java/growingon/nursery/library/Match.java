package growingon.nursery.library;

import java.util.List;
import java.util.Optional;

/** What the library finds for a name. */
public sealed interface Match {
  /**
   * One row.
   *
   * @param taxon the row, or the middle of several
   * @param how by which of its names
   * @param cultivar the cultivar that stood in quotes and was left out
   */
  record One(Taxon taxon, How how, Optional<String> cultivar) implements Match {}

  /**
   * Several rows that an English word may mean.
   *
   * @param taxa at least two, in the order of the library
   */
  record Several(List<Taxon> taxa) implements Match {
    public Several {
      taxa = List.copyOf(taxa);
    }

    /** Their middle, for a list that goes on before it is known which is meant. */
    public Taxon middle() {
      List<String> names = taxa.stream().map(Taxon::name).toList();
      return Middle.ofGenus(taxa, "the middle of " + String.join(", ", names));
    }
  }

  /**
   * None.
   *
   * @param nearest names that are spelt nearly so, or have a word of it; may be empty
   */
  record Nothing(List<String> nearest) implements Match {
    public Nothing {
      nearest = List.copyOf(nearest);
    }
  }

  /** By which name a row was found. */
  enum How {
    /** Its species, name or another name of the same. */
    NAMED,
    /** The name of a near relation. */
    STANDS_IN,
    /** The genus. */
    GENUS,
    /** The kind, deciduous or evergreen. */
    KIND
  }
}
