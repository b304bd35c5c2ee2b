package growingon.write.chart.plot;

import growingon.write.chart.look.Sample;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.List;

/** What stands below the head of a chart. */
public interface Body {
  /** What the head shows a sample of. */
  List<Sample> key();

  /**
   * Height that it takes.
   *
   * @param head height of what stands above it
   */
  double height(double head);

  void draw(Graphics2D g2, Rectangle2D where);
}
