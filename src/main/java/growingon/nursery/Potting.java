package growingon.nursery;

import java.time.YearMonth;
import java.util.Objects;
import java.util.Optional;

/**
 * What a lot stands in.
 *
 * @param pot its pot, if it is potted
 * @param potted when it was potted, if known
 * @param rootWork when its roots were last cut, if known
 */
public record Potting(
    Optional<String> pot, Optional<YearMonth> potted, Optional<YearMonth> rootWork) {
  /** Not in a pot. */
  public static final Potting NONE =
      new Potting(Optional.empty(), Optional.empty(), Optional.empty());

  public Potting {
    Objects.requireNonNull(pot);
    Objects.requireNonNull(potted);
    Objects.requireNonNull(rootWork);
  }
}
