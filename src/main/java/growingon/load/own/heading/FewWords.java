package growingon.load.own.heading;

import growingon.load.own.plant.PlantNames;
import growingon.load.own.sheet.Sheet;
import growingon.load.own.sheet.SheetCell;
import growingon.load.own.sheet.SheetRow;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;

/** Heading rows in words of the grower's own, of which hardly one is known. */
final class FewWords {
  private static final Set<String> OF_LOTS =
      Set.of(
          "quantity",
          "packs",
          "size",
          "pot",
          "girth cm",
          "height cm",
          "trunk mm",
          "unit cost",
          "selling price");

  /** Fewer texts are no heading row. */
  private static final int LEAST = 3;

  /** A heading of which nobody knows the words is a few of them. */
  private static final int LONGEST_WORDS = 30;

  private FewWords() {}

  /**
   * Where hardly a heading is understood: the first row of short texts, one of them understood,
   * over a column of plants, with something below most of its headings.
   */
  static Optional<HeadingRow> find(Sheet sheet, OwnWords own) {
    for (int i = 0; i + 1 < sheet.rows().size(); i++) {
      SheetRow row = sheet.rows().get(i);
      if (row.number() > HeadingRow.ROWS_SEARCHED) {
        break;
      }
      boolean words =
          row.cells().size() >= LEAST
              && row.cells().values().stream().allMatch(FewWords::isShortText);
      if (words) {
        SortedMap<Integer, String> texts = HeadingRow.textsOf(row);
        int score =
            (int) texts.values().stream().filter(text -> HeadingRow.isKnown(text, own)).count();
        SheetRow next = sheet.rows().get(i + 1);
        long filled = texts.keySet().stream().filter(each -> next.cell(each).isPresent()).count();
        HeadingRow found = new HeadingRow(i, i, texts, score);
        if (score > 0 && filled * 2 > texts.size() && HeadingRow.hasColumnOfPlants(sheet, found)) {
          return Optional.of(found);
        }
      }
    }
    return Optional.empty();
  }

  private static boolean isShortText(SheetCell cell) {
    return cell.isText()
        && cell.text().length() <= LONGEST_WORDS
        && !PlantNames.shipped().find(cell.text(), "").isPlant();
  }

  /** Whether a heading may be a number, a size or a price. */
  static boolean mayCount(HeadingRow row, OwnWords own) {
    return row.texts().values().stream()
        .anyMatch(
            text ->
                own.find(OwnWords.HEADING, text).isPresent()
                    || HeadingRow.isSize(text)
                    || own.headings()
                        .find(text)
                        .filter(
                            found ->
                                found.meaning().possible().stream().anyMatch(OF_LOTS::contains))
                        .isPresent());
  }
}
