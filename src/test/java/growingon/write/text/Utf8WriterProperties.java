package growingon.write.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/** Against the encoder of the JDK, pairs cut in two and halves alone among the text. */
class Utf8WriterProperties {
  @Provide
  Arbitrary<String> text() {
    return Arbitraries.strings().withChars("ab, \"\u00fc\u20ac\ud83c\udf33").ofMaxLength(6);
  }

  @Provide
  Arbitrary<List<String>> pieces() {
    return text().list().ofMaxSize(30);
  }

  private static byte[] written(List<String> texts, boolean whole, boolean jdk) throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (Writer out =
        jdk ? new OutputStreamWriter(bytes, StandardCharsets.UTF_8) : new Utf8Writer(bytes)) {
      for (String text : texts) {
        if (whole && out instanceof Utf8Writer fast && text.matches("\\p{ASCII}*")) {
          fast.ascii(text);
        } else if (whole) {
          out.write(text);
        } else {
          for (char each : text.toCharArray()) {
            out.write(each);
          }
        }
      }
    }
    return bytes.toByteArray();
  }

  @Property
  void textInPieces_isEncodedAsTheJdkDoes(@ForAll("pieces") List<String> texts) throws IOException {
    assertThat(written(texts, true, false)).isEqualTo(written(texts, true, true));
    assertThat(written(texts, false, false)).isEqualTo(written(texts, true, true));
  }

  @Property(tries = 5)
  void textLongerThanTheBuffer_isWhole(@ForAll("text") String text) throws IOException {
    String tree = "a \u20ac \ud83c\udf33 " + text;
    List<String> texts = List.of(tree.repeat(2000), "a".repeat(20_000));
    assertThat(written(texts, true, false)).isEqualTo(written(texts, true, true));
  }
}
