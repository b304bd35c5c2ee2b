package growingon.write;

import growingon.write.folder.Placing;
import growingon.write.folder.Stage;
import java.io.File;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;

/** A program that writes a report and is killed at a stage of it: nothing of it runs any more. */
public final class KilledWriting {
  /** What a program that was killed ends with here. */
  public static final int KILLED = 137;

  private KilledWriting() {}

  /**
   * Writes the light report.
   *
   * @param args folder, stage, and whether by force
   */
  public static void main(String[] args) throws IOException {
    Placing placing =
        new Placing(Path.of(args[0]), Boolean.parseBoolean(args[2]), false, List.of(), at(args[1]));
    LightReport.write(placing);
  }

  /** Ends the program at a stage, as a power cut would. */
  public static Consumer<Stage> at(String stage) {
    return reached -> {
      if (reached == Stage.valueOf(stage)) {
        Runtime.getRuntime().halt(KILLED);
      }
    };
  }

  /** Runs a program of these tests by itself; gives its exit code. */
  public static int run(Path from, Class<?> program, String... args) throws Exception {
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.addAll(List.of("-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC"));
    command.addAll(List.of("-Djava.awt.headless=true", "-Dlog4j2.StatusLogger.level=OFF"));
    command.addAll(List.of("-cp", classPath(), program.getName()));
    command.addAll(List.of(args));
    File log = File.createTempFile("killed", ".txt");
    try {
      return new ProcessBuilder(command)
          .directory(from.toFile())
          .redirectErrorStream(true)
          .redirectOutput(log)
          .start()
          .waitFor();
    } finally {
      log.delete();
    }
  }

  private static String classPath() {
    return System.getProperty("surefire.test.class.path", System.getProperty("java.class.path"));
  }
}
