package growingon.command;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.stream.Stream;

/**
 * Runs the program on changed files. Whatever they hold, it ends within 20 seconds, with an exit
 * code that is not that of a fault of the program, and shows no trace.
 */
final class Fuzzing implements AutoCloseable {
  private static final int PATIENCE_SECONDS = 20;

  private final Path seeds;
  private final ExecutorService worker =
      Executors.newCachedThreadPool(
          task -> {
            Thread thread = new Thread(task, "fuzzing");
            thread.setDaemon(true);
            return thread;
          });

  /** What libraries print by themselves; they look for the stream once, so it is there first. */
  private final ByteArrayOutputStream console = new ByteArrayOutputStream();

  private final PrintStream before = System.err;

  Fuzzing(Path seeds) {
    this.seeds = seeds;
    System.setErr(new PrintStream(console, true, StandardCharsets.UTF_8));
  }

  @Override
  public void close() {
    System.setErr(before);
    worker.shutdownNow();
  }

  /** Changes and runs once; gives what is wrong, if anything is. The folder is emptied before. */
  Optional<String> once(FuzzTarget target, long seed, Path folder) throws IOException {
    delete(folder);
    Files.createDirectories(folder);
    List<String> words = target.prepare(folder, seeds, new Mutation(new Random(seed)));
    return run(words).map(fault -> String.join(" ", words) + ": " + fault);
  }

  /** Runs a command; gives what is wrong, if anything is. */
  Optional<String> run(List<String> words) {
    StringWriter printed = new StringWriter();
    console.reset();
    PrintWriter to = new PrintWriter(printed);
    Future<Integer> ended = worker.submit(() -> Main.run(to, to, words.toArray(String[]::new)));
    try {
      int code = ended.get(PATIENCE_SECONDS, TimeUnit.SECONDS);
      return fault(code, printed + console.toString(StandardCharsets.UTF_8));
    } catch (TimeoutException stuck) {
      ended.cancel(true);
      return Optional.of("still running after " + PATIENCE_SECONDS + " s");
    } catch (ExecutionException thrown) {
      return Optional.of("threw " + thrown.getCause());
    } catch (InterruptedException interrupted) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException(interrupted);
    }
  }

  private static Optional<String> fault(int code, String printed) {
    boolean fine =
        code == ExitCode.DONE || code == ExitCode.WRONG_USAGE || code == ExitCode.BAD_INPUT;
    boolean trace = printed.contains("\tat ") || printed.contains("Exception");
    boolean memory = printed.contains("too large for the");
    return fine && !trace && !memory
        ? Optional.empty()
        : Optional.of("exit " + code + ", " + printed.strip());
  }

  static void delete(Path folder) throws IOException {
    if (Files.exists(folder)) {
      try (Stream<Path> all = Files.walk(folder)) {
        for (Path each : all.sorted(Comparator.reverseOrder()).toList()) {
          Files.delete(each);
        }
      }
    }
  }
}
