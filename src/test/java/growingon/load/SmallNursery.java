package growingon.load;

import growingon.nursery.Inputs;
import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.Stream;

/** A small invented nursery in test files, kept tidily. */
public final class SmallNursery {
  static final LocalDate TODAY = LocalDate.of(2027, 4, 30);

  private static final String RATE =
      "notice: nursery.json, line 4, key CHF: 1 CHF counts as 1.05 EUR";

  /** Of the tidy nursery a pot, of one with fewer lots more; {@code UnusedTest} looks at them. */
  private static final String UNUSED = ": no lot and no offer uses the ";

  private SmallNursery() {}

  static Path resource(String name) {
    try {
      return Path.of(SmallNursery.class.getResource("/load/" + name).toURI());
    } catch (URISyntaxException broken) {
      throw new IllegalStateException(broken);
    }
  }

  public static void copyTidy(Path folder) throws IOException {
    copy("tidy", folder);
  }

  static void copy(String name, Path folder) throws IOException {
    try (Stream<Path> files = Files.list(resource(name))) {
      for (Path file : files.toList()) {
        Files.copy(file, folder.resolve(file.getFileName()), StandardCopyOption.REPLACE_EXISTING);
      }
    }
  }

  /** Replaces a text of a file, which must be there. */
  public static void change(Path file, String from, String to) throws IOException {
    String text = Files.readString(file);
    if (!text.contains(from)) {
      throw new IllegalArgumentException(file + " does not hold " + from);
    }
    Files.writeString(file, text.replace(from, to));
  }

  /** The inputs of a nursery in which nothing is wrong. */
  public static Inputs inputs(Path what) {
    return read(what).inputs().orElseThrow();
  }

  static Loader.Reading read(Path what) {
    return Loader.read(what, new LoadOptions(TODAY).takingLists());
  }

  /** Problems as "severity: sentence", without those of the tidy nursery. */
  public static List<String> problems(Path what) {
    return read(what).findings().problems().stream()
        .map(problem -> problem.severity() + ": " + problem)
        .filter(sentence -> !isUsual(sentence))
        .toList();
  }

  /** Whether it is said of the tidy nursery too. */
  static boolean isUsual(String sentence) {
    return sentence.equals(RATE) || sentence.contains(UNUSED);
  }
}
