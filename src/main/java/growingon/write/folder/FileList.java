package growingon.write.folder;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.io.JsonStringEncoder;
import com.google.common.hash.Hashing;
import com.google.common.io.ByteSource;
import com.google.common.io.MoreFiles;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.FileTime;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What figures.json says of its folder: whose report it is, and which files the program wrote, each
 * with its SHA-256. A file cannot hold its own digest: that of figures.json is of what it is with
 * an empty text there.
 *
 * @param plan name of the plan
 * @param reader for whom an edition is, in lower case; empty for a whole report
 * @param digests by file, seen from the folder, with / between the parts; empty if the report was
 *     made by a version that listed no files
 */
public record FileList(String plan, String reader, Optional<Map<String, String>> digests) {
  public static final String FIGURES = "figures.json";
  public static final String MADE_BY = "made by";

  /** What a report says it is made by. */
  public static final String PROGRAM = "growing-on planner";

  public static final String FOR = "for";
  public static final String PLAN = "plan";
  public static final String FILES = "files";

  /** A folder without a report. */
  static final FileList NONE = new FileList("", "", Optional.of(Map.of()));

  private static final Pattern FILE_WITHOUT_LIST =
      Pattern.compile(
          "(plan|details)\\.xlsx|figures\\.json|problems\\.txt|report\\.html"
              + "|charts/[^/]*\\.png|tables/[^/]*\\.csv");
  private static final Pattern FOLDER_WITHOUT_LIST = Pattern.compile("charts|tables");

  public FileList {
    digests = digests.map(Map::copyOf);
  }

  /** A part of figures.json, in bytes. */
  private record Part(long from, long to) {
    static Part of(JsonLocation from, JsonLocation to) {
      return new Part(from.getByteOffset(), to.getByteOffset());
    }

    /** The file with something else in place of the part. */
    ByteSource replaced(Path file, String text) {
      ByteSource all = MoreFiles.asByteSource(file);
      return ByteSource.concat(
          all.slice(0, from),
          ByteSource.wrap(text.getBytes(StandardCharsets.UTF_8)),
          all.slice(to, Long.MAX_VALUE - to));
    }
  }

  /** The head of figures.json: its first texts, its list of files, and where that stands. */
  private static final class Head {
    private final Map<String, String> texts = new HashMap<>();
    private final Map<String, String> files = new HashMap<>();
    private Optional<Part> list = Optional.empty();
    private Optional<Part> ownDigest = Optional.empty();

    /** Reads no further than the list: what follows may be long. */
    Head(JsonParser parser) throws IOException {
      parser.nextToken();
      for (String key = parser.nextFieldName(); key != null; key = parser.nextFieldName()) {
        JsonToken value = parser.nextToken();
        if (key.equals(FILES) && value == JsonToken.START_OBJECT) {
          JsonLocation from = parser.currentTokenLocation();
          readFiles(parser);
          list = Optional.of(Part.of(from, parser.currentLocation()));
        }
        if (!value.isScalarValue()) {
          return;
        }
        texts.put(key, parser.getText());
      }
    }

    private void readFiles(JsonParser parser) throws IOException {
      for (String key = parser.nextFieldName(); key != null; key = parser.nextFieldName()) {
        parser.nextToken();
        JsonLocation from = parser.currentTokenLocation();
        files.put(key, parser.getText());
        if (key.equals(FIGURES)) {
          parser.finishToken();
          ownDigest = Optional.of(Part.of(from, parser.currentLocation()));
        }
        parser.skipChildren();
      }
    }
  }

  /** What a folder says of itself; nothing if it holds no report of this program. */
  static Optional<FileList> read(Path folder) throws IOException {
    return head(folder)
        .map(
            head ->
                new FileList(
                    head.texts.getOrDefault(PLAN, ""),
                    head.texts.getOrDefault(FOR, ""),
                    head.list.map(list -> head.files)));
  }

  private static Optional<Head> head(Path folder) throws IOException {
    Path figures = folder.resolve(FIGURES);
    if (!Files.isRegularFile(figures, LinkOption.NOFOLLOW_LINKS)) {
      return Optional.empty();
    }
    try (InputStream in = Files.newInputStream(figures);
        JsonParser parser = new JsonFactory().createParser(in)) {
      return Optional.of(new Head(parser)).filter(head -> PROGRAM.equals(head.texts.get(MADE_BY)));
    } catch (JsonProcessingException foreign) {
      return Optional.empty(); // Another program's file of that name.
    }
  }

