package growingon.write.folder;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import growingon.write.text.Numbers;
import growingon.write.text.RowsOnLines;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.lang.reflect.Method;
import java.lang.reflect.RecordComponent;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * Freezes a record in a JSON file: an object whose keys are the words of its components' names, so
 * that {@code firstMonth} is "first month". Numbers have the fewest digits that read back as the
 * same number, null if they are none. The same record gives the same bytes.
 */
public final class FrozenFile {
  private final JsonGenerator out;

  private FrozenFile(JsonGenerator out) {
    this.out = out;
  }

  /**
   * Freezes a record: the file is there whole or not at all.
   *
   * @param force whether to replace a file that holds something else
   * @throws AlreadyFrozen if the file holds something else and {@code force} is not set
   * @throws IOException if it cannot be written; what was there is as it was
   */
  public static void write(Record frozen, Path file, boolean force) throws IOException {
    byte[] bytes = bytes(frozen);
    Path whole = file.toAbsolutePath().normalize();
    if (Files.exists(whole)) {
      if (Files.isRegularFile(whole) && Arrays.equals(Files.readAllBytes(whole), bytes)) {
        return;
      }
      if (!force) {
        throw new AlreadyFrozen(file);
      }
    }
    Files.createDirectories(whole.getParent());
    Path fresh = SwapPlace.free(whole.resolveSibling("." + whole.getFileName() + ".new"));
    Files.createFile(fresh); // Fails where somebody else has just taken the name.
    try {
      Files.write(fresh, bytes);
      Files.move(fresh, whole, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
    } finally {
      Files.deleteIfExists(fresh);
    }
  }

  static byte[] bytes(Record frozen) throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream(1 << 16);
    try (JsonGenerator out = new JsonFactory().createGenerator(bytes)) {
      out.setPrettyPrinter(new RowsOnLines());
      new FrozenFile(out).value(frozen);
      out.writeRaw('\n');
    }
    return bytes.toByteArray();
  }

  private void value(Object value) throws IOException {
    if (value instanceof Record frozen) {
      record(frozen);
    } else if (value instanceof List<?> list) {
      list(list);
    } else if (value instanceof Map<?, ?> map) {
      map(map);
    } else if (value instanceof Number number) {
      number(number);
    } else if (value instanceof Boolean yes) {
      out.writeBoolean(yes);
    } else {
      out.writeString((String) value);
    }
  }

  private void record(Record frozen) throws IOException {
    out.writeStartObject();
    for (RecordComponent component : frozen.getClass().getRecordComponents()) {
      Object value = of(frozen, component.getAccessor());
      if (value instanceof Optional<?> may) {
        if (may.isEmpty()) {
          continue;
        }
        value = may.get();
      }
      out.writeFieldName(words(component.getName()));
      value(value);
    }
    out.writeEndObject();
  }

  private static Object of(Record frozen, Method accessor) {
    try {
      accessor.setAccessible(true);
      return accessor.invoke(frozen);
    } catch (ReflectiveOperationException impossible) {
      throw new IllegalStateException("a record tells its components", impossible);
    }
  }

  private static String words(String component) {
    return component.replaceAll("(\\p{Lu})", " $1").toLowerCase(Locale.ROOT);
  }

  private void list(List<?> list) throws IOException {
    out.writeStartArray();
    for (Object each : list) {
      value(each);
    }
    out.writeEndArray();
  }

  private void map(Map<?, ?> map) throws IOException {
    out.writeStartObject();
    for (Map.Entry<?, ?> entry : map.entrySet()) {
      out.writeFieldName(entry.getKey().toString());
      value(entry.getValue());
    }
    out.writeEndObject();
  }

  private void number(Number number) throws IOException {
    if (number instanceof Integer || number instanceof Long) {
      out.writeNumber(number.longValue());
    } else if (!Double.isFinite(number.doubleValue())) {
      out.writeNull();
    } else if (Numbers.isWhole(number.doubleValue())) {
      out.writeNumber(number.longValue());
    } else {
      out.writeNumber(number.doubleValue());
    }
  }
}
