package growingon.load;

import growingon.load.own.OwnLot;
import growingon.load.own.OwnWords;
import growingon.problem.Where;
import java.util.ArrayList;
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
 * @param where it stands
 */
record Answer(String table, String row, String column, Cell cell, Where where) {
  private static final String TABLE = "table";
  private static final String ROW = "row";
  private static final String COLUMN = "column";
  private static final String FILLED = "fill in";
  private static final String KIND = "kind";
  private static final String YOURS = "yours";
  private static final String OURS = "ours";

  /** The sheet to fill. */
  static final TableFormat TO_FILL =
      TableFormat.of("to fill", FILLED, TABLE, ROW, COLUMN)
          .with("usual", "question", "unit", "moves", "block", "needed");

  /** The sheet own words. */
  static final TableFormat OWN_WORDS =
      TableFormat.of("own words", KIND, YOURS, OURS).with("where", "how", "rows", "example");

  /** The answers of a nursery. */
  static List<Answer> of(Tables tables) {
    List<Answer> answers = new ArrayList<>();
    for (Row row : tables.find(TO_FILL).map(Table::rows).orElse(List.of())) {
      if (row.has(FILLED) && row.has(TABLE) && row.has(COLUMN)) {
        answers.add(
            new Answer(
                Texts.key(row.cell(TABLE).shown()),
                row.cell(ROW).shown(),
                Texts.key(row.cell(COLUMN).shown()),
                row.cell(FILLED),
                row.where()));
      }
    }
    return answers;
  }

  /** What the grower has said that words mean. */
  static OwnWords words(Tables tables) {
    List<OwnWords.Word> words = new ArrayList<>();
    for (Row row : tables.find(OWN_WORDS).map(Table::rows).orElse(List.of())) {
      if (row.has(OURS) && row.has(YOURS)) {
        words.add(
            new OwnWords.Word(
                Texts.key(row.cell(KIND).shown()),
                row.cell(YOURS).shown(),
                row.cell(OURS).shown()));
      }
    }
    for (Answer answer : of(tables)) {
      if (answer.table.equals("own words") && !Texts.key(answer.cell.shown()).equals("yes")) {
        words.add(new OwnWords.Word(answer.column, answer.row, answer.cell.shown()));
      }
    }
    return new OwnWords(words);
  }

  /** The lists that own words name, as written there. */
  static List<String> lists(Tables tables) {
    List<String> lists = new ArrayList<>();
    for (Row row : tables.find(OWN_WORDS).map(Table::rows).orElse(List.of())) {
      if (Texts.key(row.cell(KIND).shown()).equals("list")) {
        lists.add(row.cell(row.has(OURS) ? OURS : YOURS).shown());
      }
    }
    return lists;
  }

  boolean isOfStock() {
    return table.equals("stock");
  }

  /** The lot as the answers say: by its class where the list states nothing, by its name always. */
  static OwnLot in(List<Answer> answers, OwnLot lot) {
    OwnLot answered = lot;
    for (Answer answer : answers) {
      boolean fills = answer.isOfClass(lot) && !isStated(answer.column, lot);
      if (answer.isOfStock() && (fills || answer.isOf(lot))) {
        answered = answered.answered(answer.column, answer.cell.shown());
      }
    }
    return answered;
  }

  /** What the answers say of a lot's row in the stock table beyond that. */
  static Map<String, String> ofRow(List<Answer> answers, OwnLot lot) {
    Map<String, String> said = new LinkedHashMap<>();
    for (Answer answer : answers) {
      boolean ofRow = answer.isOfStock() && !OwnLot.isPart(answer.column);
      if (ofRow
          && (answer.isOf(lot) || (answer.isOfClass(lot) && !said.containsKey(answer.column)))) {
        said.put(answer.column, answer.cell.shown());
      }
    }
    return said;
  }

  /** Whether it is of the lot, by its name or its class. */
  boolean concerns(OwnLot lot) {
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
