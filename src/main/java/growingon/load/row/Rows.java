package growingon.load.row;

import growingon.load.cell.Findings;
import growingon.load.cell.NumberStyle;
import growingon.problem.Where;
import java.util.List;
import java.util.Map;

/** Rows that no file has. */
public final class Rows {
  private Rows() {}

  /** A row without values, so that defaults are listed like those of a row that is there. */
  public static Row none(String table, String subject, Findings findings) {
    return none(table, subject, Where.NOWHERE, findings);
  }

  /** The same, with the place where its values are missing. */
  public static Row none(String table, String subject, Where where, Findings findings) {
    return new Row(
        table,
        List.of(),
        () -> subject,
        where,
        NumberStyle.POINT,
        Map.of(),
        Map.of(),
        MissingColumns.NONE,
        findings);
  }
}
