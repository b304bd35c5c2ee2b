package growingon.project;

import growingon.growth.Flow;
import growingon.nursery.Grade;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * When the slices of a lot grow thick enough for one grade more: values of the lot's growth clock,
 * rising, with the slice that crosses at each.
 */
final class Crossings {
  private final double[] clocks;
  private final int[] slices;

  private record Crossing(double clock, int slice) {}

  /**
   * Works the crossings out.
   *
   * @param flow the growth law from now on
   * @param trunks trunk of each slice now, mm
   * @param vigour vigour of each slice
   * @param grades grades of the ladder, lowest first
   * @param thick for each slice how many grades it is thick enough for already
   */
  Crossings(Flow flow, double[] trunks, double[] vigour, Grade[] grades, int[] thick) {
    List<Crossing> list =
        IntStream.range(0, trunks.length)
            .boxed()
            .flatMap(
                slice ->
                    IntStream.range(thick[slice], grades.length)
                        .mapToDouble(
                            grade ->
                                flow.yearsTo(trunks[slice], grades[grade].leastTrunkMm())
                                    / vigour[slice])
                        .filter(Double::isFinite)
                        .mapToObj(clock -> new Crossing(clock, slice)))
            .sorted(Comparator.comparingDouble(Crossing::clock))
            .toList();
    this.clocks = list.stream().mapToDouble(Crossing::clock).toArray();
    this.slices = list.stream().mapToInt(Crossing::slice).toArray();
  }

  /** Whether the crossing at an index has come at a clock. */
  boolean isOver(int index, double clock) {
    return index < clocks.length && clocks[index] <= clock;
  }

  /** Slice of the crossing at an index. */
  int slice(int index) {
    return slices[index];
  }
}
