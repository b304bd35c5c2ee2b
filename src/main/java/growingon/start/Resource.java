package growingon.start;

import java.io.IOException;
import java.io.InputStream;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;

/** Files that stand in the program beside this class. */
final class Resource {
  private Resource() {}

  static String text(String name) {
    try (InputStream stream = Resource.class.getResourceAsStream(name)) {
      if (stream == null) {
        throw new IllegalStateException("the program lacks its file " + name);
      }
      return new String(stream.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException broken) {
      throw new UncheckedIOException(broken);
    }
  }

  /** Rows of a CSV file with headings in its first row. */
  static List<CSVRecord> rows(String name) {
    CSVFormat format = CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get();
    try {
      return format.parse(new StringReader(text(name))).getRecords();
    } catch (IOException broken) {
      throw new UncheckedIOException(broken);
    }
  }
}
