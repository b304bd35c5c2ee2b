package growingon.command;

import growingon.write.KilledWriting;
import java.io.PrintWriter;
import java.time.LocalDate;
import java.util.Arrays;

/** The program, killed at a stage of writing. */
final class KilledCommand {
  private KilledCommand() {}

  /**
   * Runs a command.
   *
   * @param args the stage, then the command line
   */
  public static void main(String[] args) {
    GrowingOn program =
        new GrowingOn(Ran.clock(LocalDate.of(2026, 11, 3)), KilledWriting.at(args[0]));
    PrintWriter out = new PrintWriter(System.out, true);
    PrintWriter err = new PrintWriter(System.err, true);
    System.exit(Main.run(program, out, err, Arrays.copyOfRange(args, 1, args.length)));
  }
}
