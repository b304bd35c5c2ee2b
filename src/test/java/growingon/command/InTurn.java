package growingon.command;

import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.stream.Collectors;

/** Several commands one after the other in one process: the words of each, with commas between. */
final class InTurn {
  private InTurn() {}

  public static void main(String[] commands) {
    PrintWriter out = new PrintWriter(System.out, true, StandardCharsets.UTF_8);
    PrintWriter err = new PrintWriter(System.err, true, StandardCharsets.UTF_8);
    String codes =
        Arrays.stream(commands)
            .map(command -> Main.run(out, err, command.split(",")))
            .map(String::valueOf)
            .collect(Collectors.joining(","));
    out.println(codes);
    System.exit(0);
  }
}
