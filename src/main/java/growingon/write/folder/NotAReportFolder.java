package growingon.write.folder;

import growingon.write.text.SafeText;
import java.io.IOException;
import java.nio.file.Path;

/** A report may not go into a folder; the message says why, and what to do. */
public final class NotAReportFolder extends IOException {
  private static final long serialVersionUID = 1L;

  private final String why;
  private final String remedy;

  NotAReportFolder(Path folder, String why, String remedy) {
    super(SafeText.forLine("%s %s; %s. Nothing was written.".formatted(folder, why, remedy)));
    this.why = SafeText.forLine(why);
    this.remedy = remedy;
  }

  /** Why not, as what is said of the folder. */
  public String why() {
    return why;
  }

  /** What to do about it. */
  public String remedy() {
    return remedy;
  }
}
