package growingon.demo;

import static org.assertj.core.api.Assertions.assertThat;

import growingon.load.LoadOptions;
import growingon.load.Loader;
import growingon.nursery.Inputs;
import growingon.nursery.lot.Lot;
import growingon.nursery.record.DaybookLine;
import growingon.nursery.record.DaybookLine.What;
import growingon.problem.Loaded;
import growingon.problem.Severity;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** The daybook of the demonstration is what its generator gives, and holds together. */
class DemoDaybookTest {
  static final Path PLAN = Path.of("plans", "two-seasons-on.json");
  private static final String AGAIN =
      "make it again with: mvn -q test -Dtest=DemoDaybookTest -Ddemo.write=true";
  private static final Set<What> LEAVING =
      EnumSet.of(What.SOLD, What.DIED, What.CULLED, What.SPLIT, What.USED, What.LOST);

  @Test
  void committedDaybook_isWhatTheGeneratorGives() throws IOException {
    if (Boolean.getBoolean("demo.write")) {
      Files.writeString(DemoDaybook.FILE, DemoDaybook.text());
    }
    assertThat(Files.readString(DemoDaybook.FILE)).as(AGAIN).isEqualTo(DemoDaybook.text());
  }

  @Test
  void daybook_isReadWithoutErrorOrWarning() {
    Loaded<Inputs> loaded = Loader.load(PLAN, new LoadOptions(LocalDate.of(2024, 10, 31)));

    assertThat(loaded.problems()).noneMatch(each -> each.severity() != Severity.NOTICE);
    assertThat(loaded.value()).isPresent();
  }

  @Test
  void everyCount_isWhatTheLinesBeforeItLeaveAlive() {
    Inputs inputs =
        Loader.load(PLAN, new LoadOptions(LocalDate.of(2024, 10, 31))).value().orElseThrow();
    Map<String, Double> alive =
        inputs.scenario().lots().stream()
            .filter(lot -> lot.purchase().isEmpty())
            .collect(
                Collectors.toMap(
                    Lot::name, lot -> (double) lot.quantity(), (a, b) -> a, HashMap::new));

    for (DaybookLine line : inputs.daybook()) {
      double plants = line.quantity().orElse(0);
      if (line.isOfNoLot()) {
        continue;
      }
      if (line.what() == What.COUNTED) {
        assertThat(plants).as("%s", line).isEqualTo(alive.get(line.lot()));
      } else {
        double change = LEAVING.contains(line.what()) ? -plants : plants;
        assertThat(alive.merge(line.lot(), change, Double::sum)).as("%s", line).isNotNegative();
        line.toLot().ifPresent(to -> alive.merge(to, plants, Double::sum));
      }
    }
    assertThat(alive).hasSize(7);
  }
}
