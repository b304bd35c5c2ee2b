package growingon.report.fit;

import java.util.List;
import java.util.Objects;
import java.util.OptionalDouble;

/**
 * A number of the species' files that is proposed otherwise, or of which one is surer now.
 *
 * @param species the species
 * @param condition growing condition, where it is of a growth law; else empty
 * @param conditions all growing conditions of the species
 * @param key key in species.json: of a growth law its rate, else that of the species
 * @param heading heading in the table species
 * @param isOther whether the number is another one
 * @param mostMm trunk at which steady growth ends; empty where it does not, or for what is no
 *     growth
 * @param number the number, the new one or the same
 * @param prior what was assumed before anything was learnt
 * @param sure how sure it is now, per cent; empty for a spread
 * @param priorSure how sure it was before, per cent; empty for a spread
 * @param comment what it was and what it rests on
 */
public record SpeciesEdit(
    String species,
    String condition,
    List<String> conditions,
    String key,
    String heading,
    boolean isOther,
    OptionalDouble mostMm,
    double number,
    double prior,
    OptionalDouble sure,
    OptionalDouble priorSure,
    String comment) {
  public SpeciesEdit {
    Objects.requireNonNull(species);
    Objects.requireNonNull(condition);
    conditions = List.copyOf(conditions);
    Objects.requireNonNull(key);
    Objects.requireNonNull(heading);
    Objects.requireNonNull(mostMm);
    Objects.requireNonNull(sure);
    Objects.requireNonNull(priorSure);
    Objects.requireNonNull(comment);
  }

  /** Whether it is of growth in a condition. */
  public boolean isGrowth() {
    return !condition.isEmpty();
  }

  /** By what it stands among what was assumed before. */
  public String priorKey() {
    return isGrowth() ? "growth " + condition : key;
  }

  /** Key and heading of how sure it is. */
  public String sureKey() {
    return isGrowth() ? "growth sure %" : key.replace(" %", " sure %");
  }
}
