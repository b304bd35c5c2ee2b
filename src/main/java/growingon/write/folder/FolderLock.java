package growingon.write.folder;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Holds the file {@code .NAME.lock} beside a report folder NAME, so that two runs do not write the
 * same report at once. A file of that name with other contents is only held, and stays as it is.
 */
final class FolderLock {
  private static final byte[] SAYS =
      "The growing-on planner is writing here; this file goes when it is done.\n"
          .getBytes(StandardCharsets.UTF_8);

  private static final Pattern NAME = Pattern.compile("\\.(.+)\\.lock");

  private final Path file;
  private final FileChannel channel;
  private boolean ours;

  private FolderLock(Path file, FileChannel channel, boolean ours) {
    this.file = file;
    this.channel = channel;
    this.ours = ours;
  }

  /**
   * Takes the lock.
   *
   * @throws AnotherRun if another run holds it
   */
  static FolderLock take(Path folder) throws IOException {
    FolderLock lock = open(folder.resolveSibling("." + folder.getFileName() + ".lock"));
    try {
      if (!lock.isTaken()) {
        throw new AnotherRun(folder);
      }
      if (!Files.exists(lock.file)) { // A run that ended in between has deleted it.
        lock.channel.close();
        return take(folder);
      }
      lock.sign();
      return lock;
    } catch (AnotherRun other) {
      lock.channel.close();
      throw other;
    } catch (IOException failed) {
      lock.close();
      throw failed;
    }
  }

  /** Deletes those that runs which were killed have left in a folder of reports. */
  static void clearAll(Path parent) throws IOException {
    List<Path> left;
    try (Stream<Path> files = Files.list(parent)) {
      left = files.filter(FolderLock::mayBeOurs).toList();
    }
    for (Path each : left) {
      Matcher name = NAME.matcher(each.getFileName().toString());
      if (name.matches()) {
        clear(each.resolveSibling(name.group(1)));
      }
    }
  }

  private static boolean mayBeOurs(Path file) {
    return Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)
        && file.toFile().length() == SAYS.length;
  }

  private static void clear(Path folder) throws IOException {
    try {
      take(folder).close(); // Whose it is it looks up itself.
    } catch (AnotherRun writing) {
      // Then it is no leftover.
    }
  }

  private static FolderLock open(Path file) throws IOException {
    try {
      return new FolderLock(file, open(file, StandardOpenOption.CREATE_NEW), true);
    } catch (FileAlreadyExistsException there) {
      return new FolderLock(file, open(file, StandardOpenOption.CREATE), false);
    }
  }

  private static FileChannel open(Path file, StandardOpenOption how) throws IOException {
    return FileChannel.open(file, how, StandardOpenOption.READ, StandardOpenOption.WRITE);
  }

  private boolean isTaken() throws IOException {
    try {
      FileLock lock = channel.tryLock();
      return lock != null;
    } catch (OverlappingFileLockException held) {
      return false; // By another thread of this program.
    }
  }

  /** Writes into a new file whose it is; looks whose one is that was there. */
  private void sign() throws IOException {
    if (ours) {
      channel.write(ByteBuffer.wrap(SAYS));
    } else if (channel.size() == SAYS.length) {
      ByteBuffer there = ByteBuffer.allocate(SAYS.length);
      channel.read(there, 0);
      ours = there.flip().equals(ByteBuffer.wrap(SAYS));
    }
  }

  void close() throws IOException {
    try (channel) {
      if (ours) {
        Files.deleteIfExists(file);
      }
    }
  }
}
