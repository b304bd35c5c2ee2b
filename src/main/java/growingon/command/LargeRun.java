package growingon.command;

import java.time.Duration;
import java.util.Optional;

/**
 * Says after a long run that Java would have been quicker with all its compilers. The usual
 * argument file does without the slower one, which a short run would pay for and never use.
 */
final class LargeRun {
  /** The usual argument file names the one for large runs under this key. */
  private static final String KEY = "growing-on.large";

  /** A run that takes longer would take about half the time with all compilers. */
  private static final Duration LONG = Duration.ofSeconds(60);

  private LargeRun() {}

  /**
   * The argument file for large runs; empty where it is in use, or where Java was started alone.
   */
  static Optional<String> file() {
    return Optional.ofNullable(System.getProperty(KEY));
  }

  /**
   * What to say of a run.
   *
   * @param took how long it took
   * @param file the argument file for large runs, if it was not used
   */
  static Optional<String> advice(Duration took, Optional<String> file) {
    return file.filter(any -> took.compareTo(LONG) > 0)
        .map(
            name ->
                "That took %d seconds. Runs as large as this are done sooner with java \"@%s\""
                    .formatted(took.toSeconds(), name));
  }
}
