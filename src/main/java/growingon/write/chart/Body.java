package growingon.write.chart;

import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.List;

/** What stands below the head of a chart. */
interface Body {
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
