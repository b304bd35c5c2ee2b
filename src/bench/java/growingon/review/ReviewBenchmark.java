package growingon.review;

import growingon.nursery.Inputs;
import growingon.nursery.Scenario;
import growingon.nursery.record.DaybookLine.What;
import growingon.project.LargeNursery;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** Time for a review of 100,000 lines, 5,000 counts among them, of 200 lots over ten seasons. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.SECONDS)
@Fork(value = 1, jvmArgs = "-Xmx512m")
@Warmup(iterations = 0)
@Measurement(iterations = 3)
public class ReviewBenchmark {
  private static final int LOTS = 200;
  private static final LocalDate FIRST = LocalDate.of(2026, 11, 1);

  private Inputs inputs;

  @Setup
  public void daybook() {
    Scenario scenario = LargeNursery.of(LOTS, 0);
    Diary diary = new Diary();
    for (int i = 0; i < 95_000; i++) {
      What what = i % 3 == 0 ? What.RETURNED : What.SOLD;
      diary.on(FIRST.plusDays(i % 700).toString(), "lot " + i * 7 % LOTS, what, 1).amount(20);
    }
    for (int i = 0; i < 5_000; i++) {
      String day = FIRST.plusDays(i % 25 * 28).toString();
      diary.on(day, "lot " + i % LOTS, What.COUNTED, 100 - i % 25).trunks(20, 0.2);
    }
    inputs = diary.of(scenario);
  }

  @Benchmark
  public Review review() {
    return Review.of(inputs, YearMonth.of(2028, 12), Optional.empty());
  }
}
