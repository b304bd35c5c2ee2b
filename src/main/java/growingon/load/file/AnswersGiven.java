package growingon.load.file;

import growingon.load.cell.Texts;
import growingon.load.own.heading.ListKind;
import growingon.load.own.heading.OwnWords;
import growingon.load.own.question.Moved;
import growingon.load.own.text.Meaning;
import growingon.load.row.Heading;
import growingon.load.row.Row;
import growingon.load.source.Answer;
import growingon.load.source.FillRow;
import growingon.load.source.Table;
import growingon.load.source.TableFormat;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What a grower filled in of a list, and what they said that words mean. */
public final class AnswersGiven {
  private static final Heading<String> TABLE = Heading.text("table");
  private static final Heading<String> ROW = Heading.text("row");
  private static final Heading<String> COLUMN = Heading.text("column");
  private static final Heading<String> FILLED = Heading.text("fill in");
  private static final Heading<String> USUAL = Heading.text("usual");
  private static final Heading<String> MOVES = Heading.text("moves");
  private static final Heading<String> KIND = Heading.text("kind");
  private static final Heading<String> YOURS = Heading.text("yours");
  private static final Heading<String> OURS = Heading.text("ours");

  /** The sheet to fill. */
  public static final TableFormat TO_FILL =
      TableFormat.of(
          "to fill",
          FILLED.needed(),
          TABLE.needed(),
          ROW.needed(),
          COLUMN.needed(),
          USUAL,
          Heading.text("question"),
          Heading.text("unit"),
          MOVES,
          Heading.text("block"),
          Heading.text("needed"),
          Heading.text("in your list"));

  /** The sheet own words. */
  public static final TableFormat OWN_WORDS =
      TableFormat.of(
          "own words",
          KIND.needed(),
          YOURS.needed(),
          OURS.needed(),
          Heading.text("where"),
          Heading.text("how"),
          Heading.text("rows"),
          Heading.text("example"));

  private AnswersGiven() {}

  /** The answers of a nursery. */
  public static List<Answer> of(Tables tables) {
    List<Answer> answers = new ArrayList<>();
    for (Row row : tables.find(TO_FILL).map(Table::rows).orElse(List.of())) {
      if (row.has(FILLED) && row.has(TABLE) && row.has(COLUMN)) {
        answers.add(
            new Answer(
                Texts.key(row.cell(TABLE).shown()),
                row.cell(ROW).shown(),
                Texts.key(row.cell(COLUMN).shown()),
                row.cell(FILLED),
                row.cell(USUAL).shown(),
                row.where()));
      }
    }
    return answers;
  }

  /** The rows of the sheet to fill, answered or not, if there is one. */
  public static Optional<List<FillRow>> rows(Tables tables) {
    return tables
        .find(TO_FILL)
        .map(
            table ->
                table.rows().stream()
                    .filter(row -> row.has(TABLE) && row.has(COLUMN))
                    .map(
                        row ->
                            new FillRow(
                                row.cell(TABLE).shown(),
                                row.cell(ROW).shown(),
                                row.cell(COLUMN).shown(),
                                row.has(FILLED),
                                row.where()))
                    .toList());
  }

  /** What each cell to fill was told to move, in the order of the sheet. */
  public static Moved moved(Tables tables) {
    Map<Moved.Of, String> moved = new LinkedHashMap<>();
    for (Row row : tables.find(TO_FILL).map(Table::rows).orElse(List.of())) {
      if (row.has(MOVES)) {
        moved.put(
            new Moved.Of(row.cell(TABLE).shown(), row.cell(ROW).shown(), row.cell(COLUMN).shown()),
            row.cell(MOVES).shown());
      }
    }
    return new Moved(moved);
  }

  /** What the grower has said that words mean. */
  public static OwnWords words(Tables tables) {
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
      if (answer.table().equals("own words") && !Texts.key(answer.cell().shown()).equals("yes")) {
        words.add(new OwnWords.Word(answer.column(), answer.row(), said(answer)));
      }
    }
    return new OwnWords(words);
  }

  /** A column that is not what it was taken for is not read. */
  private static String said(Answer answer) {
    String said = answer.cell().shown();
    return answer.column().endsWith("heading") && Texts.key(said).equals("no")
        ? Meaning.NOT_READ
        : said;
  }

  /** The lists of a kind that own words name, as written there. */
  public static List<String> lists(Tables tables, ListKind kind) {
    List<String> lists = new ArrayList<>();
    for (Row row : tables.find(OWN_WORDS).map(Table::rows).orElse(List.of())) {
      if (Texts.key(row.cell(KIND).shown()).equals(kind.word())) {
        lists.add(row.cell(row.has(OURS) ? OURS : YOURS).shown());
      }
    }
    return lists;
  }
}
