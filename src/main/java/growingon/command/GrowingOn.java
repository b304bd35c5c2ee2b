package growingon.command;

import growingon.write.folder.Stage;
import java.time.Clock;
import java.util.function.Consumer;
import picocli.AutoComplete;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ScopeType;
import picocli.CommandLine.Spec;

/** The program itself; it does nothing but hand over to a command. */
@Command(
    name = "growing-on",
    versionProvider = GrowingOn.Version.class,
    mixinStandardHelpOptions = true,
    scope = ScopeType.LOCAL,
    synopsisSubcommandLabel = "COMMAND",
    description = "Plans a nursery's lots month by month to saleable grades.",
    footer = {
      "",
      "Exit codes: 0 done, 1 our fault, 2 wrong usage, 3 bad input.",
      "Figures are a forecast, not a promise, and no tax or investment advice."
    },
    subcommands = {
      PlanCommand.class,
      BuyingCommand.class,
      CheckCommand.class,
      ReviewCommand.class,
      CompareCommand.class,
      FitCommand.class,
      StartCommand.class,
      CommandLine.HelpCommand.class,
      AutoComplete.GenerateCompletion.class
    })
final class GrowingOn implements Runnable {
  private final Clock clock;
  private final Consumer<Stage> watch;

  @Spec private CommandSpec spec;

  @Option(
      names = "--stacktrace",
      scope = ScopeType.INHERIT,
      description = "Show where in the program a fault arose.")
  private boolean stacktrace;

  /**
   * The program.
   *
   * @param clock says what day it is
   * @param watch is told how far the writing of a report has come
   */
  GrowingOn(Clock clock, Consumer<Stage> watch) {
    this.clock = clock;
    this.watch = watch;
  }

  Clock clock() {
    return clock;
  }

  Consumer<Stage> watch() {
    return watch;
  }

  boolean showsStacktrace() {
    return stacktrace;
  }

  @Override
  public void run() {
    throw new CommandLine.ParameterException(
        spec.commandLine(), "Name a command, for example: plan plans/as-it-stands.json");
  }

  /** Reads the version that the build wrote into the jar. */
  static final class Version implements CommandLine.IVersionProvider {
    @Override
    public String[] getVersion() {
      String version = GrowingOn.class.getPackage().getImplementationVersion();
      return new String[] {"growing-on " + (version == null ? "(not packaged)" : version)};
    }
  }
}
