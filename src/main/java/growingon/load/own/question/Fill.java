package growingon.load.own.question;

import java.util.List;
import java.util.Objects;
import java.util.Optional;

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
 * @param between which usual answers it lies, where it is known how far these move a plan
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
    List<String> choices,
    Optional<Between> between) {
  /** A low and a high usual answer, as typed: nine nurseries of ten in between, more or less. */
  public record Between(String low, String high) {
    public Between {
      Objects.requireNonNull(low);
      Objects.requireNonNull(high);
    }
  }

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
    Objects.requireNonNull(between);
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
    this(
        usual,
        question,
        unit,
        moves,
        table,
        row,
        column,
        block,
        needed,
        List.of(),
        Optional.empty());
  }

  /** Its cells under the columns of the sheet, with nothing filled in. */
  public List<String> cells() {
    return List.of(
        "", usual, question, unit, moves, table, row, column, block, needed ? "yes" : "");
  }

  Fill in(String other) {
    return new Fill(
        usual, question, unit, moves, table, row, column, other, needed, choices, between);
  }

  Fill choosing(List<String> from) {
    return new Fill(usual, question, unit, moves, table, row, column, block, needed, from, between);
  }

  Fill between(String low, String high) {
    Optional<Between> ends = Optional.of(new Between(low, high));
    return new Fill(usual, question, unit, moves, table, row, column, block, needed, choices, ends);
  }

  Fill moving(String what) {
    return new Fill(
        usual, question, unit, what, table, row, column, block, needed, choices, between);
  }
}
