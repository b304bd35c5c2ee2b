package growingon.load.row;

import com.google.common.base.Suppliers;
import growingon.load.cell.Cell;
import growingon.load.cell.CellFault;
import growingon.load.cell.Findings;
import growingon.load.cell.NumberStyle;
import growingon.load.cell.Spot;
import growingon.load.cell.Texts;
import growingon.nursery.Assumption;
import growingon.nursery.Assumption.Grounds;
import growingon.problem.Problem;
import growingon.problem.Where;
import growingon.problem.advice.TableAdvice;
import java.util.Arrays;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Supplier;

/**
 * A row of a table, or an object of a JSON file, and the one way to its values: {@code get} for a
 * value that must be there or has a default, {@code find} for one that may be missing. A value that
 * cannot be read becomes a problem with file, row and column, the reader goes on with a
 * placeholder, and {@link #accept} then yields nothing. Every value read or assumed is listed with
 * its source.
 */
public final class Row extends HeadedRow {
  private static final String LIBRARY = "library";

  private final String table;
  private final List<String> subjectHeadings;
  private final Supplier<String> subject;
  private final Supplier<String> source;
  private final Where where;
  private final NumberStyle style;
  private final Map<String, Cell> cells;
  private final Map<String, Where> places;
  private final Findings findings;
  private final MissingColumns missingColumns;
  private final Set<String> toldMissing = new HashSet<>();
  private boolean failed;
  private boolean accepted;
  private boolean reportedElsewhere;

  /**
   * A row.
   *
   * @param table table or file it belongs to
   * @param subjectHeadings headings of the values that say what it is of
   * @param subject what it is of, for the list of assumptions; asked for only if there are some
   * @param cells by heading; a heading without a cell counts as empty
   * @param places where a heading's value stands if not in the row itself: lines of a JSON file
   * @param missingColumns columns that its table does not have
   */
  public Row(
      String table,
      List<String> subjectHeadings,
      Supplier<String> subject,
      Where where,
      NumberStyle style,
      Map<String, Cell> cells,
      Map<String, Where> places,
      MissingColumns missingColumns,
      Findings findings) {
    this.table = table;
    this.subjectHeadings = subjectHeadings;
    this.subject = Suppliers.memoize(subject::get);
    this.source = Suppliers.memoize(() -> where.column("").toString());
    this.where = where;
    this.style = style;
    this.cells = cells;
    this.places = places;
    this.missingColumns = missingColumns;
    this.findings = findings;
  }

  /** Whether it is of what a name says: its subject, or any one or two of its values together. */
  public boolean isCalled(String name) {
    String key = Texts.key(name);
    List<String> values = cells.values().stream().map(cell -> Texts.key(cell.shown())).toList();
    List<String> parts = List.of(key.split(", "));
    return Texts.key(subject.get()).equals(key)
        || (!values.isEmpty() && values.get(0).equals(key))
        || (parts.size() > 1
            && values.size() > parts.size()
            && values.get(0).equals("*")
            && values.subList(1, parts.size() + 1).equals(parts));
  }

  /** The same row with another value under a heading. */
  public Row with(String heading, Cell cell, Where from) {
    Map<String, Cell> changed = new LinkedHashMap<>(cells);
    changed.put(heading, cell);
    Map<String, Where> moved = new LinkedHashMap<>(places);
    moved.put(heading, from);
    return new Row(
        table,
        subjectHeadings,
        subject::get,
        where,
        style,
        changed,
        moved,
        missingColumns,
        findings);
  }

  /** The same row, not read yet; what is wrong with it is told elsewhere. */
  public Row afresh(MissingColumns missing, Findings told) {
    return new Row(
        table, subjectHeadings, subject::get, where, style, cells, places, missing, told);
  }

  /** What its table lacks. */
  public MissingColumns missingColumns() {
    return missingColumns;
  }

  /** Where the row stands. */
  public Where where() {
    return where;
  }

  /** Where the value of a heading stands. */
  public Where where(String heading) {
    return places.getOrDefault(heading, where.column(heading));
  }

  public NumberStyle style() {
    return style;
  }

  @Override
  public Cell cell(String heading) {
    return cells.getOrDefault(heading, Cell.EMPTY);
  }

  @Override
  public boolean has(String heading) {
    return !cell(heading).isEmpty();
  }

  /**
   * Reports in one sentence what is missing of the values that the row needs, so that a total or a
   * remark that slipped into a table does not cause a heap of problems.
   */
  @Override
  public void needs(String... headings) {
    List<String> missing =
        missing(headings).stream().filter(heading -> !lacksColumn(heading)).toList();
    if (missing.size() == 1) {
      fail(missing.get(0), TableAdvice::missingValue);
    } else if (!missing.isEmpty()) {
      report(TableAdvice.missingValues(where, firstShown(), missing));
    }
  }

  /**
   * Whether the table has none of the columns, in any of which a value must stand. That is reported
   * once for the table, at its headings, and the row has failed by it.
   */
  public boolean lacksColumn(String... anyOf) {
    boolean lacks = missingColumns.explain(List.of(anyOf));
    if (lacks) {
      fault();
    }
    return lacks;
  }

  /** Whether the row failed by a fault that is reported at another place than the row. */
  public boolean isReportedElsewhere() {
    return reportedElsewhere;
  }

  /** Which of the values are missing; they will not be reported again. */
  public List<String> missing(String... headings) {
    return Arrays.stream(headings)
        .filter(heading -> !has(heading) && toldMissing.add(heading))
        .toList();
  }

  /** Whether so much is missing that more about the row would be noise: a total or a remark. */
  public boolean isStray() {
    return toldMissing.size() > 1;
  }

