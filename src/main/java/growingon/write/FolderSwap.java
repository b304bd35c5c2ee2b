package growingon.write;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Replaces a folder whole: the new one is filled beside it, the old one renamed aside, the new one
 * renamed into its place, the old one deleted. Whatever stops this, a whole folder is left: should
 * the machine stop between the two renames, the next run puts the old folder back.
 */
final class FolderSwap {
  private static final Pattern OWN =
      Pattern.compile(
          "plan\\.xlsx|figures\\.json|problems\\.txt|report\\.html"
              + "|charts[/\\\\][^/\\\\]*\\.png|tables[/\\\\][^/\\\\]*\\.csv");
  private static final int HEAD_OF_FIGURES = 200;

  private final Path folder;
  private final boolean force;
  private final Path fresh;
  private final Path aside;
  private final Path lockFile;

  /** Fills an empty folder. */
  interface Filling {
    void fill(Path empty) throws IOException;
  }

  FolderSwap(Path folder, boolean force) throws IOException {
    Path whole = folder.toAbsolutePath().normalize();
    // A link to a folder stays; what it points to is replaced.
    this.folder = Files.isSymbolicLink(whole) ? whole.toRealPath() : whole;
    this.force = force;
    if (this.folder.getFileName() == null) {
      throw new NotAReportFolder(folder, "is the root of a disk");
    }
    String name = this.folder.getFileName().toString();
    this.fresh = this.folder.resolveSibling("." + name + ".new");
    this.aside = this.folder.resolveSibling("." + name + ".old");
    this.lockFile = this.folder.resolveSibling("." + name + ".lock");
  }

  void replaceWith(Filling filling) throws IOException {
    checkReplaceable();
    Files.createDirectories(folder.getParent());
    FileChannel locked = lock();
    try {
      clearLeftovers();
      checkReplaceable();
      fill(filling);
      swap();
    } finally {
      Files.deleteIfExists(lockFile);
      locked.close();
    }
  }

  /** Holds the lock file, so that two runs do not write the same report at once. */
  private FileChannel lock() throws IOException {
    FileChannel channel =
        FileChannel.open(lockFile, StandardOpenOption.CREATE, StandardOpenOption.WRITE);
    try {
      FileLock lock = channel.tryLock();
      if (lock != null) {
        return channel;
      }
    } catch (OverlappingFileLockException held) {
      channel.close();
      throw new IOException("another run is writing " + folder + "; wait for it", held);
    }
    channel.close();
    throw new IOException("another run is writing " + folder + "; wait for it");
  }

  /** What a run that was killed has left: a folder half filled, a report not yet put back. */
  private void clearLeftovers() throws IOException {
    delete(fresh);
    if (Files.exists(aside) && !Files.exists(folder)) {
      Files.move(aside, folder, StandardCopyOption.ATOMIC_MOVE);
    }
    delete(aside);
  }

  private void checkReplaceable() throws IOException {
    if (!Files.exists(folder)) {
      return;
    }
    if (!Files.isDirectory(folder)) {
      throw new NotAReportFolder(folder, "is a file");
    }
    if (holdsAPlaceOfTheUser()) {
      throw new NotAReportFolder(folder, "is the home or working folder, or holds it");
    }
    if (!force && !isEmpty() && !isReport()) {
      throw new NotAReportFolder(folder, "holds something else than a report of this program");
    }
  }

  private boolean holdsAPlaceOfTheUser() {
    return Stream.of("user.home", "user.dir")
        .map(property -> Path.of(System.getProperty(property)).toAbsolutePath().normalize())
        .anyMatch(place -> place.startsWith(folder));
  }

  private boolean isEmpty() throws IOException {
    try (Stream<Path> entries = Files.list(folder)) {
      return entries.findAny().isEmpty();
    }
  }

  private boolean isReport() throws IOException {
    Path figures = folder.resolve("figures.json");
    if (!Files.isRegularFile(figures)) {
      return false;
    }
    try (var in = Files.newInputStream(figures)) {
      String head = new String(in.readNBytes(HEAD_OF_FIGURES), StandardCharsets.UTF_8);
      return head.contains(FiguresJson.MADE_BY);
    }
  }

  private void fill(Filling filling) throws IOException {
    boolean whole = false;
    try {
      Files.createDirectory(fresh);
      filling.fill(fresh);
      keepFilesOfOthers();
      whole = true;
    } finally {
      if (!whole) {
        delete(fresh);
      }
    }
  }

  /** A note or a print that the user has put beside the report goes over to the new one. */
  private void keepFilesOfOthers() throws IOException {
    if (!Files.exists(folder)) {
      return;
    }
    List<Path> others;
    try (Stream<Path> files = Files.walk(folder)) {
      others = files.filter(Files::isRegularFile).map(folder::relativize).toList();
    }
    for (Path other : others) {
      if (!OWN.matcher(other.toString()).matches()) {
        Path copy = fresh.resolve(other.toString());
        Files.createDirectories(copy.getParent());
        Files.copy(folder.resolve(other), copy, StandardCopyOption.COPY_ATTRIBUTES);
      }
    }
  }

  private void swap() throws IOException {
    boolean replaces = Files.exists(folder);
    if (replaces) {
      Files.move(folder, aside, StandardCopyOption.ATOMIC_MOVE);
    }
    try {
      Files.move(fresh, folder, StandardCopyOption.ATOMIC_MOVE);
    } catch (IOException failed) {
      if (replaces) {
        Files.move(aside, folder, StandardCopyOption.ATOMIC_MOVE);
      }
      throw failed;
    }
    delete(aside);
  }

  private static void delete(Path tree) throws IOException {
    if (Files.exists(tree)) {
      Files.walkFileTree(tree, Set.of(), Integer.MAX_VALUE, new Deleting());
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
