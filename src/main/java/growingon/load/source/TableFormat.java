package growingon.load.source;

import growingon.load.cell.Texts;
import growingon.load.row.Heading;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The headings of a table.
 *
 * @param name name of the sheet or CSV file
 * @param needed headings that must be there
 * @param optional headings that may be there
 * @param prefix beginning of headings of which there may be any number, such as "mm a year " before
 *     a growing condition; empty if there are none
 * @param written beginnings of headings that are understood and not offered to whoever lays a table
 *     out
 * @param subject headings whose values say what a row is of
 * @param spellings heading by each way to write it, as {@link Texts#headingKey} gives it
 * @param columns what its headings are, in the order in which a table is laid out
 */
public record TableFormat(
    String name,
    List<String> needed,
    List<String> optional,
    String prefix,
    List<String> written,
    List<String> subject,
    Map<String, String> spellings,
    List<Heading<?>> columns) {
  /** No heading is longer. */
  private static final int LONGEST = 200;

  public TableFormat {
    needed = List.copyOf(needed);
    optional = List.copyOf(optional);
    written = List.copyOf(written);
    subject = List.copyOf(subject);
    columns = List.copyOf(columns);
    Map<String, String> all = new HashMap<>(spellings);
    Stream.concat(needed.stream(), optional.stream())
        .forEach(heading -> all.put(Texts.headingKey(heading), heading));
    spellings = Map.copyOf(all);
  }

  /** A table of columns, as it is laid out; the first that is needed says what a row is of. */
  public static TableFormat of(String name, Heading<?>... columns) {
    List<String> needed = names(columns, true);
    Map<String, String> spellings = new HashMap<>();
    for (Heading<?> column : columns) {
      column.others().forEach(other -> spellings.put(other, column.name()));
    }
    return new TableFormat(
        name,
        needed,
        names(columns, false),
        "",
        List.of(),
        needed.subList(0, 1),
        spellings,
        List.of(columns));
  }

  private static List<String> names(Heading<?>[] columns, boolean needed) {
    return Stream.of(columns)
        .filter(column -> column.says().needed() == needed)
        .<String>map(Heading::name)
        .toList();
  }

  /** Takes headings of a beginning, too, some of which are laid out after another column. */
  public TableFormat withAny(String beginning, String after, Heading<?>... some) {
    List<Heading<?>> all = new ArrayList<>(columns);
    int place = columns.stream().<String>map(Heading::name).toList().indexOf(after);
    all.addAll(place + 1, List.of(some));
    return new TableFormat(name, needed, optional, beginning, written, subject, spellings, all);
  }

  /** Takes headings of this beginning, too, of which nobody is told who lays a table out. */
  public TableFormat withUnoffered(String... beginnings) {
    return new TableFormat(
        name, needed, optional, prefix, List.of(beginnings), subject, spellings, columns);
  }

  /** The columns that say what a row is of. */
  public TableFormat about(Heading<?>... columns) {
    return about(Stream.of(columns).<String>map(Heading::name).toList());
  }

  /** Every column says what a row is of: what happened is no assumption of a plan. */
  public TableFormat aboutAll() {
    return about(known());
  }

  private TableFormat about(List<String> headings) {
    return new TableFormat(name, needed, optional, prefix, written, headings, spellings, columns);
  }

  /** Further ways to write headings, also such as are not offered to whoever lays a table out. */
  public TableFormat understanding(Map<String, String> others) {
    Map<String, String> all = new HashMap<>(spellings);
    all.putAll(others);
    return new TableFormat(name, needed, optional, prefix, written, subject, all, columns);
  }

  public List<String> known() {
    List<String> all = new ArrayList<>(needed);
    all.addAll(optional);
    return all;
  }

  /** The heading that is meant by what was typed, if it is one of this table. */
  Optional<String> heading(String typed) {
    return typed.length() > LONGEST
        ? Optional.empty()
        : matching(Texts.headingKey(typed))
            .or(() -> matching(Texts.headingKeyWithoutRemarks(typed)));
  }

  private Optional<String> matching(String key) {
    if (isOf(prefix, key) || written.stream().anyMatch(each -> isOf(each, key))) {
      return Optional.of(key);
    }
    return Optional.ofNullable(spellings.get(key));
  }

  private static boolean isOf(String beginning, String key) {
    return !beginning.isEmpty() && key.startsWith(beginning) && key.length() > beginning.length();
  }
}
