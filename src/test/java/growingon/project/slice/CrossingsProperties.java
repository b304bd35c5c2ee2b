package growingon.project.slice;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;

/** Two ways to tell when slices reach grades, against each other and against plain counting. */
class CrossingsProperties {
  private static List<Integer> until(double clock, Crossings crossings) {
    List<Integer> told = new ArrayList<>();
    crossings.tell(clock, told::add);
    return told;
  }

  @Property
  void everyCrossing_isToldOnce_whenItHasCome(
      @ForAll @Size(min = 1, max = 80) List<@DoubleRange(max = 12) Double> times,
      @ForAll @IntRange(min = 1, max = 5) int grades) {
    int slices = (times.size() + grades - 1) / grades;
    double[] clocks = new double[slices * grades];
    Arrays.fill(clocks, Double.POSITIVE_INFINITY);
    for (int i = 0; i < times.size(); i++) {
      clocks[i] = times.get(i);
    }
    for (int slice = 0; slice < slices; slice++) {
      Arrays.sort(clocks, slice * grades, (slice + 1) * grades);
    }
    Crossings listed = new ListedCrossings(new ListedCrossings.Order(clocks, grades));
    Crossings awaited =
        new AwaitedCrossings(
            new short[slices],
            (slice, grade) ->
                grade == grades ? Double.POSITIVE_INFINITY : clocks[slice * grades + grade]);
    assertThat(until(Double.NaN, listed)).isEmpty();
    assertThat(until(Double.NaN, awaited)).isEmpty();
    int[] reached = new int[slices];
    for (double now : new double[] {0, 0.5, 0.5, 3, 11, 12}) {
      List<Integer> told = until(now, listed);
      assertThat(until(now, awaited)).containsExactlyInAnyOrderElementsOf(told);
      told.forEach(slice -> reached[slice]++);
      int[] counted =
          IntStream.range(0, slices)
              .map(
                  slice ->
                      (int)
                          Arrays.stream(clocks, slice * grades, (slice + 1) * grades)
                              .filter(each -> each <= now)
                              .count())
              .toArray();
      assertThat(reached).containsExactly(counted);
    }
  }

  @Example
  void crossingsAtTheSameTime_areToldAsTheSlicesStand() {
    double never = Double.POSITIVE_INFINITY;
    double[] clocks = {1, never, 0, 1, 0, 0, 1, 2};
    Crossings listed = new ListedCrossings(new ListedCrossings.Order(clocks, 2));
    assertThat(until(0, listed)).containsExactly(1, 2, 2);
    assertThat(until(2, listed)).containsExactly(0, 1, 3, 3);
    assertThat(listed.soonest()).isEqualTo(never);
  }
}
