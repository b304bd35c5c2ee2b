package growingon.load.own.question;

import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What the cells to fill move, in words, those that move most first.
 *
 * @param cells the words of each, by the cell that it is about
 */
public record Moved(Map<Of, String> cells) {
  /** Of no cell it is known. */
  public static final Moved UNKNOWN = new Moved(Map.of());

  /** The cell that a row of to fill is about. */
  public record Of(String table, String row, String column) {
    public static Of of(Fill fill) {
      return new Of(fill.table(), fill.row(), fill.column());
    }
  }

  public Moved {
    cells = Collections.unmodifiableMap(new LinkedHashMap<>(cells));
  }

  public boolean isKnown() {
    return !cells.isEmpty();
  }

  /**
   * Those with the words that are known of them: first what no number can be said of, then what
   * moves most, then what nothing is known of.
   */
  List<Fill> told(List<Fill> fills) {
    List<Of> order = List.copyOf(cells.keySet());
    return fills.stream()
        .sorted(Comparator.comparing(fill -> rank(fill, order)))
        .map(fill -> fill.moving(cells.getOrDefault(Of.of(fill), fill.moves())))
        .toList();
  }

  private static int rank(Fill fill, List<Of> order) {
    int known = order.indexOf(Of.of(fill));
    return fill.between().isEmpty() ? -1 : known < 0 ? order.size() : known;
  }
}
