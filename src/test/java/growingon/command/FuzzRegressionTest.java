package growingon.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * What once ended with a fault of the program, and some changed files of each kind; ten minutes of
 * them are fed by {@code mvn -Pfuzz test}.
 */
class FuzzRegressionTest {
  private static final Path CASES = Path.of("src/test/resources/fuzz");
  private static final String ABOUT = "case.txt";
  private static final int EACH = 6;
  private static final long SEED = 4711;

  @TempDir private static Path temporary;
  private static Path seeds;
  private static Fuzzing fuzzing;

  @TempDir private Path folder;

  @BeforeAll
  static void laySeeds() throws IOException {
    seeds = FuzzSeeds.lay(temporary.resolve("seeds"));
    fuzzing = new Fuzzing(seeds);
  }

  @AfterAll
  static void giveTheConsoleBack() {
    fuzzing.close();
  }

  static Stream<String> cases() throws IOException {
    try (Stream<Path> folders = Files.list(CASES)) {
      return folders.map(each -> each.getFileName().toString()).sorted().toList().stream();
    }
  }

  /** A case says what it is laid over, the command, and what is taken away. */
  @ParameterizedTest
  @MethodSource("cases")
  void inputThatOnceBrokeTheProgram_isPlannedOrRefused(String name) throws IOException {
    List<String> about = Files.readAllLines(CASES.resolve(name).resolve(ABOUT));
    if (!about.get(0).equals("none")) {
      FuzzTarget.copy(seeds.resolve(about.get(0)), folder);
    }
    try (Stream<Path> files = Files.list(CASES.resolve(name))) {
      for (Path file : files.filter(each -> !each.endsWith(ABOUT)).toList()) {
        Path copy = folder.resolve(file.getFileName());
        Files.copy(file, copy, StandardCopyOption.REPLACE_EXISTING);
      }
    }
    if (!about.get(2).isEmpty()) {
      Files.delete(folder.resolve(about.get(2)));
    }

    assertThat(fuzzing.run(words(about.get(1)))).isEmpty();
  }

  private List<String> words(String command) {
    List<String> words = new ArrayList<>();
    for (String word : command.split(" ")) {
      words.add(word.equals(".") ? folder.toString() : word);
    }
    if (words.get(0).equals("plan")) {
      words.addAll(List.of("--out", folder.resolve("report").toString()));
    }
    return words;
  }

  @ParameterizedTest
  @EnumSource(FuzzTarget.class)
  void changedFiles_arePlannedOrRefused(FuzzTarget target) throws IOException {
    for (int i = 0; i < EACH; i++) {
      assertThat(fuzzing.once(target, SEED + i, folder.resolve("changed")))
          .as(target + " " + (SEED + i))
          .isEmpty();
    }
  }
}
