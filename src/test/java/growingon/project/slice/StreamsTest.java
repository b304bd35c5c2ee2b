package growingon.project.slice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import growingon.nursery.market.Quality;
import growingon.nursery.species.RootWorkYear;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** The plants of a lot in one array, against plain counting by slices. */
class StreamsTest {
  private static final int SLICES = 16;
  private static final int GRADES = 3;
  private static final int[] EACH_AS_ITS_GRADE = {-1, 0, 1, 2};

  private final double[] firsts = new double[SLICES];
  private final double[] held = new double[SLICES];
  private final double[] seconds = new double[SLICES];
  private final Streams streams;

  StreamsTest() {
    for (int slice = 0; slice < SLICES; slice++) {
      // Slice 9 lies on the border: some of its plants are firsts, some seconds.
      firsts[slice] = slice <= 9 ? 3 : 0;
      held[slice] = slice > 4 && slice <= 9 ? 2 : 0;
      seconds[slice] = slice >= 9 ? 4 : 0;
    }
    streams =
        Streams.of(
            List.of(
                new Stream(Quality.FIRST, true, 0, firsts),
                new Stream(Quality.FIRST, true, 1, held),
                new Stream(Quality.SECOND, true, 0, seconds)),
            SLICES,
            GRADES);
  }

  private double ofGrade(double[] plants, short[] thick, int grade, int sellsFrom) {
    return IntStream.range(0, SLICES)
        .filter(slice -> EACH_AS_ITS_GRADE[thick[slice]] == grade && grade >= sellsFrom)
        .mapToDouble(slice -> plants[slice])
        .sum();
  }

  @Test
  void slicesThatMoveUp_oneByOne_areReadyAsIfGradedAnew() {
    short[] thick = new short[SLICES];
    assertThat(streams.grade(thick, EACH_AS_ITS_GRADE)).isZero();
    Random random = new Random(7);
    for (int move = 0; move < SLICES * GRADES; move++) {
      int slice = random.nextInt(SLICES);
      if (thick[slice] < GRADES) {
        int was = thick[slice]++;
        streams.moveUp(slice, EACH_AS_ITS_GRADE[was], EACH_AS_ITS_GRADE[was + 1]);
      }
      for (int grade = 0; grade < GRADES; grade++) {
        double first = ofGrade(firsts, thick, grade, 0) + ofGrade(held, thick, grade, 1);
        assertThat(streams.ready(Quality.FIRST, grade)).isEqualTo(first, within(1e-9));
        assertThat(streams.ready(Quality.SECOND, grade))
            .isEqualTo(ofGrade(seconds, thick, grade, 0), within(1e-9));
        assertThat(streams.ready(Quality.THIRD, grade)).isZero();
      }
    }
  }

  @Test
  void aShareOfAGrade_sold_leavesOtherGradesAndStreamsAsTheyWere() {
    short[] thick = new short[SLICES];
    for (int slice = 0; slice < SLICES; slice++) {
      thick[slice] = (short) (slice % (GRADES + 1));
    }
    streams.grade(thick, EACH_AS_ITS_GRADE);
    double all = streams.sum(0);
    double ready = streams.ready(0, 1);
    streams.sell(0, 1, thick, new double[] {1, 1, 0.75, 1}, 0.25);
    assertThat(streams.ready(0, 1)).isEqualTo(0.75 * ready);
    assertThat(streams.sum(0)).isEqualTo(all - 0.25 * ready, within(1e-12));
    assertThat(streams.count(0)).isEqualTo(streams.sum(0), within(1e-12));
    assertThat(streams.ready(0, 0)).isEqualTo(ofGrade(firsts, thick, 0, 0));
    assertThat(streams.count(1)).isEqualTo(IntStream.range(5, 10).count() * 2);
    assertThat(streams.sum()).isEqualTo(all - 0.25 * ready + 10 + 28, within(1e-12));
  }

  @Test
  void yearAfterRootWork_lastsUntilTheMonthSaid_andNoLonger() {
    for (int months = -30; months < 60; months++) {
      RootWorkYear now = RootWorkYear.after(months);
      int until = Math.min(RootWorkYear.nextAfter(months), 60);
      assertThat(until).isGreaterThan(months);
      for (int later = months; later < until; later++) {
        assertThat(RootWorkYear.after(later)).isEqualTo(now);
      }
      assertThat(until == 60 || RootWorkYear.after(until) != now).isTrue();
    }
  }
}
