package growingon.load.cell;

import growingon.problem.Where;
import growingon.problem.advice.FileAdvice;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;

/** Text files, UTF-8 only: a wrong guess at an encoding would change names in silence. */
public final class Utf8 {
  /** No table or settings file that a person keeps is larger. */
  public static final long LARGEST = 64L << 20;

  private Utf8() {}

  /** The text of a file without a byte order mark; empty if it cannot be had, which is reported. */
  public static Optional<String> read(Path file, Where where, Findings findings) {
    try {
      if (!Files.isRegularFile(file)) {
        findings.add(FileAdvice.notAFile(where));
        return Optional.empty();
      }
      long size = Files.size(file);
      if (size > LARGEST) {
        findings.add(FileAdvice.tooLarge(where, size >> 20));
        return Optional.empty();
      }
      return decode(Files.readAllBytes(file), where, findings);
    } catch (AccessDeniedException denied) {
      findings.add(FileAdvice.noAccess(where));
    } catch (IOException broken) {
      findings.add(FileAdvice.cannotRead(where, broken.getMessage()));
    }
    return Optional.empty();
  }

  private static Optional<String> decode(byte[] bytes, Where where, Findings findings) {
    try {
      String text = StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
      if (text.isBlank() || text.equals("\uFEFF")) {
        findings.add(FileAdvice.emptyFile(where));
        return Optional.empty();
      }
      if (text.indexOf('\0') >= 0) {
        findings.add(FileAdvice.notUtf8(where));
        return Optional.empty();
      }
      return Optional.of(text.startsWith("\uFEFF") ? text.substring(1) : text);
    } catch (CharacterCodingException notUtf8) {
      findings.add(FileAdvice.notUtf8(where));
      return Optional.empty();
    }
  }
}
