package growingon.load.table;

import growingon.load.row.As;
import growingon.load.row.Heading;
import growingon.load.row.Names;
import growingon.load.row.Row;
import growingon.load.source.Table;
import growingon.problem.advice.ValueAdvice;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;

/**
 * Things defined by name in a table.
 *
 * @param names every name, also of faulty rows
 * @param values the things whose rows are fine, in row order
 */
public record Defined<T>(Names names, Map<String, T> values) {
  /** Nothing yet. */
  public static <T> Defined<T> none(Names names) {
    return new Defined<>(names, new LinkedHashMap<>());
  }

  /** Nothing yet, of a table that may not be there or not be readable. */
  public static <T> Defined<T> of(Names names, Optional<Table> table) {
    if (table.isEmpty()) {
      names.markAbsent();
    } else if (!table.get().isReadable()) {
      names.leaveOpen();
    }
    return none(names);
  }

  /**
   * One thing a row.
   *
   * @param heading the column with the names
   * @param read makes the thing of its name and row
   */
  public static <T> Defined<T> rows(
      Names names,
      Optional<Table> table,
      Heading<String> heading,
      BiFunction<String, Row, Optional<T>> read) {
    Defined<T> defined = of(names, table);
    table.ifPresent(
        found -> found.rows().forEach(row -> defined.addRow(row, heading.name(), read)));
    return defined;
  }

  private void addRow(Row row, String heading, BiFunction<String, Row, Optional<T>> read) {
    String name = define(row, heading);
    Optional<T> value = read.apply(name, row);
    value.ifPresent(found -> values.put(name, found));
  }

  /** Reads the name that a row defines, and reports it if it is there already. */
  public String define(Row row, String heading) {
    String name = row.has(heading) ? row.get(heading, As.NAME) : "";
    if (!name.isEmpty() && !names.add(name)) {
      row.fail(heading, where -> ValueAdvice.defined(where, name, names.find(name).orElse(name)));
    }
    return name;
  }

  public Optional<T> find(String name) {
    return Optional.ofNullable(values.get(name));
  }
}
