package growingon.report.model;

import java.util.AbstractList;
import java.util.List;
import java.util.RandomAccess;
import java.util.function.IntFunction;

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

  @Override
  public List<Object> get(int index) {
    return maker.apply(index);
  }

  @Override
  public int size() {
    return size;
  }
}
