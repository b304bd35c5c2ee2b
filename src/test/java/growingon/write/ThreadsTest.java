package growingon.write;

import static org.assertj.core.api.Assertions.assertThat;

import growingon.chance.Chances;
import growingon.money.Accounts;
import growingon.money.bought.ValueJoin;
import growingon.nursery.Inputs;
import growingon.nursery.Scenario;
import growingon.nursery.lot.Lot;
import growingon.plan.Planned;
import growingon.project.Projector;
import growingon.report.model.Report;
import growingon.report.plan.PlanReport;
import growingon.whole.RandomNurseries;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ForkJoinPool;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * What is written does not depend on how many threads work: those of the draws, and those that
 * share lots and sheets, which are the threads of the pool that a run is made in.
 */
class ThreadsTest {
  private static final int NURSERIES = 20;
  private static final int DRAWS = 3;

  private static final int MOST_WEIGHED = 8;

  @TempDir Path folder;

  private static Scenario drawn(int number) {
    Scenario scenario = RandomNurseries.of(number).scenario();
    return scenario.withPlan(scenario.plan().withDraws(DRAWS));
  }

  /** More lots than one thread takes alone. */
  private static Scenario large(Scenario scenario) {
    List<Lot> lots = scenario.lots();
    List<Lot> many =
        IntStream.range(0, 210)
            .mapToObj(i -> named(lots.get(i % lots.size()), "lot number " + i))
            .toList();
    return scenario.withPlan(scenario.plan().withSeasons(2)).withLots(many);
  }

  private static Lot named(Lot lot, String name) {
    return lot.withQuantity(name, lot.quantity(), lot.kept());
  }

  private static Report report(Scenario scenario, int threads) {
    return new ForkJoinPool(threads).submit(() -> reckoned(scenario, threads)).join();
  }

  private static Report reckoned(Scenario scenario, int threads) {
    Accounts accounts = Accounts.of(Projector.project(scenario));
    // Weighing each of many lots takes long, and shares nothing that the draws do not.
    boolean isSmall = scenario.lots().size() <= MOST_WEIGHED;
    ValueJoin join = isSmall ? ValueJoin.of(scenario) : ValueJoin.NOTHING_BOUGHT;
    Chances chances = Chances.draw(accounts, join.bought(), threads, done -> {});
    Inputs inputs = new Inputs(scenario, List.of(), List.of(), scenario.lots().size());
    return PlanReport.of(new Planned(inputs, accounts, join, Optional.of(chances)), List.of());
  }

  private static String figures(Report report) throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    FiguresJson.write(report, bytes);
    return bytes.toString(StandardCharsets.UTF_8);
  }

  private Map<String, String> files(Report report, int threads) throws IOException {
    Path to = Files.createDirectory(folder.resolve(threads + " threads"));
    ReportFiles.write(report, to, FileNames.USUAL);
    return Snapshot.of(to);
  }

  @Test
  void figures_ofGeneratedNurseries_areTheSameOnOneTwoAndThreeThreads() throws IOException {
    for (int number = 0; number < NURSERIES; number++) {
      Scenario scenario = drawn(number);
      String alone = figures(report(scenario, 1));
      for (int threads = 2; threads <= 3; threads++) {
        assertThat(figures(report(scenario, threads)))
            .as("nursery %d on %d threads", number, threads)
            .isEqualTo(alone);
      }
    }
  }

  @Test
  void everyFile_ofManyLots_isTheSameOnOneTwoAndThreeThreads() throws IOException {
    Scenario scenario = large(drawn(NURSERIES));
    Map<String, String> alone = files(report(scenario, 1), 1);
    assertThat(alone).containsKeys("plan.xlsx", "details.xlsx", "report.html", "figures.json");
    for (int threads = 2; threads <= 3; threads++) {
      assertThat(files(report(scenario, threads), threads)).isEqualTo(alone);
    }
  }
}
