package growingon.report.plan;

import growingon.nursery.record.InList;
import growingon.nursery.record.OwnReading;
import growingon.nursery.record.OwnReading.Linked;
import growingon.nursery.record.OwnReading.Listed;
import growingon.report.build.TableOf;
import growingon.report.figures.Context;
import growingon.report.model.Kind;
import growingon.report.model.Origins;
import growingon.report.model.Sheet;
import growingon.report.model.Table;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
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
    TableOf<List<Object>> table = TableOf.table(listed.name(), listed.title());
    for (int i = 0; i < listed.columns().size(); i++) {
      int index = i;
      String key = listed.columns().get(i);
      table.column(
          key, key.replace('_', ' '), "", kind(listed, i), row -> unlessEmpty(row.get(index)));
    }
    return table.of(listed.rows()).from(origins(listed));
  }

  private static Object unlessEmpty(Object cell) {
    return "".equals(cell) ? null : shown(cell);
  }

  private static Object shown(Object cell) {
    return cell instanceof Linked linked ? linked.shown() : cell;
  }

  private static Origins origins(Listed listed) {
    int column = 0;
    Map<Integer, InList> byRow = new HashMap<>();
    for (int row = 0; row < listed.rows().size(); row++) {
      List<Object> cells = listed.rows().get(row);
      for (int i = 0; i < cells.size(); i++) {
        if (cells.get(i) instanceof Linked linked) {
          column = i;
          byRow.put(row, linked.to());
        }
      }
    }
    return Origins.of(column, byRow);
  }

  private static Kind kind(Listed listed, int column) {
    List<Object> filled =
        listed.rows().stream()
            .map(row -> shown(row.get(column)))
            .filter(cell -> !"".equals(cell))
            .toList();
    if (filled.isEmpty() || !filled.stream().allMatch(Number.class::isInstance)) {
      return Kind.TEXT;
    }
    return filled.stream().anyMatch(Double.class::isInstance) ? Kind.NUMBER : Kind.COUNT;
  }
}
