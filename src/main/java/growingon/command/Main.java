package growingon.command;

import growingon.problem.advice.FileAdvice;
import java.io.PrintWriter;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import picocli.CommandLine;

/** Entry point of {@code growing-on.jar}. */
public final class Main {
  private Main() {}

  /**
   * Runs a command and ends with its exit code: 0 done, 1 our fault, 2 wrong usage, 3 bad input.
   *
   * @param args the command line
   */
  public static void main(String[] args) {
    // Charts are drawn without a screen, and the workbook library logs nothing a grower can use.
    System.setProperty("java.awt.headless", "true");
    System.setProperty("log4j2.StatusLogger.level", "OFF");
    PrintWriter out = new PrintWriter(System.out, true, terminalCharset());
    PrintWriter err = new PrintWriter(System.err, true, terminalCharset());
    long begun = System.nanoTime();
    int exitCode = run(out, err, args);
    LargeRun.advice(Duration.ofNanos(System.nanoTime() - begun), LargeRun.file())
        .ifPresent(out::println);
    System.exit(exitCode);
  }

  /** The terminal's own character set where it is known, else UTF-8. */
  private static Charset terminalCharset() {
    return System.console() == null ? StandardCharsets.UTF_8 : System.console().charset();
  }

  /** Runs a command today; gives its exit code. */
  static int run(PrintWriter out, PrintWriter err, String... args) {
    return run(new GrowingOn(Clock.systemDefaultZone(), stage -> {}), out, err, args);
  }

  /** Runs a command; gives its exit code. */
  static int run(GrowingOn program, PrintWriter out, PrintWriter err, String... args) {
    // Numbers, months and names are the same on every computer, whatever language it is set to.
    Locale.setDefault(Locale.ROOT);
    if (!isThere(System.getProperty("user.dir"))) {
      return Reading.refuse(List.of(FileAdvice.noWorkingFolder()), err);
    }
    CommandLine line = new CommandLine(program);
    line.setOut(out);
    line.setErr(err);
    line.setUsageHelpAutoWidth(true);
    line.setCaseInsensitiveEnumValuesAllowed(true);
    line.registerConverter(Path.class, Path::of);
    line.registerConverter(Integer.class, text -> whole(text, Integer::valueOf));
    line.registerConverter(Long.class, text -> whole(text, Long::valueOf));
    line.setExecutionExceptionHandler(new Faults());
    line.setParameterExceptionHandler(new WrongUsage(line.getParameterExceptionHandler()));
    try {
      return line.execute(args);
    } catch (Error fault) {
      // The command line library hands over exceptions only.
      return Faults.tell(fault, line);
    }
  }

  private static boolean isThere(String folder) {
    try {
      return Files.isDirectory(Path.of(folder));
    } catch (InvalidPathException noPath) {
      return false;
    }
  }

  private static <T> T whole(String text, Function<String, T> parser) {
    try {
      return parser.apply(text);
    } catch (NumberFormatException none) {
      throw new CommandLine.TypeConversionException(
          "'" + text + "' is no whole number, or too large");
    }
  }
}
