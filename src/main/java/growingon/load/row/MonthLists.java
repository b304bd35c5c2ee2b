package growingon.load.row;

import growingon.load.cell.Cell;
import growingon.nursery.species.Habit;
import growingon.nursery.time.Hemisphere;
import growingon.nursery.time.MonthShares;
import growingon.problem.advice.ValueAdvice;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/** Lists of twelve shares, and those that are shipped for growth and loss. */
public final class MonthLists {
  /** How far the sum may lie from the whole, as a part of it. */
  private static final double TOLERANCE = 0.005;

  // Common practice, no source: when trunks thicken and when plants are lost, northern half.
  private static final MonthShares DECIDUOUS_GROWTH =
      MonthShares.of(0, 0, 3, 12, 22, 22, 16, 12, 8, 4, 1, 0);
  private static final MonthShares EVERGREEN_GROWTH =
      MonthShares.of(1, 2, 6, 12, 17, 17, 14, 12, 9, 6, 3, 1);
  private static final MonthShares DECIDUOUS_LOSS =
      MonthShares.of(6, 6, 10, 12, 9, 9, 11, 10, 7, 6, 7, 7);
  private static final MonthShares EVERGREEN_LOSS =
      MonthShares.of(10, 10, 10, 8, 7, 8, 11, 11, 7, 5, 6, 7);

  private MonthLists() {}

  /** Shipped shares of a year's growth. */
  public static MonthShares growth(Habit habit, Hemisphere hemisphere) {
    return in(hemisphere, habit == Habit.DECIDUOUS ? DECIDUOUS_GROWTH : EVERGREEN_GROWTH);
  }

  /** Shipped shares of a year's loss. */
  public static MonthShares loss(Habit habit, Hemisphere hemisphere) {
    return in(hemisphere, habit == Habit.DECIDUOUS ? DECIDUOUS_LOSS : EVERGREEN_LOSS);
  }

  private static MonthShares in(Hemisphere hemisphere, MonthShares northern) {
    return hemisphere == Hemisphere.NORTH ? northern : northern.mirrored();
  }

  /** The shares that a row states, or those that hold if it states none. */
  public static MonthShares get(Row row, String heading, MonthShares ifEmpty) {
    if (!row.has(heading)) {
      row.assume(heading, As.twelve(), percents(ifEmpty));
      return ifEmpty;
    }
    return row.find(heading, As.twelve())
        .flatMap(values -> whole(row, heading, values))
        .orElse(ifEmpty);
  }

  /** Shares or percentages; a sum a little off the whole is scaled, and said. */
  private static Optional<MonthShares> whole(Row row, String heading, List<Double> values) {
    double sum = values.stream().mapToDouble(Double::doubleValue).sum();
    double whole = sum > 10 ? 100 : 1;
    if (Math.abs(sum - whole) > TOLERANCE * whole + 1e-9) {
      row.fail(heading, where -> ValueAdvice.sharesDoNotSum(where, Cell.Number.plain(sum)));
      return Optional.empty();
    }
    if (Math.abs(sum - whole) > 1e-9 * whole) {
      row.remark(heading, where -> ValueAdvice.sharesScaled(where, Cell.Number.plain(sum)));
    }
    return Optional.of(MonthShares.of(values.stream().mapToDouble(Double::doubleValue).toArray()));
  }

  private static List<Double> percents(MonthShares shares) {
    return new ArrayList<>(
        IntStream.range(0, 12).mapToObj(month -> shares.get(month) * 100).toList());
  }
}
