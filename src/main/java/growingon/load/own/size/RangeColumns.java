package growingon.load.own.size;

import growingon.load.own.sheet.SheetCell;
import growingon.load.own.sheet.SheetRow;
import growingon.load.own.text.Keys;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * Two columns beside each other that are the ends of one range, as Höhe von and Höhe bis: read as
 * one column with 60-80 in it.
 *
 * @param ends the column of the upper end by that of the lower one
 * @param texts headings of the columns that are left
 */
public record RangeColumns(Map<Integer, Integer> ends, SortedMap<Integer, String> texts) {
  private static final Map<String, String> WORDS =
      Map.of(
          "from", "to", "von", "bis", "de", "a", "van", "tot", "da", "a", "desde", "hasta", "min",
          "max", "ab", "bis");

  /** Whether a heading is only an end of what stands above it. */
  public static boolean isEnd(String heading) {
    String key = Keys.of(heading);
    return WORDS.containsKey(key) || WORDS.containsValue(key);
  }

  /** The ranges among the columns of a heading row. */
  public static RangeColumns of(SortedMap<Integer, String> texts) {
    Map<Integer, Integer> ends = new HashMap<>();
    SortedMap<Integer, String> left = new TreeMap<>(texts);
    for (Map.Entry<Integer, String> each : texts.entrySet()) {
      Optional<String> base = base(each.getValue(), texts.getOrDefault(each.getKey() + 1, ""));
      if (base.isPresent()) {
        ends.put(each.getKey(), each.getKey() + 1);
        left.put(each.getKey(), base.get());
        left.remove(each.getKey() + 1);
      }
    }
    return new RangeColumns(ends, left);
  }

  /** What two headings are the ends of. */
  private static Optional<String> base(String lower, String upper) {
    List<String> low = Keys.words(Keys.of(lower));
    List<String> high = Keys.words(Keys.of(upper));
    for (String from : low) {
      String to = WORDS.getOrDefault(from, "");
      boolean pair =
          low.size() > 1
              && high.size() == low.size()
              && high.contains(to)
              && without(low, Set.of(from)).equals(without(high, Set.of(to)));
      if (pair) {
        return Optional.of(
            String.join(
                " ",
                List.of(lower.strip().split("\\s+")).stream()
                    .filter(word -> !Keys.of(word).equals(from))
                    .toList()));
      }
    }
    return Optional.empty();
  }

  private static List<String> without(List<String> words, Set<String> some) {
    return words.stream().filter(word -> !some.contains(word)).toList();
  }

  /** A row with each range in one cell. */
  public SheetRow joined(SheetRow row) {
    if (ends.isEmpty()) {
      return row;
    }
    TreeMap<Integer, SheetCell> cells = new TreeMap<>(row.cells());
    ends.forEach(
        (lower, upper) -> {
          SheetCell to = cells.remove(upper);
          SheetCell from = cells.get(lower);
          if (to != null) {
            cells.put(
                lower,
                from == null || from.text().equals(to.text())
                    ? to
                    : SheetCell.of(from.text() + "-" + to.text()));
          }
        });
    return new SheetRow(row.number(), row.hidden(), cells);
  }
}
