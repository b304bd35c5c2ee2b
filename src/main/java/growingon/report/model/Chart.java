package growingon.report.model;

import growingon.nursery.number.Writing;
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
 * @param marks what is pointed out, the most telling first: where not all labels fit, the first
 *     stay
 * @param writing how its numbers and months are written
 */
public record Chart(
    String name,
    String title,
    String subtitle,
    ChartKind kind,
    String unit,
    List<String> categories,
    List<Series> series,
    List<Mark> marks,
    Writing writing) {
  /** How a chart is drawn. */
  public enum ChartKind {
    /** Bars stacked by series, a bar for each category. */
    STACKED_BARS,
    /** Bars side by side for each category. */
    BARS,
    /** Lines over months. */
    LINES,
    /**
     * A small panel for each group, over months: its values stacked, its limit as a line, and what
     * lies over the limit in another colour. At most 30 groups are drawn.
     */
    PANELS,
    /** A small panel for each group, with bars stacked by series. At most 30 groups are drawn. */
    BAR_PANELS,
    /**
     * Bars that touch, over value classes: category i is named by its lower edge, and the name
     * stands there.
     */
    HISTOGRAM,
    /**
     * A row for each category, the first at the top: a bar from the LINE to LOW, one to HIGH and
     * one to EVENT, each with its number, over a value axis along the bottom.
     */
    SWINGS,
    /**
     * A bridge, a row for each category: what the first series has stands on nil, and what the
     * others have begins where the row before ended; each with its number.
     */
    BRIDGE
  }

  /** What a series stands for, apart from its values. */
  public enum Role {
    /** A quantity needed, made or sold. */
    VALUE,
    /** What values of other groups add up to, drawn as a value. */
    TOTAL,
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
    HIGH,
    /** Where a thing leads that happens or does not, and so has no low and high end. */
    EVENT
  }

  /**
   * One series.
   *
   * @param name as labelled
   * @param role value, limit or line
   * @param values one for each category; NaN where there is none
   * @param group panel it belongs to in a chart of panels, else empty
   * @param colour index into the palette, the same for the same thing in every chart: 0 blue, 1
   *     orange, 2 green, 3 purple, 4 sky blue, 5 yellow, 6 vermilion, 7 black, 8 light grey, 9 dark
   *     blue, then five steps for what is stacked, 10 darkest to 14 lightest. Vermilion is what
   *     lies over a limit; keep it for that. A limit is drawn black whatever its colour
   */
  public record Series(String name, Role role, List<Double> values, String group, int colour) {
    public Series {
      Objects.requireNonNull(name);
      Objects.requireNonNull(role);
      values = List.copyOf(values);
      Objects.requireNonNull(group);
    }
  }

  /** What a mark points at. */
  public enum MarkKind {
    /** A point worth knowing, such as the lowest one; in panels over months see BEYOND. */
    POINT,
    /**
     * The top of what lies beyond a limit. In panels over months the first point of each is not
     * drawn but told under the panel's name.
     */
    BEYOND,
    /** An upright line, such as today. */
    UPRIGHT
  }

  /**
   * A thing pointed out.
   *
   * @param kind what it points at
   * @param label what is written there
   * @param at where along the axis of the categories, in categories from its beginning: i + 0.5 is
   *     the middle of category i
   * @param value height of a point; of no meaning for an upright line
   * @param group panel it belongs to in a chart of panels, else empty
   */
  public record Mark(MarkKind kind, String label, double at, double value, String group) {
    public Mark {
      Objects.requireNonNull(kind);
      Objects.requireNonNull(label);
      Objects.requireNonNull(group);
      if (!Double.isFinite(at) || kind != MarkKind.UPRIGHT && !Double.isFinite(value)) {
        throw new IllegalArgumentException("a mark is nowhere: " + label);
      }
    }

    /** A point in the middle of a category. */
    public static Mark point(String label, int category, double value) {
      return new Mark(MarkKind.POINT, label, category + 0.5, value, "");
    }

    /** The top of what lies beyond a limit in a category. */
    public static Mark beyond(String label, int category, double value, String group) {
      return new Mark(MarkKind.BEYOND, label, category + 0.5, value, group);
    }

    /** An upright line. */
    public static Mark upright(String label, double at) {
      return new Mark(MarkKind.UPRIGHT, label, at, Double.NaN, "");
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
    marks = List.copyOf(marks);
    Objects.requireNonNull(writing);
    for (Series each : series) {
      if (each.values().size() != categories.size()) {
        throw new IllegalArgumentException(
            "series %s of %s has %d values for %d categories"
                .formatted(each.name(), name, each.values().size(), categories.size()));
      }
    }
  }

  /** A chart that is not yet in a report. */
  public Chart(
      String name,
      String title,
      String subtitle,
      ChartKind kind,
      String unit,
      List<String> categories,
      List<Series> series,
      List<Mark> marks) {
    this(name, title, subtitle, kind, unit, categories, series, marks, Writing.USUAL);
  }

  /** The same, written otherwise. */
  public Chart in(Writing other) {
    return other.equals(writing)
        ? this
        : new Chart(name, title, subtitle, kind, unit, categories, series, marks, other);
  }

  /** A chart in which nothing is pointed out. */
  public Chart(
      String name,
      String title,
      String subtitle,
      ChartKind kind,
      String unit,
      List<String> categories,
      List<Series> series) {
    this(name, title, subtitle, kind, unit, categories, series, List.of());
  }
}
