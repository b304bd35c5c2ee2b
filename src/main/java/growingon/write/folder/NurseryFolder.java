package growingon.write.folder;

import growingon.report.model.InputBook;
import growingon.write.workbook.InputWorkbook;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/** Lays out a new nursery folder: whole, or not at all. */
public final class NurseryFolder {
  private NurseryFolder() {}

  /**
   * Writes the folder.
   *
   * @param workbook the workbook's description
   * @param workbookName its file name
   * @param plan text of the plan
   * @param planName its file name
   * @throws NotAnEmptyFolder if something is there already
   * @throws IOException if it cannot be written; then nothing is left of it
   */
  public static void write(
      InputBook workbook, String workbookName, String plan, String planName, Path folder)
      throws IOException {
    Path whole = folder.toAbsolutePath().normalize();
    check(folder, whole);
    Files.createDirectories(whole.getParent());
    Path fresh = Files.createTempDirectory(whole.getParent(), ".start");
    try {
      Files.write(fresh.resolve(workbookName), InputWorkbook.bytes(workbook, whole));
      Files.write(fresh.resolve(planName), plan.getBytes(StandardCharsets.UTF_8));
      Files.createDirectories(whole);
      move(fresh, whole, List.of(workbookName, planName));
    } finally {
      delete(fresh);
    }
  }

  /** Moves all files or none; one that has come there meanwhile is never replaced. */
  private static void move(Path from, Path to, List<String> names) throws IOException {
    List<Path> moved = new ArrayList<>();
    try {
      for (String name : names) {
        moved.add(Files.move(from.resolve(name), to.resolve(name)));
      }
    } catch (IOException failed) {
      for (Path each : moved) {
        Files.delete(each);
      }
      throw failed;
    }
  }

  private static void check(Path folder, Path whole) throws IOException {
    if (whole.getParent() == null || (Files.exists(whole) && !Files.isDirectory(whole))) {
      throw new NotAnEmptyFolder(folder, "is no folder");
    }
    if (Files.isDirectory(whole)) {
      try (Stream<Path> there = Files.list(whole)) {
        if (there.findAny().isPresent()) {
          throw new NotAnEmptyFolder(folder, "is not empty");
        }
      }
    }
  }

  private static void delete(Path folder) throws IOException {
    try (Stream<Path> all = Files.walk(folder)) {
      for (Path each : all.sorted(Comparator.reverseOrder()).toList()) {
        Files.delete(each);
      }
    }
  }
}
