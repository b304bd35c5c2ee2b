package growingon.review.written;

import growingon.nursery.record.DaybookLine;
import growingon.nursery.record.DaybookLine.What;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/**
 * How many plants can have left each lot between two counts: those alive after the first, with what
 * the lines say of the time between, less those that the second found.
 */
final class Rooms {
  private static final Set<What> COMING = Set.of(What.ARRIVED, What.RETURNED, What.FOUND);
  private static final Set<What> GOING =
      Set.of(What.SOLD, What.DIED, What.CULLED, What.USED, What.LOST);

  private static final TreeMap<LocalDate, Double> NONE = new TreeMap<>();

  private final Map<String, Map<LocalDate, Double>> gone = new HashMap<>();
  private final Map<String, TreeMap<LocalDate, Double>> counts = new HashMap<>();
  private final Map<String, TreeMap<LocalDate, Double>> changes = new HashMap<>();
  private final Map<String, Map<LocalDate, Double>> taken = new HashMap<>();

  /** A lot starts with so many plants. */
  void start(String lot, LocalDate day, double plants) {
    counts.computeIfAbsent(lot, each -> new TreeMap<>()).putIfAbsent(day, plants);
  }

  /**
   * A line changes how many there are.
   *
   * @param isBase whether it is the arrival of plants that the lot starts with
   */
  void note(DaybookLine line, boolean isBase) {
    double plants = line.quantity().orElse(0);
    if (line.what() == What.COUNTED && line.quantity().isPresent()) {
      // Several lines of a day count parts of a lot.
      LocalDate endOfDay = line.date().plusDays(1);
      counts
          .computeIfAbsent(line.lot(), each -> new TreeMap<>())
          .merge(endOfDay, plants, Double::sum);
    } else if (COMING.contains(line.what()) && !isBase) {
      change(line.lot(), line.date(), plants);
    } else if (GOING.contains(line.what())) {
      change(line.lot(), line.date(), -plants);
    } else if (line.toLot().isPresent()) {
      change(line.lot(), line.date(), -plants);
      change(line.toLot().get(), line.date(), plants);
    }
  }

  private void change(String lot, LocalDate day, double plants) {
    changes.computeIfAbsent(lot, each -> new TreeMap<>()).merge(day, plants, Double::sum);
  }

  /** Plants that can still have left a lot on a day. */
  double left(String lot, LocalDate day) {
    Map.Entry<LocalDate, Double> before = counts.getOrDefault(lot, NONE).floorEntry(day);
    LocalDate from = before == null ? LocalDate.MIN : before.getKey();
    double ofTime =
        gone.computeIfAbsent(lot, each -> new HashMap<>())
            .computeIfAbsent(from, each -> gone(lot, from, before == null ? 0 : before.getValue()));
    return Math.max(0, ofTime - taken(lot, from));
  }

  /** Plants that left a lot between two counts otherwise than by a line. */
  private double gone(String lot, LocalDate from, double alive) {
    Map.Entry<LocalDate, Double> after = counts.getOrDefault(lot, NONE).higherEntry(from);
    LocalDate to = after == null ? LocalDate.MAX : after.getKey();
    double left = alive - (after == null ? 0 : after.getValue());
    for (double each : changes.getOrDefault(lot, NONE).subMap(from, to).values()) {
      left += each;
    }
    return left;
  }

  private double taken(String lot, LocalDate from) {
    return taken.getOrDefault(lot, Map.of()).getOrDefault(from, 0.0);
  }

  /** Takes plants from a lot on a day; below nil, they come back. */
  void take(String lot, LocalDate day, double plants) {
    Map.Entry<LocalDate, Double> before = counts.getOrDefault(lot, NONE).floorEntry(day);
    LocalDate from = before == null ? LocalDate.MIN : before.getKey();
    taken.computeIfAbsent(lot, each -> new HashMap<>()).merge(from, plants, Double::sum);
  }
}
