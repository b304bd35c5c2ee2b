package growingon.load.list;

import growingon.load.cell.Findings;
import growingon.load.cell.Texts;
import growingon.load.file.TextRows;
import growingon.load.source.Table;
import growingon.load.source.TableFormat;
import growingon.problem.advice.ListAdvice;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Names of a list that a nursery laid out around it has no row for: they are told, as rows to
 * paste.
 */
final class NewNames {
  private static final Set<String> GROWS_WITH_THE_LIST =
      Set.of("species", "pots", "places", "routes", "grades", "demand");

  /** Tables that grow by a whole ladder, when the first plant of its kind comes. */
  private static final Set<String> BY_LADDER = Set.of("grades", "demand");

  private NewNames() {}

  /** Rows that a table would be laid out with today and whose names it lacks. */
  static List<Map<String, String>> lacking(
      Table there,
      String table,
      TableFormat format,
      List<Map<String, String>> rows,
      Findings findings) {
    if (!GROWS_WITH_THE_LIST.contains(table)) {
      return List.of();
    }
    String subject = BY_LADDER.contains(table) ? "ladder" : format.needed().get(0);
    Set<String> known = new LinkedHashSet<>();
    there.rows().forEach(row -> known.add(Texts.key(row.cell(subject).shown())));
    List<Map<String, String>> lacking =
        rows.stream().filter(row -> !known.contains(Texts.key(row.get(subject)))).toList();
    lacking.forEach(
        row ->
            findings.add(
                ListAdvice.newInList(
                    there.where(), row.get(subject), TextRows.pasted(format, row))));
    return lacking;
  }
}
