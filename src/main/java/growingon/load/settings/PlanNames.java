package growingon.load.settings;

import growingon.problem.Problem;
import growingon.problem.Where;
import growingon.problem.advice.PlanAdvice;
import java.nio.charset.StandardCharsets;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.regex.Pattern;

/** A plan's name is also that of its report folder, on any file system. */
public final class PlanNames {
  private static final Pattern NO_FOLDER_NAME = Pattern.compile(".*[\\\\/:*?\"<>|].*|\\..*|.*\\.");

  /** Names of devices, with or without something behind a dot (Windows, "Naming Files"). */
  private static final Pattern DEVICE =
      Pattern.compile("(?i)(con|prn|aux|nul|com[0-9]|lpt[0-9]) *(\\..*)?");

  /**
   * Most bytes of a name: with those of two plans that are compared, and what is written beside
   * them, it stays below the 255 that file systems allow.
   */
  private static final int MOST_BYTES = 100;

  private PlanNames() {}

  /** What is wrong with a name, if anything is. */
  public static Optional<Problem> fault(Where where, String name) {
    if (NO_FOLDER_NAME.matcher(name).matches()) {
      return Optional.of(PlanAdvice.noFolderName(where, name));
    }
    if (DEVICE.matcher(name).matches()) {
      return Optional.of(PlanAdvice.reservedName(where, name));
    }
    if (name.getBytes(StandardCharsets.UTF_8).length > MOST_BYTES) {
      return Optional.of(PlanAdvice.nameTooLongForAFolder(where, name));
    }
    return isPath(name) ? Optional.empty() : Optional.of(PlanAdvice.nameWithoutAPath(where, name));
  }

  private static boolean isPath(String name) {
    try {
      return !Path.of(name).toString().isEmpty() || name.isEmpty();
    } catch (InvalidPathException noPath) {
      return false;
    }
  }
}
