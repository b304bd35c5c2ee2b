package growingon.chance;

import com.sun.management.OperatingSystemMXBean;
import growingon.nursery.Scenario;
import growingon.nursery.species.Species;
import growingon.nursery.species.Sure;
import growingon.project.LargeNursery;
import java.lang.management.ManagementFactory;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.AuxCounters;
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

/**
 * What a draw costs more in which growth and losses are not known: processor time of 200 lots over
 * ten seasons on one thread, with and without in turn, the median of the pairs. Other growth is
 * other work; so besides it is drawn with factors that are as good as one.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.SECONDS)
@Fork(value = 1, jvmArgs = "-Xmx512m")
@Warmup(iterations = 1)
@Measurement(iterations = 3)
public class FactorsBenchmark {
  private static final int DRAWS = 60;
  private static final int PAIRS = 15;

  private Scenario known;
  private Scenario asGoodAsKnown;
  private Scenario unsure;

  /** Processor time with factors over that without. */
  @State(Scope.Thread)
  @AuxCounters(AuxCounters.Type.EVENTS)
  public static class Over {
    /** Of factors that are as good as one: what it costs to have them. */
    public double factorsOfOne;

    /** Of what is 80 % sure: other growth is other work. */
    public double sureBy80;
  }

  @Setup
  public void nursery() {
    Scenario scenario = LargeNursery.of(200, 0, DRAWS);
    known = scenario.known();
    asGoodAsKnown = scenario.withSure(each -> sure(each, 1 - 1e-12));
    unsure = scenario.withSure(each -> sure(each, 0.8));
  }

  private static Species sure(Species species, double sure) {
    Map<String, Double> growth = new HashMap<>();
    species.growth().keySet().forEach(condition -> growth.put(condition, sure));
    return species.withSure(new Sure(growth, sure, sure));
  }

  @Benchmark
  public void inTurn(Over over) {
    List<Double> ones = new ArrayList<>();
    List<Double> others = new ArrayList<>();
    for (int pair = 0; pair < PAIRS; pair++) {
      double without = seconds(known);
      ones.add(seconds(asGoodAsKnown) / without);
      others.add(seconds(unsure) / without);
    }
    over.factorsOfOne = median(ones);
    over.sureBy80 = median(others);
  }

  private static double median(List<Double> values) {
    Collections.sort(values);
    return values.get(values.size() / 2);
  }

  private static double seconds(Scenario scenario) {
    long begun = now();
    Samples samples = new Samples(scenario, 0, scenario.plan().seasons());
    new Drawing(scenario, List.of(), samples).run(1, done -> {});
    return (now() - begun) / 1e9;
  }

  private static long now() {
    return ((OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean())
        .getProcessCpuTime();
  }
}