  /** The row could not be had, which is reported: of these values nobody needs to hear more. */
  public Row missesQuietly(String... headings) {
    toldMissing.addAll(List.of(headings));
    return this;
  }

  private String firstShown() {
    return cells.values().stream()
        .filter(cell -> !cell.isEmpty())
        .map(Cell::shown)
        .findFirst()
        .orElse("");
  }

  /** A value that must be there. */
  @Override
  public <T> T get(String heading, As<T> as) {
    Optional<T> found = find(heading, as);
    if (found.isEmpty() && !has(heading) && toldMissing.add(heading) && !lacksColumn(heading)) {
      fail(heading, TableAdvice::missingValue);
    }
    return found.orElse(as.placeholder());
  }

  /** A value with a default. */
  @Override
  public <T> T get(String heading, As<T> as, T ifEmpty) {
    if (!has(heading)) {
      assume(heading, as, ifEmpty);
      return ifEmpty;
    }
    return find(heading, as).orElse(as.placeholder());
  }

  /** A value that may be missing; empty also if it cannot be read, and then the row has failed. */
  @Override
  public <T> Optional<T> find(String heading, As<T> as) {
    Cell cell = cell(heading);
    if (cell.isEmpty()) {
      return Optional.empty();
    }
    try {
      T value = readable(cell, heading).read(as);
      note(heading, as, value, () -> sourceOf(heading));
      return Optional.of(value);
    } catch (CellFault fault) {
      report(fault.at(where(heading)));
      return Optional.empty();
    }
  }

  /** The same, but nothing is said of a value that cannot be read: it will be read again. */
  @Override
  public <T> Optional<T> peek(String heading, As<T> as) {
    Cell cell = cell(heading);
    if (cell.isEmpty() || cell instanceof Cell.Broken) {
      return Optional.empty();
    }
    try {
      return Optional.of(as.reader().read(cell, new UnheardSpot(heading, style)));
    } catch (CellFault fault) {
      return Optional.empty();
    }
  }

  /** A cell of which nothing is said. */
  private record UnheardSpot(String heading, NumberStyle style) implements Spot {
    @Override
    public void remark(Function<Where, Problem> problem) {
      // It will be said when the cell is read.
    }
  }

  private FilledSpot readable(Cell cell, String heading) {
    if (cell instanceof Cell.Broken broken) {
      throw new CellFault(broken.problem());
    }
    return new FilledSpot(cell, heading);
  }

  /** A name, spelt as where it is defined; empty also if nothing defines it. */
  public Optional<String> findName(String heading, Names names) {
    return find(heading, names.reading()).filter(name -> !name.isEmpty());
  }

  /** A name that must be there, spelt as where it is defined. */
  public String getName(String heading, Names names) {
    return get(heading, names.reading());
  }

  /** Lists a value that was not in the file. */
  @Override
  public <T> void assume(String heading, As<T> as, T value) {
    note(heading, as, value, () -> Findings.DEFAULT);
  }

  /**
   * Lists a value that is taken from the library of species.
   *
   * @param sources ids of its sources, may be none
   */
  public void lend(String heading, String value, Grounds grounds, List<String> sources) {
    String source = (LIBRARY + " " + String.join(" ", sources)).strip();
    String unit = Unit.of(heading).word();
    findings.add(
        new Assumption(table, subject.get(), heading, value, unit, source, Optional.of(grounds)));
  }

  private String sourceOf(String heading) {
    Where place = places.get(heading);
    return place == null ? source.get() : place.column("").toString();
  }

  private <T> void note(String heading, As<T> as, T used, Supplier<String> from) {
    if (subjectHeadings.contains(heading)) {
      return;
    }
    String shown = as.shown().apply(used);
    if (!shown.isEmpty()) {
      String unit = as.unit().apply(heading);
      String value = findings.once(shown);
      findings.add(new Assumption(table, subject.get(), heading, value, unit, from.get()));
    }
  }

  /** Reports that the row cannot be used as it is. */
  @Override
  public void fail(String heading, Function<Where, Problem> problem) {
    report(problem.apply(where(heading)));
  }

  /** Reports that the row as a whole cannot be used as it is. */
  public void fail(Function<Where, Problem> problem) {
    report(problem.apply(where));
  }

  /** Reports something that the user should know, and goes on. */
  @Override
  public void remark(String heading, Function<Where, Problem> problem) {
    report(problem.apply(where(heading)));
  }

  private void report(Problem problem) {
    findings.add(problem);
    failed |= problem.isError();
  }

  /** Marks the row as failed for a fault that is reported elsewhere. */
  public void fault() {
    failed = true;
    reportedElsewhere = true;
  }

  /** Headings with a value. */
  public List<String> headings() {
    return List.copyOf(cells.keySet());
  }

  public boolean isFailed() {
    return failed;
  }

  public boolean isAccepted() {
    return accepted && !failed;
  }

  /** What the row states, unless something is wrong with it. */
  public <T> Optional<T> accept(Supplier<T> made) {
    if (failed) {
      return Optional.empty();
    }
    accepted = true;
    return Optional.of(made.get());
  }

  /** A filled cell of this row. */
  private final class FilledSpot implements Spot {
    private final Cell cell;
    private final String heading;

    FilledSpot(Cell cell, String heading) {
      this.cell = cell;
      this.heading = heading;
    }

    <T> T read(As<T> as) {
      return as.reader().read(cell, this);
    }

    @Override
    public String heading() {
      return heading;
    }

    @Override
    public NumberStyle style() {
      return style;
    }

    @Override
    public void remark(Function<Where, Problem> problem) {
      Row.this.remark(heading, problem);
    }
  }
}
