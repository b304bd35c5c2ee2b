package growingon.write.chart.plot;

import growingon.report.model.Chart;
import growingon.report.model.Chart.ChartKind;
import growingon.report.model.Chart.Role;
import growingon.report.model.Chart.Series;
import growingon.write.chart.look.Format;
import growingon.write.chart.look.Lettering;
import growingon.write.chart.look.Palette;
import growingon.write.chart.look.Sample;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.DoubleStream;
import org.jfree.chart.ui.RectangleInsets;

/**
 * A row for each category with its bars, each with its number, over a value axis along the bottom.
 * The name of a row stands left of its bars, or above them where the picture is narrow.
 */
public final class RowsBody implements Body {
  private static final double NAMES = 0.34;
  private static final double BAR = 1.2;
  private static final double AIR = 0.55;
  private static final int MOST_LINES = 3;

  private final Chart chart;
  private final Format format;
  private final Font font;
  private final List<List<String>> names;
  private final double nameWidth;
  private final double nameLines;
  private final double rowHeight;
  private final List<Bar> bars = new ArrayList<>();
  private final List<Curve> curves = new ArrayList<>();
  private final List<Sample> key = new ArrayList<>();

  /**
   * A bar of a row with its number.
   *
   * @param block of all bars of its series
   * @param values numbers that are written, NaN where there is no bar
   * @param signed whether a rise is written with its sign
   */
  private record Bar(Block block, double[] values, boolean signed) {}

  public RowsBody(Chart chart, Format format) {
    this.chart = chart;
    this.format = format;
    this.font = format.text();
    double room = format.width() - 2 * format.margin();
    double width = format.isNarrow() ? room : NAMES * room;
    this.names =
        chart.categories().stream()
            .map(
                each ->
                    Lettering.lines(
                        AxisMarks.spelt(each, chart.writing()), font, width, MOST_LINES))
            .toList();
    this.nameWidth =
        names.stream().mapToDouble(each -> Lettering.widest(each, font)).max().orElse(0);
    this.nameLines = names.stream().mapToInt(List::size).max().orElse(1) * Lettering.line(font);
    double barsHeight = barsOfARow() * BAR * font.getSize();
    double tallest = format.isNarrow() ? nameLines + barsHeight : Math.max(nameLines, barsHeight);
    this.rowHeight = tallest + AIR * font.getSize();
    if (chart.kind() == ChartKind.BRIDGE) {
      bridge();
    } else {
      swings();
    }
  }

  private int barsOfARow() {
    return chart.kind() == ChartKind.SWINGS ? 2 : 1;
  }

  /** Where the n-th bar of a row begins and ends, as a share of the row, 0 at its top. */
  private double[] part(double bar) {
    double barHeight = BAR * font.getSize();
    double all = barsOfARow() * barHeight;
    double air = AIR * font.getSize();
    double above = format.isNarrow() ? nameLines + air / 2 : (rowHeight - all) / 2;
    double top = above + bar * barHeight;
    return new double[] {
      (top + barHeight * 0.08) / rowHeight, (top + barHeight * 0.92) / rowHeight
    };
  }

  private void bridge() {
    List<Series> values = chart.series();
    double[] part = part(0);
    List<Block> blocks = Block.bridge(values, chart.categories().size(), part[0], part[1]);
    for (int i = 0; i < blocks.size(); i++) {
      bars.add(new Bar(blocks.get(i), numbers(values.get(i)), i > 0));
      key.add(Sample.filled(values.get(i).name(), blocks.get(i).paint()));
    }
    double[] ends = Block.bridgeEnds(values, chart.categories().size());
    curves.add(
        Curve.links(
            ends, part[1], part[0], Palette.QUIET, Palette.stroke(0, font.getSize() / 16.0)));
  }

  private void swings() {
    int rows = chart.categories().size();
    double[] line = new double[rows];
    for (Series each : chart.series()) {
      if (each.role() == Role.LINE) {
        line = numbers(each);
        Curve curve =
            Curve.level(
                line, Palette.of(each.colour()), Palette.limitStroke(font.getSize() * 0.14));
        curves.add(curve);
        key.add(new Sample(each.name(), curve.colour(), curve.stroke()));
      }
    }
    for (Series each : chart.series()) {
      if (each.role() != Role.LINE) {
        double place = each.role() == Role.LOW ? 0 : each.role() == Role.HIGH ? 1 : 0.5;
        double[] part = part(place);
        double[] values = numbers(each);
        Block block =
            new Block(Palette.of(each.colour()), part[0], part[1], from(line, values), values);
        bars.add(new Bar(block, values, false));
        key.add(Sample.filled(each.name(), block.paint()));
      }
    }
  }

