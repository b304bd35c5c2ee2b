package growingon.write.folder;

/** A plan's name as the name of a folder, on every system. */
public final class FolderName {
  private FolderName() {}

  /**
   * Gives that name. What no system allows becomes an underscore; names that are read hold nothing
   * of it, so that no two of them are one folder.
   */
  public static String of(String plan) {
    String safe =
        plan.strip()
            .replaceAll("[\\p{Cc}\\p{Cf}\\p{Zl}\\p{Zp}\\\\/:*?\"<>|]", "_")
            .replaceAll("[ .]+$", "");
    return safe.isEmpty() || safe.startsWith(".") ? "_" + safe : safe;
  }
}
