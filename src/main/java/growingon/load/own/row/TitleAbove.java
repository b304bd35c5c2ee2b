package growingon.load.own.row;

import growingon.load.own.heading.HeadingRow;
import growingon.load.own.plant.PlantNames;
import growingon.load.own.sheet.Sheet;
import growingon.load.own.sheet.SheetCell;
import growingon.load.own.sheet.SheetRow;
import growingon.load.own.text.Titles;
import java.time.YearMonth;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What the line right above a heading row says of the list below it: Bed A (lined out Mar 24).
 *
 * @param place where its plants stand, empty if none
 * @param month they were planted in
 */
record TitleAbove(String place, Optional<YearMonth> month) {
  private static final TitleAbove NONE = new TitleAbove("", Optional.empty());
  private static final Pattern IN_BRACKETS = Pattern.compile("\\(([^)]*)\\)");

  /** The title above the columns of a list. */
  static TitleAbove of(Sheet sheet, HeadingRow head, int from, int to) {
    if (head.firstIndex() == 0) {
      return NONE;
    }
    SheetRow above = sheet.rows().get(head.firstIndex() - 1).between(from, to);
    return above.cells().size() == 1
        ? of(above.cells().values().iterator().next().text().strip())
        : NONE;
  }

  private static TitleAbove of(String title) {
    Matcher brackets = IN_BRACKETS.matcher(title);
    String bare = brackets.replaceAll(" ").strip();
    if (!RowWords.isNamedPlace(bare)) {
      return NONE;
    }
    brackets.reset();
    return new TitleAbove(
        bare, brackets.find() ? Titles.month(SheetCell.of(brackets.group(1))) : Optional.empty());
  }

  /**
   * Rows above the headings that hold a plant and, in a cell of its own, a number: they look like
   * lots and are not read as such.
   */
  static List<Integer> likeLots(Sheet sheet, HeadingRow head) {
    return sheet.rows().subList(0, head.firstIndex()).stream()
        .filter(row -> row.cells().values().stream().anyMatch(TitleAbove::isPlant))
        .filter(row -> row.cells().values().stream().anyMatch(TitleAbove::isNumber))
        .map(SheetRow::number)
        .toList();
  }

  private static boolean isPlant(SheetCell cell) {
    return cell.isText() && PlantNames.shipped().find(cell.text(), "").isKnown();
  }

  private static boolean isNumber(SheetCell cell) {
    return cell.text().strip().matches("[1-9][0-9]{0,4}");
  }

  /** Whether a title is of a place, and says nothing of when the list was counted. */
  static boolean isOfAPlace(String title) {
    return !of(title.strip()).place.isEmpty();
  }
}
