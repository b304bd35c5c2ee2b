package growingon.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What is said after a run that took long. */
class LargeRunTest {
  private static final Optional<String> FILE = Optional.of("/home/growing-on-large.args");

  @Test
  void longRun_isToldOfTheArgumentsForLargeRuns() {
    assertThat(LargeRun.advice(Duration.ofSeconds(84), FILE))
        .contains(
            "That took 84 seconds. Runs as large as this are done sooner with"
                + " java \"@/home/growing-on-large.args\"");
  }

  @Test
  void shortRun_orOneWithThoseArguments_isToldNothing() {
    assertThat(LargeRun.advice(Duration.ofSeconds(60), FILE)).isEmpty();
    assertThat(LargeRun.advice(Duration.ofSeconds(84), Optional.empty())).isEmpty();
  }
}
