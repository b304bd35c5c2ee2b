package growingon.command;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;

/** Runs the program as a process of its own, with what only a new machine can be given. */
final class Forked {
  private static final int PATIENCE_SECONDS = 120;

  private Forked() {}

  /**
   * Runs a command.
   *
   * @param machine options of the Java machine, such as -Xmx32m
   * @param environment variables that are added to those of the tests
   */
  static Ran run(List<String> machine, Map<String, String> environment, String... args)
      throws IOException, InterruptedException {
    return run(Path.of(""), Main.class, machine, environment, args);
  }

  /**
   * Runs a class.
   *
   * @param folder to run it in
   */
  static Ran run(
      Path folder,
      Class<?> main,
      List<String> machine,
      Map<String, String> environment,
      String... args)
      throws IOException, InterruptedException {
    List<String> words = new ArrayList<>();
    words.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    words.addAll(List.of("-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC", "-Xshare:auto"));
    words.addAll(machine);
    words.addAll(List.of("-cp", System.getProperty("java.class.path"), main.getName()));
    words.addAll(List.of(args));
    ProcessBuilder builder = new ProcessBuilder(words);
    builder.directory(folder.toAbsolutePath().toFile());
    builder.environment().putAll(environment);
    Process process = builder.start();
    CompletableFuture<String> out =
        CompletableFuture.supplyAsync(() -> all(process.getInputStream()));
    CompletableFuture<String> err =
        CompletableFuture.supplyAsync(() -> all(process.getErrorStream()));
    if (!process.waitFor(PATIENCE_SECONDS, TimeUnit.SECONDS)) {
      process.destroyForcibly();
      throw new IllegalStateException("still running: " + String.join(" ", args));
    }
    return new Ran(process.exitValue(), out.join(), err.join());
  }

  private static String all(InputStream stream) {
    try {
      return new String(stream.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException broken) {
      throw new UncheckedIOException(broken);
    }
  }
}
