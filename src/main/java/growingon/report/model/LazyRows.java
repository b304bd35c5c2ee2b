package growingon.report.model;

import java.util.AbstractList;
import java.util.Arrays;
import java.util.List;
import java.util.RandomAccess;
import java.util.function.IntFunction;
import java.util.function.ToIntFunction;

/**
 * Rows that are made each time they are asked for: of thousands of lots in every month they would
 * fill more memory than the plan itself.
 */
public final class LazyRows extends AbstractList<List<Object>> implements RandomAccess {
  private final int size;
  private final IntFunction<FixedRow> maker;

  /**
   * Rows not yet made.
   *
   * @param maker makes the row of an index; the same row, whenever it is asked
   */
  public LazyRows(int size, IntFunction<FixedRow> maker) {
    this.size = size;
    this.maker = maker;
  }

  /**
   * Rows of lots, some of each.
   *
   * @param <L> what a lot is taken as
   * @param rowsOf number of rows of a lot
   * @param maker makes the row of an index among those of a lot
   */
  public static <L> LazyRows byLot(List<L> lots, ToIntFunction<L> rowsOf, RowOfLot<L> maker) {
    List<L> having = lots.stream().filter(lot -> rowsOf.applyAsInt(lot) > 0).toList();
    int[] first = new int[having.size()];
    int size = 0;
    for (int i = 0; i < first.length; i++) {
      first[i] = size;
      size += rowsOf.applyAsInt(having.get(i));
    }
    return new LazyRows(
        size,
        index -> {
          int found = Arrays.binarySearch(first, index);
          int lot = found >= 0 ? found : -found - 2;
          return maker.row(having.get(lot), index - first[lot]);
        });
  }

  /** Makes a row of a lot. */
  @FunctionalInterface
  public interface RowOfLot<L> {
    /** The row of an index among those of a lot. */
    FixedRow row(L lot, int index);
  }

  @Override
  public List<Object> get(int index) {
    return maker.apply(index);
  }

  @Override
  public int size() {
    return size;
  }
}
