package growingon.load.row;

import growingon.nursery.time.MonthShares;
import growingon.problem.advice.ValueAdvice;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/** Lists of twelve shares, January first, as a row states them. */
public final class MonthLists {
  /** How far the sum may lie from the whole, as a part of it. */
  private static final double TOLERANCE = 0.005;

  private MonthLists() {}

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
      row.fail(heading, where -> ValueAdvice.sharesDoNotSum(where, sum));
      return Optional.empty();
    }
    if (Math.abs(sum - whole) > 1e-9 * whole) {
      row.remark(heading, where -> ValueAdvice.sharesScaled(where, sum));
    }
    return Optional.of(MonthShares.of(values.stream().mapToDouble(Double::doubleValue).toArray()));
  }

  private static List<Double> percents(MonthShares shares) {
    return new ArrayList<>(
        IntStream.range(0, 12).mapToObj(month -> shares.get(month) * 100).toList());
  }
}
