package growingon.report.model;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;

/**
 * A workbook to type into, described: what stands in it, not how it looks.
 *
 * @param title document title
 * @param words a first sheet of text: its name, then its lines; a line that begins with # is a
 *     heading
 * @param sheets a sheet for each table, in order
 * @param choices the lists that columns choose from
 */
public record InputBook(
    String title, List<String> words, List<InputSheet> sheets, List<Choice> choices) {
  public InputBook {
    Objects.requireNonNull(title);
    words = List.copyOf(words);
    sheets = List.copyOf(sheets);
    choices = List.copyOf(choices);
  }

  /**
   * A table to fill in.
   *
   * @param name name of the sheet
   * @param columns left to right; expert columns last
   * @param rows example rows, a text for every column; empty text leaves a cell empty
   * @param closedFrom index of the first row that is grouped and closed; as many as there are rows
   *     for none
   * @param fill index of a column whose cells are to be filled in and therefore marked; −1 for none
   * @param choices words that the cell of that column chooses from in a row, by the row's index
   * @param origins what rows ask of in a file of the grower's own
   */
  public record InputSheet(
      String name,
      List<InputColumn> columns,
      List<List<String>> rows,
      int closedFrom,
      int fill,
      Map<Integer, List<String>> choices,
      Origins origins) {
    public InputSheet {
      Objects.requireNonNull(origins);
      Objects.requireNonNull(name);
      columns = List.copyOf(columns);
      rows = rows.stream().map(List::copyOf).toList();
      choices = Collections.unmodifiableMap(new TreeMap<>(choices));
    }

    /** A table whose rows offer no choices of their own. */
    public InputSheet(
        String name, List<InputColumn> columns, List<List<String>> rows, int closedFrom, int fill) {
      this(name, columns, rows, closedFrom, fill, Map.of(), Origins.NONE);
    }
  }

  /** What a column holds. */
  public enum Holds {
    /** Text. */
    TEXT,
    /** Numbers. */
    NUMBER,
    /** Money. */
    MONEY,
    /** A month of a year. */
    MONTH
  }

  /**
   * A column.
   *
   * @param heading as it is read
   * @param note shown on the heading: meaning, unit, example, what holds if empty
   * @param holds what it holds
   * @param needed whether it must be there
   * @param expert whether it is for experts, and so grouped and closed
   * @param choice name of the list it chooses from; empty for none
   */
  public record InputColumn(
      String heading, String note, Holds holds, boolean needed, boolean expert, String choice) {
    public InputColumn {
      Objects.requireNonNull(heading);
      Objects.requireNonNull(note);
      Objects.requireNonNull(holds);
      Objects.requireNonNull(choice);
    }
  }

  /**
   * A list to choose from.
   *
   * @param name unique
   * @param words its words; for a list that a sheet feeds, those of the example rows come from
   *     there
   * @param sheet sheet that feeds it; empty for a list of fixed words
   * @param heading column of that sheet
   */
  public record Choice(String name, List<String> words, String sheet, String heading) {
    public Choice {
      Objects.requireNonNull(name);
      words = List.copyOf(words);
      Objects.requireNonNull(sheet);
      Objects.requireNonNull(heading);
    }

    /** Fixed words. */
    public static Choice of(String name, List<String> words) {
      return new Choice(name, words, "", "");
    }

    /** Whatever stands in a column. */
    public static Choice fedBy(String name, String sheet, String heading) {
      return new Choice(name, List.of(), sheet, heading);
    }
  }
}
