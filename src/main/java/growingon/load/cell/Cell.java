package growingon.load.cell;

import growingon.problem.MarkedText;
import growingon.problem.Problem;
import growingon.problem.Where;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/** One value as it stands in a table or JSON file, before anyone asked what it should mean. */
public sealed interface Cell {
  /** As the user sees it, for messages. */
  String shown();

  /** Nothing there. */
  record Empty() implements Cell {
    @Override
    public String shown() {
      return "";
    }
  }

  /** The one empty cell. */
  Cell EMPTY = new Empty();

  /** Text, cleaned, never blank. */
  record Text(String text) implements Cell {
    @Override
    public String shown() {
      return text;
    }
  }

  /**
   * A true number.
   *
   * @param percent whether the spreadsheet shows it as a percentage: 0.2 shown as 20 %
   */
  record Number(double value, boolean percent) implements Cell {
    public Number {
      if (!Double.isFinite(value)) {
        throw new IllegalArgumentException("a number is finite, but found " + value);
      }
    }

    @Override
    public String shown() {
      return percent ? plain(value * 100) + " %" : plain(value);
    }

    /** Without the ".0" that a double would show: lot 12 is "12". */
    public static String plain(double value) {
      return MarkedText.plain(value);
    }
  }

  /**
   * A true date.
   *
   * @param yearShown whether the spreadsheet shows the year; "March 27" typed into a spreadsheet
   *     becomes the 27th of March of the year in which it was typed, shown without the year
   */
  record Date(LocalDate date, boolean yearShown) implements Cell {
    @Override
    public String shown() {
      return date.toString();
    }
  }

  /** A true yes or no. */
  record Flag(boolean value) implements Cell {
    @Override
    public String shown() {
      return value ? "true" : "false";
    }
  }

  /** A value that cannot be used whatever it should be, such as a formula that failed. */
  record Broken(String shown, Function<Where, Problem> problem) implements Cell {}

  /** A list of a JSON file. */
  public record Items(List<Cell> items) implements Cell {
    public Items {
      items = List.copyOf(items);
    }

    @Override
    public String shown() {
      return "[" + String.join(", ", items.stream().map(Cell::shown).toList()) + "]";
    }
  }

  /**
   * An object of a JSON file.
   *
   * @param fields in the order of the file
   * @param line where it begins
   */
  public record Fields(Map<String, Field> fields, int line) implements Cell {
    @Override
    public String shown() {
      return "{...}";
    }
  }

  /** A value of a JSON object and the line of its key. */
  public record Field(Cell value, int line) {}

  /** A text cell, or the empty one if nothing is to be seen. */
  static Cell ofText(String typed) {
    String clean = Texts.clean(typed);
    return clean.isEmpty() ? EMPTY : new Text(clean);
  }

  default boolean isEmpty() {
    return this instanceof Empty;
  }
}
