package growingon.load;

import growingon.load.Cell.Fields;
import growingon.problem.Where;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;

/**
 * The object of a JSON file that is there.
 *
 * @param where the file
 * @param contents what it holds; empty if it could not be used, which has been reported
 */
record JsonObject(Where where, Optional<Fields> contents) {
  static JsonObject read(Path file, Class<? extends Record> shape, Findings findings) {
    return new JsonObject(
        Where.file(file.getFileName().toString()), JsonFile.read(file, shape, findings));
  }

  boolean isBroken() {
    return contents.isEmpty();
  }

  /** What it holds, nothing if it is broken. */
  Fields fields() {
    return contents.orElse(new Fields(Map.of(), 0));
  }

  /** Its values as a row of what counts as the table. */
  Row row(String table, Findings findings) {
    return JsonShape.row(table, fields(), "", where, findings);
  }
}
