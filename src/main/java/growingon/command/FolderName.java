package growingon.command;

/** A plan's name as the name of a folder, on every system. */
final class FolderName {
  private FolderName() {}

  /**
   * Letters, digits, blanks, points, hyphens and underscores stay; the rest becomes an underscore.
   */
  static String of(String plan) {
    String safe = plan.strip().replaceAll("[^\\p{L}\\p{N} ._-]", "_").replaceAll("[ .]+$", "");
    return safe.isEmpty() || safe.startsWith(".") ? "_" + safe : safe;
  }
}
