package growingon.demo;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** The records of four seasons are what their generator gives. */
class DemoRecordsTest {
  private static final String AGAIN =
      "make them again with: mvn -q test -Dtest=DemoRecordsTest -Ddemo.write=true";

  @Test
  void committedRecords_areWhatTheGeneratorGives() throws IOException {
    for (Map.Entry<String, String> each : DemoRecords.texts().entrySet()) {
      Path file = DemoRecords.FOLDER.resolve(each.getKey());
      if (Boolean.getBoolean("demo.write")) {
        Files.writeString(file, each.getValue());
      }
      assertThat(Files.readString(file)).as(AGAIN).isEqualTo(each.getValue());
    }
  }
}
