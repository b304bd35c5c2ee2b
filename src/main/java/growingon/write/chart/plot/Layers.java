package growingon.write.chart.plot;

import growingon.report.model.Chart.Role;
import growingon.report.model.Chart.Series;
import growingon.write.chart.look.Palette;
import growingon.write.chart.look.Sample;
import java.awt.BasicStroke;
import java.awt.Color;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The series of a plot as bands, blocks and curves, each with its name. */
final class Layers {
  /** How values, and the bands around them, are drawn. */
  enum Style {
    /** Bars stacked; a band is an upright stroke on each. */
    STACKED,
    /** Bars stacked that touch each other; a band is two thin lines. */
    TOUCHING,
    /** Bars side by side. */
    BESIDE,
    /** Bars of value classes. */
    CLASSES,
    /** Lines; a band is shaded. */
    LINES
  }

  /** So many categories have bars with air between them. */
  private static final int BARS_UP_TO = 150;

  private static final int DOTS_UP_TO = 24;
  private static final double LINE = 0.15;
  private static final double EDGE = 0.07;
  private static final double WIDEST_BAR = 0.76;
  private static final double CLASS_WIDTH = 0.96;

  private final Style style;
  private final int categories;
  private final double em;
  private final List<Series> values = new ArrayList<>();
  private final List<Band> bands = new ArrayList<>();
  private final List<Block> blocks = new ArrayList<>();
  private final List<Curve> curves = new ArrayList<>();
  private final List<Named> named = new ArrayList<>();
  private final Map<String, Sample> key = new LinkedHashMap<>();
  private int lines;
  private int strokeBands;

  /**
   * A name at the end of what it names.
   *
   * @param at value where it ends, NaN if it has none
   * @param size how large it grows
   */
  record Named(Sample sample, double at, double size) {}

  /**
   * Layers of a plot.
   *
   * @param em size of the letters beside it, which lines are in proportion to
   */
  Layers(List<Series> series, Style wished, int categories, double em) {
    boolean many = wished == Style.STACKED && categories > BARS_UP_TO;
    this.style = many ? Style.TOUCHING : wished;
    this.categories = categories;
    this.em = em;
    series.stream().filter(Layers::isValue).forEach(values::add);
    if (style != Style.LINES) {
      addBlocks();
    }
    for (int i = 0; i < series.size(); i++) {
      Series each = series.get(i);
      if (each.role() != Role.LOW) {
        addLine(each);
      } else if (i + 1 < series.size() && series.get(i + 1).role() == Role.HIGH) {
        addBand(new Band(each, series.get(i + 1)));
      }
    }
    addBeyond(series);
  }

  private static boolean isValue(Series series) {
    return series.role() == Role.VALUE || series.role() == Role.TOTAL;
  }

  /** The first line in front of the others. */
  ChartPlot.Content content() {
    List<Curve> behind = new ArrayList<>(curves);
    Collections.reverse(behind);
    return new ChartPlot.Content(bands, blocks, behind);
  }

  List<Named> named() {
    return named;
  }

  /** Samples for a key, each name once, a band as one. */
  List<Sample> key() {
    return List.copyOf(key.values());
  }

  /** Whether it takes more than the title to tell what is drawn. */
  boolean needsNames() {
    return key.size() > 1 || values.stream().anyMatch(each -> each.role() == Role.TOTAL);
  }

  private void addBlocks() {
    double half = Math.min(WIDEST_BAR, 0.16 + 0.15 * categories) / 2;
    blocks.addAll(
        switch (style) {
          case BESIDE -> Block.clustered(values, categories, values.size() > 1 ? 0.4 : half);
          case CLASSES -> Block.stacked(values, categories, CLASS_WIDTH / 2);
          case TOUCHING -> Block.stacked(values, categories, 0.5);
          default -> Block.stacked(values, categories, half);
        });
    for (int i = 0; i < values.size(); i++) {
      Block block = blocks.get(i);
      if (values.get(i).role() == Role.TOTAL) {
        continue; // its panel is named after it
      }
      name(
          Sample.filled(values.get(i).name(), block.paint()), block.middleAtEnd(), block.tallest());
    }
  }

  /** What has no name is drawn as the one before it and named by that. */
  private void name(Sample sample, double at, double size) {
    if (sample.name().isEmpty()) {
      return;
    }
    named.add(new Named(sample, at, size));
    key.putIfAbsent(sample.name(), sample);
  }

  private void name(Series series, Curve curve) {
    Sample sample = new Sample(series.name(), curve.colour(), curve.stroke());
    name(sample, curve.atEnd(), Double.MAX_VALUE);
  }

  private void addLine(Series each) {
    if (each.role() == Role.LIMIT) {
      double[] limit = numbers(each);
      addNamed(each, Curve.level(limit, Palette.LIMIT, Palette.limitStroke(LINE * em)));
    } else if (each.role() == Role.LINE || style == Style.LINES && isValue(each)) {
      boolean dots = categories <= DOTS_UP_TO;
      int line = each.name().isEmpty() ? Math.max(0, lines - 1) : lines++;
      addNamed(each, Curve.through(each, Palette.stroke(line, LINE * em), dots));
    }
  }

  private void addNamed(Series series, Curve curve) {
    curves.add(curve);
    name(series, curve);
  }

  private void addBand(Band band) {
    String name = band.low().name() + " to " + band.high().name();
    Color colour = Palette.of(band.high().colour());
    if (style == Style.LINES || values.isEmpty()) {
      shade(band, name);
    } else if (style == Style.TOUCHING) {
      BasicStroke upper = Palette.stroke(0, EDGE * em);
      addNamed(band.high(), Curve.level(numbers(band.high()), colour, upper));
      BasicStroke lower = Palette.edgeStroke(EDGE * em);
      addNamed(band.low(), Curve.level(numbers(band.low()), colour, lower));
    } else {
      Curve strokes =
          Curve.strokes(band.low(), band.high(), Palette.stroke(0, LINE * em), strokeBands++);
      curves.add(strokes);
      name(new Sample(name, strokes.colour(), strokes.stroke()), strokes.atEnd(), Double.MAX_VALUE);
    }
  }

  /** Its edges are named where they end, in a key the room between them. */
  private void shade(Band band, String name) {
    bands.add(band);
    BasicStroke stroke = Palette.edgeStroke(EDGE * em);
    for (Series each : List.of(band.low(), band.high())) {
      Curve edge = Curve.through(each, stroke, false);
      curves.add(edge);
      named.add(
          new Named(
              new Sample(each.name(), edge.colour(), stroke), edge.atEnd(), Double.MAX_VALUE));
    }
    key.put(name, Sample.filled(name, Palette.pale(band.high().colour())));
  }

  /** What lies over a limit, where stacked values have one. */
  private void addBeyond(List<Series> series) {
    boolean stacked = style == Style.STACKED || style == Style.TOUCHING;
    series.stream()
        .filter(each -> stacked && each.role() == Role.LIMIT)
        .findFirst()
        .map(limit -> Block.beyond(blocks, numbers(limit)))
        .filter(beyond -> !beyond.isEmpty())
        .ifPresent(
            beyond -> {
              blocks.add(beyond);
              key.put("above the line", Sample.filled("above the line", beyond.paint()));
            });
  }

  private static double[] numbers(Series series) {
    return series.values().stream().mapToDouble(Double::doubleValue).toArray();
  }
}
