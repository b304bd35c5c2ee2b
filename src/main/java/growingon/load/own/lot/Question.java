package growingon.load.own.lot;

import java.util.List;
import java.util.Map;

/**
 * Something that the grower is asked about a list.
 *
 * @param sheet and row of the list that it is about, row 0 for a whole column or sheet
 * @param lot it is about, empty if it is about a column or sheet
 * @param column of the stock table
 * @param found as it stands in the list
 * @param usual what holds until it is answered, empty if nothing does
 * @param question in words
 * @param plants that it concerns
 * @param nod whether the reading is taken and only a nod is asked for
 * @param choices among which to choose
 */
public record Question(
    String sheet,
    int row,
    String lot,
    String column,
    String found,
    String usual,
    String question,
    long plants,
    boolean nod,
    List<String> choices) {
  /** The column of a question that must be answered before any other: whose a list is. */
  public static final String WHOSE_LIST = "whose list";

  public Question {
    choices = List.copyOf(choices);
  }

  /** The same of a lot that is called otherwise. */
  public Question named(Map<String, String> names) {
    return ofLot(names.getOrDefault(lot, lot), plants);
  }

  public Question ofLot(String name, long itsPlants) {
    return new Question(sheet, row, name, column, found, usual, question, itsPlants, nod, choices);
  }
}
