package growingon.command.folder;

import growingon.nursery.Plan;
import growingon.write.folder.FolderName;
import java.nio.file.Files;
import java.nio.file.Path;

/** Where a plan is kept: in plans/kept, beside the plans or in the nursery folder. */
public final class KeptFile {
  private static final String PLANS = "plans";
  private static final String KEPT = "kept";

  private KeptFile() {}

  /**
   * The file that a plan is kept in.
   *
   * @param what the plan.json, nursery folder or workbook that was planned
   */
  public static Path of(Path what, Plan plan) {
    String name = FolderName.of(plan.name()) + "-" + plan.firstMonth() + ".json";
    return folder(what).resolve(KEPT).resolve(name);
  }

  /** The folder beside a kept plan in which its species are kept as they were read. */
  public static Path species(Path kept) {
    String name = kept.getFileName().toString();
    return kept.resolveSibling(name.substring(0, name.length() - ".json".length()) + " species");
  }

  private static Path folder(Path what) {
    if (Files.isDirectory(what)) {
      return what.resolve(PLANS);
    }
    Path beside = what.toAbsolutePath().getParent();
    boolean amongPlans = String.valueOf(beside.getFileName()).equals(PLANS);
    Path shown = what.getParent() == null ? Path.of("") : what.getParent();
    return amongPlans ? shown : shown.resolve(PLANS);
  }
}
