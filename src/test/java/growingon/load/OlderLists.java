package growingon.load;

import growingon.load.cell.Findings;
import growingon.load.file.NurseryFiles;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/** The lists that a nursery's newest one has taken the place of. */
public final class OlderLists {
  private OlderLists() {}

  /** Names of their files. */
  public static List<String> of(Path nursery, Optional<Path> stock) {
    NurseryFiles files = NurseryFiles.read(nursery, new Findings());
    return OwnFiles.found(files, nursery, stock).older(nursery).stream()
        .map(file -> file.getFileName().toString())
        .toList();
  }
}
