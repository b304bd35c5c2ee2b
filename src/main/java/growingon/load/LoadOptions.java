package growingon.load;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.Objects;

/**
 * What reading needs to know beside the files.
 *
 * @param today the day it is: nothing in a daybook has happened after it, and its month is the
 *     first of a plan that does not state one
 */
public record LoadOptions(LocalDate today) {
  public LoadOptions {
    Objects.requireNonNull(today);
  }

  YearMonth thisMonth() {
    return YearMonth.from(today);
  }
}
