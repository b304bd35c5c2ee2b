package growingon.load.source;

import growingon.load.cell.Cell;
import growingon.load.cell.Texts;
import growingon.load.own.heading.ListKind;
import growingon.load.own.lot.OwnLot;
import growingon.load.own.lot.Site;
import growingon.load.own.question.Fill;
import growingon.problem.Where;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * An answer of the sheet to fill.
 *
 * @param table that it belongs to
 * @param row a lot, a class of lots or the name of a row
 * @param column of the table
 * @param cell what was typed
 * @param usual what holds without it, as it was laid out; empty if nothing does
 * @param where it stands
 */
public record Answer(
    String table, String row, String column, Cell cell, String usual, Where where) {
  /** Whether it answers a question, so that this need not be asked again. */
  public boolean isTo(Fill asked) {
    return isTo(asked.table(), asked.row(), asked.column());
  }

  /** Whether it answers what is asked of a cell. */
  public boolean isTo(String itsTable, String itsRow, String itsColumn) {
    return new FillRow(table, row, column, true, where).isOf(itsTable, itsRow, itsColumn);
  }

  /** Whether it is of the rows of lists of a kind. */
  public boolean isOf(ListKind kind) {
    return table.equals(kind.table());
  }

  /**
   * The lot or offer as the answers say: by its class where the list states nothing, by its name
   * always. What a class of lots is like, offers of that class are like.
   */
  public static OwnLot in(List<Answer> answers, ListKind kind, OwnLot lot, Site site) {
    OwnLot answered = lot;
    for (Answer answer : answers) {
      boolean ofTrees = answer.isOf(ListKind.STOCK) && answer.column.equals("trunk mm");
      boolean fills =
          (answer.isOf(kind) || ofTrees) && answer.isOfClass(lot) && !isStated(answer.column, lot);
      if (fills || (answer.isOf(kind) && answer.isOf(lot))) {
        answered = answered.answered(answer.column, answer.cell.shown(), site);
      }
    }
    return answered;
  }

  /** What the answers say of a lot's row in the table of its kind beyond that. */
  public static Map<String, String> ofRow(List<Answer> answers, ListKind kind, OwnLot lot) {
    Map<String, String> said = new LinkedHashMap<>();
    for (Answer answer : answers) {
      boolean ofRow = answer.isOf(kind) && !OwnLot.isPart(answer.column);
      if (ofRow
          && (answer.isOf(lot) || (answer.isOfClass(lot) && !said.containsKey(answer.column)))) {
        said.put(answer.column, answer.cell.shown());
      }
    }
    return said;
  }

  /** Whether it is of the lot, by its name or its class. */
  public boolean concerns(OwnLot lot) {
    return isOf(lot) || isOfClass(lot);
  }

  private boolean isOf(OwnLot lot) {
    return Texts.key(row).equals(Texts.key(lot.lot()));
  }

  private boolean isOfClass(OwnLot lot) {
    String key = Texts.key(row);
    return key.equals("*")
        || key.equals(Texts.key(lot.sizeClass()))
        || (key.equals("no pot") && lot.potLitres().isEmpty());
  }

  private static boolean isStated(String column, OwnLot lot) {
    return switch (column) {
      case "trunk mm" -> lot.trunkFromMm().isPresent();
      case "arrived" -> lot.arrived().isPresent();
      case "pot" -> lot.potLitres().isPresent();
      case "place" -> !lot.place().isEmpty();
      case "unit cost" -> lot.unitCost().isPresent();
      case "selling price" -> lot.sellingPrice().isPresent();
      default -> true;
    };
  }
}
