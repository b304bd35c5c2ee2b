package growingon.load.list;

import growingon.load.file.AsLaidOut;
import growingon.load.file.NurseryFiles;
import growingon.load.own.lot.OwnLot;
import growingon.load.row.Row;
import growingon.load.settings.SettingsReader;
import growingon.load.source.Table;
import growingon.nursery.Assumption;
import growingon.problem.Problem;
import growingon.problem.Reason;
import growingon.problem.Where;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Cells of a nursery that are as they were laid out around a list: usual values, not the grower's.
 * A cell that was changed is the grower's.
 */
final class UsualCells {
  /** What the source of such a value begins with. */
  private static final String USUAL = NurseryFiles.USUAL.toString();

  /** Columns of the stock that a list states nothing of. */
  private static final List<String> OF_NO_LIST =
      List.of("route", "gap mm", "plants per m2", "apart months");

  private final Set<String> cells = new HashSet<>();

  /** Cells that are the grower's and are judged by a usual one beside them. */
  private final Set<String> resting = new HashSet<>();

  /** Notes which cells of a table are as they were laid out. */
  void add(Table there, String name, List<Map<String, String>> laidOut) {
    if (laidOut.isEmpty()) {
      return;
    }
    List<String> by = AsLaidOut.knownBy(name, laidOut.get(0));
    Map<List<String>, Map<String, String>> known = AsLaidOut.known(name, laidOut);
    boolean settings = name.equals(SettingsReader.FORMAT.name());
    for (Row row : there.rows()) {
      List<String> called = AsLaidOut.known(row, by);
      known
          .getOrDefault(called, Map.of())
          .forEach(
              (column, usual) -> {
                if (!by.contains(column) && isSame(row.cell(column).shown(), usual)) {
                  add(row.where(), settings ? called.get(0) : column);
                }
              });
    }
  }

  /** Notes what the list does not state of a lot. */
  void add(OwnLot lot, Where row) {
    List<String> columns = new ArrayList<>(OF_NO_LIST);
    if (lot.trunkFromMm().isEmpty()) {
      columns.addAll(List.of("trunk mm", "trunk spread %"));
    }
    if (lot.arrived().isEmpty()) {
      columns.add("arrived");
    } else if (lot.form().isEmpty()) {
      resting.add(key(row.toString(), "arrived"));
    }
    columns.removeAll(lot.stated().cells().keySet());
    String source = row.column("").toString();
    columns.forEach(column -> cells.add(key(source, column)));
  }

  private void add(Where row, String what) {
    cells.add(key(row.column("").toString(), what));
  }

  /** Whether a problem is out of the ordinary in a usual value, or by one. */
  boolean isNoNews(Problem problem) {
    String key = key(problem.where().column("").toString(), problem.where().column());
    return !problem.isError()
        && problem.reason() == Reason.OUT_OF_RANGE
        && (problem.where().file().equals(USUAL) || cells.contains(key) || resting.contains(key));
  }

  private static String key(String source, String what) {
    return source + "\n" + what;
  }

  static boolean isSame(String now, String usual) {
    try {
      return now.equals(usual) || Double.parseDouble(now) == Double.parseDouble(usual);
    } catch (NumberFormatException text) {
      return false;
    }
  }

  /** The same values, the usual ones said to be so. */
  List<Assumption> marked(List<Assumption> assumptions) {
    return assumptions.stream().map(this::marked).toList();
  }

  private Assumption marked(Assumption each) {
    return cells.contains(key(each.source(), each.what()))
        ? new Assumption(
            each.table(),
            each.subject(),
            each.what(),
            each.value(),
            each.unit(),
            USUAL + ", " + each.source(),
            each.grounds())
        : each;
  }
}
