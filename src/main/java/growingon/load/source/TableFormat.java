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
 * @param subject headings whose values say what a row is of
 * @param spellings heading by each way to write it, as {@link Texts#headingKey} gives it
 */
public record TableFormat(
    String name,
    List<String> needed,
    List<String> optional,
    String prefix,
    List<String> subject,
    Map<String, String> spellings) {
  /** No heading is longer. */
  private static final int LONGEST = 200;

  public TableFormat {
    needed = List.copyOf(needed);
    optional = List.copyOf(optional);
    subject = List.copyOf(subject);
    Map<String, String> all = new HashMap<>(spellings);
    Stream.concat(needed.stream(), optional.stream())
        .forEach(heading -> all.put(Texts.headingKey(heading), heading));
    spellings = Map.copyOf(all);
  }

  /** A table with the headings that it needs; the first says what a row is of. */
  public static TableFormat of(String name, String... needed) {
    return new TableFormat(name, List.of(needed), List.of(), "", List.of(needed[0]), Map.of());
  }

  public TableFormat with(String... more) {
    return new TableFormat(name, needed, List.of(more), prefix, subject, spellings);
  }

  public TableFormat withAny(String beginning) {
    return new TableFormat(name, needed, optional, beginning, subject, spellings);
  }

  public TableFormat about(String... headings) {
    return new TableFormat(name, needed, optional, prefix, List.of(headings), spellings);
  }

  /** Another way to write a heading. */
  public TableFormat alias(String other, String heading) {
    return understanding(Map.of(other, heading));
  }

  /** Further ways to write headings, also such as are not offered to whoever lays a table out. */
  public TableFormat understanding(Map<String, String> others) {
    Map<String, String> all = new HashMap<>(spellings);
    all.putAll(others);
    return new TableFormat(name, needed, optional, prefix, subject, all);
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
    if (!prefix.isEmpty() && key.startsWith(prefix) && key.length() > prefix.length()) {
      return Optional.of(key);
    }
    return Optional.ofNullable(spellings.get(key));
  }
}