  /** The line, where there is a value. */
  private static double[] from(double[] line, double[] values) {
    double[] from = line.clone();
    Arrays.setAll(from, i -> Double.isNaN(values[i]) ? Double.NaN : from[i]);
    return from;
  }

  private static double[] numbers(Series series) {
    return series.values().stream().mapToDouble(Double::doubleValue).toArray();
  }

  @Override
  public List<Sample> key() {
    return key;
  }

  @Override
  public double height(double head) {
    return chart.categories().size() * rowHeight + axisHeight();
  }

  private double axisHeight() {
    return 2.6 * font.getSize();
  }

  @Override
  public void draw(Graphics2D g2, Rectangle2D where) {
    ChartPlot plot =
        new ChartPlot(
            TimeAxis.of(chart.categories(), font, chart.writing()),
            new ChartPlot.Content(List.of(), bars.stream().map(Bar::block).toList(), curves),
            font,
            chart.writing());
    plot.turn();
    double right = Math.max(format.margin(), plot.halfOfANumber());
    double left = format.isNarrow() ? right : format.margin() + nameWidth + font.getSize() * 0.6;
    double room = where.getWidth() - left - right;
    plot.widen(numberRoom(false) / room, numberRoom(true) / room);
    Rectangle2D area = plot.draw(g2, where, new RectangleInsets(0, left, 0, right));
    double row = area.getHeight() / chart.categories().size();
    names(g2, area, row);
    bars.forEach(each -> numbers(g2, plot, area, row, each));
  }

  private void names(Graphics2D g2, Rectangle2D area, double row) {
    for (int i = 0; i < names.size(); i++) {
      double height = names.get(i).size() * Lettering.line(font);
      double top = area.getY() + i * row;
      double y =
          format.isNarrow()
              ? top + AIR * font.getSize() / 2 + nameLines - height
              : top + (row - height) / 2;
      g2.setPaint(Palette.VEIL);
      g2.fill(
          new Rectangle2D.Double(format.margin(), y, Lettering.widest(names.get(i), font), height));
      Lettering.draw(g2, names.get(i), font, Palette.INK, format.margin(), y);
    }
  }

  /** Width that the widest number takes beyond bars that go down, or up. */
  private double numberRoom(boolean up) {
    double widest = 0;
    for (Bar bar : bars) {
      for (int i = 0; i < bar.values().length; i++) {
        if (!Double.isNaN(bar.values()[i]) && goesUp(bar, i) == up) {
          widest = Math.max(widest, Lettering.width(number(bar, i), font) + font.getSize() * 0.6);
        }
      }
    }
    return widest;
  }

  private static boolean goesUp(Bar bar, int row) {
    return bar.block().high()[row] >= bar.block().low()[row];
  }

  private void numbers(Graphics2D g2, ChartPlot plot, Rectangle2D area, double row, Bar bar) {
    double gap = font.getSize() * 0.3;
    for (int i = 0; i < bar.values().length; i++) {
      if (!Double.isNaN(bar.values()[i])) {
        String text = number(bar, i);
        double width = Lettering.width(text, font);
        double end = plot.along(bar.block().high()[i], area);
        double x = goesUp(bar, i) ? end + gap : end - gap - width;
        double middle = area.getY() + (i + (bar.block().left() + bar.block().right()) / 2) * row;
        double height = Lettering.line(font);
        g2.setPaint(Palette.VEIL);
        g2.fill(new Rectangle2D.Double(x, middle - height * 0.42, width, height * 0.84));
        Lettering.draw(g2, List.of(text), font, Palette.INK, x, middle - height / 2);
      }
    }
  }

  private String number(Bar bar, int row) {
    double value = bar.values()[row];
    boolean small = DoubleStream.of(bar.values()).allMatch(each -> !(Math.abs(each) >= 10));
    String text = chart.writing().decimals(value, small ? 1 : 0);
    boolean isNil = text.matches("-?[0.,]+");
    return isNil ? "0" : bar.signed() && value > 0 ? "+" + text : text;
  }
}
