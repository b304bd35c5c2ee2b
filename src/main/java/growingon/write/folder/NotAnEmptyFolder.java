package growingon.write.folder;

import java.io.IOException;
import java.nio.file.Path;

/** A new nursery is laid out in an empty folder only; the message says what is there. */
public final class NotAnEmptyFolder extends IOException {
  private static final long serialVersionUID = 1;

  NotAnEmptyFolder(Path folder, String why) {
    super("%s %s; name a folder that is new or empty.".formatted(folder, why));
  }
}
