package growingon.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;

class WholePlantsTest {
  @Test
  void numbers_thatDoNotComeOut_areRoundedByLargestRemainder() {
    assertThat(WholePlants.round(1.2, 2.5, 3.4, 0.9))
        .extracting(Plants::whole)
        .containsExactly(1L, 3L, 3L, 1L);
  }

  @Test
  void numbers_none_areNone() {
    assertThat(WholePlants.round()).isEmpty();
    assertThat(WholePlants.grid(List.of())).isEmpty();
  }

  @Test
  void grid_rowsThatAllRoundTheSameWay_movesPlantsUntilColumnsAddUpToo() {
    List<List<Plants>> grid =
        WholePlants.grid(List.of(row(1.4, 8.6), row(2.4, 7.6), row(3.4, 6.6), row(4.4, 5.6)));

    assertThat(grid.stream().mapToLong(row -> row.get(0).whole()).sum()).isEqualTo(12);
    assertThat(grid).allSatisfy(row -> assertThat(wholeSum(row)).isEqualTo(10));
  }

  private static double[] row(double... numbers) {
    return numbers;
  }

  private static long wholeSum(List<Plants> row) {
    return row.stream().mapToLong(Plants::whole).sum();
  }

  @Property
  void round_anyNumbers_addsUpAndStaysWithinOne(
      @ForAll @Size(max = 40) List<@DoubleRange(max = 500) Double> numbers) {
    double[] exact = numbers.stream().mapToDouble(Double::doubleValue).toArray();

    List<Plants> plants = WholePlants.round(exact);

    assertThat(wholeSum(plants)).isEqualTo(Math.round(Arrays.stream(exact).sum()));
    assertThat(plants)
        .allSatisfy(each -> assertThat((double) each.whole()).isCloseTo(each.exact(), within(1.0)));
  }

  @Property
  void grid_anySharesOfWholeLots_keepsEveryRowAndStaysWithinOne(
      @ForAll @Size(min = 1, max = 30) List<@IntRange(max = 300) Integer> lots,
      @ForAll @DoubleRange(max = 0.5) double first,
      @ForAll @DoubleRange(max = 0.5) double second) {
    List<double[]> rows =
        lots.stream().map(n -> row(n * first, n * second, n - n * first - n * second)).toList();

    List<List<Plants>> grid = WholePlants.grid(rows);

    for (int i = 0; i < lots.size(); i++) {
      assertThat(wholeSum(grid.get(i))).isEqualTo(lots.get(i).longValue());
      assertThat(grid.get(i))
          .allSatisfy(
              each ->
                  assertThat((double) each.whole()).isCloseTo(each.exact(), within(1.0 + 1e-9)));
    }
  }
}
