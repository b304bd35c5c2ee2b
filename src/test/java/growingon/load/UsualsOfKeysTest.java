package growingon.load;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.json.JsonReadFeature;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import growingon.load.settings.PlanShape;
import growingon.load.source.Key;
import growingon.load.table.NurseryShape;
import growingon.nursery.Inputs;
import java.io.IOException;
import java.lang.reflect.RecordComponent;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * What a key of nursery.json or plan.json is said to be where it is left out is what it is: typed
 * out it changes nothing, and another value does.
 */
class UsualsOfKeysTest {
  private static final Pattern USUAL = Pattern.compile(".*\\[([^\\[\\]]+)]");
  private static final JsonMapper JSON =
      JsonMapper.builder()
          .enable(JsonReadFeature.ALLOW_JAVA_COMMENTS, JsonReadFeature.ALLOW_TRAILING_COMMA)
          .build();

  @TempDir Path folder;

  /** A key whose usual value is a number, or one of a few words. */
  record Usual(String file, Key key, String value) {
    /** Some other value that it may have. */
    Object other() {
      if (key.words().length > 0) {
        return Arrays.stream(key.words()).filter(word -> !word.equals(value)).findFirst().get();
      }
      double number = Double.parseDouble(value);
      return number + 1 <= key.most() ? number + 1 : number - 1;
    }

    Object typed() {
      return key.words().length > 0 ? value : (Object) Double.valueOf(value);
    }

    @Override
    public String toString() {
      return file + ", " + key.value() + " [" + value + "]";
    }
  }

  static List<Usual> usuals() {
    return Stream.concat(of("nursery.json", NurseryShape.class), of("plan.json", PlanShape.class))
        .toList();
  }

  private static Stream<Usual> of(String file, Class<? extends Record> shape) {
    return Arrays.stream(shape.getRecordComponents())
        .flatMap(component -> key(shape, component).stream())
        .flatMap(key -> usual(file, key).stream());
  }

  private static Optional<Key> key(Class<?> shape, RecordComponent component) {
    try {
      return Optional.of(shape.getDeclaredField(component.getName()).getAnnotation(Key.class));
    } catch (NoSuchFieldException impossible) {
      throw new IllegalStateException(impossible);
    }
  }

  private static Optional<Usual> usual(String file, Key key) {
    Matcher said = USUAL.matcher(key.says());
    if (!said.matches()) {
      return Optional.empty();
    }
    String value = said.group(1);
    boolean isOne =
        value.matches("[0-9.]+") && key.words().length == 0 || List.of(key.words()).contains(value);
    return isOne ? Optional.of(new Usual(file, key, value)) : Optional.empty();
  }

  private Inputs with(Usual usual, Object value) throws IOException {
    SmallNursery.copyTidy(folder);
    Path file = folder.resolve(usual.file);
    ObjectNode keys = (ObjectNode) JSON.readTree(Files.readString(file));
    keys.remove(usual.key.value());
    if (value instanceof Double number) {
      keys.put(usual.key.value(), number);
    } else if (value != null) {
      keys.put(usual.key.value(), value.toString());
    }
    Files.writeString(file, JSON.writeValueAsString(keys));
    return SmallNursery.inputs(folder.resolve("plan.json"));
  }

  @ParameterizedTest
  @MethodSource("usuals")
  void keyLeftOut_isWhatItIsSaidToBe(Usual usual) throws IOException {
    String leftOut = with(usual, null).scenario().toString();
    assertThat(with(usual, usual.typed()).scenario().toString()).isEqualTo(leftOut);
    assertThat(with(usual, usual.other()).scenario().toString()).isNotEqualTo(leftOut);
  }
}
