package growingon.nursery.route;

import growingon.nursery.number.Check;
import growingon.nursery.number.ValueText;
import java.time.Month;

/** When a step of a route is due. */
public sealed interface When {
  /** In the month of arrival. */
  record Arrival() implements When {
    @Override
    public String toString() {
      return "arrival";
    }
  }

  /** The first {@code month} on or after arrival, plus {@code year} years. */
  record InYear(Month month, int year) implements When {
    public InYear {
      Check.notNegative(year, "year");
    }

    @Override
    public String toString() {
      return ValueText.of(month) + " year " + year;
    }
  }

  /** A number of months after an earlier step of the route was done. */
  record After(int months, String step) implements When {
    public After {
      Check.notNegative(months, "months after");
    }

    @Override
    public String toString() {
      return months + (months == 1 ? " month after " : " months after ") + step;
    }
  }

  /** Again and again, every so many years, once the once-only steps above it are done. */
  record Every(int years, Month month) implements When {
    public Every {
      Check.that(years >= 1, "every n years needs n of at least 1", years);
    }

    @Override
    public String toString() {
      return (years == 1 ? "every year in " : "every " + years + " years in ")
          + ValueText.of(month);
    }
  }

  /** The whole lot, in the first {@code month} in which its mean trunk is thick enough. */
  record Once(Month month, double trunkMm) implements When {
    public Once {
      Check.positive(trunkMm, "the trunk of a step");
    }

    @Override
    public String toString() {
      return ValueText.of(month) + " once trunk " + ValueText.number(trunkMm);
    }
  }

  /** Whether it comes again and again. */
  default boolean recurs() {
    return this instanceof Every;
  }
}
