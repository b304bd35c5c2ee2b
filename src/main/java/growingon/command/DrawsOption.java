package growingon.command;

import growingon.nursery.Plan;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;

/** The option --draws: as many as a plan may state, or not given. */
final class DrawsOption {
  private DrawsOption() {}

  static void check(Integer draws, CommandSpec command) {
    if (draws != null && (draws < 0 || draws > Plan.MOST_DRAWS)) {
      throw new ParameterException(
          command.commandLine(), "--draws is between 0 and " + Plan.MOST_DRAWS + ", not " + draws);
    }
  }
}
