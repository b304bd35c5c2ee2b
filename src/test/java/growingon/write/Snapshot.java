package growingon.write;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HexFormat;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.stream.Stream;

/** All that lies in a folder: bytes of files, targets of links, and that a folder is there. */
public final class Snapshot {
  private Snapshot() {}

  /** What lies in a folder, by name with / between its parts. */
  public static Map<String, String> of(Path folder) throws IOException {
    return of(folder, name -> true);
  }

  /** The same of some names. */
  public static Map<String, String> of(Path folder, Predicate<String> wanted) throws IOException {
    Map<String, String> all = new TreeMap<>();
    try (Stream<Path> paths = Files.walk(folder)) {
      for (Path path : paths.filter(each -> !each.equals(folder)).toList()) {
        String name = folder.relativize(path).toString().replace('\\', '/');
        if (wanted.test(name)) {
          all.put(name, contents(path));
        }
      }
    }
    return all;
  }

  private static String contents(Path path) throws IOException {
    if (Files.isSymbolicLink(path)) {
      return "link to " + Files.readSymbolicLink(path);
    }
    return Files.isDirectory(path) ? "folder" : HexFormat.of().formatHex(Files.readAllBytes(path));
  }
}
