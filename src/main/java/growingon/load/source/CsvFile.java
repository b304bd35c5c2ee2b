package growingon.load.source;

import growingon.load.cell.Cell;
import growingon.load.cell.Findings;
import growingon.load.cell.NumberStyle;
import growingon.load.cell.Utf8;
import growingon.load.source.Grid.GridRow;
import growingon.problem.Where;
import growingon.problem.advice.FileAdvice;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/**
 * A table as CSV: UTF-8, RFC 4180, comma or semicolon between the columns. Which of them is seen
 * from the heading row: the one that parts it into more known headings.
 */
public final class CsvFile {
  private CsvFile() {}

  public static Table read(Path file, TableFormat format, Findings findings) {
    Where where = Where.file(file.getFileName().toString());
    Optional<Grid> grid =
        Utf8.read(file, where, findings).flatMap(text -> grid(text, where, format, findings));
    return grid.map(found -> Table.of(found, format, findings))
        .orElseGet(() -> Table.unreadable(format, where));
  }

  private static Optional<Grid> grid(
      String text, Where where, TableFormat format, Findings findings) {
    int commas = parse(text, ',', where, Headings.ROWS_SEARCHED).score(format);
    int semicolons = parse(text, ';', where, Headings.ROWS_SEARCHED).score(format);
    Parsed best = parse(text, semicolons > commas ? ';' : ',', where, Integer.MAX_VALUE);
    if (best.fault.isPresent()) {
      findings.add(FileAdvice.brokenCsv(where, best.fault.get()));
      return Optional.empty();
    }
    return Optional.of(best.grid);
  }

  private record Parsed(Grid grid, Optional<String> fault) {
    int score(TableFormat format) {
      return Headings.find(grid, format).map(Headings::score).orElse(0);
    }
  }

  /** As far as it can be parsed and is asked for, with what stopped it. */
  private static Parsed parse(String text, char delimiter, Where where, int most) {
    NumberStyle style = delimiter == ';' ? NumberStyle.COMMA : NumberStyle.POINT;
    List<GridRow> rows = new ArrayList<>();
    Optional<String> fault = Optional.empty();
    try (CSVParser parser = CSVParser.parse(text, format(delimiter))) {
      Iterator<CSVRecord> records = parser.iterator();
      while (rows.size() < most && records.hasNext()) {
        addRow(rows, records.next());
      }
    } catch (UncheckedIOException broken) {
      fault = Optional.of("row " + (rows.size() + 1));
    } catch (IOException broken) {
      throw new UncheckedIOException("reading from memory failed", broken);
    }
    return new Parsed(new Grid(where, style, rows, List.of()), fault);
  }

  private static CSVFormat format(char delimiter) {
    return CSVFormat.RFC4180
        .builder()
        .setDelimiter(delimiter)
        .setIgnoreSurroundingSpaces(true)
        .get();
  }

  private static void addRow(List<GridRow> rows, CSVRecord record) {
    SortedMap<Integer, Cell> cells = new TreeMap<>();
    for (int column = 0; column < record.size(); column++) {
      Cell cell = Cell.ofText(record.get(column));
      if (!cell.isEmpty()) {
        cells.put(column, cell);
      }
    }
    if (!cells.isEmpty()) {
      rows.add(new GridRow((int) record.getRecordNumber(), cells));
    }
  }
}
