package growingon.load.own.heading;

import growingon.load.own.lot.Question;
import growingon.load.own.sheet.SheetRow;
import growingon.load.own.text.Keys;
import java.util.List;
import java.util.Optional;

/**
 * Whether a number beside what was sold or lost is the one before: it is if its heading does not
 * say that it is what is there, unless a row has more sold than it counts. It is asked; till then
 * the lower reading holds.
 */
public final class SoldOff {
  private static final List<String> OFF = List.of("sold", "lost");
  private static final String KIND = "sold and lost";
  private static final String BEFORE = "before";
  private static final String AFTER = "after";

  private SoldOff() {}

  /** Whether what was sold and lost is to be taken off the numbers of a list. */
  public static boolean isToBeTakenOff(
      String sheet,
      List<HeadingRead> heads,
      List<SheetRow> body,
      OwnWords own,
      List<Question> questions,
      List<String> notices) {
    List<HeadingRead> numbers = heads.stream().filter(head -> head.is("quantity")).toList();
    List<HeadingRead> off = heads.stream().filter(head -> OFF.contains(head.ours())).toList();
    if (numbers.isEmpty()
        || off.isEmpty()
        || numbers.stream().anyMatch(head -> saysWhatIsLeft(head, own))) {
      return false;
    }
    Optional<String> said = own.find(KIND, sheet);
    if (said.isPresent()) {
      return Keys.of(said.get()).startsWith(BEFORE);
    }
    HeadedCells cells = new HeadedCells(heads);
    boolean moreSold = body.stream().anyMatch(row -> taken(cells, row) > counted(cells, row));
    if (moreSold) {
      return false;
    }
    ask(sheet, numbers.get(0), off, body, questions, notices);
    return true;
  }

  private static boolean saysWhatIsLeft(HeadingRead head, OwnWords own) {
    return head.how() == HeadingRead.How.YOURS
        || own.headings()
            .find(head.heading())
            .filter(found -> found.meaning().rank() == 1)
            .isPresent();
  }

  private static int counted(HeadedCells cells, SheetRow row) {
    return cells.count(row, "quantity").orElse(Integer.MAX_VALUE);
  }

  /** Plants sold and lost of a row. */
  public static int taken(HeadedCells cells, SheetRow row) {
    return OFF.stream().mapToInt(ours -> cells.sum(row, ours).orElse(0)).sum();
  }

  private static void ask(
      String sheet,
      HeadingRead number,
      List<HeadingRead> off,
      List<SheetRow> body,
      List<Question> questions,
      List<String> notices) {
    HeadedCells cells = new HeadedCells(List.of(number));
    long plants = body.stream().mapToLong(row -> cells.count(row, "quantity").orElse(0)).sum();
    String names = String.join(" and ", off.stream().map(HeadingRead::heading).toList());
    notices.add(
        0,
        "%s: %s is taken as the number before %s, which is taken off it"
            .formatted(sheet, number.heading(), names));
    questions.add(
        new Question(
            sheet,
            0,
            "",
            KIND,
            sheet,
            BEFORE,
            "is %s the number before or after %s?".formatted(number.heading(), names),
            plants,
            false,
            List.of(BEFORE, AFTER)));
  }
}
