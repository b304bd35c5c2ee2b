package growingon.load.row;

import growingon.load.cell.Findings;
import growingon.problem.Where;
import growingon.problem.advice.TableAdvice;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;

/**
 * The columns that a table does not have. A value that is missing because its whole column is gets
 * one error for the table, at its headings, and not one for each row.
 */
public final class MissingColumns {
  /** Of a row without headings: whatever is missing is missing in the row. */
  public static final MissingColumns NONE = new MissingColumns();

  private final Optional<Set<String>> there;
  private final Where headings;
  private final Function<String, Optional<String>> nearest;
  private final Findings findings;
  private final Set<String> told = new HashSet<>();

  private MissingColumns() {
    this.there = Optional.empty();
    this.headings = Where.NOWHERE;
    this.nearest = heading -> Optional.empty();
    this.findings = new Findings();
  }

  /**
   * Those of a table.
   *
   * @param there headings that it has
   * @param row where they stand
   * @param nearest heading that is not known and may have been meant for a missing one
   */
  public MissingColumns(
      Set<String> there, Where row, Function<String, Optional<String>> nearest, Findings findings) {
    this.there = Optional.of(there);
    this.headings = row;
    this.nearest = nearest;
    this.findings = findings;
  }

  /** The same columns, of which nothing is told yet. */
  public MissingColumns afresh(Findings told) {
    return there.isEmpty() ? this : new MissingColumns(there.get(), headings, nearest, told);
  }

  /** Whether none of the columns is there; the first is then reported, once for the table. */
  public boolean explain(List<String> anyOf) {
    if (there.isEmpty() || anyOf.stream().anyMatch(there.get()::contains)) {
      return false;
    }
    String heading = anyOf.get(0);
    if (told.add(heading)) {
      findings.add(TableAdvice.missingHeading(headings, heading, nearest.apply(heading)));
    }
    return true;
  }
}
