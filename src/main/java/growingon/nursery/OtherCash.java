package growingon.nursery;

import java.time.YearMonth;
import java.util.Optional;

/**
 * Cash that no lot causes: rent, a new tunnel, a grant.
 *
 * @param when one month, or empty with {@code every}
 * @param every how often, if not once
 * @param what a word for it
 * @param amount received if positive, paid if negative
 */
public record OtherCash(Optional<YearMonth> when, Every every, String what, double amount) {
  /** How often it happens. */
  public enum Every {
    /** In the one month given. */
    ONCE,
    /** In every month. */
    MONTH,
    /** In the first month of every season. */
    SEASON
  }

  public OtherCash {
    Check.that(when.isPresent() == (every == Every.ONCE), "a month is given once only", when);
    Check.named(what, "other cash");
    Check.that(Double.isFinite(amount), "an amount is a number", amount);
  }

  /** Whether it falls in a month of a plan, given as its offset. */
  public boolean isDue(int month, Horizon horizon) {
    return switch (every) {
      case ONCE -> when.get().equals(horizon.month(month));
      case MONTH -> true;
      case SEASON -> month == horizon.seasonFirst(horizon.season(month));
    };
  }
}
