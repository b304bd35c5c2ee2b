package growingon.load;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The headings of a table.
 *
 * @param name name of the sheet or CSV file
 * @param needed headings that must be there
 * @param optional headings that may be there
 * @param prefix beginning of headings of which there may be any number, such as "mm a year " before
 *     a growing condition; empty if there are none
 * @param subject headings whose values say what a row is of
 * @param aliases other ways to write a heading
 */
record TableFormat(
    String name,
    List<String> needed,
    List<String> optional,
    String prefix,
    List<String> subject,
    Map<String, String> aliases) {
  TableFormat {
    needed = List.copyOf(needed);
    optional = List.copyOf(optional);
    subject = List.copyOf(subject);
    aliases = Map.copyOf(aliases);
  }

  /** A table with the headings that it needs; the first says what a row is of. */
  static TableFormat of(String name, String... needed) {
    return new TableFormat(name, List.of(needed), List.of(), "", List.of(needed[0]), Map.of());
  }

  TableFormat with(String... more) {
    return new TableFormat(name, needed, List.of(more), prefix, subject, aliases);
  }

  TableFormat withAny(String beginning) {
    return new TableFormat(name, needed, optional, beginning, subject, aliases);
  }

  TableFormat about(String... headings) {
    return new TableFormat(name, needed, optional, prefix, List.of(headings), aliases);
  }

  /** Another way to write a heading. */
  TableFormat alias(String other, String heading) {
    return new TableFormat(name, needed, optional, prefix, subject, Map.of(other, heading));
  }

  List<String> known() {
    List<String> all = new ArrayList<>(needed);
    all.addAll(optional);
    return all;
  }

  /** The heading that is meant by what was typed, if it is one of this table. */
  Optional<String> heading(String typed) {
    return matching(Texts.headingKey(typed))
        .or(() -> matching(Texts.headingKeyWithoutRemarks(typed)));
  }

  private Optional<String> matching(String key) {
    if (aliases.containsKey(key)) {
      return Optional.of(aliases.get(key));
    }
    if (!prefix.isEmpty() && key.startsWith(prefix) && key.length() > prefix.length()) {
      return Optional.of(key);
    }
    return known().stream().filter(each -> Texts.headingKey(each).equals(key)).findFirst();
  }
}
