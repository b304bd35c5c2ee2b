package growingon.write.folder;

import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.function.Consumer;

/**
 * Where a report goes, and how.
 *
 * @param folder made if it is not there
 * @param force whether it may go into a folder that holds something else too: files of others stay
 *     beside it, the report of another plan is replaced
 * @param dated whether the names of workbook and page say which plan it is, for whom and of when
 * @param inputs files and folders that the plan reads; the folder may not hold one of them
 * @param watch is told how far the writing has come
 */
public record Placing(
    Path folder, boolean force, boolean dated, List<Path> inputs, Consumer<Stage> watch) {
  public Placing {
    Objects.requireNonNull(folder);
    inputs = List.copyOf(inputs);
    Objects.requireNonNull(watch);
  }

  /** A folder that holds no input. */
  public static Placing in(Path folder) {
    return new Placing(folder, false, false, List.of(), stage -> {});
  }

  /** The same, with force. */
  public Placing forced() {
    return new Placing(folder, true, dated, inputs, watch);
  }
}
