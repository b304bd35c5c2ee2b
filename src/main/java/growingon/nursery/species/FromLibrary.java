package growingon.nursery.species;

import java.util.List;
import java.util.Objects;
import java.util.Set;

/**
 * What a species has from the library of species.
 *
 * @param row the row of the library, as a reader is told of it
 * @param conditions growing conditions in which it grows as the library says
 * @param sources ids of the sources of what it has from there, sorted
 */
public record FromLibrary(String row, Set<String> conditions, List<String> sources) {
  public FromLibrary {
    Objects.requireNonNull(row);
    conditions = Set.copyOf(conditions);
    sources = List.copyOf(sources);
  }
}
