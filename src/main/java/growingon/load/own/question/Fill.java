package growingon.load.own.question;

import growingon.nursery.number.Writing;
import growingon.nursery.record.InList;
import growingon.problem.MarkedText;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * A row of the sheet to fill: a cell that the grower may answer.
 *
 * @param usual what holds until it is answered
 * @param question in words
 * @param moves what it moves, and how much; numbers may be marked
 * @param table that it belongs to
 * @param row lot, class of lots, or the name of a row
 * @param column of the table
 * @param block reading, money and growth, room and hours, or more
 * @param needed whether the plan cannot go on without it
 * @param choices among which to choose, empty where it is a number or a name
 * @param inList what it asks of, where that stands in one row of a list
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
    Optional<InList> inList,
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
          "needed",
          "in your list");

  public Fill {
    choices = List.copyOf(choices);
    Objects.requireNonNull(inList);
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
        Optional.empty(),
        Optional.empty());
  }

  /** So many plants, as what a cell moves; the number is marked. */
  static String plants(long number) {
    return MarkedText.number(number) + (number == 1 ? " plant" : " plants");
  }

  /** With what it moves written as a grower writes numbers. */
  Fill written(Writing writing) {
    return moving(writing.told(new MarkedText(moves)));
  }

  /** Its cells under the columns of the sheet, with nothing filled in. */
  public List<String> cells() {
    return List.of(
        "",
        usual,
        question,
        unit,
        moves,
        table,
        row,
        column,
        block,
        needed ? "yes" : "",
        inList.map(InList::toString).orElse(""));
  }

  Fill in(String other) {
    return with(moves, other, choices, inList, between);
  }

  Fill choosing(List<String> from) {
    return with(moves, block, from, inList, between);
  }

  Fill of(InList cell) {
    return with(moves, block, choices, Optional.of(cell), between);
  }

  Fill between(String low, String high) {
    return with(moves, block, choices, inList, Optional.of(new Between(low, high)));
  }

  Fill moving(String what) {
    return with(what, block, choices, inList, between);
  }

  private Fill with(
      String itMoves,
      String itsBlock,
      List<String> from,
      Optional<InList> cell,
      Optional<Between> ends) {
    return new Fill(
        usual, question, unit, itMoves, table, row, column, itsBlock, needed, from, cell, ends);
  }
}
