package growingon.load.table;

import growingon.load.cell.Amount;
import growingon.load.cell.Cell;
import growingon.load.cell.CellFault;
import growingon.load.cell.NumberStyle;
import growingon.load.cell.Texts;
import growingon.load.row.Row;
import growingon.load.source.TableFormat;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.csv.CSVFormat;

/**
 * The example rows of a started nursery, so that those which a grower left in the workbook are told
 * from his own.
 */
public final class StartedExamples {
  private static final String TABLES = "/growingon/start/tables/";

  private final List<Map<String, Cell>> examples;

  private StartedExamples(List<Map<String, Cell>> examples) {
    this.examples = examples;
  }

  /** Those of a table. */
  public static StartedExamples of(TableFormat format) {
    return new StartedExamples(rows(format));
  }

  /** Whether a row says the same as one of them. */
  public boolean has(Row row) {
    return examples.stream().anyMatch(example -> isSame(example, row));
  }

  private static boolean isSame(Map<String, Cell> example, Row row) {
    return row.headings().stream().allMatch(heading -> isSame(example, row, heading))
        && example.keySet().stream().allMatch(row::has);
  }

  private static boolean isSame(Map<String, Cell> example, Row row, String heading) {
    Cell there = example.getOrDefault(heading, Cell.EMPTY);
    Optional<Double> number = number(row.cell(heading), row.style());
    return number.isPresent()
        ? number.equals(number(there, NumberStyle.POINT))
        : Texts.key(row.cell(heading).shown()).equals(Texts.key(there.shown()));
  }

  private static Optional<Double> number(Cell cell, NumberStyle style) {
    if (cell instanceof Cell.Number number) {
      return Optional.of(number.value());
    }
    try {
      return cell instanceof Cell.Text text
          ? Amount.find(text.text(), style).filter(Amount::isBare).map(Amount::value)
          : Optional.empty();
    } catch (CellFault twoNumbers) {
      return Optional.empty();
    }
  }

  private static List<Map<String, Cell>> rows(TableFormat format) {
    CSVFormat csv = CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get();
    String name = format.name().replace(' ', '-') + ".csv";
    List<Map<String, Cell>> rows = new ArrayList<>();
    try (InputStream stream = StartedExamples.class.getResourceAsStream(TABLES + name)) {
      csv.parse(new InputStreamReader(stream, StandardCharsets.UTF_8))
          .forEach(record -> rows.add(filled(record.toMap())));
    } catch (IOException broken) {
      throw new UncheckedIOException("the program's own file " + name, broken);
    }
    return rows;
  }

  private static Map<String, Cell> filled(Map<String, String> record) {
    Map<String, Cell> cells = new LinkedHashMap<>();
    record.forEach(
        (heading, value) -> {
          if (!value.isEmpty()) {
            cells.put(heading, Cell.ofText(value));
          }
        });
    return cells;
  }
}
