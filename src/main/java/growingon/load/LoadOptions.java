package growingon.load;

import java.nio.file.Path;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.Objects;
import java.util.Optional;

/**
 * What reading needs to know beside the files.
 *
 * @param today the day it is: nothing in a daybook has happened after it, and its month is the
 *     first of a plan that does not state one
 * @param stock a list of the grower's own that is read this once in place of those that own words
 *     name
 */
public record LoadOptions(LocalDate today, Optional<Path> stock) {
  public LoadOptions {
    Objects.requireNonNull(today);
    Objects.requireNonNull(stock);
  }

  /** The day it is, with the lists that own words name. */
  public LoadOptions(LocalDate today) {
    this(today, Optional.empty());
  }

  YearMonth thisMonth() {
    return YearMonth.from(today);
  }
}
