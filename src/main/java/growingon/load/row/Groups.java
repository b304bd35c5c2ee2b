package growingon.load.row;

import growingon.load.cell.Texts;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Rows that together state one thing: the steps of a route, the components of a mix. */
public final class Groups {
  private Groups() {}

  /** Rows by the name in a column, spelt as in its first row; rows without it are not in any. */
  public static Map<String, List<Row>> by(Heading<?> heading, List<Row> rows) {
    Map<String, String> spellings = new LinkedHashMap<>();
    Map<String, List<Row>> groups = new LinkedHashMap<>();
    for (Row row : rows) {
      row.find(heading.as(As.NAME))
          .ifPresent(
              name -> {
                String spelling = spellings.computeIfAbsent(Texts.key(name), key -> name);
                groups.computeIfAbsent(spelling, each -> new ArrayList<>()).add(row);
              });
    }
    return groups;
  }
}
