package growingon.write;

/** A plan's name as the name of a folder, on every system. */
public final class FolderName {
  private FolderName() {}

  /**
   * Gives that name. Letters, digits, blanks, points, hyphens and underscores stay; the rest
   * becomes an underscore.
   */
  public static String of(String plan) {
    String safe = plan.strip().replaceAll("[^\\p{L}\\p{N} ._-]", "_").replaceAll("[ .]+$", "");
    return safe.isEmpty() || safe.startsWith(".") ? "_" + safe : safe;
  }
}
