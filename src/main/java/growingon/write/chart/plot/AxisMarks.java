package growingon.write.chart.plot;

import growingon.nursery.number.Writing;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.regex.Pattern;

/** Where labels stand along the time axis, chosen so that no two of them touch. */
public final class AxisMarks {
  private static final Pattern MONTH = Pattern.compile("\\d{4}-(0[1-9]|1[0-2])");
  private static final int[] STEPS = {1, 2, 3, 6, 12, 24, 60, 120, 240};
  private static final double AIR = 1.2;
  private static final int LONGEST_LABEL = 18;
  private static final int SHORTEST_NAME = 7;

  /** A label of one or two lines, and where it stands, in categories from the left edge. */
  record Mark(double at, String label) {
    String line(int index) {
      return label.lines().skip(index).findFirst().orElse("");
    }
  }

  private AxisMarks() {}

  /**
   * Marks of an axis.
   *
   * @param categories ISO months or any labels
   * @param room pixels a category has
   * @param widthOf pixels a label takes
   * @param writing how months are written
   */
  static List<Mark> of(
      List<String> categories, double room, ToDoubleFunction<String> widthOf, Writing writing) {
    return areMonths(categories)
        ? months(categories.stream().map(YearMonth::parse).toList(), room, widthOf, writing)
        : labels(categories, 0, room, widthOf);
  }

  /** Marks at the lower edges of value classes, nil among them if it is an edge. */
  static List<Mark> edges(List<String> edges, double room, ToDoubleFunction<String> widthOf) {
    return labels(edges, Math.max(0, edges.indexOf("0")), room, widthOf).stream()
        .map(mark -> new Mark(mark.at() - 0.5, mark.label()))
        .toList();
  }

  static boolean areMonths(List<String> categories) {
    return categories.stream().allMatch(each -> MONTH.matcher(each).matches());
  }

  /** A category as it is read: Mar 2027 for a month. */
  public static String spelt(String category, Writing writing) {
    return MONTH.matcher(category).matches() ? writing.month(YearMonth.parse(category)) : category;
  }

  private static List<Mark> months(
      List<YearMonth> months, double room, ToDoubleFunction<String> widthOf, Writing writing) {
    double dated = widthOf.applyAsDouble("Mmm 2000") * AIR;
    double yearly = widthOf.applyAsDouble("2000") * AIR;
    for (int step : STEPS) {
      if ((step < 12 ? dated : yearly) <= step * room) {
        return everyMonths(months, step, writing);
      }
    }
    return List.of();
  }

  private static List<Mark> everyMonths(List<YearMonth> months, int step, Writing writing) {
    List<Mark> marks = new ArrayList<>();
    for (int i = 0; i < months.size(); i++) {
      YearMonth month = months.get(i);
      long sinceYearNought = month.getYear() * 12L + month.getMonthValue() - 1;
      if (sinceYearNought % step == 0) {
        marks.add(
            step < 12
                ? new Mark(i + 0.5, writing.month(month))
                : new Mark(i, Integer.toString(month.getYear())));
      }
    }
    return marks.isEmpty() && !months.isEmpty()
        ? List.of(new Mark(0.5, writing.month(months.get(0))))
        : marks;
  }

  /**
   * Labels at every so many categories.
   *
   * @param anchor a category that has one
   */
  private static List<Mark> labels(
      List<String> categories, int anchor, double room, ToDoubleFunction<String> widthOf) {
    List<String> labels = categories.stream().map(AxisMarks::shorten).toList();
    double[] widths = labels.stream().mapToDouble(widthOf).toArray();
    if (touches(widths, 0, 1, room)) {
      labels = labels.stream().map(AxisMarks::narrowed).toList();
      widths = labels.stream().mapToDouble(each -> widest(each, widthOf)).toArray();
    }
    if (touches(widths, 0, 1, room) && areNames(labels) && hasRoomForNames(room, widthOf)) {
      labels = categories.stream().map(each -> cut(narrowed(each), room / AIR, widthOf)).toList();
      widths = labels.stream().mapToDouble(each -> widest(each, widthOf)).toArray();
    }
    int step = 1;
    while (step < widths.length && touches(widths, anchor % step, step, room)) {
      step++;
    }
    List<Mark> marks = new ArrayList<>();
    for (int i = anchor % step; i < widths.length; i += step) {
      marks.add(new Mark(i + 0.5, labels.get(i)));
    }
    return marks;
  }

  /** Whether, with a label at every so many categories, some two neighbours would touch. */
  private static boolean touches(double[] widths, int first, int step, double room) {
    for (int i = first; i + step < widths.length; i += step) {
      if ((widths[i] + widths[i + step]) / 2 * 1.15 > step * room) {
        return true;
      }
    }
    return false;
  }

  /**
   * What a label is where there is little room: a season without the month it is from, and all else
   * in two lines, the break as near the middle as can be.
   */
  private static String narrowed(String label) {
    if (!label.isEmpty() && Character.isDigit(label.charAt(0))) {
      return label.split(" ", 2)[0];
    }
    int middle = label.length() / 2;
    int before = label.lastIndexOf(' ', middle);
    int after = label.indexOf(' ', middle);
    int at = after < 0 || before >= 0 && middle - before <= after - middle ? before : after;
    return at < 0 ? label : label.substring(0, at) + '\n' + label.substring(at + 1);
  }

  /** Names have no order by which one that is left out could be known from its neighbours. */
  private static boolean areNames(List<String> labels) {
    return labels.stream().noneMatch(each -> each.isEmpty() || Character.isDigit(each.charAt(0)));
  }

  private static boolean hasRoomForNames(double room, ToDoubleFunction<String> widthOf) {
    return widthOf.applyAsDouble("n".repeat(SHORTEST_NAME)) * AIR <= room;
  }

  /** A label cut to a width: its first line at the end, its second, which tells more, before. */
  private static String cut(String label, double width, ToDoubleFunction<String> widthOf) {
    List<String> lines = label.lines().toList();
    String first = cut(lines.get(0), false, width, widthOf);
    return lines.size() == 1 ? first : first + "\n" + cut(lines.get(1), true, width, widthOf);
  }

  private static String cut(
      String line, boolean before, double width, ToDoubleFunction<String> widthOf) {
    String shown = line;
    for (int left = line.length() - 1; left > 0 && widthOf.applyAsDouble(shown) > width; left--) {
      shown =
          before
              ? "…" + line.substring(line.length() - left).stripLeading()
              : line.substring(0, left).stripTrailing() + "…";
    }
    return shown;
  }

  private static double widest(String label, ToDoubleFunction<String> widthOf) {
    return label.lines().mapToDouble(widthOf).max().orElse(0);
  }

  private static String shorten(String label) {
    return label.length() <= LONGEST_LABEL ? label : label.substring(0, LONGEST_LABEL - 1) + "…";
  }
}
