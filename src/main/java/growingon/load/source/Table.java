package growingon.load.source;

import growingon.load.cell.Cell;
import growingon.load.cell.Findings;
import growingon.load.cell.Nearest;
import growingon.load.row.MissingColumns;
import growingon.load.row.Row;
import growingon.load.source.Grid.GridRow;
import growingon.load.source.Grid.Merge;
import growingon.problem.Problem;
import growingon.problem.Where;
import growingon.problem.advice.TableAdvice;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.function.UnaryOperator;

/** A table: its rows with values by heading, made from the grid of a sheet or CSV file. */
public final class Table {
  /** More headings than this are not remarked upon one by one. */
  private static final int REMARKS = 20;

  private final TableFormat format;
  private final Where where;
  private final boolean readable;
  private final List<Row> rows;

  private Table(TableFormat format, Where where, boolean readable, List<Row> rows) {
    this.format = format;
    this.where = where;
    this.readable = readable;
    this.rows = List.copyOf(rows);
  }

  public Where where() {
    return where;
  }

  /** Every row below the headings that is not blank. */
  public List<Row> rows() {
    return rows;
  }

  /** Whether it is a table of the format. */
  public boolean isOf(TableFormat other) {
    return format.equals(other);
  }

  /** Whether its headings are such that its rows could be read. */
  public boolean isReadable() {
    return readable;
  }

  /** A table that is there but cannot be read, which has been reported. */
  public static Table unreadable(TableFormat format, Where where) {
    return new Table(format, where, false, List.of());
  }

  /** This table and the rows of another of its kind. */
  public Table and(Table other) {
    List<Row> all = new ArrayList<>(rows);
    all.addAll(other.rows);
    return new Table(format, where, readable && other.readable, all);
  }

  /** Whether an answer names a row of it. */
  public boolean has(Answer answer) {
    return rows.stream().anyMatch(row -> row.isCalled(answer.row()));
  }

  /** The table with an answer in the row that it names. */
  public Table answered(Answer answer) {
    List<Row> all =
        rows.stream()
            .map(
                row ->
                    row.isCalled(answer.row())
                        ? row.with(answer.column(), answer.cell(), answer.where())
                        : row)
            .toList();
    return new Table(format, where, readable, all);
  }

  /** The table with each of its rows as something makes it. */
  public Table with(UnaryOperator<Row> change) {
    return new Table(format, where, readable, rows.stream().map(change).toList());
  }

  /** The table with some of its rows only. */
  public Table keeping(Predicate<Row> which) {
    return new Table(format, where, readable, rows.stream().filter(which).toList());
  }

  /** The table with its rows not read yet; what is wrong with them is told elsewhere. */
  public Table afresh(Findings told) {
    Map<MissingColumns, MissingColumns> missing = new IdentityHashMap<>();
    return with(
        row ->
            row.afresh(
                missing.computeIfAbsent(row.missingColumns(), each -> each.afresh(told)), told));
  }

  /** The table in a grid. */
  public static Table of(Grid grid, TableFormat format, Findings findings) {
    Optional<Headings> headings = Headings.find(grid, format);
    if (headings.isEmpty()) {
      findings.add(TableAdvice.noHeadings(grid.where(), format.name(), format.needed()));
      return unreadable(format, grid.where());
    }
    Reading reading = Reading.of(grid, format, headings.get(), findings);
    boolean fine = reading.checkHeadings();
    return fine
        ? new Table(format, grid.where(), true, reading.rows())
        : unreadable(format, grid.where());
  }

  @Override
  public String toString() {
    return format.name() + " in " + where;
  }

