package growingon.write.folder;

import growingon.write.folder.FileList.Stamp;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * The folder {@code .NAME.swap} beside a report folder NAME, in which a run puts the new report
 * together ({@code new}) and lays the one before aside ({@code old}). A file in it says what it is:
 * a folder of that name without the file is somebody else's and stays as it is.
 *
 * <p>From what lies in it can be told how far a run came that was killed:
 *
 * <pre>
 * NAME   old   new
 * there  –     there    not begun to swap
 * –      there          between the two renames: the one before goes back
 * there  there there    the same, but somebody has made NAME anew: it goes beside that
 * there  there –        done but for deleting
 * </pre>
 *
 * That it is done is noted too ({@code done}), for NAME may go while something cannot be deleted.
 */
final class SwapPlace {
  private static final Pattern NAME = Pattern.compile("\\.(.+)\\.swap(?: \\d+)?");
  private static final String SIGN = "about this folder.txt";
  private static final String SAYS =
      "The growing-on planner puts a report together here, and lays the one before aside.\n"
          + "A run that was stopped has left it. The next run puts everything back.\n";

  private final Path folder;
  private final Path place;
  private final Path sign;
  private final Path done;
  private final Moves moves;

  private SwapPlace(Path folder, Path place) {
    this.folder = folder;
    this.place = place;
    this.sign = place.resolve(SIGN);
    this.done = place.resolve("done");
    this.moves = new Moves(place);
  }

  /** Makes one for a run, under a name that is free. */
  static SwapPlace make(Path folder) throws IOException {
    for (int number = 1; ; number++) {
      Path path = folder.resolveSibling(name(folder) + (number == 1 ? "" : " " + number));
      try {
        SwapPlace made = new SwapPlace(folder, Files.createDirectory(path));
        Files.writeString(made.sign, SAYS);
        return made;
      } catch (FileAlreadyExistsException taken) {
        // Of another program, or of a run whose old report could not be deleted.
      }
    }
  }

  /** Those that runs have left for a folder. */
  static List<SwapPlace> of(Path folder) throws IOException {
    return in(folder.getParent()).stream().filter(each -> each.folder.equals(folder)).toList();
  }

  /** Those that runs have left in a folder of reports. */
  static List<SwapPlace> in(Path parent) throws IOException {
    if (!Files.isDirectory(parent)) {
      return List.of();
    }
    try (Stream<Path> entries = Files.list(parent)) {
      return entries
          .sorted()
          .flatMap(entry -> at(entry).stream())
          .filter(SwapPlace::isOurs)
          .toList();
    }
  }

  private static Optional<SwapPlace> at(Path entry) {
    Matcher name = NAME.matcher(entry.getFileName().toString());
    return name.matches()
        ? Optional.of(new SwapPlace(entry.resolveSibling(name.group(1)), entry))
        : Optional.empty();
  }

  private static String name(Path folder) {
    return "." + folder.getFileName() + ".swap";
  }

  private boolean isOurs() {
    try {
      return Files.isRegularFile(sign, LinkOption.NOFOLLOW_LINKS)
          && Files.size(sign) == SAYS.getBytes(StandardCharsets.UTF_8).length
          && Files.readString(sign).equals(SAYS);
    } catch (IOException unreadable) {
      return false; // What cannot be read is not known to be the program's.
    }
  }

  /** The report folder. */
  Path folder() {
    return folder;
  }

  /** Where it is. */
  Path path() {
    return place;
  }

  /** Where the new report is put together. */
  Path fresh() {
    return place.resolve("new");
  }

  /** Where the report before is laid aside. */
  Path old() {
    return place.resolve("old");
  }

  /** What goes from the one before to the new one. */
  Moves moves() {
    return moves;
  }

