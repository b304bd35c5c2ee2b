package growingon.report.plan;

import growingon.nursery.OwnReading;
import growingon.nursery.OwnReading.Listed;
import growingon.report.figures.Context;
import growingon.report.model.Column;
import growingon.report.model.FixedRow;
import growingon.report.model.Kind;
import growingon.report.model.Sheet;
import growingon.report.model.Table;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** How a grower's own list was read: every row, every word, every question. */
final class ListSheet {
  private ListSheet() {}

  /** The sheet, where the stock comes from a list. */
  static Optional<Sheet> of(Context context) {
    return context
        .inputs()
        .own()
        .map(
            own ->
                new Sheet(
                    "Your list",
                    own.sentences(),
                    own.tables().stream()
                        .filter(each -> !each.rows().isEmpty())
                        .map(ListSheet::table)
                        .toList(),
                    List.of(),
                    false));
  }

  /** What is said first of how much is usual. */
  static Optional<String> usual(Context context) {
    return context
        .inputs()
        .own()
        .map(OwnReading::sentences)
        .flatMap(all -> all.stream().reduce((a, b) -> b));
  }

  private static Table table(Listed listed) {
    List<Column> columns = new ArrayList<>();
    for (int i = 0; i < listed.columns().size(); i++) {
      String key = listed.columns().get(i);
      columns.add(Column.of(key, key.replace('_', ' '), "", kind(listed, i)));
    }
    return new Table(
        listed.name(),
        listed.title(),
        List.of(),
        columns,
        listed.rows().stream().<List<Object>>map(row -> new FixedRow(cells(row))).toList());
  }

  private static Object[] cells(List<Object> row) {
    return row.stream().map(cell -> "".equals(cell) ? null : cell).toArray();
  }

  private static Kind kind(Listed listed, int column) {
    List<Object> filled =
        listed.rows().stream()
            .map(row -> row.get(column))
            .filter(cell -> !"".equals(cell))
            .toList();
    if (filled.isEmpty() || !filled.stream().allMatch(Number.class::isInstance)) {
      return Kind.TEXT;
    }
    return filled.stream().anyMatch(Double.class::isInstance) ? Kind.NUMBER : Kind.COUNT;
  }
}
