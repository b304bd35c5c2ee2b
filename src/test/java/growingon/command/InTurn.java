package growingon.command;

import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.stream.Collectors;

/**
 * Several commands one after the other in one process: the words of each, with commas between. All
 * on one day, whatever day it is: two processes may stand on two sides of midnight.
 */
final class InTurn {
  private static final LocalDate DAY = LocalDate.of(2026, 11, 28);

  private InTurn() {}

  public static void main(String[] commands) {
    PrintWriter out = new PrintWriter(System.out, true, StandardCharsets.UTF_8);
    PrintWriter err = new PrintWriter(System.err, true, StandardCharsets.UTF_8);
    GrowingOn program = new GrowingOn(Ran.clock(DAY), stage -> {});
    String codes =
        Arrays.stream(commands)
            .map(command -> Main.run(program, out, err, command.split(",")))
            .map(String::valueOf)
            .collect(Collectors.joining(","));
    out.println(codes);
    System.exit(0);
  }
}
