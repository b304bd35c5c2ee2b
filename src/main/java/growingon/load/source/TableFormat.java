package growingon.load.source;

import growingon.load.cell.Texts;
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
 */
public record TableFormat(
    String name,
    List<String> needed,
    List<String> optional,
    String prefix,
    List<String> written,
    List<String> subject,
    Map<String, String> spellings) {
  /** No heading is longer. */
  private static final int LONGEST = 200;

  public TableFormat {
    needed = List.copyOf(needed);
    optional = List.copyOf(optional);
    written = List.copyOf(written);
    subject = List.copyOf(subject);
    Map<String, String> all = new HashMap<>(spellings);
    Stream.concat(needed.stream(), optional.stream())
        .forEach(heading -> all.put(Texts.headingKey(heading), heading));
    spellings = Map.copyOf(all);
  }

  /** A table with the headings that it needs; the first says what a row is of. */
  public static TableFormat of(String name, String... needed) {
    return new TableFormat(
        name, List.of(needed), List.of(), "", List.of(), List.of(needed[0]), Map.of());
  }

  public TableFormat with(String... more) {
    return new TableFormat(name, needed, List.of(more), prefix, written, subject, spellings);
  }

  public TableFormat withAny(String beginning) {
    return new TableFormat(name, needed, optional, beginning, written, subject, spellings);
  }

  /** Takes headings of this beginning, too, of which nobody is told who lays a table out. */
  public TableFormat withUnoffered(String... beginnings) {
    return new TableFormat(name, needed, optional, prefix, List.of(beginnings), subject, spellings);
  }

  public TableFormat about(String... headings) {
    return new TableFormat(name, needed, optional, prefix, written, List.of(headings), spellings);
  }

  /** Another way to write a heading. */
  public TableFormat alias(String other, String heading) {
    return understanding(Map.of(other, heading));
  }

  /** Further ways to write headings, also such as are not offered to whoever lays a table out. */
  public TableFormat understanding(Map<String, String> others) {
    Map<String, String> all = new HashMap<>(spellings);
    all.putAll(others);
    return new TableFormat(name, needed, optional, prefix, written, subject, all);
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
