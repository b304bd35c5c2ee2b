package growingon.command;

import growingon.report.edition.Edition;
import growingon.report.model.Audience;
import java.util.Optional;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;

/** The option of commands whose report a partner or a bank may see. */
final class Reader {
  @Option(
      names = "--for",
      paramLabel = "WHO",
      description =
          "An edition for a partner or bank, in a folder of its own, without what they are not to"
              + " see.")
  private Audience audience;

  /** Checks that there is such an edition. */
  void check(CommandSpec command) {
    if (audience == Audience.CUSTOMER) {
      throw new ParameterException(
          command.commandLine(), "a customer is shown what plan --for customer lists, and no more");
    }
  }

  /** The edition that is asked for; empty for the whole report. */
  Optional<Edition> edition() {
    return Optional.ofNullable(audience).map(Edition::lookingBack);
  }

  Optional<Audience> audience() {
    return Optional.ofNullable(audience);
  }

  /** What is added to the name of the report's folder. */
  String folderEnding() {
    return edition().map(Edition::folderEnding).orElse("");
  }
}
