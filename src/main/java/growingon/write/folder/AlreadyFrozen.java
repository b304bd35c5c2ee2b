package growingon.write.folder;

import java.io.IOException;
import java.nio.file.Path;

/** A record was to be frozen in a file that holds another one. */
public final class AlreadyFrozen extends IOException {
  private static final long serialVersionUID = 1L;

  AlreadyFrozen(Path file) {
    super(
        file
            + " is there already and says otherwise. It was left as it is; use --force to replace"
            + " it.");
  }
}
