package growingon.load.own.question;

import java.util.List;

/**
 * A row of the sheet to fill: a cell that the grower may answer.
 *
 * @param usual what holds until it is answered
 * @param question in words
 * @param moves what it moves, and how much
 * @param table that it belongs to
 * @param row lot, class of lots, or the name of a row
 * @param column of the table
 * @param block reading, money and growth, room and hours, or more
 * @param needed whether the plan cannot go on without it
 * @param choices among which to choose, empty where it is a number or a name
 */
public record Fill(
    String usual,
    String question,
    String unit,
    String moves,
    String table,
    String row,
    String column,
    String block,
    boolean needed,
    List<String> choices) {
  /** Columns of the sheet. */
  public static final List<String> COLUMNS =
      List.of(
          "fill in",
          "usual",
          "question",
          "unit",
          "moves",
          "table",
          "row",
          "column",
          "block",
          "needed");

  public Fill {
    choices = List.copyOf(choices);
  }

  /** A cell for a number or a name. */
  Fill(
      String usual,
      String question,
      String unit,
      String moves,
      String table,
      String row,
      String column,
      String block,
      boolean needed) {
    this(usual, question, unit, moves, table, row, column, block, needed, List.of());
  }

  /** Its cells under the columns of the sheet, with nothing filled in. */
  public List<String> cells() {
    return List.of(
        "", usual, question, unit, moves, table, row, column, block, needed ? "yes" : "");
  }

  Fill in(String other) {
    return new Fill(usual, question, unit, moves, table, row, column, other, needed, choices);
  }

  Fill choosing(List<String> from) {
    return new Fill(usual, question, unit, moves, table, row, column, block, needed, from);
  }
}
