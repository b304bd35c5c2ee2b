package growingon.report.fit;

import java.util.Objects;

/**
 * A number of the species' files that is proposed otherwise.
 *
 * @param species the species
 * @param condition growing condition, where it is of a growth law; else empty
 * @param key key in species.json: of a growth law its rate, else that of the species
 * @param heading heading in the table species
 * @param number the new number
 * @param prior what was assumed before anything was learnt
 * @param comment what it was and what it rests on
 */
public record SpeciesEdit(
    String species,
    String condition,
    String key,
    String heading,
    double number,
    double prior,
    String comment) {
  public SpeciesEdit {
    Objects.requireNonNull(species);
    Objects.requireNonNull(condition);
    Objects.requireNonNull(key);
    Objects.requireNonNull(heading);
    Objects.requireNonNull(comment);
  }
}
