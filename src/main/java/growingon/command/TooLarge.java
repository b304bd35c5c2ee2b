package growingon.command;

/** The memory ran out; the message says over what, and what to do. */
final class TooLarge extends RuntimeException {
  private static final long serialVersionUID = 1;
  private static final int MEGABYTE = 1 << 20;

  /**
   * What is said where the memory ran out.
   *
   * @param work what was being done, with its size
   */
  TooLarge(String work, Throwable cause) {
    super(
        "%s: this is too large for the %d MB of memory that the program may use; plan fewer lots, seasons or draws, or give it more, as in java -Xmx4g -jar growing-on.jar"
            .formatted(work, Runtime.getRuntime().maxMemory() / MEGABYTE),
        cause);
  }

  /** Whether the memory ran out, here or in a thread that was waited for. */
  static boolean isBehind(Throwable fault) {
    for (Throwable each = fault; each != null; each = each.getCause()) {
      if (each instanceof OutOfMemoryError) {
        return true;
      }
    }
    return false;
  }
}
