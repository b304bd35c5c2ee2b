package growingon.load.own;

import java.io.IOException;
import java.io.InputStream;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;

/** Tables that stand in the program beside the class that reads them. */
final class Resources {
  private Resources() {}

  static List<CSVRecord> rows(Class<?> reader, String name) {
    CSVFormat format = CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get();
    try (InputStream stream = reader.getResourceAsStream(name)) {
      if (stream == null) {
        throw new IllegalStateException("the program lacks its file " + name);
      }
      String text = new String(stream.readAllBytes(), StandardCharsets.UTF_8);
      return format.parse(new StringReader(text)).getRecords();
    } catch (IOException broken) {
      throw new UncheckedIOException(broken);
    }
  }
}
