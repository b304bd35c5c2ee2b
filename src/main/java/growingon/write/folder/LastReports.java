package growingon.write.folder;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Puts back the reports that runs had laid aside when they were killed. */
public final class LastReports {
  private LastReports() {}

  /** Puts back reports that a broken run had moved aside; gives their names. */
  public static List<String> putBack(Path parent) throws IOException {
    List<String> said = new ArrayList<>();
    if (Files.isDirectory(parent)) {
      for (SwapPlace each : SwapPlace.in(parent.toRealPath())) {
        putBack(each, parent.resolve(each.folder().getFileName())).ifPresent(said::add);
      }
      FolderLock.clearAll(parent.toRealPath());
    }
    return said;
  }

  private static Optional<String> putBack(SwapPlace place, Path folder) {
    String stopped = "A run was stopped while it wrote %s: ".formatted(folder);
    try {
      return locked(place).map(back -> stopped + words(back, place));
    } catch (AnotherRun writing) {
      return Optional.empty(); // It is still at work there.
    } catch (IOException failed) {
      return Optional.of(
          "%swhat was there before is in %s and cannot be put back (%s)."
              .formatted(stopped, place.old(), failed.getMessage()));
    }
  }

  private static String words(Path back, SwapPlace place) {
    return back.equals(place.folder())
        ? "what was there before is back."
        : "what was there before is in %s, as something else is there now.".formatted(back);
  }

  private static Optional<Path> locked(SwapPlace place) throws IOException {
    FolderLock lock = FolderLock.take(place.folder());
    try {
      return place.putBack();
    } finally {
      lock.close();
    }
  }
}
