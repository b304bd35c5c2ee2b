package growingon.load.own.heading;

import growingon.load.own.sheet.SheetCell;
import growingon.load.own.sheet.SheetRow;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * The columns under one size of a list that has number and price under each size, with the columns
 * of the plant before them, as a list of its own with a column of sizes.
 */
public final class SizeGroup {
  public static final int SIZE_COLUMN = 999_999;
  private static final String SIZE = "Size";

  private final HeadingRow head;
  private final int from;
  private final int to;

  /** Where the sizes end; what stands behind holds for all of them. */
  private final int end;

  private SizeGroup(HeadingRow head, int from, int to, int end) {
    this.end = end;
    this.head = head;
    this.from = from;
    this.to = to;
  }

  /** One for each size over headings of its own. */
  public static List<SizeGroup> of(HeadingRow head) {
    List<Integer> starts = new ArrayList<>(head.sizes().keySet());
    List<SizeGroup> groups = new ArrayList<>();
    for (int i = 0; i < starts.size(); i++) {
      int end = starts.get(starts.size() - 1) + HeadingRow.widthOf(starts);
      int to = i + 1 < starts.size() ? starts.get(i + 1) : end;
      groups.add(new SizeGroup(head, starts.get(i), to, end));
    }
    return groups;
  }

  public HeadingRow heading() {
    SortedMap<Integer, String> texts = its(head.texts());
    texts.put(SIZE_COLUMN, SIZE);
    return new HeadingRow(head.firstIndex(), head.lastIndex(), texts, head.score());
  }

  /** Its rows, without those that say something under other sizes only. */
  public List<SheetRow> rows(List<SheetRow> body) {
    List<SheetRow> rows = new ArrayList<>();
    for (SheetRow row : body) {
      boolean here = !row.cells().subMap(from, to).isEmpty();
      boolean elsewhere = !row.cells().subMap(head.sizes().firstKey(), end).isEmpty();
      if (here || !elsewhere) {
        SortedMap<Integer, SheetCell> cells = its(row.cells());
        if (here) {
          cells.put(SIZE_COLUMN, SheetCell.of(head.sizes().get(from)));
        }
        rows.add(new SheetRow(row.number(), row.hidden(), cells));
      }
    }
    return rows;
  }

  private <T> SortedMap<Integer, T> its(SortedMap<Integer, T> all) {
    SortedMap<Integer, T> some = new TreeMap<>(all.headMap(head.sizes().firstKey()));
    some.putAll(all.subMap(from, to));
    some.putAll(all.tailMap(end));
    return some;
  }
}
