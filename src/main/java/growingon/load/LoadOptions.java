package growingon.load;

import java.time.YearMonth;
import java.util.Objects;

/**
 * What reading needs to know beside the files.
 *
 * @param thisMonth the month it is: first month of a plan that does not state one
 */
public record LoadOptions(YearMonth thisMonth) {
  public LoadOptions {
    Objects.requireNonNull(thisMonth);
  }
}
