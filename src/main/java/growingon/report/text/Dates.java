package growingon.report.text;

import growingon.nursery.time.Horizon;
import java.time.YearMonth;
import java.util.stream.IntStream;

/** Months and season labels of a horizon, each made once for tables of many rows. */
public final class Dates {
  private final Horizon horizon;
  private final YearMonth[] months;
  private final String[] seasons;

  public Dates(Horizon horizon) {
    this.horizon = horizon;
    this.months =
        IntStream.range(0, horizon.months()).mapToObj(horizon::month).toArray(YearMonth[]::new);
    this.seasons =
        IntStream.range(0, horizon.seasons()).mapToObj(horizon::seasonLabel).toArray(String[]::new);
  }

  /** The month at an offset within the plan. */
  public YearMonth month(int offset) {
    return months[offset];
  }

  /** Label of the season in which an offset lies. */
  public String season(int offset) {
    return seasons[horizon.season(offset)];
  }

  /** Label of a season, 0 = first. */
  public String label(int season) {
    return seasons[season];
  }
}
