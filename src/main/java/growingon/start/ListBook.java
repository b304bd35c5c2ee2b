package growingon.start;

import growingon.load.LaidOut;
import growingon.report.model.InputBook;
import growingon.report.model.InputBook.Choice;
import growingon.report.model.InputBook.Holds;
import growingon.report.model.InputBook.InputColumn;
import growingon.report.model.InputBook.InputSheet;
import growingon.report.model.Origins;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** The workbook that is laid out around a grower's own list. */
final class ListBook {
  private static final String OURS = "ours";
  private static final int FILLED_WORDS = 2;

  private static final Map<String, String> WORD_NOTES =
      Map.of(
          "kind",
          "What kind of word it is: list, offers list, sheet, heading, offers heading, species, place, pot or lot",
          "yours",
          "The word as your list has it",
          OURS,
          "What it means here; type over what is wrong, choose where it is empty",
          "where",
          "Which lists it holds for",
          "how",
          "How sure it is; open ones are first",
          "rows",
          "How often it comes",
          "example",
          "What stands there");

  private static final Map<String, String> FILL_NOTES =
      Map.of(
          "fill in", "Type here and nowhere else; what is empty has its usual value",
          "usual", "What holds until you type",
          "question", "What is asked",
          "moves",
              "What it moves; of money and growth, how much the present value differs between a low and a high usual answer",
          "block",
              "Your list, then money and growth, then room and hours; the rest is closed below",
          "in your list", "Leads to what is asked of");

  private static final String KEPT_NOTE =
      "What the other sheets were laid out with: cells that still say so follow your list and your answers; leave this alone";

  private ListBook() {}

  static InputBook of(LaidOut laid) {
    List<InputSheet> sheets = new ArrayList<>();
    sheets.add(fills(laid));
    sheets.add(words(laid));
    sheets.addAll(new StarterBook(0, List.of()).laidOut(laid.tables()));
    sheets.add(kept(laid));
    List<Choice> choices = new ArrayList<>(Choices.all());
    choices.removeIf(choice -> choice.name().equals("lot"));
    choices.add(Choice.of(OURS, ListWords.OURS));
    return new InputBook(
        "A nursery around your own list",
        Resource.text("read-me-list.txt").lines().toList(),
        sheets,
        choices);
  }

  private static InputSheet fills(LaidOut laid) {
    List<InputColumn> columns =
        LaidOut.fillColumns().stream()
            .map(heading -> column(heading, FILL_NOTES.getOrDefault(heading, ""), ""))
            .toList();
    return new InputSheet(
        "to fill",
        columns,
        laid.fills(),
        laid.asked(),
        0,
        laid.fillChoices(),
        Origins.of(columns.size() - 1, laid.fillsInList()));
  }

  /** Closed: there is nothing to type. */
  private static InputSheet kept(LaidOut laid) {
    List<InputColumn> columns =
        LaidOut.keptColumns().stream().map(heading -> column(heading, KEPT_NOTE, "")).toList();
    return new InputSheet(LaidOut.keptIn(), columns, laid.kept(), 0, -1, Map.of(), Origins.NONE);
  }

  private static InputSheet words(LaidOut laid) {
    List<InputColumn> columns =
        LaidOut.wordColumns().stream()
            .map(
                heading ->
                    column(
                        heading,
                        WORD_NOTES.getOrDefault(heading, ""),
                        heading.equals(OURS) ? OURS : ""))
            .toList();
    return new InputSheet(
        "own words",
        columns,
        laid.words(),
        laid.words().size(),
        FILLED_WORDS,
        laid.wordChoices(),
        Origins.NONE);
  }

  private static InputColumn column(String heading, String note, String choice) {
    return new InputColumn(heading, note + ".", Holds.TEXT, false, false, choice);
  }
}
