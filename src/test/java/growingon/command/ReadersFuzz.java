package growingon.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Feeds every reader with changed files for as long as {@code -Dfuzz.minutes} says, from the seed
 * {@code -Dfuzz.seed} on; what is found lies in target/fuzz-found. Run by {@code mvn -Pfuzz test}.
 */
class ReadersFuzz {
  private static final long MINUTES = Long.getLong("fuzz.minutes", 10);
  private static final long SEED = Long.getLong("fuzz.seed", 1);
  private static final int ENOUGH = 50;

  @TempDir private Path temporary;

  @Test
  void anyFile_isPlannedOrRefused() throws IOException {
    try (Fuzzing fuzzing = new Fuzzing(FuzzSeeds.lay(temporary.resolve("seeds")))) {
      assertThat(found(fuzzing)).isEmpty();
    }
  }

  private List<String> found(Fuzzing fuzzing) throws IOException {
    Path folder = temporary.resolve("changed");
    List<String> found = new ArrayList<>();
    long end = System.nanoTime() + Duration.ofMinutes(MINUTES).toNanos();
    long runs = 0;
    while (System.nanoTime() < end && found.size() < ENOUGH) {
      FuzzTarget target = FuzzTarget.values()[(int) (runs % FuzzTarget.values().length)];
      long seed = SEED + runs++;
      Optional<String> fault = fuzzing.once(target, seed, folder);
      if (fault.isPresent()) {
        found.add(target + " " + seed + ": " + fault.get());
        keep(target + "-" + seed, folder, fault.get());
      }
    }
    System.out.println(runs + " inputs, " + found.size() + " faults");
    return found;
  }

  private static void keep(String name, Path folder, String fault) throws IOException {
    Path kept = Path.of("target", "fuzz-found", name);
    Fuzzing.delete(kept);
    FuzzTarget.copy(folder, kept);
    Files.writeString(kept.resolve("fault.txt"), fault);
  }
}
