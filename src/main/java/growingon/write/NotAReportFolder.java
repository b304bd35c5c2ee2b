package growingon.write;

import java.io.IOException;
import java.nio.file.Path;

/** A folder was to be replaced by a report, but what is there is no report of this program. */
public final class NotAReportFolder extends IOException {
  private static final long serialVersionUID = 1L;

  private final transient Path folder;

  NotAReportFolder(Path folder, String why) {
    super(folder + " " + why);
    this.folder = folder;
  }

  /** The folder that was left as it is. */
  public Path folder() {
    return folder;
  }
}
