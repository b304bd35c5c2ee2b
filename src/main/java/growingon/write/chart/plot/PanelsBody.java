package growingon.write.chart.plot;

import growingon.report.model.Chart;
import growingon.report.model.Chart.ChartKind;
import growingon.report.model.Chart.Mark;
import growingon.report.model.Chart.MarkKind;
import growingon.report.model.Chart.Series;
import growingon.write.chart.look.Format;
import growingon.write.chart.look.Key;
import growingon.write.chart.look.Lettering;
import growingon.write.chart.look.Palette;
import growingon.write.chart.look.Sample;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jfree.chart.ui.RectangleInsets;

/**
 * Small panels, one a group, each with its own height, all over the same months or seasons. Over
 * months all panels show the same, named once in the head; bars are named in their own panel.
 */
public final class PanelsBody implements Body {
  private static final int MOST = 30;

  /** With more panels the picture fills a page, and its letters may be smaller. */
  private static final int DENSE = 9;

  /** As high as a page of A4 across where the picture is 24 cm wide. */
  private static final int TALL = 905;

  /** As high as such a page where it is 18 cm wide, which is the least its letters allow. */
  private static final int HIGHEST = 1200;

  /**
   * Several rows of panels are higher than a plot, but fit half a page with letters of 7 points.
   */
  private static final int HIGHER = 790;

  private static final int TITLE_LINES = 3;
  private static final double LABELS = 0.42;

  private final Chart chart;
  private final Format format;
  private final Font font;
  private final int groups;
  private final boolean isDense;
  private final int across;
  private final double width;
  private final List<Panel> panels = new ArrayList<>();

  /**
   * A group, laid out.
   *
   * @param told what is pointed out, under the title
   * @param ink colour of that
   */
  private record Panel(
      List<String> title,
      List<String> told,
      Color ink,
      Layers layers,
      Key key,
      MarkPainter marks) {}

  public PanelsBody(Chart chart, Format format) {
    Map<String, List<Series>> byGroup = new LinkedHashMap<>();
    chart
        .series()
        .forEach(each -> byGroup.computeIfAbsent(each.group(), g -> new ArrayList<>()).add(each));
    this.chart = chart;
    this.format = format;
    this.groups = byGroup.size();
    int shown = Math.min(MOST, groups);
    this.isDense = shown > DENSE;
    this.font = isDense ? format.dense() : format.text();
    this.across = across(shown);
    this.width = (format.width() - 2 * format.margin() + gap()) / across - gap();
    byGroup.entrySet().stream()
        .limit(shown)
        .forEach(each -> panels.add(panel(each.getKey(), each.getValue())));
  }

  private boolean isOverMonths() {
    return chart.kind() == ChartKind.PANELS;
  }

  private double gap() {
    return font.getSize();
  }

  private int across(int shown) {
    if (format.isNarrow()) {
      return shown == 1 || !isOverMonths() ? 1 : 2;
    }
    if (!isOverMonths()) {
      return shown == 1 ? 1 : shown <= 4 ? 2 : shown <= 12 ? 3 : 4;
    }
    return shown <= 1 ? 1 : shown <= 4 ? 2 : shown <= 9 ? 3 : shown <= 16 ? 4 : 5;
  }

  private Panel panel(String group, List<Series> series) {
    int lines = isDense ? TITLE_LINES - 1 : TITLE_LINES;
    Layers.Style style = isOverMonths() ? Layers.Style.TOUCHING : Layers.Style.STACKED;
    Layers layers = new Layers(series, style, chart.categories().size(), font.getSize());
    List<Mark> marks = chart.marks().stream().filter(each -> each.group().equals(group)).toList();
    Optional<Mark> told =
        marks.stream()
            .filter(each -> isOverMonths() && each.kind() != MarkKind.UPRIGHT)
            .findFirst();
    List<Mark> drawn =
        marks.stream().filter(each -> told.stream().noneMatch(each::equals)).toList();
    boolean keyed = !isOverMonths() && format.isNarrow() && layers.needsNames();
    return new Panel(
        Lettering.lines(group, bold(), width, lines),
        told.map(each -> Lettering.lines(words(each), font, width, 2)).orElse(List.of()),
        told.filter(each -> each.kind() == MarkKind.BEYOND).isPresent()
            ? Palette.OVER_INK
            : Palette.QUIET,
        layers,
        new Key(keyed ? layers.key() : List.of(), font, width),
        new MarkPainter(drawn, font, false));
  }

