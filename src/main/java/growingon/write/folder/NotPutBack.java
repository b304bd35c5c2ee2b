package growingon.write.folder;

import java.io.IOException;
import java.nio.file.Path;

/** A report could not be written, nor the one before be put back at once. */
public final class NotPutBack extends IOException {
  private static final long serialVersionUID = 1L;

  NotPutBack(Path folder, Path aside, Throwable why) {
    super(
        "%s could not be written (%s). What was there before is whole in %s."
            .formatted(folder, why.getMessage(), aside),
        why);
  }
}
