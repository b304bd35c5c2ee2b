package growingon.write.folder;

import java.io.IOException;
import java.nio.file.Path;

/** Another run is writing the same report. */
public final class AnotherRun extends IOException {
  private static final long serialVersionUID = 1L;

  AnotherRun(Path folder) {
    super("Another run is writing " + folder + "; wait for it. Nothing was written.");
  }
}
