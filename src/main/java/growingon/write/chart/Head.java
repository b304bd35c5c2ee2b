package growingon.write.chart;

import growingon.report.model.Chart;
import growingon.write.chart.look.Format;
import growingon.write.chart.look.Key;
import growingon.write.chart.look.Lettering;
import growingon.write.chart.look.Palette;
import growingon.write.chart.look.Sample;
import java.awt.Graphics2D;
import java.util.ArrayList;
import java.util.List;

/** What stands above a chart: its title, what to look for, its unit, and the key if it has one. */
final class Head {
  private static final int MOST_LINES = 3;
  private static final int MOST_LINES_NARROW = 7;

  private final Format format;
  private final List<String> title;
  private final List<String> subtitle;
  private final Key key;

  Head(Chart chart, Format format, List<Sample> samples) {
    this.format = format;
    double width = format.width() - 2 * format.margin();
    int most = format.isNarrow() ? MOST_LINES_NARROW : MOST_LINES;
    this.title = Lettering.lines(chart.title(), format.title(), width, MOST_LINES);
    this.subtitle = Lettering.lines(chart.subtitle(), format.text(), width, most);
    List<Sample> told = new ArrayList<>();
    if (!chart.unit().isEmpty()) {
      told.add(Sample.word(chart.unit()));
    }
    told.addAll(samples);
    this.key = new Key(told, format.text(), width);
  }

  double height() {
    return format.margin() / 2
        + title.size() * Lettering.line(format.title())
        + subtitle.size() * Lettering.line(format.text())
        + format.margin() / 2
        + key.height()
        + format.margin() / 2;
  }

  void draw(Graphics2D g2) {
    double x = format.margin();
    double y = Lettering.draw(g2, title, format.title(), Palette.INK, x, format.margin() / 2);
    y = Lettering.draw(g2, subtitle, format.text(), Palette.QUIET, x, y);
    key.draw(g2, x, y + format.margin() / 2);
  }
}
