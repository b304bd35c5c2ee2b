package growingon.load.list;

import growingon.load.cell.Cell;
import growingon.load.file.AsLaidOut;
import growingon.load.file.Tables;
import growingon.load.row.Row;
import growingon.load.source.Table;
import growingon.load.source.TableFormat;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * A table of a nursery around a list, where its cells are still as they were laid out: they become
 * what they would be laid out with today, for the list has other rows or the grower has answered.
 *
 * @param then what they were laid out with
 * @param now what they would be laid out with
 * @param by columns by which its rows are known
 */
record FollowsTheList(
    String table, AsLaidOut then, Map<List<String>, Map<String, String>> now, List<String> by) {

  /** For a table that would be laid out with some rows. */
  static Optional<FollowsTheList> of(String table, AsLaidOut then, List<Map<String, String>> rows) {
    return rows.isEmpty() || !then.isOf(table)
        ? Optional.empty()
        : Optional.of(
            new FollowsTheList(
                table, then, AsLaidOut.known(table, rows), AsLaidOut.knownBy(table, rows.get(0))));
  }

  /** Changes what was not changed by the grower; rows that the list has no more are left out. */
  void in(Tables all, TableFormat format) {
    all.keep(format, row -> now.containsKey(known(row)) || !isAsLaidOut(row));
    all.change(format, this::followed);
  }

  /** Rows that come with the list of today; what the grower has left out stays away. */
  List<Map<String, String>> comeSince(Table there) {
    Set<List<String>> known = new HashSet<>();
    there.rows().forEach(row -> known.add(known(row)));
    return now.entrySet().stream()
        .filter(row -> !known.contains(row.getKey()))
        .filter(row -> then.row(table, row.getKey()).isEmpty())
        .map(Map.Entry::getValue)
        .toList();
  }

  private List<String> known(Row row) {
    return AsLaidOut.known(row, by);
  }

  private boolean isAsLaidOut(Row row) {
    return then.row(table, known(row))
        .filter(
            laidOut ->
                row.headings().stream()
                    .allMatch(
                        column ->
                            UsualCells.isSame(
                                row.cell(column).shown(), laidOut.getOrDefault(column, ""))))
        .isPresent();
  }

  private Row followed(Row row) {
    Optional<Map<String, String>> laidOut = then.row(table, known(row));
    if (laidOut.isEmpty()) {
      return row;
    }
    Row followed = row;
    for (Map.Entry<String, String> cell : now.getOrDefault(known(row), Map.of()).entrySet()) {
      String was = laidOut.get().getOrDefault(cell.getKey(), "");
      String is = row.cell(cell.getKey()).shown();
      if (UsualCells.isSame(is, was) && !UsualCells.isSame(is, cell.getValue())) {
        followed = followed.with(cell.getKey(), Cell.ofText(cell.getValue()), row.where());
      }
    }
    return followed;
  }
}
