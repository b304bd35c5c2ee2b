package growingon.project;

import growingon.money.Accounts;
import growingon.nursery.Scenario;
import growingon.nursery.market.Quality;
import growingon.project.lot.LotPlan;
import growingon.project.slice.Growing;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * Time for one plant-month: one representative plant in one month. 200 lots of 64 representative
 * plants over 10 seasons.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Fork(1)
@Warmup(iterations = 4, time = 1)
@Measurement(iterations = 6, time = 1)
public class ProjectionBenchmark {
  private static final int LOTS = 200;
  private static final int MONTHS = 120;
  private static final int PLANT_MONTHS = LOTS * MONTHS * 64;

  private Scenario scenario;
  private Programme programme;

  @Setup
  public void nursery() {
    scenario = LargeNursery.of(LOTS, 0);
    programme = Programme.of(scenario);
  }

  /** The kernel alone: growth, losses, grading and a sale in every month, for every lot. */
  @Benchmark
  @OperationsPerInvocation(PLANT_MONTHS)
  public double kernel() {
    double sold = 0;
    for (LotPlan plan : programme.lots()) {
      Growing plants = new Growing(plan.growthStart, plan.lot.quality(), 1);
      plants.growBy(plan.species.growth().get("pot"));
      for (int month = 0; month < MONTHS; month++) {
        plants.grow(plan.species.growthMonths().get(month % 12));
        plants.die(plants.living() * 0.004);
        plants.gradeForSale(month);
        double ready = plants.ready(Quality.FIRST, 0);
        if (ready > 0) {
          plants.sell(Quality.FIRST, 0, Math.min(1, 1 / ready));
        }
        sold += ready;
      }
    }
    return sold;
  }

  /** The whole projection: steps, space, weights, market and histories as well. */
  @Benchmark
  @OperationsPerInvocation(PLANT_MONTHS)
  public Projection projection() {
    return Projector.project(scenario);
  }

  /** The whole projection with its accounts. */
  @Benchmark
  @OperationsPerInvocation(PLANT_MONTHS)
  public Accounts accounts() {
    return Accounts.of(Projector.project(scenario));
  }
}
