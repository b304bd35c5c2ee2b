package growingon.report;

import growingon.report.model.Sheet;
import growingon.report.model.Table;
import growingon.report.text.Plants;
import growingon.report.text.Shown;
import java.util.List;
import java.util.NoSuchElementException;
import java.util.function.Predicate;

/** Reads the cells of a table in a test by heading. */
public final class Cells {
  private final Table table;

  private Cells(Table table) {
    this.table = table;
  }

  /** The table of a name on a sheet. */
  public static Cells of(Sheet sheet, String table) {
    return new Cells(
        sheet.tables().stream()
            .filter(each -> each.name().equals(table))
            .findFirst()
            .orElseThrow(() -> new NoSuchElementException(table)));
  }

  public Table table() {
    return table;
  }

  public List<List<Object>> rows() {
    return table.rows();
  }

  public Object get(List<Object> row, String heading) {
    return row.get(column(heading));
  }

  public int column(String heading) {
    for (int i = 0; i < table.columns().size(); i++) {
      if (table.columns().get(i).heading().equals(heading)) {
        return i;
      }
    }
    throw new NoSuchElementException(heading);
  }

  /** The only row whose cell has a value. */
  public List<Object> row(String heading, Object value) {
    List<List<Object>> found = rows(row -> value.equals(get(row, heading)));
    if (found.size() != 1) {
      throw new NoSuchElementException(found.size() + " rows with " + heading + " " + value);
    }
    return found.get(0);
  }

  public List<List<Object>> rows(Predicate<List<Object>> wanted) {
    return table.rows().stream().filter(wanted).toList();
  }

  public List<Object> all(String heading) {
    return table.rows().stream().map(row -> get(row, heading)).toList();
  }

  /** Sum of numbers of all rows of figures.json; the exact ones. */
  public double sum(String heading) {
    double sum = 0;
    for (Object cell : table.inFull().stream().map(row -> get(row, heading)).toList()) {
      if (cell instanceof Plants plants) {
        sum += plants.exact();
      } else if (cell instanceof Shown number) {
        sum += number.exact();
      } else if (cell != null) {
        sum += ((Number) cell).doubleValue();
      }
    }
    return sum;
  }

  /** Sum of plants as shown. */
  public long wholeSum(String heading) {
    return all(heading).stream()
        .mapToLong(cell -> cell == null ? 0 : ((Plants) cell).whole())
        .sum();
  }
}
