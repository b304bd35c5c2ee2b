package growingon.command.folder;

import growingon.load.LoadOptions;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.Optional;
import picocli.CommandLine.Option;

/** The option to read the species from another folder, such as a proposal of fit. */
public final class SpeciesFolder {
  @Option(
      names = "--species",
      paramLabel = "FOLDER",
      description =
          "Read species.csv and species.json from this folder instead, such as a proposal of fit.")
  private Path folder;

  public Optional<Path> folder() {
    return Optional.ofNullable(folder);
  }

  /** What reading needs to know. */
  public LoadOptions options(Clock clock) {
    return new LoadOptions(LocalDate.now(clock)).withSpeciesFrom(folder());
  }
}
