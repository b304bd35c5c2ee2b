package growingon.report;

import java.util.AbstractList;
import java.util.RandomAccess;

/** The cells of a row, which never change; long tables have hundreds of thousands of rows. */
final class FixedRow extends AbstractList<Object> implements RandomAccess {
  private final Object[] cells;

  FixedRow(Object... cells) {
    this.cells = cells.clone();
  }

  @Override
  public Object get(int index) {
    return cells[index];
  }

  @Override
  public int size() {
    return cells.length;
  }
}
