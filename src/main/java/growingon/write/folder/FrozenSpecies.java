package growingon.write.folder;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;

/** The species of a kept plan as they were read, in a folder that {@code --species} reads. */
public final class FrozenSpecies {
  private FrozenSpecies() {}

  /**
   * Writes them, in place of those that were kept before.
   *
   * @param csv text of the table, if there is one
   * @param json text of species.json, if there is one
   */
  public static void write(Path folder, Optional<String> csv, Optional<String> json)
      throws IOException {
    Files.createDirectories(folder);
    write(folder.resolve("species.csv"), csv);
    write(folder.resolve("species.json"), json);
  }

  private static void write(Path file, Optional<String> text) throws IOException {
    if (text.isPresent()) {
      Files.writeString(file, text.get());
    } else {
      Files.deleteIfExists(file);
    }
  }
}
