package growingon.nursery.market;

import growingon.nursery.number.Check;
import growingon.nursery.time.Horizon;
import java.time.YearMonth;
import java.util.Objects;
import java.util.Optional;

/**
 * Cash beside what the routes and tables cause: rent, a new tunnel, a grant; or spraying, a stake
 * or a licence of one lot, which then stands in its account. Hours are work on top of the amount.
 *
 * @param when one month, or empty with {@code every}
 * @param every how often, if not once
 * @param what a word for it
 * @param amount received if positive, paid if negative
 * @param hours hours of work each time, at the hourly rate on top of the amount
 * @param lot the lot or offer that causes it, if one does
 * @param from first month in which it happens, if it happens again and again
 * @param until last month in which it happens, if it happens again and again
 */
public record OtherCash(
    Optional<YearMonth> when,
    Every every,
    String what,
    double amount,
    double hours,
    Optional<String> lot,
    Optional<YearMonth> from,
    Optional<YearMonth> until) {
  /** How often it happens. */
  public enum Every {
    /** In the one month given. */
    ONCE,
    /** In every month. */
    MONTH,
    /** In the first month of every season, and in the first of the plan. */
    SEASON
  }

  public OtherCash {
    Check.that(when.isPresent() == (every == Every.ONCE), "a month is given once only", when);
    Check.named(what, "other cash");
    Check.that(Double.isFinite(amount), "an amount is a number", amount);
    Check.notNegative(hours, "hours of " + what);
    Objects.requireNonNull(lot);
    Objects.requireNonNull(from);
    Objects.requireNonNull(until);
  }

  /** Cash that no lot causes, without hours. */
  public OtherCash(Optional<YearMonth> when, Every every, String what, double amount) {
    this(when, every, what, amount, 0, Optional.empty(), Optional.empty(), Optional.empty());
  }

  /** The same cash, caused by another lot. */
  public OtherCash of(Optional<String> anotherLot) {
    return new OtherCash(when, every, what, amount, hours, anotherLot, from, until);
  }

  /** Whether it falls in a month of a plan, given as its offset, by its months alone. */
  public boolean isDue(int month, Horizon horizon) {
    YearMonth now = horizon.month(month);
    boolean within =
        from.map(first -> !now.isBefore(first)).orElse(true)
            && until.map(last -> !now.isAfter(last)).orElse(true);
    return within
        && switch (every) {
          case ONCE -> when.get().equals(now);
          case MONTH -> true;
          case SEASON -> month == horizon.seasonFirst(horizon.season(month));
        };
  }

  /** Whether it says itself in which months it may fall, also before its lot arrives. */
  public boolean namesItsMonths() {
    return every == Every.ONCE || from.isPresent();
  }
}
