package growingon.write.folder;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/** Says whether a report may go into a folder. Folders are compared as they are, links resolved. */
public final class FolderGuard {
  private static final int LONGEST_NAME_BYTES = 200;
  private static final int NAMED = 5;
  private static final String ANOTHER = "name another folder with --out";

  private final Placing placing;
  private final String plan;
  private final String reader;

  /**
   * A guard.
   *
   * @param plan name of the plan whose report it is
   * @param reader for whom an edition is, in lower case; empty for a whole report
   */
  public FolderGuard(Placing placing, String plan, String reader) {
    this.placing = placing;
    this.plan = plan;
    this.reader = reader;
  }

  /** The folder itself: of a link, what it leads to. */
  static Path real(Path folder) throws IOException {
    if (Files.exists(folder)) {
      return folder.toRealPath();
    }
    Path whole = folder.toAbsolutePath().normalize();
    Path there = whole;
    while (there.getParent() != null && !Files.exists(there)) {
      there = there.getParent();
    }
    return there.toRealPath().resolve(there.relativize(whole));
  }

  /**
   * Checks the folder.
   *
   * @throws NotAReportFolder if the report may not go there
   */
  public void check() throws IOException {
    checkPath();
    Path folder = real(placing.folder());
    if (Files.exists(folder)) {
      checkPlaces(folder);
      checkInputs(folder);
      checkContents(folder);
    }
  }

  private void checkPath() throws IOException {
    Path folder = placing.folder();
    if (!Files.exists(folder) && Files.isSymbolicLink(folder)) {
      throw no("is a link to something that is not there", ANOTHER);
    }
    Path real = real(folder);
    if (real.getFileName() == null) {
      throw no("is the root of a disk", ANOTHER);
    }
    if (name(real).getBytes(StandardCharsets.UTF_8).length > LONGEST_NAME_BYTES) {
      throw no("has too long a name", "give it a shorter one");
    }
    Path there = real;
    while (!Files.exists(there)) {
      there = there.getParent();
    }
    if (!Files.isDirectory(there)) {
      String lies = there.equals(real) ? "is a file" : "is to lie in %s, a file".formatted(there);
      throw no(lies, ANOTHER);
    }
  }

  private static String name(Path folder) {
    return folder.getFileName().toString();
  }

  private void checkPlaces(Path folder) throws IOException {
    for (String property : List.of("user.home", "user.dir")) {
      if (holds(folder, Path.of(System.getProperty(property)))) {
        throw no("is the home or working folder, or holds it", ANOTHER);
      }
    }
  }

  private void checkInputs(Path folder) throws IOException {
    for (Path input : placing.inputs()) {
      if (holds(folder, input)) {
        throw no("holds %s, which this plan reads".formatted(input), ANOTHER);
      }
    }
  }

  /** Whether a path leads to the folder or into it. */
  private static boolean holds(Path folder, Path path) throws IOException {
    if (!Files.exists(path)) {
      return false;
    }
    for (Path each = path.toRealPath(); each != null; each = each.getParent()) {
      if (Files.isSameFile(each, folder)) {
        return true;
      }
    }
    return false;
  }

  private void checkContents(Path folder) throws IOException {
    Optional<FileList> report = FileList.read(folder);
    if (!placing.force()) {
      checkOwner(folder, report);
    }
    if (!reader.isEmpty()) {
      List<String> strangers = strangers(folder, report.orElse(FileList.NONE));
      if (!strangers.isEmpty()) {
        throw no(
            "holds what is not of this edition and would be passed on with it: " + some(strangers),
            "move it elsewhere, or " + ANOTHER);
      }
    }
  }

  private void checkOwner(Path folder, Optional<FileList> report) throws IOException {
    if (report.isPresent()) {
      String there = title(report.get().plan(), report.get().reader());
      String here = title(plan, reader);
      if (!there.equals(here)) {
        throw no(
            "holds %s, and this is %s".formatted(there, here),
            ANOTHER + ", or replace it with --force");
      }
    } else {
      List<String> strangers = strangers(folder, FileList.NONE);
      if (!strangers.isEmpty()) {
        throw no(
            "is no report of this program and holds " + some(strangers),
            ANOTHER + ", or have the report put beside them with --force");
      }
    }
  }

  private static String title(String plan, String reader) {
    return reader.isEmpty()
        ? "the report of \"%s\"".formatted(plan)
        : "the edition of \"%s\" for a %s".formatted(plan, reader);
  }

  private static List<String> strangers(Path folder, FileList list) throws IOException {
    return Strangers.in(folder, list.unchanged(folder), list::namesFolder).stream()
        .filter(each -> !Strangers.isOfTheDesktop(each))
        .map(Path::toString)
        .toList();
  }

  /** The first of some names, and how many more there are. */
  static String some(List<String> names) {
    String first = String.join(", ", names.subList(0, Math.min(NAMED, names.size())));
    int more = names.size() - NAMED;
    return more > 0 ? "%s and %d more".formatted(first, more) : first;
  }

  /** The refusal; to be thrown. */
  NotAReportFolder no(String why, String remedy) {
    return new NotAReportFolder(placing.folder(), why, remedy);
  }
}
