package growingon.write.folder;

import java.io.IOException;
import java.nio.file.Path;

/** The folder of a report cannot be renamed, mostly because another program holds a file in it. */
public final class FolderInUse extends IOException {
  private static final long serialVersionUID = 1L;

  FolderInUse(Path folder, IOException why) {
    super(
        "%s cannot be replaced; close its files in other programs and run again. It is as it was."
            .formatted(folder),
        why);
  }
}