  private static String words(Mark told) {
    return told.kind() == MarkKind.BEYOND ? "▲ " + told.label() : told.label();
  }

  private Font bold() {
    return font.deriveFont(Font.BOLD);
  }

  @Override
  public List<Sample> key() {
    Map<String, Sample> key = new LinkedHashMap<>();
    if (isOverMonths()) {
      panels.forEach(
          each -> each.layers().key().forEach(sample -> key.putIfAbsent(sample.name(), sample)));
    }
    if (groups > MOST) {
      String some = "%d of %d shown".formatted(MOST, groups);
      key.put(some, Sample.word(some));
    }
    return List.copyOf(key.values());
  }

  private int down() {
    return (panels.size() + across - 1) / across;
  }

  private List<Panel> row(int row) {
    return panels.subList(row * across, Math.min(panels.size(), (row + 1) * across));
  }

  /** Height of what stands above the plots of a row. */
  private double above(int row) {
    double line = Lettering.line(font);
    return row(row).stream()
        .mapToDouble(
            each ->
                (each.title().size() + each.told().size()) * line
                    + each.key().height()
                    + each.marks().headroom(width, chart.categories().size()))
        .max()
        .orElse(0);
  }

  private double above() {
    double sum = 0;
    for (int row = 0; row < down(); row++) {
      sum += above(row) + gap();
    }
    return sum;
  }

  /** Height of a plot with its axis. */
  private double plotHeight(double head) {
    double em = font.getSize();
    if (format.isNarrow()) {
      return isOverMonths() ? 8.5 * em : 14 * em;
    }
    double room = down() > 4 ? HIGHEST : isDense ? TALL : down() > 1 ? HIGHER : format.height();
    double least = isDense ? 3.6 * em : 6 * em;
    return Math.max(least, (room - head - above()) / down());
  }

  @Override
  public double height(double head) {
    return above() + down() * plotHeight(head);
  }

  @Override
  public void draw(Graphics2D g2, Rectangle2D where) {
    double plotHeight = (where.getHeight() - above()) / down();
    List<ChartPlot> plots = panels.stream().map(this::plot).toList();
    double labelRoom =
        plots.stream().mapToDouble(each -> each.labelRoom(g2, width, plotHeight)).max().orElse(0);
    double y = where.getY();
    for (int row = 0; row < down(); row++) {
      double above = above(row);
      for (int i = row * across; i < row * across + row(row).size(); i++) {
        double x = where.getX() + format.margin() + i % across * (width + gap());
        plots.get(i).setLabelRoom(labelRoom);
        Rectangle2D place = new Rectangle2D.Double(x, y, width, above + plotHeight);
        draw(g2, panels.get(i), plots.get(i), place, above);
      }
      y += above + plotHeight + gap();
    }
  }

  private ChartPlot plot(Panel panel) {
    return new ChartPlot(
        TimeAxis.of(chart.categories(), font, chart.writing()),
        panel.layers().content(),
        font,
        chart.writing());
  }

  private EndLabels labels() {
    return new EndLabels(font, LABELS * width);
  }

  private List<Layers.Named> named(Panel panel) {
    boolean beside = !isOverMonths() && !format.isNarrow() && panel.layers().needsNames();
    return beside ? panel.layers().named() : List.of();
  }

  /** The same in all panels, so that their seasons stand below each other. */
  private double labelWidth() {
    return panels.stream()
        .mapToDouble(
            each -> labels().width(named(each).stream().map(Layers.Named::sample).toList()))
        .max()
        .orElse(0);
  }

  private void draw(Graphics2D g2, Panel panel, ChartPlot plot, Rectangle2D where, double above) {
    double x = where.getX();
    double y = Lettering.draw(g2, panel.title(), bold(), Palette.INK, x, where.getY());
    y = Lettering.draw(g2, panel.told(), font, panel.ink(), x, y);
    panel.key().draw(g2, x, y);
    Rectangle2D below =
        new Rectangle2D.Double(
            x, where.getY() + above, where.getWidth(), where.getHeight() - above);
    double right = Math.max(font.getSize() * 0.9, labelWidth());
    Rectangle2D area = plot.draw(g2, below, new RectangleInsets(font.getSize() / 3.0, 0, 0, right));
    double end = named(panel).isEmpty() ? where.getMaxX() : area.getMaxX();
    panel.marks().draw(g2, plot, area, chart.categories().size(), end);
    labels().draw(g2, plot, area, named(panel));
  }
}
