package growingon.nursery.lot;

import growingon.nursery.number.Check;
import java.time.YearMonth;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What a lot stands in.
 *
 * @param pot its pot, if it is potted
 * @param potted when it was potted, if known
 * @param rootWork when its roots were last cut, if known
 * @param ballKept share of the ball that stays on when it is potted for the first time, if it is
 *     known better than its route does
 */
public record Potting(
    Optional<String> pot,
    Optional<YearMonth> potted,
    Optional<YearMonth> rootWork,
    OptionalDouble ballKept) {
  /** Not in a pot. */
  public static final Potting NONE =
      new Potting(Optional.empty(), Optional.empty(), Optional.empty());

  /** In a pot, its next ball as its route says. */
  public Potting(Optional<String> pot, Optional<YearMonth> potted, Optional<YearMonth> rootWork) {
    this(pot, potted, rootWork, OptionalDouble.empty());
  }

  public Potting {
    Objects.requireNonNull(pot);
    Objects.requireNonNull(potted);
    Objects.requireNonNull(rootWork);
    ballKept.ifPresent(share -> Check.share(share, "ball kept"));
  }
}
