import java.io.PrintWriter;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/**
 * Runs several commands of the jar one after another in one virtual machine, so that the class
 * archive that it leaves has the classes of all of them. The build calls it: {@code java -cp
 * growing-on.jar Rehearse.java COMMAND ARGUMENT… -- COMMAND …}. Ends with the first exit code that
 * is not 0.
 */
final class Rehearse {
  private static final String NEXT = "--";

  private Rehearse() {}

  public static void main(String[] args) throws ReflectiveOperationException {
    System.setProperty("java.awt.headless", "true");
    System.setProperty("log4j2.StatusLogger.level", "OFF");
    // The entry for users ends the virtual machine after one command.
    Method run =
        Class.forName("growingon.command.Main")
            .getDeclaredMethod("run", PrintWriter.class, PrintWriter.class, String[].class);
    run.setAccessible(true);
    PrintWriter out = new PrintWriter(System.out, true, StandardCharsets.UTF_8);
    for (List<String> command : commands(args)) {
      int exitCode = run(run, out, command);
      if (exitCode != 0) {
        out.println("went wrong: " + String.join(" ", command));
        System.exit(exitCode);
      }
    }
    System.exit(0);
  }

  private static int run(Method run, PrintWriter out, List<String> command)
      throws ReflectiveOperationException {
    try {
      return (int) run.invoke(null, out, out, command.toArray(String[]::new));
    } catch (InvocationTargetException failed) {
      throw new IllegalStateException(failed.getCause());
    }
  }

  private static List<List<String>> commands(String[] args) {
    List<List<String>> commands = new ArrayList<>(List.of(new ArrayList<>()));
    for (String each : args) {
      if (each.equals(NEXT)) {
        commands.add(new ArrayList<>());
      } else {
        commands.get(commands.size() - 1).add(each);
      }
    }
    return commands;
  }
}