  /** One pass over a grid. */
  private record Reading(
      Grid grid, TableFormat format, Headings headings, MissingColumns missing, Findings findings) {
    static Reading of(Grid grid, TableFormat format, Headings headings, Findings findings) {
      Where row = new Where(grid.where().file(), grid.where().sheet(), headings.lastRow(), "");
      MissingColumns missing =
          new MissingColumns(
              headings.columns().keySet(),
              row,
              heading -> Nearest.to(heading, headings.unknown().values()),
              findings);
      return new Reading(grid, format, headings, missing, findings);
    }

    boolean checkHeadings() {
      Where row = at(headings.lastRow());
      List<String> lacking =
          format.needed().stream().filter(each -> missing.explain(List.of(each))).toList();
      headings.twice().forEach(each -> findings.add(TableAdvice.headingTwice(row, each)));
      remarkUnknown(row);
      remarkUnheaded();
      return lacking.isEmpty() && headings.twice().isEmpty();
    }

    private Where at(int row) {
      return new Where(grid.where().file(), grid.where().sheet(), row, "");
    }

    private void remarkUnknown(Where row) {
      List<String> unknown = List.copyOf(headings.unknown().values());
      unknown.stream()
          .limit(REMARKS)
          .map(each -> TableAdvice.unknownHeading(row, each, Nearest.to(each, format.known())))
          .forEach(findings::add);
      if (unknown.size() > REMARKS) {
        findings.add(TableAdvice.moreUnknownHeadings(row, unknown.size() - REMARKS));
      }
    }

    /** Columns with values but without a heading. */
    private void remarkUnheaded() {
      Set<Integer> headed = new TreeSet<>(headings.unknown().keySet());
      headings.columns().values().forEach(headed::addAll);
      Map<Integer, GridRow> unheaded = new LinkedHashMap<>();
      for (GridRow row : body()) {
        for (Integer column : row.cells().keySet()) {
          if (!headed.contains(column)) {
            unheaded.putIfAbsent(column, row);
          }
        }
      }
      unheaded.entrySet().stream()
          .limit(REMARKS)
          .map(entry -> noHeading(entry.getKey(), entry.getValue()))
          .forEach(findings::add);
    }

    private Problem noHeading(int column, GridRow row) {
      return TableAdvice.noHeading(
          at(row.number()).column(Grid.letters(column)), row.cell(column).shown());
    }

    private List<GridRow> body() {
      return grid.rows().stream().filter(row -> row.number() > headings.lastRow()).toList();
    }

    List<Row> rows() {
      Map<Integer, List<Merge>> merges = mergesByRow();
      List<Row> rows = new ArrayList<>();
      Map<Integer, Cell> above = new HashMap<>();
      for (GridRow row : body()) {
        rows.add(row(row, merges.getOrDefault(row.number(), List.of()), above));
      }
      return rows;
    }

    private Map<Integer, List<Merge>> mergesByRow() {
      Map<Integer, List<Merge>> byRow = new HashMap<>();
      for (Merge merge : grid.merges()) {
        int last = Math.min(merge.lastRow(), lastFilledRow());
        for (int row = Math.max(merge.firstRow(), headings.lastRow() + 1); row <= last; row++) {
          byRow.computeIfAbsent(row, each -> new ArrayList<>()).add(merge);
        }
      }
      return byRow;
    }

    private int lastFilledRow() {
      return grid.rows().isEmpty() ? 0 : grid.rows().get(grid.rows().size() - 1).number();
    }

    /**
     * A row of values by heading. A text merged over several rows holds for all of them; a number
     * or date merged over several rows might be a total, and cells merged over several columns hide
     * values, so both are faults.
     */
    private Row row(GridRow gridRow, List<Merge> merges, Map<Integer, Cell> mergedTexts) {
      Map<String, Cell> cells = new LinkedHashMap<>();
      List<Problem> faults = new ArrayList<>();
      headings
          .columns()
          .forEach(
              (heading, columns) -> {
                boolean plain = merges.isEmpty() && columns.size() == 1;
                Cell value =
                    plain
                        ? gridRow.cell(columns.get(0))
                        : value(heading, gridRow, columns, merges, mergedTexts, faults);
                if (!value.isEmpty()) {
                  cells.put(heading, value);
                }
              });
      return finish(gridRow, cells, faults);
    }

    /** The value of a heading that is merged, or of a row with merged cells. */
    private Cell value(
        String heading,
        GridRow gridRow,
        List<Integer> columns,
        List<Merge> merges,
        Map<Integer, Cell> mergedTexts,
        List<Problem> faults) {
      Where where = at(gridRow.number()).column(heading);
      Cell cell = only(gridRow, columns, where, faults);
      Cell merged = merged(gridRow, columns.get(0), merges, mergedTexts, where, faults);
      return cell.isEmpty() ? merged : cell;
    }

    private Row finish(GridRow gridRow, Map<String, Cell> cells, List<Problem> faults) {
      Row row =
          new Row(
              format.name(),
              format.subject(),
              () -> subject(cells),
              at(gridRow.number()),
              grid.style(),
              cells,
              Map.of(),
              missing,
              findings);
      faults.forEach(fault -> row.fail(where -> fault));
      if (cells.isEmpty() && faults.isEmpty()) {
        String found = gridRow.cells().values().iterator().next().shown();
        row.fail(where -> TableAdvice.nothingUnderHeadings(where, found));
      }
      return row;
    }

    private String subject(Map<String, Cell> cells) {
      return String.join(
          ", ",
          format.subject().stream()
              .map(heading -> cells.getOrDefault(heading, Cell.EMPTY).shown())
              .filter(text -> !text.isEmpty())
              .toList());
    }

    private Cell only(GridRow row, List<Integer> columns, Where where, List<Problem> faults) {
      List<Cell> filled = columns.stream().map(row::cell).filter(cell -> !cell.isEmpty()).toList();
      if (filled.size() > 1) {
        faults.add(TableAdvice.twoUnderOneHeading(where, filled.get(1).shown()));
      }
      return filled.isEmpty() ? Cell.EMPTY : filled.get(0);
    }

    private Cell merged(
        GridRow row,
        int column,
        List<Merge> merges,
        Map<Integer, Cell> mergedTexts,
        Where where,
        List<Problem> faults) {
      for (Merge merge : merges) {
        if (merge.covers(row.number(), column)) {
          return inMerge(row, column, merge, mergedTexts, where, faults);
        }
      }
      return Cell.EMPTY;
    }

    private Cell inMerge(
        GridRow row,
        int column,
        Merge merge,
        Map<Integer, Cell> mergedTexts,
        Where where,
        List<Problem> faults) {
      if (column != merge.firstColumn()) {
        faults.add(TableAdvice.mergedColumns(where));
        return Cell.EMPTY;
      }
      if (row.number() == merge.firstRow()) {
        mergedTexts.put(column, row.cell(column));
        return row.cell(column);
      }
      Cell value = mergedTexts.getOrDefault(column, Cell.EMPTY);
      if (!(value instanceof Cell.Text || value.isEmpty())) {
        faults.add(TableAdvice.mergedRows(where, value.shown()));
        return Cell.EMPTY;
      }
      return value;
    }
  }
}
