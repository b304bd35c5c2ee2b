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

/** Time for 2,000 draws of 200 lots over ten seasons, on one thread and on two, in 512 MB. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.SECONDS)
@Fork(value = 1, jvmArgs = "-Xmx512m")
@Warmup(iterations = 1)
@Measurement(iterations = 3)
public class DrawsBenchmark {
  @Param({"1", "2"})
  private int threads;

  @Param({"2000"})
  private int draws;

  private Scenario scenario;

  @Setup
  public void nursery() {
    scenario = LargeNursery.of(200, draws);
  }

  @Benchmark
  public Samples draw() {
    Samples samples = new Samples(scenario, 0, scenario.plan().seasons());
    new Drawing(scenario, List.of(), samples).run(threads, done -> {});
    return samples;
  }
}
