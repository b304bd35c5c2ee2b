package growingon.load.own.account;

import growingon.nursery.record.OwnReading.Listed;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/**
 * A table of one row for each of some things, in which every column stands beside what it shows of
 * one of them.
 *
 * @param <T> what a row is made from
 */
final class ListedOf<T> {
  private final String name;
  private final String title;
  private final List<String> columns = new ArrayList<>();
  private final List<Function<? super T, Object>> cells = new ArrayList<>();

  private ListedOf(String name, String title) {
    this.name = name;
    this.title = title;
  }

  static <T> ListedOf<T> table(String name, String title) {
    return new ListedOf<>(name, title);
  }

  ListedOf<T> column(String key, Function<? super T, Object> cell) {
    columns.add(key);
    cells.add(cell);
    return this;
  }

  /** The table of these, a row each. */
  Listed of(List<T> things) {
    List<List<Object>> rows = new ArrayList<>();
    for (T thing : things) {
      rows.add(cells.stream().map(cell -> cell.apply(thing)).toList());
    }
    return new Listed(name, title, columns, rows);
  }
}
