package growingon.load;

import static org.assertj.core.api.Assertions.assertThat;

import growingon.problem.Problem;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The demonstration nursery and its plans are as the reader wants them. */
class DemoNurseryTest {
  @Test
  void demoPlans_areReadWithoutErrorOrWarning() throws IOException {
    try (Stream<Path> plans = Files.list(Path.of("plans"))) {
      for (Path plan : plans.filter(file -> file.toString().endsWith(".json")).toList()) {
        Loader.Reading reading = SmallNursery.read(plan);

        assertThat(reading.findings().problems())
            .as(plan.toString())
            .filteredOn(problem -> !problem.severity().toString().equals("notice"))
            .isEmpty();
        assertThat(reading.inputs()).isPresent();
        assertThat(reading.rows().accepted()).isEqualTo(reading.rows().read());
      }
    }
  }

  @Test
  void demoNursery_isReadWithoutAPlanToo() {
    LoadOptions options = new LoadOptions(LocalDate.of(2026, 11, 20));
    assertThat(Loader.read(Path.of("demo-data"), options).findings().problems())
        .filteredOn(Problem::isError)
        .isEmpty();
  }
}
