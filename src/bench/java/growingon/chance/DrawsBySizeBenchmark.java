package growingon.chance;

import growingon.nursery.Scenario;
import growingon.project.LargeNursery;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * How the time for a draw grows with the number of lots: 200,000 lots and draws over ten seasons on
 * one thread, as few lots drawn often and as many drawn seldom.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.SECONDS)
@Fork(
    value = 1,
    jvmArgs = {"-Xmx700m", "-XX:+UseTransparentHugePages"})
@Warmup(iterations = 1)
@Measurement(iterations = 3)
public class DrawsBySizeBenchmark {
  private static final int LOTS_AND_DRAWS = 200_000;

  @Param({"50", "200", "1000", "5000"})
  private int lots;

  private Scenario scenario;

  @Setup
  public void nursery() {
    scenario = LargeNursery.of(lots, LOTS_AND_DRAWS / lots);
  }

  @Benchmark
  public Samples draw(Processor processor) {
    Samples samples = new Samples(scenario, 0, scenario.plan().seasons());
    new Drawing(scenario, List.of(), samples).run(1, done -> {});
    return samples;
  }
}
