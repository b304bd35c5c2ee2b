package growingon.write.workbook;

import growingon.report.model.Table;
import growingon.report.text.Plants;
import java.util.ArrayList;
import java.util.List;

/** Rows of a table that belong together. */
final class RowGroups {
  private RowGroups() {}

  /** Rows that begin a group: the value of the first column changes, and some value repeats. */
  static List<Boolean> starts(Table table) {
    List<Boolean> starts = new ArrayList<>();
    Object before = null;
    int groups = 0;
    for (List<Object> row : table.rows()) {
      Object first = row.get(0) instanceof Plants ? null : row.get(0);
      boolean starting = !starts.isEmpty() && first != null && !first.equals(before);
      groups += starting ? 1 : 0;
      starts.add(starting);
      before = first == null ? before : first;
    }
    boolean repeats = groups + 1 < table.rows().size();
    return repeats ? starts : starts.stream().map(each -> false).toList();
  }
}
