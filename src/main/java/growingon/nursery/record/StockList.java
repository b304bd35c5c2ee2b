package growingon.nursery.record;

import growingon.nursery.lot.Lot;
import growingon.nursery.number.Check;
import growingon.problem.Where;
import java.time.YearMonth;
import java.util.List;
import java.util.Objects;
import java.util.OptionalInt;

/**
 * The stock list of some month, as far as the past is learnt from it. Each row holds for the
 * beginning of the month in which its lot was counted.
 *
 * @param name of its file, as the grower knows it
 * @param month the month that the list as a whole is of: lots that it lacks were gone by then
 * @param rows its rows
 */
public record StockList(String name, YearMonth month, List<Row> rows) {
  /**
   * A row.
   *
   * @param lot the lot as the row states it
   * @param isCounted whether its plants were counted; false for about so many
   * @param isMeasured whether its trunks were measured; false for the usual ones of its size
   * @param measured how many trunks the mean is of, if stated
   * @param where the row
   */
  public record Row(
      Lot lot, boolean isCounted, boolean isMeasured, OptionalInt measured, Where where) {
    public Row {
      Objects.requireNonNull(lot);
      Objects.requireNonNull(where);
      Check.that(measured.orElse(1) >= 1, "at least one trunk is measured", measured);
    }
  }

  public StockList {
    Check.named(name, "a stock list");
    Objects.requireNonNull(month);
    rows = List.copyOf(rows);
  }
}
