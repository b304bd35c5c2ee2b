package growingon.report.build;

import java.util.AbstractList;
import java.util.Arrays;
import java.util.List;
import java.util.RandomAccess;
import java.util.function.ToIntFunction;

/**
 * Things of lots, some of each, that are made each time they are asked for: of thousands of lots in
 * every month they would fill more memory than the plan itself.
 *
 * @param <L> what a lot is taken as
 * @param <T> a thing of a lot
 */
public final class PerLot<L, T> extends AbstractList<T> implements RandomAccess {
  private final List<L> lots;
  private final int[] first;
  private final int size;
  private final OfLot<L, T> maker;

  /** Makes a thing of a lot. */
  @FunctionalInterface
  public interface OfLot<L, T> {
    /** The thing of an index among those of a lot. */
    T of(L lot, int index);
  }

  /**
   * Things of lots, lot after lot.
   *
   * @param number how many a lot has
   * @param maker makes the same thing whenever it is asked
   */
  public PerLot(List<L> lots, ToIntFunction<L> number, OfLot<L, T> maker) {
    this.lots = lots.stream().filter(lot -> number.applyAsInt(lot) > 0).toList();
    this.maker = maker;
    this.first = new int[this.lots.size()];
    int counted = 0;
    for (int i = 0; i < first.length; i++) {
      first[i] = counted;
      counted += number.applyAsInt(this.lots.get(i));
    }
    this.size = counted;
  }

  @Override
  public T get(int index) {
    int found = Arrays.binarySearch(first, index);
    int lot = found >= 0 ? found : -found - 2;
    return maker.of(lots.get(lot), index - first[lot]);
  }

  @Override
  public int size() {
    return size;
  }
}
