package growingon.load.source;

import growingon.load.cell.Cell.Fields;
import growingon.load.cell.Findings;
import growingon.load.row.Row;
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
public record JsonObject(Where where, Optional<Fields> contents) {
  public static JsonObject read(Path file, Class<? extends Record> shape, Findings findings) {
    return new JsonObject(
        Where.file(file.getFileName().toString()), JsonFile.read(file, shape, findings));
  }

  public boolean isBroken() {
    return contents.isEmpty();
  }

  /** What it holds, nothing if it is broken. */
  public Fields fields() {
    return contents.orElse(new Fields(Map.of(), 0));
  }

  /** Its values as a row of what counts as the table. */
  public Row row(String table, Findings findings) {
    return JsonShape.row(table, fields(), "", where, findings);
  }
}
