package growingon.load.own;

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
    boolean needed) {
  Fill in(String other) {
    return new Fill(usual, question, unit, moves, table, row, column, other, needed);
  }
}
