package growingon.load;

import growingon.nursery.Scenario;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.Objects;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/**
 * What reading needs to know beside the files.
 *
 * @param today the day it is: nothing in a daybook has happened after it, and its month is the
 *     first of a plan that does not state one
 * @param stock a list of the grower's own that is read this once in place of those that own words
 *     name
 * @param speciesFrom folder that the species are read from in place of the nursery's own
 * @param withPast whether what was written down of earlier years is read too
 * @param fromOldest whether a plan that states no first month begins with the oldest stock list
 * @param takesLists whether a list of the grower's own is enough, without a nursery around it
 * @param worth what a plan is worth, in money, for who wants to know what answers move it most
 */
public record LoadOptions(
    LocalDate today,
    Optional<Path> stock,
    Optional<Path> speciesFrom,
    boolean withPast,
    boolean fromOldest,
    boolean takesLists,
    Optional<ToDoubleFunction<Scenario>> worth) {
  public LoadOptions {
    Objects.requireNonNull(today);
    Objects.requireNonNull(stock);
    Objects.requireNonNull(speciesFrom);
    Objects.requireNonNull(worth);
  }

  /** Nothing but the files and the day. */
  public LoadOptions(LocalDate today) {
    this(today, Optional.empty(), Optional.empty(), false, false, false, Optional.empty());
  }

  /** The same with a list in place of those that own words name. */
  public LoadOptions withStock(Optional<Path> list) {
    return new LoadOptions(today, list, speciesFrom, withPast, fromOldest, takesLists, worth);
  }

  /** The same with species of another folder. */
  public LoadOptions withSpeciesFrom(Optional<Path> folder) {
    return new LoadOptions(today, stock, folder, withPast, fromOldest, takesLists, worth);
  }

  /** The same with what was written down of earlier years. */
  public LoadOptions withPastRecords() {
    return new LoadOptions(today, stock, speciesFrom, true, fromOldest, takesLists, worth);
  }

  /** The same for who looks back, so that a plan without a first month begins in the past. */
  public LoadOptions lookingBack() {
    return new LoadOptions(today, stock, speciesFrom, true, true, takesLists, worth);
  }

  /** The same for whoever plans or checks a list of the grower's own as it is. */
  public LoadOptions takingLists() {
    return new LoadOptions(today, stock, speciesFrom, withPast, fromOldest, true, worth);
  }

  /** The same for who can value a plan. */
  public LoadOptions valuing(ToDoubleFunction<Scenario> worth) {
    return new LoadOptions(
        today, stock, speciesFrom, withPast, fromOldest, takesLists, Optional.of(worth));
  }

  YearMonth thisMonth() {
    return YearMonth.from(today);
  }
}