  /** Brings the folder to what it was before the run, and clears away; where it now is. */
  Optional<Path> putBack() throws IOException {
    moves.undo();
    Optional<Path> back = Optional.empty();
    boolean free = !Files.exists(folder, LinkOption.NOFOLLOW_LINKS);
    if (Files.exists(old()) && !Files.exists(done) && (free || Files.exists(fresh()))) {
      Path to = free ? folder : folder.resolveSibling(folder.getFileName() + " (put back)");
      back = Optional.of(Files.move(old(), free(to), StandardCopyOption.ATOMIC_MOVE));
    }
    clear();
    return back;
  }

  /** A path at which nothing is: the wished one, or the same with a number. */
  static Path free(Path wished) {
    Path path = wished;
    for (int number = 2; Files.exists(path, LinkOption.NOFOLLOW_LINKS); number++) {
      path = wished.resolveSibling(wished.getFileName() + " " + number);
    }
    return path;
  }

  /** Deletes all that the program made in it, and then itself; whether all is gone. */
  boolean clear() {
    return clear(unchanged(old()));
  }

  /**
   * The same. Where things have been moved, nothing is deleted but files that the program wrote and
   * nobody has changed.
   *
   * @param ours which of the report before these are
   */
  boolean clear(Map<Path, Stamp> ours) {
    boolean gone = noteThatDone();
    gone &= moves.areNoted() ? delete(fresh(), unchanged(fresh())) : deleteTree(fresh());
    gone &= delete(old(), ours);
    return gone && moves.forget() && delete(done) && delete(sign) && delete(place);
  }

  /** Else what cannot be deleted would come back once the new report is moved or deleted. */
  private boolean noteThatDone() {
    try {
      if (Files.exists(old()) && !Files.exists(done)) {
        Files.createFile(done);
      }
      return true;
    } catch (IOException unwritable) {
      return false; // The caller says so, and where.
    }
  }

  private static Map<Path, Stamp> unchanged(Path report) {
    try {
      return FileList.read(report).orElse(FileList.NONE).unchanged(report);
    } catch (IOException unreadable) {
      return Map.of(); // What cannot be read is not known to be the program's.
    }
  }

  private static boolean delete(Path report, Map<Path, Stamp> ours) {
    if (!Files.isDirectory(report, LinkOption.NOFOLLOW_LINKS)) {
      return true;
    }
    // The list goes last: without it a run that is stopped here could not be tidied up after.
    Comparator<Path> order = Comparator.comparing(file -> file.endsWith(FileList.FIGURES));
    try {
      for (Path file : ours.keySet().stream().sorted(order).toList()) {
        if (ours.get(file).isOf(report.resolve(file))) {
          Files.delete(report.resolve(file));
        }
      }
      deleteEmptyFolders(report);
      return true;
    } catch (IOException left) {
      return false; // The caller says so, and where.
    }
  }

  /** Deletes a folder and those in it from within; anything else in them is in the way. */
  private static void deleteEmptyFolders(Path folder) throws IOException {
    List<Path> folders;
    try (Stream<Path> all = Files.walk(folder)) {
      folders = all.filter(each -> Files.isDirectory(each, LinkOption.NOFOLLOW_LINKS)).toList();
    }
    for (Path each : folders.stream().sorted(Comparator.reverseOrder()).toList()) {
      Files.delete(each);
    }
  }

  private static boolean deleteTree(Path tree) {
    try {
      if (Files.exists(tree)) {
        Files.walkFileTree(tree, new Deleting());
      }
      return true;
    } catch (IOException left) {
      return false; // The caller says so, and where.
    }
  }

  private static boolean delete(Path path) {
    try {
      Files.deleteIfExists(path);
      return true;
    } catch (IOException left) {
      return false; // The caller says so, and where.
    }
  }

  /** Deletes files, then the folder they were in. */
  private static final class Deleting extends SimpleFileVisitor<Path> {
    @Override
    public FileVisitResult visitFile(Path file, BasicFileAttributes attributes) throws IOException {
      Files.delete(file);
      return FileVisitResult.CONTINUE;
    }

    @Override
    public FileVisitResult postVisitDirectory(Path folder, IOException failed) throws IOException {
      if (failed != null) {
        throw failed;
      }
      Files.delete(folder);
      return FileVisitResult.CONTINUE;
    }
  }
}