  /** Enters every file of a new report, whose figures.json has an empty list, into that list. */
  public static void seal(Path folder) throws IOException {
    Path figures = folder.resolve(FIGURES);
    Part list = head(folder).flatMap(head -> head.list).orElseThrow();
    List<Path> files;
    try (Stream<Path> all = Files.walk(folder)) {
      files = all.filter(Files::isRegularFile).filter(each -> !each.equals(figures)).toList();
    }
    SortedMap<String, String> digests = new TreeMap<>();
    for (Map.Entry<Path, String> each : digests(files).entrySet()) {
      digests.put(name(folder.relativize(each.getKey())), each.getValue());
    }
    digests.put(FIGURES, "");
    digests.put(FIGURES, digest(list.replaced(figures, listed(digests))));
    Path sealed = folder.resolve(FIGURES + ".sealed");
    list.replaced(figures, listed(digests)).copyTo(MoreFiles.asByteSink(sealed));
    Files.move(sealed, figures, StandardCopyOption.REPLACE_EXISTING);
  }

  /** Digests of files, on all processors: long tables take a while. */
  private static Map<Path, String> digests(List<Path> files) throws IOException {
    try {
      return files.parallelStream().collect(Collectors.toMap(file -> file, FileList::digest));
    } catch (UncheckedIOException failed) {
      throw failed.getCause();
    }
  }

  private static String digest(Path file) {
    try {
      return digest(MoreFiles.asByteSource(file));
    } catch (IOException failed) {
      throw new UncheckedIOException(failed);
    }
  }

  private static String digest(ByteSource bytes) throws IOException {
    return bytes.hash(Hashing.sha256()).toString();
  }

  private static String listed(SortedMap<String, String> digests) {
    JsonStringEncoder encoder = JsonStringEncoder.getInstance();
    return digests.entrySet().stream()
        .map(
            each ->
                "    \"%s\" : \"%s\""
                    .formatted(new String(encoder.quoteAsString(each.getKey())), each.getValue()))
        .collect(Collectors.joining(",\n", "{\n", "\n  }"));
  }

  private static String name(Path relative) {
    return relative.toString().replace(relative.getFileSystem().getSeparator(), "/");
  }

  /** Whether it lists the file; it may have been changed since. */
  boolean names(Path relative) {
    String name = name(relative);
    return digests
        .map(files -> files.containsKey(name))
        .orElseGet(() -> FILE_WITHOUT_LIST.matcher(name).matches());
  }

  /** Whether the folder is one in which listed files lie. */
  boolean namesFolder(Path relative) {
    String name = name(relative);
    return digests
        .map(files -> files.keySet().stream().anyMatch(file -> file.startsWith(name + "/")))
        .orElseGet(() -> FOLDER_WITHOUT_LIST.matcher(name).matches());
  }

  /** How long a file was and when it was changed last: whether it is still as it was seen. */
  record Stamp(long bytes, FileTime changed) {
    static Stamp of(Path file) throws IOException {
      return new Stamp(Files.size(file), Files.getLastModifiedTime(file));
    }

    boolean isOf(Path file) throws IOException {
      return Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS) && equals(of(file));
    }
  }

  /** The files in a folder that are as the program wrote them, seen from the folder. */
  Map<Path, Stamp> unchanged(Path folder) {
    return digests.orElse(Map.of()).entrySet().parallelStream()
        .flatMap(each -> seen(folder, each).stream())
        .collect(Collectors.toMap(Map.Entry::getKey, Map.Entry::getValue, (one, same) -> one));
  }

  private static Optional<Map.Entry<Path, Stamp>> seen(
      Path folder, Map.Entry<String, String> listed) {
    Optional<Path> name = relative(listed.getKey());
    try {
      if (name.isPresent() && isReached(folder, folder.resolve(name.get()))) {
        Path file = folder.resolve(name.get());
        Stamp before = Stamp.of(file);
        if (digestOf(folder, file).equals(listed.getValue())) {
          return Optional.of(Map.entry(name.get(), before));
        }
      }
      return Optional.empty();
    } catch (IOException unreadable) {
      return Optional.empty(); // What cannot be read is not known to be the program's.
    }
  }

  /** A name of the list as a path, unless it leads out of the folder. */
  private static Optional<Path> relative(String name) {
    try {
      Path path = Path.of(name);
      boolean leadsOut =
          path.isAbsolute() || !path.equals(path.normalize()) || path.startsWith("..");
      return leadsOut || name.isEmpty() ? Optional.empty() : Optional.of(path);
    } catch (InvalidPathException foreign) {
      return Optional.empty();
    }
  }

  /** Whether no link leads to the file. */
  private static boolean isReached(Path folder, Path file) throws IOException {
    return Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)
        && file.getParent()
            .toRealPath()
            .equals(folder.toRealPath().resolve(folder.relativize(file.getParent())));
  }

  private static String digestOf(Path folder, Path file) throws IOException {
    if (!file.equals(folder.resolve(FIGURES))) {
      return digest(MoreFiles.asByteSource(file));
    }
    Optional<Part> own = head(folder).flatMap(head -> head.ownDigest);
    return own.isEmpty() ? "" : digest(own.get().replaced(file, "\"\""));
  }
}
