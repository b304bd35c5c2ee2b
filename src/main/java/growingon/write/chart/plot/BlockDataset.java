package growingon.write.chart.plot;

import java.util.List;
import org.jfree.data.DomainOrder;
import org.jfree.data.xy.AbstractIntervalXYDataset;

/** Blocks as the drawing library asks for them. */
@SuppressWarnings("serial") // never serialized
final class BlockDataset extends AbstractIntervalXYDataset {
  private final List<Block> blocks;

  BlockDataset(List<Block> blocks) {
    this.blocks = blocks;
  }

  @Override
  public int getSeriesCount() {
    return blocks.size();
  }

  @Override
  public Comparable<?> getSeriesKey(int series) {
    return series;
  }

  @Override
  public int getItemCount(int series) {
    return blocks.get(series).low().length;
  }

  @Override
  public DomainOrder getDomainOrder() {
    return DomainOrder.ASCENDING;
  }

  @Override
  public Number getX(int series, int item) {
    return item + 0.5;
  }

  @Override
  public Number getY(int series, int item) {
    return getEndY(series, item);
  }

  @Override
  public Number getStartX(int series, int item) {
    return item + blocks.get(series).left();
  }

  @Override
  public Number getEndX(int series, int item) {
    return item + blocks.get(series).right();
  }

  @Override
  public Number getStartY(int series, int item) {
    return blocks.get(series).low()[item];
  }

  @Override
  public Number getEndY(int series, int item) {
    return blocks.get(series).high()[item];
  }
}
