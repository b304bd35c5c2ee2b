package growingon.write;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;

/**
 * What a grower may have put into the folder of a report: notes, prints, tables and charts of their
 * own, empty folders, links, a repository, another nursery's workbook, and names such as the
 * program might use itself.
 */
public final class OwnThings {
  private OwnThings() {}

  /** Puts them there; gives them, as {@link Snapshot} does. */
  public static Map<String, String> putInto(Path report, Path elsewhere) throws IOException {
    Map<String, String> before = Snapshot.of(report);
    write(report.resolve("my notes.txt"), "ask about the lime");
    write(report.resolve("stock.xlsx"), "of another nursery");
    write(report.resolve("tables/own.csv"), "a,b\n1,2\n");
    write(report.resolve("charts/own.png"), "drawn by hand");
    write(report.resolve("letters/2026/to the bank.txt"), "dear bank");
    write(report.resolve(".hidden"), "seen by nobody");
    write(report.resolve("put aside.txt"), "no folder");
    Files.createDirectories(report.resolve("empty/within"));
    Files.createDirectories(report.resolve("charts/empty"));
    repository(report.resolve(".git"));
    Path target = Files.createDirectories(elsewhere.resolve("photos"));
    write(target.resolve("tree.jpg"), "a tree");
    Files.createSymbolicLink(report.resolve("photos"), target);
    Files.createSymbolicLink(report.resolve("tables/tree.jpg"), target.resolve("tree.jpg"));
    Files.createSymbolicLink(report.resolve("broken"), Path.of("nowhere"));
    Map<String, String> own = Snapshot.of(report);
    own.keySet().removeAll(before.keySet());
    return own;
  }

  private static void repository(Path git) throws IOException {
    write(git.resolve("HEAD"), "ref: refs/heads/main\n");
    write(git.resolve("objects/ab/cdef"), "\u0000\u0001\u0002");
    git.resolve("objects/ab/cdef").toFile().setReadOnly();
    Files.createDirectories(git.resolve("refs/heads"));
    Files.createDirectories(git.resolve("refs/tags"));
    Files.createDirectories(git.resolve("objects/info"));
  }

  private static void write(Path file, String text) throws IOException {
    Files.createDirectories(file.getParent());
    Files.writeString(file, text);
  }
}
