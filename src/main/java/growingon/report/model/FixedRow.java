package growingon.report.model;

import java.util.AbstractList;
import java.util.RandomAccess;

/** The cells of a row, which never change; long tables have hundreds of thousands of rows. */
public final class FixedRow extends AbstractList<Object> implements RandomAccess {
  private final Object[] cells;

  /** A row of cells, which is theirs from now on. */
  public FixedRow(Object... cells) {
    this.cells = cells;
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
