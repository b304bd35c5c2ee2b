package growingon.chance;

import growingon.money.bought.BoughtLot;
import growingon.money.bought.ValueJoin;
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
 * Time for 2,000 draws of 200 lots over ten seasons, on one thread and on two, in 512 MB; without a
 * bought lot and with four, each of which is weighed in every draw.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.SECONDS)
@Fork(
    value = 1,
    jvmArgs = {"-Xmx512m", "-XX:+UseTransparentHugePages"})
@Warmup(iterations = 1)
@Measurement(iterations = 3)
public class DrawsBenchmark {
  @Param({"1", "2"})
  private int threads;

  @Param({"2000"})
  private int draws;

  @Param({"0", "4"})
  private int bought;

  private Scenario scenario;
  private List<BoughtLot> weighed;

  @Setup
  public void nursery() {
    scenario = LargeNursery.of(200, bought, draws);
    weighed = ValueJoin.of(scenario).bought();
  }

  @Benchmark
  public Samples draw(Processor processor) {
    int endings = Drawing.endings(scenario, weighed);
    Samples samples = new Samples(scenario, weighed.size(), endings);
    new Drawing(scenario, weighed, samples).run(threads, done -> {});
    return samples;
  }
}
