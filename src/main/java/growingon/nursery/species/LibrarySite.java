package growingon.nursery.species;

import growingon.nursery.number.Check;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/**
 * A nursery as far as the library of species is concerned.
 *
 * @param climate of the place
 * @param speed factor on all growth taken from the library
 * @param speedFrom number of species that were measured here and on which the speed rests
 * @param conditions condition of the library for each growing condition of the nursery that bears
 *     another name, in lower case
 */
public record LibrarySite(
    Climate climate, double speed, int speedFrom, Map<String, String> conditions) {
  /** A nursery of which nothing is said. */
  public static final LibrarySite USUAL = new LibrarySite(Climate.TEMPERATE, 1, 0, Map.of());

  public LibrarySite {
    Objects.requireNonNull(climate);
    Check.positive(speed, "site speed");
    Check.notNegative(speedFrom, "species of the site speed");
    conditions = Map.copyOf(conditions);
  }

  /** What a growing condition of the nursery is called in the library, if another name is given. */
  public Optional<String> conditionOf(String condition) {
    return Optional.ofNullable(conditions.get(condition));
  }
}
