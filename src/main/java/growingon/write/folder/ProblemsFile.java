package growingon.write.folder;

import growingon.problem.Problem;
import growingon.problem.ProblemGroup;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** What stops a plan, in full: groups first, then every problem, then rows to paste. */
public final class ProblemsFile {
  private static final String FIRST_LINE = "What stops the plan";

  private ProblemsFile() {}

  /**
   * Writes the file, in place of an older one of the program.
   *
   * @throws IOException if it cannot be written, or a file that is none of the program's is there
   */
  public static void write(Path file, List<ProblemGroup> groups, List<Problem> problems)
      throws IOException {
    if (Files.exists(file) && !isOurs(file)) {
      throw new IOException(file + " is none of ours");
    }
    Files.createDirectories(file.toAbsolutePath().getParent());
    StringBuilder text = new StringBuilder(FIRST_LINE).append("\n\n");
    groups.forEach(group -> text.append(group.line()).append('\n'));
    text.append("\nEvery one\n\n");
    problems.forEach(
        problem -> text.append(problem.severity()).append(": ").append(problem).append('\n'));
    Files.write(file, text.toString().getBytes(StandardCharsets.UTF_8));
  }

  /** Removes the file if it is the program's. */
  public static void remove(Path file) throws IOException {
    if (Files.isRegularFile(file) && isOurs(file)) {
      Files.delete(file);
    }
  }

  private static boolean isOurs(Path file) throws IOException {
    try (var lines = Files.lines(file, StandardCharsets.UTF_8)) {
      return lines.findFirst().filter(FIRST_LINE::equals).isPresent();
    } catch (java.io.UncheckedIOException noText) {
      return false;
    }
  }
}
