package growingon;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.regex.Pattern;

/** LibreOffice, where it is installed: an independent spreadsheet and printer. */
public final class Office {
  private static final Pattern PAGE = Pattern.compile("/Type */Page[^s]");

  private final Path program;
  private final Path folder;
  private final Path profile;

  private Office(Path program, Path folder) throws IOException {
    this.program = program;
    this.folder = folder;
    this.profile = folder.resolve("profile");
    Files.createDirectories(profile.resolve("user"));
  }

  /**
   * LibreOffice with a profile of its own; the test is skipped where it is not installed.
   *
   * @param folder an empty folder for its files
   */
  public static Office in(Path folder) throws IOException {
    Optional<Path> program = onPath("soffice");
    assumeTrue(program.isPresent(), "LibreOffice (soffice) is not installed here");
    return new Office(program.get(), folder);
  }

  private static Optional<Path> onPath(String program) {
    String path = Optional.ofNullable(System.getenv("PATH")).orElse("");
    return Arrays.stream(path.split(File.pathSeparator))
        .map(folder -> Path.of(folder, program))
        .filter(Files::isExecutable)
        .findFirst();
  }

  /** Its settings, as LibreOffice writes them. */
  public void configure(String registry) throws IOException {
    Files.writeString(profile.resolve("user/registrymodifications.xcu"), registry);
  }

  /** Converts a file; gives the new one, which has the same name but for its end. */
  public Path convert(Path file, String to) throws IOException, InterruptedException {
    Path out = Files.createDirectories(folder.resolve("out"));
    List<String> command =
        new ArrayList<>(
            List.of(program.toString(), "-env:UserInstallation=" + profile.toUri(), "--headless"));
    command.addAll(List.of("--convert-to", to, "--outdir", out.toString(), file.toString()));
    Process process =
        new ProcessBuilder(command)
            .redirectErrorStream(true)
            .redirectOutput(folder.resolve("office.log").toFile())
            .start();
    boolean ended = process.waitFor(3, TimeUnit.MINUTES);
    process.destroyForcibly();
    assertThat(ended).as("LibreOffice ended").isTrue();
    String name = file.getFileName().toString();
    return out.resolve(name.substring(0, name.lastIndexOf('.') + 1) + to);
  }

  /** How many pages a workbook prints on. */
  public long pages(Path workbook) throws IOException, InterruptedException {
    Path pdf = convert(workbook, "pdf");
    String text = new String(Files.readAllBytes(pdf), StandardCharsets.ISO_8859_1);
    return PAGE.matcher(text).results().count();
  }
}
