package growingon.load.source;

import growingon.load.cell.Findings;
import growingon.load.cell.Texts;
import growingon.load.cell.Utf8;
import growingon.load.own.ListReader;
import growingon.load.own.sheet.Sheet;
import growingon.load.own.sheet.SheetCell;
import growingon.load.own.sheet.SheetRow;
import growingon.problem.Where;
import growingon.problem.advice.FileAdvice;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A list as CSV, whatever program made it: comma, semicolon, tab or bar; UTF-8, UTF-16 with its
 * mark, or else Windows-1252. A lone quotation mark within a field is a letter.
 */
public final class OwnCsv {
  private static final char[] DELIMITERS = {';', ',', '\t', '|'};
  private static final int PROBED = 200_000;
  private static final Pattern KEPT_AS_TEXT = Pattern.compile("=\"([^\"]*)\"");

  private OwnCsv() {}

  public static Optional<List<Sheet>> read(Path file, Findings findings) {
    String name = file.getFileName().toString();
    Where where = Where.file(name);
    try {
      if (!Files.isRegularFile(file)) {
        findings.add(FileAdvice.notAFile(where));
      } else if (Files.size(file) > Utf8.LARGEST) {
        findings.add(FileAdvice.tooLarge(where, Files.size(file) >> 20));
      } else {
        return text(Files.readAllBytes(file), where, findings)
            .map(text -> List.of(best(text, name)));
      }
    } catch (AccessDeniedException denied) {
      findings.add(FileAdvice.noAccess(where));
    } catch (IOException broken) {
      findings.add(FileAdvice.cannotRead(where, broken.getMessage()));
    }
    return Optional.empty();
  }

  private static Optional<String> text(byte[] bytes, Where where, Findings findings) {
    String text = decoded(bytes, where, findings);
    if (text.isBlank()) {
      findings.add(FileAdvice.emptyFile(where));
      return Optional.empty();
    }
    if (text.indexOf('\0') >= 0) {
      findings.add(FileAdvice.notUtf8(where));
      return Optional.empty();
    }
    return Optional.of(text);
  }

  private static String decoded(byte[] bytes, Where where, Findings findings) {
    if (bytes.length > 1 && (bytes[0] & 0xFF) == 0xFF && (bytes[1] & 0xFF) == 0xFE) {
      return new String(bytes, 2, bytes.length - 2, StandardCharsets.UTF_16LE);
    }
    if (bytes.length > 1 && (bytes[0] & 0xFF) == 0xFE && (bytes[1] & 0xFF) == 0xFF) {
      return new String(bytes, 2, bytes.length - 2, StandardCharsets.UTF_16BE);
    }
    try {
      String text = StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
      return text.startsWith("\uFEFF") ? text.substring(1) : text;
    } catch (CharacterCodingException notUtf8) {
      findings.add(FileAdvice.readAsWindows(where));
      return new String(bytes, Charset.forName("windows-1252"));
    }
  }

  /** Parted by the mark by which most rows have as many fields as the others. */
  private static Sheet best(String text, String name) {
    String start = text.length() > PROBED ? text.substring(0, PROBED) : text;
    Sheet best = null;
    double most = -1;
    for (char delimiter : DELIMITERS) {
      Sheet sheet = parted(start, delimiter, name);
      double score = (ListReader.isList(List.of(sheet)) ? 1000 : 0) + fields(sheet);
      if (score > most) {
        most = score;
        best = start.length() == text.length() ? sheet : parted(text, delimiter, name);
      }
    }
    return best;
  }

  private static double fields(Sheet sheet) {
    return sheet.rows().stream().mapToInt(row -> row.cells().size()).average().orElse(0);
  }

  private static Sheet parted(String text, char delimiter, String name) {
    List<SheetRow> rows = new ArrayList<>();
    int number = 0;
    for (List<String> record : new Records(text, delimiter).all()) {
      number++;
      TreeMap<Integer, SheetCell> cells = new TreeMap<>();
      for (int column = 0; column < record.size(); column++) {
        String value = cleaned(record.get(column));
        if (!value.isEmpty()) {
          cells.put(column, SheetCell.of(value));
        }
      }
      if (!cells.isEmpty()) {
        rows.add(new SheetRow(number, false, cells));
      }
    }
    return new Sheet(name, name, true, rows, List.of(), Set.of(), false);
  }

  private static String cleaned(String field) {
    if (field.indexOf('=') < 0) {
      return Texts.clean(field);
    }
    Matcher kept = KEPT_AS_TEXT.matcher(field.strip());
    return Texts.clean(kept.matches() ? kept.group(1) : field);
  }

  /** Takes a text apart into records of fields. */
  private static final class Records {
    private final String text;
    private final char delimiter;
    private int at;

    Records(String text, char delimiter) {
      this.text = text;
      this.delimiter = delimiter;
    }

    List<List<String>> all() {
      List<List<String>> records = new ArrayList<>();
      while (at < text.length()) {
        records.add(record());
      }
      return records;
    }

    private List<String> record() {
      List<String> fields = new ArrayList<>();
      fields.add(field());
      while (at < text.length() && text.charAt(at) == delimiter) {
        at++;
        fields.add(field());
      }
      skipLineEnd();
      return fields;
    }

    private void skipLineEnd() {
      if (at < text.length() && text.charAt(at) == '\r') {
        at++;
      }
      if (at < text.length() && text.charAt(at) == '\n') {
        at++;
      }
    }

    private String field() {
      int closing = at < text.length() && text.charAt(at) == '"' ? closing(at) : -1;
      if (closing >= 0) {
        String inner = text.substring(at + 1, closing).replace("\"\"", "\"");
        at = closing + 1;
        return inner;
      }
      int start = at;
      while (at < text.length() && !isEnd(at)) {
        at++;
      }
      return text.substring(start, at);
    }

    private boolean isEnd(int index) {
      char c = text.charAt(index);
      return c == delimiter || c == '\n' || c == '\r';
    }

    /** Where a quoted field closes; -1 where its mark is a letter. */
    private int closing(int open) {
      boolean crossed = false;
      for (int i = open + 1; i < text.length(); i++) {
        char c = text.charAt(i);
        crossed |= c == '\n';
        if (c != '"') {
          continue;
        }
        if (i + 1 < text.length() && text.charAt(i + 1) == '"') {
          i++;
        } else if (i + 1 == text.length() || isEnd(i + 1)) {
          return i;
        } else if (crossed) {
          return -1;
        }
      }
      return -1;
    }
  }
}
