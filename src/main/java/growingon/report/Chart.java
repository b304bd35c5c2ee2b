package growingon.report;

import java.util.List;
import java.util.Objects;

/**
 * A chart, described.
 *
 * @param name unique, lower case, words joined by hyphens; the PNG file's name
 * @param title as shown
 * @param subtitle one line that says what to look for, may be empty
 * @param kind how it is drawn
 * @param unit unit of the value axis
 * @param categories labels along the time axis, months (ISO, 2027-03) or season labels
 * @param series what is drawn, in order, first at the bottom of a stack
 */
public record Chart(
    String name,
    String title,
    String subtitle,
    ChartKind kind,
    String unit,
    List<String> categories,
    List<Series> series) {
  /** How a chart is drawn. */
  public enum ChartKind {
    /** Bars stacked by series, a bar for each category. */
    STACKED_BARS,
    /** Areas stacked by series over months. */
    STACKED_AREAS,
    /** Bars side by side for each category. */
    BARS,
    /** Lines over months. */
    LINES,
    /**
     * A small panel for each group, over months: its values stacked, its limit as a line, and what
     * lies over the limit in another colour. At most 30 groups are drawn.
     */
    PANELS,
    /**
     * Bars that touch, over value classes: category i is named by its lower edge, and the name
     * stands there.
     */
    HISTOGRAM,
    /**
     * A row for each category, the first at the top: a bar from the LINE to LOW and one to HIGH,
     * over a value axis along the bottom.
     */
    SWINGS,
    /**
     * A bridge: what the first series has stands on nil, and what the others have begins where the
     * category before ended.
     */
    BRIDGE
  }

  /** What a series stands for, apart from its values. */
  public enum Role {
    /** A quantity needed, made or sold. */
    VALUE,
    /** A limit drawn as a line: capacity, hours available, lowest cash. */
    LIMIT,
    /** A quantity drawn as a line over bars or areas. */
    LINE,
    /**
     * Lower edge of a band, followed by the series of its upper edge: shaded among lines, an
     * upright stroke on bars, thin lines in panels.
     */
    LOW,
    /** Upper edge of the band whose lower edge is the series before. */
    HIGH
  }

  /**
   * One series.
   *
   * @param name as labelled
   * @param role value, limit or line
   * @param values one for each category; NaN where there is none
   * @param group panel it belongs to in a PANELS chart, else empty
   * @param colour index into the palette, the same for the same thing in every chart: 0 blue, 1
   *     orange, 2 green, 3 purple, 4 sky blue, 5 yellow, 6 vermilion, 7 black, then the same in a
   *     lighter tint (8 to 15) and a darker shade (16 to 23). Vermilion is what lies over a limit;
   *     keep it for that. A limit is drawn black whatever its colour
   */
  public record Series(String name, Role role, List<Double> values, String group, int colour) {
    public Series {
      Objects.requireNonNull(name);
      Objects.requireNonNull(role);
      values = List.copyOf(values);
      Objects.requireNonNull(group);
    }
  }

  public Chart {
    Objects.requireNonNull(name);
    Objects.requireNonNull(title);
    Objects.requireNonNull(subtitle);
    Objects.requireNonNull(kind);
    Objects.requireNonNull(unit);
    categories = List.copyOf(categories);
    series = List.copyOf(series);
    for (Series each : series) {
      if (each.values().size() != categories.size()) {
        throw new IllegalArgumentException(
            "series %s of %s has %d values for %d categories"
                .formatted(each.name(), name, each.values().size(), categories.size()));
      }
    }
  }
}
