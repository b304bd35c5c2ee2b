package growingon.write.folder;

import growingon.write.folder.FileList.Stamp;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Stream;

/**
 * What lies in a folder and is no file of the program, or was changed since it wrote it: files,
 * links as links, and whole folders unless files of the program lie in them too.
 */
final class Strangers {
  /** What desktops put into a folder that is looked at. */
  private static final Set<String> OF_THE_DESKTOP = Set.of(".ds_store", "thumbs.db", "desktop.ini");

  private final Path folder;
  private final Map<Path, Stamp> ours;
  private final Predicate<Path> shared;
  private final List<Path> found = new ArrayList<>();

  private Strangers(Path folder, Map<Path, Stamp> ours, Predicate<Path> shared) {
    this.folder = folder;
    this.ours = ours;
    this.shared = shared;
  }

  /**
   * The strangers, by name, seen from the folder.
   *
   * @param ours files that were found to be as the program wrote them; what was changed since is
   *     none
   * @param shared folders that are gone through
   */
  static List<Path> in(Path folder, Map<Path, Stamp> ours, Predicate<Path> shared)
      throws IOException {
    Strangers strangers = new Strangers(folder, ours, shared);
    strangers.goThrough(Path.of(""));
    return strangers.found;
  }

  private void goThrough(Path relative) throws IOException {
    List<Path> names;
    try (Stream<Path> entries = Files.list(folder.resolve(relative))) {
      names = entries.map(entry -> relative.resolve(entry.getFileName())).sorted().toList();
    }
    for (Path each : names) {
      if (isFolder(folder.resolve(each)) && shared.test(each)) {
        goThrough(each);
      } else if (!ours.containsKey(each) || !ours.get(each).isOf(folder.resolve(each))) {
        found.add(each);
      }
    }
  }

  /** Whether it is a folder itself and no link or junction to one. */
  private static boolean isFolder(Path path) throws IOException {
    BasicFileAttributes attributes =
        Files.readAttributes(path, BasicFileAttributes.class, LinkOption.NOFOLLOW_LINKS);
    return attributes.isDirectory() && !attributes.isOther();
  }

  /** Whether a desktop has put it there, which nobody minds. */
  static boolean isOfTheDesktop(Path path) {
    return OF_THE_DESKTOP.contains(path.getFileName().toString().toLowerCase(Locale.ROOT));
  }
}
